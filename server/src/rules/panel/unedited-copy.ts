import { familyRule } from '../about.ts'
import { numbersIn } from '../words.ts'

const ratings = ['pmax', 'vmp', 'imp', 'voc', 'isc'] as const

export const uneditedCopy = familyRule({
  id: 'unedited-copy',
  severity: 'information',
  reason: 'A new record is often begun as a copy of its sibling; what is not typed over is the other panel.',
  source: 'common practice, no source',
  messages: {
    andTheName: ', and the name says {own}',
    found: 'All ratings are those of {other}{part}',
  },

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
    if (other && (isVariant(other.text, name.text) || isVariant(name.text, other.text))) return null
    // the sibling is named by its power, and this one by another
    const own = numbersIn(name.text).find((n) => Math.abs(n / pmax.value - 1) < 0.25)
    const isMeant = own !== undefined && own !== pmax.value && !!other && numbersIn(other.text).includes(pmax.value)
    return {
      say: 'found',
      with: { other: other ?? same.path, part: isMeant ? { say: 'andTheName', with: { own } } : null },
      suspects: [name, pmax],
      ...(isMeant && { severity: 'warning' as const }),
      ...(other && { elsewhere: [{ path: same.path, field: other }] }),
    }
  },
})

/** `Tern 110 T` is a Tern 110 with the box elsewhere, say, and so is another Tern 110. */
const isVariant = (name: string, of: string) => name.startsWith(of) && !/^\d/.test(name.slice(of.length))
