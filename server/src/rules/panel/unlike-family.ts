import { isSame } from '../../quantities/same.ts'
import { familyRule, type Kindred, type Noted } from '../about.ts'
import { others } from '../others.ts'
import { ofFamily } from '../words.ts'

/** Coefficients of volts, amperes and watts grow with the panel; those of a share do not. */
const asShare = (field: Noted | undefined) => (field?.quantity.dimension === 'per-kelvin' ? field : undefined)

const shared: readonly { readonly label: string; readonly of: (panel: Kindred) => Noted | undefined }[] = [
  { label: 'Pmax coefficient', of: (panel) => asShare(panel.temperature_coefficients.pmax) },
  { label: 'Voc coefficient', of: (panel) => asShare(panel.temperature_coefficients.voc) },
  { label: 'Isc coefficient', of: (panel) => asShare(panel.temperature_coefficients.isc) },
  { label: 'NOCT', of: (panel) => panel.noct.temperature },
]

export const unlikeFamily = familyRule({
  id: 'unlike-family',
  severity: 'information',
  reason:
    'The models of one family have the same cells in another number or size, so coefficients and NOCT are the same.',
  source: 'common practice, no source; of open ratings that share all else 95 to 98.5 % share each of these too',
  messages: {
    found: '{label} {own} is unlike {value}, which have {field}',
    theValueOf: 'the value of its family',
  },

  check(panel, { kin }) {
    const { maker, family, cells } = panel
    if (!family) return null
    const named = kin.filter(
      ({ record }) =>
        record.family?.value === family.value &&
        record.maker?.value === maker?.value &&
        record.cells.technology?.value === cells.technology?.value,
    )
    return shared.flatMap(({ label, of }) => {
      const own = of(panel)
      const all = others(named, of)
      const [first] = all
      if (!own || !first || all.length < 2) return []
      const isFirst = (field: Noted) => isSame(field.value, first.field.value)
      if (isFirst(own) || !all.every(({ field }) => isFirst(field))) return []
      return [
        {
          say: 'found',
          with: { label, own, value: ofFamily(all.map(({ name }) => name)), field: first.field },
          suspects: [own],
          elsewhere: all,
          correction: {
            field: own,
            text: first.field.text,
            why: { say: 'theValueOf' },
            certainty: 'guess' as const,
          },
        },
      ]
    })
  },
})
