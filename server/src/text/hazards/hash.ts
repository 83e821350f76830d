import { phrase } from '../../wording/phrase.ts'
import { isInFlow } from '../edits.ts'
import { lineAround } from '../lines.ts'
import { spelledScalar } from '../spelling.ts'
import { shortened } from '../shortened.ts'
import { inventory } from '../tree-queries.ts'
import type { Comment, ListNode, MapNode, ScalarNode, Tree } from '../tree.ts'
import { hazard, yamlSource, type Hazard, type HazardRule, type Fix } from './hazard.ts'

/** Beyond these a file is no record. */
const mostComments = 200

export const hashInText: HazardRule = {
  id: 'hash-cuts-text',
  severity: 'information',
  reason: 'A # after a space begins a comment, so a text with a # in it ends there, and YAML does not complain.',
  source: yamlSource('6.6'),
  find: (tree) =>
    tree.comments.slice(0, mostComments).flatMap((comment) => {
      const looksTyped = /^#[^\s#!]/.test(tree.text.slice(comment.span.start, comment.span.start + 2))
      const node = looksTyped && !openAround(tree, comment) ? scalarBefore(tree, comment) : null
      return node ? [cutText(tree, node, comment)] : []
    }),
}

export const hashInBraces: HazardRule = {
  id: 'hash-cuts-braces',
  severity: 'error',
  reason:
    'A # after a space begins a comment that runs to the end of the line and takes all fields and brackets there with it.',
  source: yamlSource('6.6'),
  find: (tree) =>
    tree.comments.slice(0, mostComments).flatMap((comment) => {
      const open = /[}\]]/.test(comment.text) ? openAround(tree, comment) : null
      return open ? [cutMap(tree, open, comment)] : []
    }),
}

function cutText(tree: Tree, node: ScalarNode, { span, text }: Comment): Hazard {
  const whole = tree.text.slice(node.span.start, span.end)
  const start = span.start + 1
  return hazard({
    message: phrase`YAML takes #${text} for a comment, so the text is ${node.text} alone. Put quotes around ${whole}, or a space after the #.`,
    pointer: node.pointer,
    span,
    spoils: [],
    fixes: [
      {
        edits: [{ span: { start, end: start }, text: ' ' }],
        why: phrase`a space that shows it is a comment`,
        certainty: 'same',
        text: node.text,
      },
      {
        edits: [
          {
            span: { start: node.span.start, end: span.end },
            text: spelledScalar(whole, 'plain', isInFlow(tree, node.pointer)),
          },
        ],
        why: phrase`the whole text in quotes`,
        certainty: 'guess',
        text: whole,
      },
    ],
  })
}

function cutMap(tree: Tree, open: MapNode | ListNode, comment: Comment): Hazard {
  const { span } = comment
  const node = scalarBefore(tree, comment)
  const rest = tree.text.slice(span.start, span.end)
  const end = span.start + rest.slice(0, rest.search(/[,}\]]/)).trimEnd().length
  const whole = node ? tree.text.slice(node.span.start, end) : ''
  const blanks = node ? { start: node.span.end, end } : span
  const quoted = ({ span: { start } }: ScalarNode): Fix => ({
    edits: [{ span: { start, end }, text: spelledScalar(whole, 'plain', true) }],
    why: phrase`the whole text in quotes`,
    certainty: 'guess',
    text: whole,
  })
  const leftOut = ({ text }: ScalarNode): Fix => ({
    edits: [{ span: blanks, text: '' }],
    why: phrase`the words after the # left out`,
    certainty: 'guess',
    text,
  })
  const next = Math.min(tree.text.length, span.end + Math.max(0, tree.text.slice(span.end).search(/\S|$/)) + 1)
  return hazard({
    message: phrase`The # begins a comment, so YAML loses the rest of the line: ${shortened(rest)}. Take it out, or put the text in quotes.`,
    pointer: node?.pointer ?? open.pointer,
    span,
    spoils: [open.pointer],
    explains: [{ start: span.start, end: next }],
    fixes: node ? (startsAsNumber.test(node.text) ? [leftOut(node), quoted(node)] : [quoted(node), leftOut(node)]) : [],
  })
}

/** A number and its unit are no longer read with other words in their quotes. */
const startsAsNumber = /^[-+.]?\d/

function scalarBefore(tree: Tree, { span }: Comment): ScalarNode | null {
  const { start } = lineAround(tree.text, span.start)
  const node = inventory(tree).scalars.findLast((scalar) => start < scalar.span.end && scalar.span.end <= span.start)
  return node?.style === 'plain' && tree.text.slice(node.span.end, span.start).trim() === '' ? node : null
}

/** The innermost map or list that opens on the comment's line and is not closed before it. */
function openAround(tree: Tree, { span }: Comment): MapNode | ListNode | null {
  const { start } = lineAround(tree.text, span.start)
  const around = ({ flow, kind, span: own }: MapNode | ListNode) =>
    flow && start <= own.start && own.start < span.start && tree.text[own.end - 1] !== (kind === 'map' ? '}' : ']')
  return inventory(tree).collections.findLast(around) ?? null
}
