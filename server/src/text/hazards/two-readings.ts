import { phrase, type Phrase } from '../../wording/phrase.ts'
import { inventory } from '../tree-queries.ts'
import type { ScalarNode, Tree } from '../tree.ts'
import { hazard, quoting, type Hazard, type HazardRule, type Fix } from './hazard.ts'

export const twoReadings: HazardRule = {
  id: 'number-two-readings',
  severity: 'warning',
  reason: 'YAML 1.1, which many programs still read, and YAML 1.2 disagree about numbers written in these ways.',
  source: 'YAML 1.2.2, section 10.3.2; YAML 1.1 type repository, "int" and "float"',
  find: (tree) =>
    inventory(tree).scalars.flatMap((node) =>
      node.style === 'plain' && suspicious.test(node.text) ? found(tree, node) : [],
    ),
}

const suspicious = /^[-+]?(?:0[\dbox]|\d+[_:eE])/i

interface Writing {
  readonly form: RegExp
  readonly say: (text: string) => Phrase
  readonly plain?: (text: string) => string | null
  /** Where a slip of the hand is likelier than either reading. */
  readonly spoils?: boolean
}

const writings: readonly Writing[] = [
  {
    form: /^[-+]?0[0-7]+$/,
    say: (t) => phrase`${t} is ${decimal(t)} in YAML 1.2 and ${inFigures(octal(t))} in YAML 1.1`,
    plain: decimal,
    spoils: true,
  },
  {
    form: /^0o[0-7]+$/,
    say: (t) => phrase`${t} is ${inFigures(octal(t.replace('o', '')))} in YAML 1.2 and a text in YAML 1.1`,
    spoils: true,
  },
  {
    form: /^[-+]?0x[\da-f]+$/i,
    say: (t) => phrase`${t} is ${inFigures(hexadecimal(t))} to YAML, counted by sixteens, and a text to a person`,
    spoils: true,
  },
  {
    form: /^[-+]?0b[01]+$/,
    say: (t) =>
      phrase`${t} is a text in YAML 1.2 and ${inFigures(Number.parseInt(t.replace('0b', ''), 2))} in YAML 1.1`,
    spoils: true,
  },
  {
    form: /^[-+]?[1-9]\d*(?:_\d+)+(?:\.\d*)?$/,
    say: (t) => phrase`${t} is a text in YAML 1.2 and ${joined(t)} in YAML 1.1`,
    plain: joined,
  },
  {
    form: /^[-+]?[1-9]\d*(?::[0-5]?\d)+$/,
    say: (t) => phrase`${t} is a text in YAML 1.2 and ${inFigures(sixties(t))}, counted by sixties, in YAML 1.1`,
    spoils: true,
  },
  {
    form: /^[-+]?\d+e[-+]?\d+$/i,
    say: (t) => phrase`${t} is ${inFigures(Number(t))} in YAML 1.2 and a text in YAML 1.1`,
    plain: (t) => (Number.isFinite(Number(t)) ? String(Number(t)) : null),
  },
]

function found(tree: Tree, node: ScalarNode): Hazard[] {
  const writing = writings.find(({ form }) => form.test(node.text))
  if (!writing) return []
  const text = writing.plain?.(node.text) ?? null
  const plain: Fix[] = text
    ? [
        {
          edits: [{ span: node.span, text }],
          why: phrase`the same number for every reader`,
          certainty: writing.spoils ? 'guess' : 'same',
          text,
        },
      ]
    : []
  const { pointer, span } = node
  const said = writing.say(node.text)
  const message = text
    ? phrase`${said}. Write ${text}.`
    : phrase`${said}. Write a plain number, or put the text in quotes.`
  return [
    hazard({
      message,
      pointer,
      span,
      spoils: writing.spoils ? [pointer] : [],
      fixes: [...plain, quoting(tree, node, node.text, 'guess')],
    }),
  ]
}

function inFigures(value: number): string | Phrase {
  return Number.isFinite(value) ? String(value) : phrase`a number beyond all bounds`
}

function decimal(text: string): string {
  return text.replace(/^([-+]?)0+(?=\d)/, '$1')
}

function octal(text: string): number {
  return Number.parseInt(text, 8)
}

function hexadecimal(text: string): number {
  return Number.parseInt(text, 16)
}

function joined(text: string): string {
  return text.replaceAll('_', '')
}

function sixties(text: string): number {
  const sum = text
    .replace(/^[-+]/, '')
    .split(':')
    .reduce((total, part) => 60 * total + Number(part), 0)
  return text.startsWith('-') ? -sum : sum
}
