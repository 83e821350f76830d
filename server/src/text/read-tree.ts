import { Composer, Lexer, Parser, type CST, type Document } from 'yaml'
import { plainProblem } from './plain-problem.ts'
import { readNode } from './read-node.ts'
import type { Comment, SyntaxProblem, Tree } from './tree.ts'

/** Longest text that is analysed, in UTF-16 units: a record has 2000. */
export const longestText = 256 * 1024
/** Deepest nesting that is analysed: a record has 4. */
const deepest = 64

/**
 * Reads YAML or JSON, however broken, and never throws: what can be read is in `root`, in the words that were typed,
 * and what YAML itself complains about in `problems`. Only the first document of a file is read.
 * Aliases, anchors, tags and merge keys are not followed.
 */
export function readTree(text: string): Tree {
  if (text.length > longestText) return unread(text, tooBig(text))
  const marker = text.includes('<<<<<<<') || text.includes('>>>>>>>') ? /^(?:<{7}|>{7})(?![^ \t\r\n]).*/m.exec(text) : null
  if (marker) return unread(text, conflict(marker.index, marker[0].length))

  const comments: Comment[] = []
  const tokens = parse(text, comments)
  if (tokens === 'too-deep') return unread(text, tooDeep(text))
  const [document, second] = compose(tokens, text.length)
  const problems = document ? [...document.errors, ...document.warnings].map((error) => plainProblem(text, error)) : []
  if (second) problems.push(secondDocument(text, second))
  return { text, root: document ? readNode(text, document.contents, '', 0) : null, problems, comments }
}

/** The tokens of the file; `comments` is filled on the way, for only the lexer sees every one of them. */
function parse(text: string, comments: Comment[]): CST.Token[] | 'too-deep' {
  const parser = new Parser()
  const tokens: CST.Token[] = []
  let afterScalarMark = false
  let start = 0
  for (const lexeme of new Lexer().lex(text)) {
    if (!afterScalarMark && lexeme.startsWith('#')) {
      comments.push({ span: { start, end: start + lexeme.trimEnd().length }, text: lexeme.slice(1).trim() })
    }
    afterScalarMark = !afterScalarMark && lexeme === '\x1f'
    if (!isMark(lexeme)) start += lexeme.length
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

function compose(tokens: CST.Token[], length: number): Document.Parsed[] {
  const composer = new Composer({ version: '1.2', prettyErrors: false, logLevel: 'silent', uniqueKeys: false })
  return [...composer.compose(tokens, true, length)] as Document.Parsed[]
}

function unread(text: string, problem: SyntaxProblem): Tree {
  return { text, root: null, problems: [problem], comments: [] }
}

function tooBig(text: string): SyntaxProblem {
  const kilobytes = Math.round(text.length / 1024)
  const message = `The file has ${kilobytes} KiB and was not read; a record has a few, and ${longestText / 1024} is the limit.`
  return { code: 'too-big', message, span: firstLine(text) }
}

function tooDeep(text: string): SyntaxProblem {
  const message = `The file nests more than ${deepest} levels deep and was not read; a record needs about 4.`
  return { code: 'too-deep', message, span: firstLine(text) }
}

function conflict(start: number, length: number): SyntaxProblem {
  const message = 'A git conflict marker stands here: settle the conflict, then the file can be read.'
  return { code: 'conflict-markers', message, span: { start, end: start + length } }
}

function secondDocument(text: string, second: Document.Parsed): SyntaxProblem {
  const at = text.lastIndexOf('---', second.range[0])
  const start = at < 0 ? second.range[0] : at
  const message = 'A second record starts here; one file holds one record, and only the first was read.'
  return { code: 'second-document', message, span: { start, end: Math.min(text.length, start + 3) } }
}

function firstLine(text: string) {
  return { start: 0, end: Math.max(0, text.search(/[\r\n]|$/)) }
}
