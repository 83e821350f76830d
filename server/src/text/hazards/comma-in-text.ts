import { phrase } from '../../wording/phrase.ts'
import { spelledScalar } from '../spelling.ts'
import { hazard, yamlSource, type HazardRule } from './hazard.ts'
import { strays } from './strays.ts'

export const commaInText: HazardRule = {
  id: 'comma-cuts-text',
  severity: 'warning',
  reason: 'Inside { } a comma separates entries, so a text with a comma in it ends there, and YAML does not complain.',
  source: yamlSource('7.4'),
  find: (tree) =>
    strays(tree)
      .filter(({ kind }) => kind === 'text')
      .map(({ entry, head }) => {
        const span = { start: head!.value!.span.start, end: entry.keySpan.end }
        const text = tree.text.slice(span.start, span.end)
        return hazard({
          message: phrase`The comma before ${entry.key} ends the entry inside { }: quote the whole text, or give ${entry.key} a colon and a value.`,
          pointer: entry.pointer,
          span: entry.keySpan,
          spoils: [],
          swallows: [entry.pointer],
          fixes: [
            {
              edits: [{ span, text: spelledScalar(text, 'plain', true) }],
              why: phrase`the whole text in quotes`,
              certainty: 'guess',
              text,
            },
          ],
        })
      }),
}
