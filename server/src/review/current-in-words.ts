import { figure, sayFrom, whole, type Param, type Catalogue, type Said } from '../findings/message.ts'
import { sum, type BankCurrent, type Part } from './bank-current.ts'

export const currents = {
  id: 'currents',
  messages: {
    loads: 'All loads at once draw {current} at {voltage} ({parts})',
    sources: 'Charging takes {current} ({parts})',
    part: '{name} {current}',
    rest: 'rest {current}',
  },
} as const satisfies Catalogue

const say = sayFrom(currents)

/** `All loads at once draw 112 A at 12 V (kettle 111, the inverter itself 1.3)`. */
export function mainInWords({ amps, parts, from, voltage }: BankCurrent): Said {
  const about = { current: figure(amps, 'A'), parts: partsInWords(parts) }
  return from === 'loads'
    ? say({ say: 'loads', with: { ...about, voltage: figure(voltage, 'V') } })
    : say({ say: 'sources', with: about })
}

/** In amperes: `kettle 153, windlass 78, rest 12`. */
export function partsInWords(parts: readonly Part[]): Param {
  const shown = parts.filter(({ amps }) => amps >= 0.05)
  const first = shown.length > 4 ? shown.slice(0, 3) : shown
  const rest = shown.slice(first.length)
  const current = (amps: number) => (amps >= 10 ? whole(amps) : { value: amps, decimals: 1 })
  return {
    list: [
      ...first.map(({ name, amps }) => say({ say: 'part', with: { name, current: current(amps) } })),
      ...(rest.length > 0 ? [say({ say: 'rest', with: { current: current(sum(rest)) } })] : []),
    ],
  }
}
