import type { PanelRule } from '../about.ts'

const ratings = ['pmax', 'vmp', 'imp', 'voc', 'isc'] as const

export const uneditedCopy: PanelRule = {
  id: 'unedited-copy',
  severity: 'information',
  reason: 'A new record is often begun as a copy of its sibling; what is not typed over is the other panel.',
  source: 'common practice, no source',

  check({ name, stc, size }, { siblings }) {
    const same = siblings.find(
      ({ record }) =>
        ratings.every((field) => stc[field] && stc[field].value === record.stc[field]?.value) &&
        size.length?.value === record.size.length?.value &&
        size.width?.value === record.size.width?.value,
    )
    const pmax = stc.pmax
    if (!same || !name || !pmax) return null
    const other = same.record.name
    if (other?.text === name.text) return null
    const power = (text: string) => /(?<![\d.])\d{2,3}(?![\d.])/.exec(text)?.[0]
    const own = power(name.text)
    // the names differ in their number, and the ratings are those of the other
    const isMeant = own !== undefined && other && own !== power(other.text) && Number(own) !== pmax.value
    return {
      message: `All ratings are those of ${other?.text ?? same.path}${isMeant ? `, and the name says ${own}` : ''}`,
      suspects: [name, pmax],
      ...(isMeant && { severity: 'warning' as const }),
      ...(other && { elsewhere: [{ path: same.path, field: other }] }),
    }
  },
}
