import type { Phrase } from '../../wording/phrase.ts'
import { strayBrackets } from '../line-brackets.ts'
import { inventory } from '../tree-queries.ts'
import type { ScalarNode, Tree } from '../tree.ts'
import { beginsAsNumber, hazard, quoting, type Hazard, type HazardRule, type Fix } from './hazard.ts'

/** Facts of a hazard that shows in the words of one value: no sound plain text in YAML can match `damaged`. */
interface TextHazard extends Omit<HazardRule, 'find'> {
  readonly damaged: RegExp
  message(text: string, better: string | null): Phrase
  /** What was probably meant, where that is clear. */
  better(text: string): { text: string; why: Phrase; certainty: 'same' | 'guess' } | null
}

export function textHazard({ damaged, message, better, ...facts }: TextHazard): HazardRule {
  const find = (tree: Tree): Hazard[] =>
    inventory(tree)
      .scalars.filter(
        (node) => node.style === 'plain' && damaged.test(node.text) && !isMerge(node) && !isBehindBrace(node),
      )
      .map((node) => found(tree, node))
  const found = (tree: Tree, node: ScalarNode): Hazard => {
    const guess = better(node.text)
    const best: Fix[] = guess ? [{ ...guess, edits: [{ span: node.span, text: guess.text }] }] : []
    // what closes a bracket that is not open in it is the rest of a line that broke, not words
    const isSure = !guess && strayBrackets(node.text).length === 0
    const fixes =
      guess?.certainty === 'same' ? best : [...best, quoting(tree, node, node.text, isSure ? 'same' : 'guess')]
    const { pointer, span } = node
    return hazard({ message: message(node.text, guess?.text ?? null), pointer, span, fixes })
  }
  return { ...facts, find }
}

/** A number without the sign in front of it. */
export function numberBehind(sign: RegExp, text: string): string | null {
  const rest = text.replace(sign, '')
  return beginsAsNumber(rest) && !/[,[\]{}#]|: /.test(rest) ? rest : null
}

const isMerge = ({ pointer }: ScalarNode) => pointer.endsWith('/<<')

/** `size { length: 1190 mm }`: what is wrong there is the name, which is reported. */
const isBehindBrace = ({ pointer }: ScalarNode) => pointer.slice(pointer.lastIndexOf('/')).includes('{')
