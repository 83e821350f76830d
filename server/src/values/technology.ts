import type { Panel } from '../records/records.generated.ts'

export type Technology = NonNullable<Panel['cells']['technology']>['value']

const crystalline: readonly Technology[] = ['mono', 'perc', 'topcon', 'hjt', 'back-contact', 'poly']

/** Crystalline silicon of any kind, whose ratios lie in narrow bands. */
export const isCrystalline = (panel: { readonly cells: Pick<Panel['cells'], 'technology'> }): boolean =>
  panel.cells.technology !== undefined && crystalline.includes(panel.cells.technology.value)
