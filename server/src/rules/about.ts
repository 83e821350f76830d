import { ruleOver } from '../findings/rule.ts'
import type { Panel, Settings } from '../records/records.generated.ts'
import type { Site } from '../values/site.ts'

/** What a panel rule may know beside the record. */
export interface PanelAbout {
  readonly settings: Settings | undefined
  readonly site: Site
  /** The date, year-month-day. */
  readonly today: string
  /** Whether anything stands at a JSON pointer of the file, readable or not. */
  readonly typed: (pointer: string) => boolean
  /** Other panels of the same family in the library. */
  readonly siblings: readonly Sibling[]
  /** Panels of the library that may be of its family: those that name the same, and those that share its coefficients. */
  readonly kin: readonly Sibling[]
}

export interface Sibling {
  readonly path: string
  readonly record: Panel
}

export const panelRule = ruleOver<Panel, PanelAbout>()
