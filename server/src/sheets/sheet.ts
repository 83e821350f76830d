import type { Box } from './page.ts'

/** What a sheet prints for one field of a record, where that is certain. */
export interface Reading {
  /** JSON pointer of the field. */
  readonly field: string
  /** As a careful person types it, with a decimal point. */
  readonly typed: string
  /** The same in the second unit that is printed, or a second limit. */
  readonly also: readonly string[]
  /** The whole text of the cell. */
  readonly text: string
  readonly label: string
  readonly page: number
  readonly box: Box
}

/** One product of a sheet: a column or a row of its tables. */
export interface SheetModel {
  /** Empty where the sheet has one product and no heading names it. */
  readonly name: string
  /** The page of a product that has a page of its own. */
  readonly page?: number
  readonly readings: readonly Reading[]
}

/** A datasheet as it was understood. */
export interface Sheet {
  readonly pages: number
  readonly models: readonly SheetModel[]
  /** Why nothing can be read; null for a sheet that was read. */
  readonly problem: string | null
}

/** A sheet that cannot be read. */
export const unreadable = (problem: string, pages = 0): Sheet => ({ pages, models: [], problem })

/** Whether what was kept of a sheet is still whole. */
export function isSheet(kept: unknown): kept is Sheet {
  const { pages, models, problem } = (kept ?? {}) as Partial<Sheet>
  return (
    typeof pages === 'number' &&
    (problem === null || typeof problem === 'string') &&
    Array.isArray(models) &&
    models.every(
      (model: Partial<SheetModel> | null) => typeof model?.name === 'string' && Array.isArray(model.readings),
    )
  )
}

/** Letters and digits of a name, for comparing. */
export const bareName = (name: string): string =>
  name
    .toLowerCase()
    .normalize('NFKC')
    .replace(/[^\p{L}\p{N}]+/gu, '')
