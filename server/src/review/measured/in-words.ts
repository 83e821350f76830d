import { figure, percent, sayFrom, type Param, type Catalogue, type Said } from '../../findings/message.ts'
import type { ResolvedArray } from '../resolved.ts'
import { bypassDiodesOf } from '../bypass-diodes.ts'
import type { MeasuredFindings } from './measured-findings.ts'
import type { Reading } from './string.ts'
import { namesOf, unitsOf } from './string.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'

export const measuredPhrases = {
  id: 'measured',
  messages: {
    missing: ': about one panel of {count} is missing or bridged',
    diode: ': about one bypass diode of {count} conducts',
    shade: ': shade or dirt is likeliest',
    stranger: ': it fits string {number} of {array}',
    reversed: ': one panel is the other way round',
    aged: ': the panels have aged',
    at: '{irradiance}',
    atBoth: '{irradiance}, cells {cells}',
    strings: 'the other string',
    stringsMany: 'the other {count} strings',
  },
} as const satisfies Catalogue

const say = sayFrom(measuredPhrases)

/** What is likeliest to have made a string low, after a colon; nothing where that cannot be distinguished. */
export function causeInWords({ diagnosis, string }: MeasuredFindings): Said | null {
  switch (diagnosis?.cause) {
    case 'panel missing':
      return say({ say: 'missing', with: { count: string.panels.length } })
    case 'bypass diode conducting': {
      const count = string.panels.reduce((sum, { panel }) => sum + (panel ? bypassDiodesOf(panel.record) : 1), 0)
      return say({ say: 'diode', with: { count } })
    }
    case 'shade or dirt':
      return say({ say: 'shade' })
    case 'string of another array': {
      const { fits } = diagnosis
      return fits ? say({ say: 'stranger', with: { number: fits.number, array: nameOf(fits.array) } }) : null
    }
    case 'reversed':
      return say({ say: 'reversed' })
    case 'aged':
      return say({ say: 'aged' })
    case undefined:
      return null
  }
}

/** As its entry calls it. */
export const nameOf = ({ entry }: ResolvedArray, bundle?: Bundle): string => entry.id?.text ?? sayIn(bundle)`the array`

/** `780 W/m2, cells 52 °C`; for a current the sun alone, as it hardly depends on the rest. */
export function conditionsInWords({ string: { conditions } }: MeasuredFindings, { quantity }: Reading): Param {
  const { irradiance, temperature } = conditions
  if (!irradiance) return null
  const sun = figure(irradiance.value, 'W/m2')
  if (!temperature || quantity === 'isc') return say({ say: 'at', with: { irradiance: sun } })
  return say({ say: 'atBoth', with: { irradiance: sun, cells: figure(temperature.value, '°C', 2) } })
}

/** `Isc 4.11 A`, as typed. */
export const readingInWords = ({ quantity, field }: Reading) => ({ name: namesOf[quantity], value: field })

export const expectedOf = ({ quantity, expected }: Reading): Param =>
  expected === null ? null : figure(expected, unitsOf[quantity])

export const shareOf = (share: number): Param => percent(Number(Math.abs(share).toPrecision(2)))

/** `-1.4 %`, `+0.2 %`, `-25 %`: no meter is more precise. */
export function differenceText(share: number): string {
  const percents = (100 * share).toFixed(Math.abs(share) < 0.1 ? 1 : 0)
  return `${share > 0 && Number(percents) !== 0 ? '+' : ''}${Number(percents) === 0 ? '0.0' : percents} %`
}

export const othersInWords = (count: number): Said =>
  count === 1 ? say({ say: 'strings' }) : say({ say: 'stringsMany', with: { count } })
