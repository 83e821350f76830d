import { formatNumber } from './format.ts'
import { readQuantity } from './read.ts'

const ending = /(?:\bper|\/) ?cell$/i

/** Whether a coefficient is printed for one cell: `-2.1 mV/K per cell`. */
export const isPerCell = (text: string): boolean => ending.test(text)

/**
 * A voltage coefficient of one cell as that of the panel, which is as many times larger as it has cells in series:
 * `-2.1 mV/K per cell` of 36 cells is `-75.6 mV/K`. null where the text or the number of cells is none.
 */
export function ofPanel(text: string, cells: unknown): string | null {
  if (!isPerCell(text) || typeof cells !== 'number' || !(cells > 0)) return null
  const one = text.replace(ending, '').trimEnd()
  const own = one === '' ? undefined : readQuantity(one, 'voltage-coefficient').quantity
  if (!own || own.dimension === 'per-kelvin') return null
  return `${formatNumber(cells * Number.parseFloat(one.replace('−', '-')), 4)} ${own.unit}`
}
