import type { AddCommand } from './command.ts'
import { addCheck } from './check.ts'
import { addCompare } from './compare.ts'
import { addCompletion } from './completion.ts'
import { addExplain } from './explain.ts'
import { addNew } from './new.ts'
import { addReport } from './report.ts'
import { addReview } from './review.ts'
import { addServe } from './serve.ts'
import { addSheet } from './sheet.ts'
import { addTable } from './table.ts'
import { addValues } from './values.ts'

/** In the order of the help. */
export const commands: readonly AddCommand[] = [
  addCheck,
  addValues,
  addCompare,
  addTable,
  addReview,
  addReport,
  addSheet,
  addNew,
  addExplain,
  addServe,
  addCompletion,
]
