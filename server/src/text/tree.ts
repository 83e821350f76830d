import type { Phrase } from '../wording/phrase.ts'
import type { Edit, Span } from './span.ts'

/** A node of a YAML or JSON file, with its place. `pointer` is a JSON pointer such as `/stc/voc`; the root's is ''. */
export type Node = MapNode | ListNode | ScalarNode

interface NodeBase {
  readonly pointer: string
  /** The value's own characters: no key, no comment, no white space around. Quotes are inside. */
  readonly span: Span
}

export interface MapNode extends NodeBase {
  readonly kind: 'map'
  readonly entries: readonly Entry[]
  readonly flow: boolean
}

export interface Entry {
  readonly key: string
  readonly keySpan: Span
  readonly pointer: string
  /** Offset of the `:`; null where there is none, as for the stray `92 A` in `{ imp: 5,92 A }`. */
  readonly colon: number | null
  /** null for `key:` with nothing behind it */
  readonly value: Node | null
}

export interface ListNode extends NodeBase {
  readonly kind: 'list'
  readonly items: readonly (Node | null)[]
  readonly flow: boolean
}

export interface ScalarNode extends NodeBase {
  readonly kind: 'scalar'
  /** What was typed, without quotes: `18.60` stays `18.60`, and `&110 W` or `*110 W` is not followed but stays whole. */
  readonly text: string
  readonly style: 'plain' | 'single' | 'double' | 'block'
}

/** `# …` with its place; `text` is what follows the `#`, trimmed. */
export interface Comment {
  readonly span: Span
  readonly text: string
}

/** What the YAML reader itself complains about. */
export interface SyntaxProblem {
  readonly code: string
  readonly message: string
  /** The same as data, where it is not YAML's own. */
  readonly sentence?: Phrase
  readonly span: Span
  /** Whether the line is broken in itself, so that it is in the right column. */
  readonly inLine?: boolean
  /** Fields that begin in it have no value that is known. */
  readonly spoils?: Span
  /** What would put it right, where that is plain. */
  readonly fix?: SyntaxFix
  /** Where two may. */
  readonly otherFix?: SyntaxFix
}

export interface SyntaxFix {
  readonly edits: readonly Edit[]
  readonly why: Phrase
  readonly certainty: 'same' | 'guess'
  /** What is there then, where that is not the value of a field. */
  readonly text?: string
}

/** A file as it was typed. Reading never fails: what could be read is in `root`, the rest in `problems`. */
export interface Tree {
  readonly text: string
  readonly root: Node | null
  readonly problems: readonly SyntaxProblem[]
  readonly comments: readonly Comment[]
  /** How many characters the whole grammar of YAML read for it, again and again, beside single lines; absent for none. */
  readonly effort?: number
  /** The lines that were read in another way than they stand in the text. */
  readonly otherwise?: readonly OtherReading[]
  /** How much YAML complains of without them; absent where there are none. */
  readonly complaints?: number
}

/** Lines read in another way. */
export interface OtherReading {
  readonly edits: readonly Edit[]
  readonly problem: SyntaxProblem
  /** Whether it is only meant where no more fields than before are out of place. */
  readonly mustFit?: boolean
}
