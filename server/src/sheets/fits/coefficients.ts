import { folded, symbolIn, type Concept } from '../../records/concepts.ts'
import type { Printed } from '../numbers.ts'
import { has, singles, fit, type Asked, type Fit } from './fit.ts'

/** A cell in the languages of datasheets; the temperature of a cell is none. */
const perCell =
  /(?:\b(?:per|pro|je|par|por)|[k°cf)]\s?\/) ?(?:single |einzel)?(?:cellule|celula|celda|cella|cell|cel|zelle)\b(?! ?temp)/

export function coefficients(asked: Asked): readonly Fit[] {
  const { says, words } = asked
  const symbol = symbolIn(words)
  const named = (want: string, concept: Concept, greek: RegExp) =>
    symbol
      ? symbol === want
        ? 3
        : -3
      : greek.test(words) || says.has(concept)
        ? 3
        : has(says, 'power', 'voltage', 'current')
          ? -3
          : 0
  const relative = singles(asked, ['%/K', '%/°C', '%/°F', 'ppm/K'])
  const isOfCell = perCell.test(folded(`${words} | ${asked.cell.text}`))
  const volts = singles(asked, ['mV/K', 'mV/°C', 'V/K', 'V/°C']).map((n) =>
    isOfCell ? { ...n, unit: `${n.unit} per cell` } : n,
  )
  const amps = singles(asked, ['mA/K', 'mA/°C', 'A/K', 'A/°C'])
  const watts = singles(asked, ['W/K', 'W/°C', 'mW/K', 'mW/°C'])
  const at = (key: string) => `/temperature_coefficients/${key}`
  const one = relative[0] ?? volts[0] ?? amps[0] ?? watts[0]
  if (!one) return []
  const all = (list: readonly Printed[]) => list.length > 0
  const vmp = symbol === 'vmp' ? fit(at('vmp'), [...relative, ...volts], 3) : []
  const imp = symbol === 'imp' ? fit(at('imp'), [...relative, ...amps], 3) : []
  return [
    ...(all(relative) || all(watts) ? fit(at('pmax'), [...relative, ...watts], named('pmax', 'power', /[γδ]/)) : []),
    ...(all(relative) || all(volts) ? fit(at('voc'), [...relative, ...volts], named('voc', 'voltage', /β/)) : []),
    ...(all(relative) || all(amps) ? fit(at('isc'), [...relative, ...amps], named('isc', 'current', /α/)) : []),
    ...vmp,
    ...imp,
  ]
}
