import { figure, sayFrom, whole, type Param, type Catalogue, type Said } from '../findings/message.ts'
import { continuous, sum, type BankCurrent, type Part } from './bank-current.ts'

export const currents = {
  id: 'currents',
  messages: {
    loads: 'All loads at once draw {current} at {voltage} ({parts}), 1.25 times that {design}',
    sources: 'Charging takes {current} ({parts}), 1.25 times that {design}',
    part: '{name} {current}',
    others: '{count} others',
  },
} as const satisfies Catalogue

const say = sayFrom(currents)

/** `All loads at once draw 112 A at 12 V (kettle 111 A, the inverter itself 1.3 A), 1.25 times that 140 A`. */
export function mainInWords({ amps, parts, from, voltage }: BankCurrent): Said {
  const about = { current: figure(amps, 'A'), parts: partsInWords(parts), design: figure(continuous * amps, 'A') }
  return from === 'loads'
    ? say({ say: 'loads', with: { ...about, voltage: figure(voltage, 'V') } })
    : say({ say: 'sources', with: about })
}

/** `kettle 153 A, windlass 78 A, 3 others 12 A`. */
export function partsInWords(parts: readonly Part[]): Param {
  const shown = parts.filter(({ amps }) => amps >= 0.05)
  const first = shown.length > 4 ? shown.slice(0, 3) : shown
  const rest = shown.slice(first.length)
  const part = (name: Param, amps: number) =>
    say({
      say: 'part',
      with: { name, current: amps >= 10 ? whole(amps, 'A') : { value: amps, decimals: 1, unit: 'A' } },
    })
  return {
    list: [
      ...first.map(({ name, amps }) => part(name, amps)),
      ...(rest.length > 0 ? [part(say({ say: 'others', with: { count: rest.length } }), sum(rest))] : []),
    ],
  }
}
