/** How a comparison is printed. */
export interface TableOptions {
  readonly format: 'text' | 'json' | 'csv' | 'markdown'
  readonly sort?: string
  readonly filter: readonly string[]
  readonly columns?: string
}
