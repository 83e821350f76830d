import { phrase } from '../../wording/phrase.ts'
import { lineAround } from '../lines.ts'
import { childPointer, parentPointer } from '../pointer.ts'
import { shortened } from '../shortened.ts'
import { entriesOf } from '../tree-queries.ts'
import type { Entry, SyntaxProblem, Tree } from '../tree.ts'
import { hazard, yamlSource, type Hazard, type HazardRule } from './hazard.ts'
import { strays, withoutColon, type Stray } from './strays.ts'

export const missingColon: HazardRule = {
  id: 'colon-missing',
  severity: 'error',
  reason: 'A field is a name, a colon, a space and a value; without its colon YAML finds no value.',
  source: yamlSource('8.2.2'),
  find: (tree) => [
    ...strays(tree).flatMap((stray) =>
      stray.kind === 'no-colon' ? [joined(stray)] : stray.kind === 'bare' ? [bare(stray)] : [],
    ),
    ...entriesOf(tree)
      .filter(({ entry }) => entry.key.includes('{'))
      .flatMap(({ entry }) => beforeBrace(tree, entry)),
    ...tree.problems.flatMap(strayText),
  ],
}

/** Of a colon, or a sign for one, alone. */
export const nameless = phrase`A name is missing here: a field is a name, a colon, a space and a value.`

/** A line that the reading of the file has taken for a comment. */
function strayText({ code, sentence, span, fix }: SyntaxProblem): Hazard[] {
  return code === 'stray-text' && sentence && fix
    ? [hazard({ message: sentence, pointer: '', span, spoils: [], fixes: [{ ...fix, text: '' }] })]
    : []
}

function joined({ entry, map }: Stray): Hazard {
  const [, key, joint, text] = withoutColon.exec(entry.key)!
  const pointer = childPointer(map.pointer, key!)
  const start = entry.keySpan.start + key!.length
  const edits = [{ span: { start, end: start + joint!.length }, text: ': ' }]
  return hazard({
    message: phrase`The colon after ${key} is missing: write ${key}: ${text}.`,
    pointer,
    span: entry.keySpan,
    // the field is here, and not missed besides
    swallows: [entry.pointer, ...(map.entries.some((one) => one.pointer === pointer) ? [] : [pointer])],
    fixes: [
      {
        edits,
        why: phrase`a colon after the name`,
        certainty: map.flow || /=|\d/.test(entry.key) ? 'same' : 'guess',
        text: text!,
      },
    ],
  })
}

/** `noct { temperature: 46 °C }`: a group on one line without its colon, which YAML takes for a name. */
function beforeBrace({ text }: Tree, { key, keySpan, pointer }: Entry): Hazard[] {
  const [, name, joint = ''] = /^([A-Za-z_][\w-]*)( *)\{/.exec(key) ?? []
  if (name === undefined) return []
  const start = keySpan.start + name.length
  const { end } = lineAround(text, start)
  const group = text.slice(start + joint.length, end).trimEnd()
  const own = childPointer(parentPointer(pointer), name)
  return [
    hazard({
      message: phrase`The colon after ${name} is missing: write ${name}: ${shortened(group)}.`,
      pointer: own,
      span: keySpan,
      swallows: [pointer, own],
      explains: [{ start: keySpan.start, end }],
      fixes: [
        {
          edits: [{ span: { start, end: start + joint.length }, text: ': ' }],
          why: phrase`a colon after the name`,
          certainty: 'same',
          text: group,
        },
      ],
    }),
  ]
}

function bare({ entry, map }: Stray): Hazard {
  const about = { pointer: entry.pointer, span: entry.keySpan, swallows: [entry.pointer] }
  if (/^[A-Za-z_][\w-]*$/.test(entry.key))
    return hazard({
      ...about,
      message: phrase`${entry.key} has no colon and no value: write ${entry.key}: and what the sheet says.`,
    })
  if (entry.key.trim() === '') return hazard({ ...about, message: nameless })
  const words = shortened(entry.key)
  if (map.flow)
    return hazard({ ...about, message: phrase`"${words}" is no field: give it a name and a colon, or delete it.` })
  const { start } = entry.keySpan
  const why = phrase`make it a comment`
  return hazard({
    ...about,
    message: phrase`This line is no field: "${words}". Make it a comment (#).`,
    fixes: [{ edits: [{ span: { start, end: start }, text: '# ' }], why, certainty: 'guess', text: '' }],
  })
}
