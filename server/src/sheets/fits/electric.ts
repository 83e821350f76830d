import { symbolIn, type Concept } from '../../records/concepts.ts'
import { has, singles, fit, type Asked, type Fit } from './fit.ts'

export function electric(asked: Asked): readonly Fit[] {
  const { says, words, cell } = asked
  if (
    says.has('coefficient') ||
    (says.has('parts') && !symbolIn(words) && !has(says, 'fuse', 'open', 'short', 'peak', 'voltage', 'current'))
  )
    return []
  // `I R` is a reverse current where the words speak of fuses
  const symbol = says.has('fuse') ? null : symbolIn(words)
  const watts = singles(asked, ['W', 'kW'])
  const volts = singles(asked, ['V'])
  const amps = singles(asked, ['A'])
  const value = (watts[0] ?? volts[0] ?? amps[0])?.value
  if (value === undefined || value <= 0) return []
  const odd = says.has('tolerance') && !symbol ? -3 : 0
  const other = (...concepts: Concept[]) => (has(says, ...concepts) ? -3 : 0)
  if (watts.length) {
    const named = symbol === 'pmax' || says.has('power') ? 3 : says.has('peak') ? 2 : symbol ? -3 : 0
    return watts.length === 1 && value >= 2 && value < 900 ? fit('pmax', watts, odd || named) : []
  }
  if (volts.length) {
    const system = has(says, 'system', 'fuse') ? 3 : 0
    const limits =
      value >= 24 && value <= 2000 && Number.isInteger(value)
        ? fit(
            '/limits/system_voltage',
            volts,
            (symbol && value <= 250) || has(says, 'open') ? -3 : system || (says.has('peak') && value > 250 ? 2 : 0),
          )
        : []
    if (value > 250 || volts.length > 1) return limits
    const open = symbol === 'voc' || (says.has('open') && symbol !== 'vmp')
    const peak = symbol === 'vmp' || (says.has('peak') && !open)
    const s = (system && !symbol ? -3 : 0) + odd
    return [
      ...fit('voc', volts, s || (open ? 3 : peak ? -3 : 0)),
      ...fit('vmp', volts, s || (peak ? 3 : open ? -3 : 0)),
      ...limits,
    ]
  }
  const fuse = says.has('fuse') || (says.has('system') && !symbol && cell.columns === 1)
  const short = symbol === 'isc' || (says.has('short') && symbol !== 'imp')
  const peak = symbol === 'imp' || (says.has('peak') && !short)
  const s = odd || (fuse ? -3 : 0) || (symbol ? 0 : other('parts'))
  const limits =
    Number.isInteger(value) && value <= 60
      ? fit('/limits/series_fuse', amps, symbol || short ? -3 : says.has('fuse') ? 3 : fuse ? 1 : peak ? -2 : 0)
      : []
  if (amps.length > 1) return limits
  return [
    ...fit('isc', amps, s || (short ? 3 : peak ? -3 : 0)),
    ...fit('imp', amps, s || (peak ? 3 : short ? -3 : 0)),
    ...limits,
  ]
}
