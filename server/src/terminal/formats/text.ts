import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { styleText } from 'node:util'
import type { Accepted } from '../../check/checked.ts'
import type { Correction, Finding, Severity } from '../../findings/finding.ts'
import { positionAt } from '../../text/lines.ts'
import { parentPointer } from '../../text/pointer.ts'
import type { Bundle } from '../../wording/bundle.ts'
import { sayIn } from '../../wording/phrase.ts'
import type { FileReport } from '../file-report.ts'
import { inWords } from '../severity.ts'
import { linked, visible } from '../visible.ts'
import type { World } from '../world.ts'
import { excerpt } from './excerpt.ts'
import type { Pieces } from './pieces.ts'

/** What a compiler would print: the place and the message in one line, the text with a marker, the fix; a count at the end. */
export function textPieces({ colour, rulePages, bundle }: TextStyle, showAccepted: boolean): Pieces {
  const paint: Paint = colour ? (style, text) => styleText(style, text, { validateStream: false }) : (_, text) => text
  return {
    file: (file) =>
      [
        ...file.findings.map((finding) => toText(finding, file, paint, { rulePages, bundle })),
        ...(showAccepted ? file.accepted.map((one) => acceptedText(one, file, paint, bundle)) : []),
      ]
        .map((part) => `${part}\n`)
        .join(''),
    end: (counts) => `${inWords(counts, bundle)}\n`,
  }
}

/** What the terminal shows beside text. */
export interface TextStyle {
  readonly colour: boolean
  /** Address of the page of all rules, to which ids lead; null where links are not shown. */
  readonly rulePages: string | null
  /** The words of another language. */
  readonly bundle?: Bundle | undefined
}

export const plain: TextStyle = { colour: false, rulePages: null }

export const styleOf = ({
  colour,
  links,
  home,
  bundle,
}: Pick<World, 'colour' | 'links' | 'home' | 'bundle'>): TextStyle => ({
  colour,
  bundle,
  rulePages: links ? pathToFileURL(join(home, 'schemas', 'rules.md')).href : null,
})

type Style = 'red' | 'yellow' | 'blue' | 'gray' | 'bold' | 'green'
type Paint = (style: Style, text: string) => string

const styles: Readonly<Record<Severity, Style>> = { error: 'red', warning: 'yellow', information: 'blue', hint: 'gray' }

function toText(
  { rule, severity, message, span, corrections, related }: Finding,
  file: FileReport,
  paint: Paint,
  { rulePages, bundle }: Omit<TextStyle, 'colour'>,
): string {
  const say = sayIn(bundle)
  const { text, starts, path } = file
  const { line } = positionAt(starts, span.start)
  const shown = excerpt(text, starts, line, span)
  const number = String(line + 1)
  const gutter = ' '.repeat(number.length)
  const style = styles[severity]
  const id = rulePages === null ? rule : linked(rule, `${rulePages}#${rule}`)
  const lines = [
    `${paint('bold', `${visible(path)}:${number}:${shown.column}:`)} ${paint(style, severity)} ${id}: ${visible(message)}`,
    `${paint('gray', `  ${number} |`)} ${shown.line}`,
    `${paint('gray', `  ${gutter} |`)} ${paint(style, shown.marker)}`,
    ...corrections
      .slice(0, 1)
      .map((correction) => `  ${gutter} ${paint('green', say`fix:`)} ${visible(fix(correction, bundle))}`),
    ...(related.length > 0
      ? [`  ${gutter} ${paint('gray', say`see:`)} ${visible(places(related, file, bundle))}`]
      : []),
  ]
  return `${lines.join('\n')}\n`
}

function acceptedText(
  { finding, because }: Accepted,
  { starts, path }: FileReport,
  paint: Paint,
  bundle: Bundle | undefined,
): string {
  const say = sayIn(bundle)
  const { line, character } = positionAt(starts, finding.span.start)
  const place = paint('bold', `${visible(path)}:${line + 1}:${character + 1}:`)
  return `${place} ${paint('gray', say`accepted`)} ${finding.rule}: ${visible(finding.message)}\n  ${paint('gray', say`because:`)} ${visible(because)}\n`
}

/** Of a value that is shown. */
const longest = 200

function fix({ pointer, text, why, also }: Correction, bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const others = (also ?? []).map(
    (other) => say`, and ${pathFrom(parentPointer(pointer), other.pointer)}: ${other.text}`,
  )
  const shown = text.length <= longest ? text : `${text.slice(0, longest - 3)}...`
  return `${shown === '' ? say`leave it out` : shown}${others.join('')} (${why})`
}

/** The name of a field beside the other, the whole path of one elsewhere. */
const pathFrom = (parent: string, pointer: string) =>
  (pointer.startsWith(`${parent}/`) ? pointer.slice(parent.length + 1) : pointer.slice(1)).replaceAll('/', '.')

/** Some further places; a line has no room for more. */
const places = (related: Finding['related'], { starts }: FileReport, bundle: Bundle | undefined): string =>
  related
    .slice(0, 3)
    .map(
      ({ path, span, message }) =>
        `${message} (${path ?? sayIn(bundle)`line ${positionAt(starts, span.start).line + 1}`})`,
    )
    .join(', ')
