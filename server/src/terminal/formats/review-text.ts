import { celsius } from '../../findings/message.ts'
import { styleText } from 'node:util'
import type { Review } from '../../check/review.ts'
import type { Finding, Severity } from '../../findings/finding.ts'
import { rank } from '../../findings/severities.ts'
import { cautionsIn } from '../../review/cautions.ts'
import { tooLarge } from '../../review/too-large.ts'
import { positionAt } from '../../text/lines.ts'
import type { FileReport } from '../file-report.ts'
import { count, foundInWords } from '../severity.ts'
import { visible } from '../visible.ts'
import { marginsText, totalsText } from './review-head.ts'
import { measuredText } from './review-measured.ts'
import { arraysText, batteryText, folded, monthsText, shortfall } from './review-figures.ts'
import { usesText } from './review-setup.ts'
import { kindInWords } from '../../review/kind-in-words.ts'
import { translated, type Bundle } from '../../wording/bundle.ts'
import { inCatalogue, phrase, sayIn } from '../../wording/phrase.ts'
import type { World } from '../world.ts'

/** A page that a person reads in two minutes: what was found, the figures, what was not checked, and the cautions. */
export function reviewText({ system, figures }: Review, report: FileReport, { colour, bundle }: Printed): string {
  const say = sayIn(bundle)
  const { name, kind } = system.system
  const large = tooLarge(figures, bundle)
  const measured = measuredText(system, bundle)
  return [
    `${visible(name?.text ?? system.id)}\n${kind ? `${kindInWords(kind.value, bundle)}, ` : ''}${visible(report.path)}\n`,
    `${say`In short`}\n${totalsText(system, figures, bundle)}${large ? `${folded(`  ${large}`)}\n` : ''}`,
    `${say`Found: ${foundInWords(count([report]), bundle)}`}\n${found(report, colour, bundle)}`,
    ...(report.accepted.length > 0 ? [`${say`Accepted in the file`}\n${accepted(report, bundle)}`] : []),
    `${say`Limits`}\n${marginsText(system, figures, bundle)}`,
    `${say`Arrays`}\n${arraysText(figures.arrays, bundle)}${folded(`  ${sizedFor(system, bundle)}`)}\n`,
    `${say`Battery`}\n${batteryText(system, figures.battery, bundle)}`,
    ...(system.system.loads.length + system.system.other_sources.length > 0
      ? [`${say`Loads and other sources`}\n${usesText(system, bundle)}`]
      : []),
    ...(figures.months.length > 0
      ? [`${say`A usual year, in Wh a day`}\n${monthsText(figures.months, bundle)}${shortfall(system, bundle)}`]
      : []),
    ...(measured === '' ? [] : [`${say`Measured on the day`}\n${measured}`]),
    `${say`Not checked, which is not the same as in order`}\n${items(figures.not_checked)}`,
    `${say`Cautions`}\n${items(cautionsIn(bundle))}`,
  ].join('\n')
}

/** How a page is printed: in colours, and in which language. */
type Printed = Pick<World, 'colour' | 'bundle'>

/** The most severe first, each with the line that has to change. */
function found({ findings, starts }: FileReport, colour: boolean, bundle: Bundle | undefined): string {
  const bySeverity = [...findings].sort((a, b) => rank(a.severity) - rank(b.severity))
  return bySeverity
    .map((one) => `${folded(`  ${lead(one, starts, colour, bundle)} ${visible(one.message)}`)}\n`)
    .join('')
}

const styles = { error: 'red', warning: 'yellow', information: 'blue', hint: 'gray' } as const
const words: Readonly<Record<Severity, string>> = {
  error: inCatalogue`ERROR`,
  warning: inCatalogue`Warning`,
  information: inCatalogue`Information`,
  hint: inCatalogue`Hint`,
}

function lead(
  { severity, span }: Finding,
  starts: readonly number[],
  colour: boolean,
  bundle: Bundle | undefined,
): string {
  const word = translated(words[severity], bundle)
  const painted = colour ? styleText(styles[severity], word, { validateStream: false }) : word
  return sayIn(bundle)`${painted}, line ${positionAt(starts, span.start).line + 1}:`
}

const accepted = ({ accepted: list }: FileReport, bundle: Bundle | undefined) =>
  items(list.map(({ finding, because }) => visible(sayIn(bundle)`${finding.message} Accepted: ${because}.`)))

const from = {
  system: phrase`from the system`,
  climate: phrase`from the climate`,
  settings: phrase`from the settings`,
  assumed: phrase`ASSUMED`,
}

function sizedFor({ coldest, hottest, system }: Review['system'], bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  return [
    say`Cold: air of ${celsius(coldest.value)} (${from[coldest.from]}). Hot: bright sun in air of ${celsius(hottest.value)} (${from[hottest.from]}). Currents of cables are guide values, to be confirmed against the local code.`,
    ...(system.site.swings?.value ? [say`It swings at anchor: panels count as level.`] : []),
  ].join(' ')
}

const items = (list: readonly string[]) => list.map((line) => `${folded(`  - ${line}`)}\n`).join('')
