import type { Drawn } from '../drawn.ts'

/** A part of a page, before it is HTML or Markdown. */
export type Block =
  | { readonly type: 'text'; readonly text: string }
  | { readonly type: 'list'; readonly items: readonly string[]; readonly columns?: 2 }
  | { readonly type: 'table'; readonly table: Table; readonly columns?: 2 }
  /** Pictures beside each other; a table in their place where there are none. */
  | { readonly type: 'pictures'; readonly pictures: readonly Drawn[]; readonly instead?: Table }

export interface Table {
  /** What it holds, for those who do not see it. */
  readonly name: string
  readonly head: readonly string[]
  /** Columns of figures, which line up at the right. */
  readonly figures: readonly number[]
  readonly rows: readonly (readonly string[])[]
  /** To be filled in by hand, or read beside that: ruled. */
  readonly form?: 'boxes' | 'expected'
}

export interface Section {
  readonly title: string
  readonly blocks: readonly Block[]
  /** Half as wide as the page: two of them stand beside each other. */
  readonly half?: true
}

/** What fits a sheet of paper; the next begins on a new one. */
export interface Leaf {
  readonly title: string
  readonly subtitle: string
  readonly sections: readonly Section[]
}

export const half = (sections: readonly Section[]): readonly Section[] =>
  sections.map((one) => ({ ...one, half: true }))

/** A section, or nothing where it would be empty. */
export function section(title: string, ...blocks: readonly Block[]): readonly Section[] {
  const full = blocks.filter((block) => !isEmpty(block))
  return full.length > 0 ? [{ title, blocks: full }] : []
}

function isEmpty(block: Block): boolean {
  switch (block.type) {
    case 'text':
      return block.text === ''
    case 'list':
      return block.items.length === 0
    case 'table':
      return block.table.rows.length === 0
    case 'pictures':
      return block.pictures.length === 0
  }
}
