import { Composer, Lexer, Parser, type CST, type Document } from 'yaml'
import type { Comment } from './tree.ts'

/** Deepest nesting that is analysed: a record has 4. */
const deepest = 64

/** The schema without numbers: what a text means is read from the text itself, and trying each took a twentieth of the time. */
const options = {
  version: '1.2',
  schema: 'failsafe',
  prettyErrors: false,
  logLevel: 'silent',
  uniqueKeys: false,
} as const

export interface Parsed {
  readonly document: Document.Parsed
  /** Where a second document of the file starts. */
  readonly second: number | null
  readonly comments: readonly Comment[]
}

/** The first document of a text as the `yaml` package has it, and all comments. */
export function parseTokens(text: string): Parsed | 'too-deep' {
  const comments: Comment[] = []
  const tokens = lex(text, comments)
  if (tokens === 'too-deep') return tokens
  const [document, second] = withoutStacks(
    () => [...new Composer(options).compose(tokens, true, text.length)] as Document.Parsed[],
  )
  return { document: document!, second: second ? second.range[0] : null, comments }
}

/** Of the engines that these programs run in, not of the language. */
const stacks = Error as { stackTraceLimit?: number }

/** Complaints are errors of JavaScript, and nobody reads their stacks, which take longer than all the rest of a broken file. */
function withoutStacks(compose: () => Document.Parsed[]): Document.Parsed[] {
  const { stackTraceLimit } = stacks
  stacks.stackTraceLimit = 0
  try {
    return compose()
  } finally {
    if (stackTraceLimit !== undefined) stacks.stackTraceLimit = stackTraceLimit
  }
}

/** The tokens of the file; `comments` is filled on the way, for only the lexer sees every one of them. */
function lex(text: string, comments: Comment[]): CST.Token[] | 'too-deep' {
  const parser = new Parser()
  const tokens: CST.Token[] = []
  let isScalar = false
  let start = 0
  for (const lexeme of new Lexer().lex(text)) {
    if (!isScalar && lexeme.startsWith('#')) {
      comments.push({ span: { start, end: start + lexeme.trimEnd().length }, text: lexeme.slice(1).trim() })
    }
    if (isScalar || !isMark(lexeme)) start += lexeme.length
    isScalar = !isScalar && lexeme === '\x1f'
    for (const token of parser.next(lexeme)) tokens.push(token)
    if (parser.stack.length > deepest) return 'too-deep'
  }
  for (const token of parser.end()) tokens.push(token)
  return tokens
}

/** Marks that the lexer puts between the characters of the file. */
function isMark(lexeme: string): boolean {
  return lexeme === '\x02' || lexeme === '\x18' || lexeme === '\x1f'
}
