import type { Tree } from './tree.ts'

/** What fields a text is expected to have: of two ways to read broken lines, the one in which more of them have a place is meant. */
export interface Shape {
  /** Of fields, at any place. */
  readonly names: ReadonlySet<string>
  /** Of fields in which people write sentences: a name in them is a word. */
  readonly prose: ReadonlySet<string>
  /** Of those where a name may be a word as long as YAML does not complain. */
  readonly texts: ReadonlySet<string>
  /** How many fields of a tree are not where they belong, missing, or there twice. */
  readonly misfits: (tree: Tree) => number
}
