import { InvalidArgumentError, Option } from 'commander'
import { sheetsBeside } from '../beside.ts'
import { asOf } from '../as-of.ts'
import { selectBefore } from '../before.ts'
import { checkAll, type Take, type Work } from '../check-all.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { reportFolder } from '../file-report.ts'
import { changesSince } from '../since.ts'
import { readOnly, type Pack } from '../kept/pack.ts'
import { excludedBy, expanded } from '../patterns.ts'
import { fixedIn } from '../fixed-in.ts'
import { fingerprintsOf, newOnly } from '../new-only.ts'
import { createOutcome } from '../outcome.ts'
import { createPrinting, type Printing, type PrintingOptions } from '../printing.ts'
import { staged } from '../staged.ts'
import { select, selectText, type Selection } from '../select.ts'
import { createCount, reaches } from '../severity.ts'
import type { World } from '../world.ts'
import type { AddCommand } from './command.ts'
import { phrase, sayIn } from '../../wording/phrase.ts'
import { examples } from '../help/examples.ts'

interface Options extends PrintingOptions {
  readonly since?: string
  readonly staged?: true
  readonly stdinFilename?: string
  readonly jobs: number
  readonly cache: boolean
  readonly new?: true
  readonly fix?: true
  readonly diff?: true
  readonly exclude: readonly string[]
}

export const addCheck: AddCommand = (program, world, end) => {
  const say = sayIn(world.bundle)
  program
    .command('check')
    .description(say`findings in records: what is wrong, by how much, and what would fix it`)
    .argument(
      '[path...]',
      say`files, folders and patterns such as panels/*.yaml, or - for standard input; the current folder if none is given`,
    )
    .addOption(
      new Option('--format <format>', say`how to print`)
        .choices(['text', 'json', 'sarif', 'github', 'junit'])
        .default('text'),
    )
    .option('-o, --output <file>', say`write the format to a file; the terminal still gets text`)
    .addOption(
      new Option('--fail-on <severity>', say`the least severity that makes the exit code 1`)
        .choices(['error', 'warning', 'information'])
        .default('error'),
    )
    .option('--since <revision>', say`only what changed since a git revision, and what depends on it`)
    .addOption(
      new Option('--staged', say`as the next commit would hold them: what is staged, and what depends on it`).conflicts(
        'since',
      ),
    )
    .option('--new', say`with --since or --staged: only what was not found there before`)
    .addOption(
      new Option('--fix', say`write every fix that keeps the meaning into the records`).conflicts(['staged', 'diff']),
    )
    .addOption(
      new Option(
        '--diff',
        say`print those fixes as a patch and write nothing; ends with 1 where there are some`,
      ).conflicts('staged'),
    )
    .option('--show-accepted', say`also what a person accepted, with the reason`)
    .option('--exclude <pattern>', say`leave out what matches; may be given several times`, collected, [])
    .option('-q, --quiet', say`print nothing on standard output: the exit code says it, and -o still writes`)
    .option('--stdin-filename <path>', say`the name that standard input would have`)
    .option('--jobs <n>', say`how many threads; one unless you say otherwise`, (text) => wholeNumber(text, world), 1)
    .option(
      '--no-cache',
      say`check every record and read every datasheet again; otherwise what was found and read is kept, by content`,
    )
    .addHelpText(
      'after',
      examples(world.bundle, 'check panels', 'check --since origin/main --new --format github', 'check --diff'),
    )
    .action(async (paths: string[], options: Options) => {
      const work = await selected(world, await expanded(world, paths), options)
      const applied = options.fix || options.diff ? await fixedIn(world, work, options) : null
      if (applied && options.diff) return end(applied.fixed > 0 ? 1 : 0)
      const printing = await createPrinting(world, options)
      const { counts, verdict } = await reported(world, work, options, printing)
      await printing.end(counts)
      verdict()
      end(applied && applied.unwritten > 0 ? 2 : reaches(counts, options.failOn) ? 1 : 0)
    })
}

/** What is to be checked, and what a person named. */
interface Selected extends Work {
  readonly named: readonly string[]
  readonly closed: Selection['closed']
}

async function selected(world: World, named: readonly string[], options: Options): Promise<Selected> {
  const { since } = options
  if (options.new && since === undefined && !options.staged)
    throw new CouldNotRun(phrase`--new needs --since or --staged: new since when?`)
  const { cache } = options
  const isPiped = named.includes('-')
  const kept = cache && options.jobs === 1 ? world.pack() : null
  // a text that is piped in is another one each time
  const pack = kept && isPiped ? readOnly(kept) : kept
  const selection = isPiped
    ? await fromStdin(world, named, options, pack)
    : options.staged
      ? await fromIndex(world, named, pack)
      : await select(world, named, {
          changesIn: since === undefined ? undefined : (folder) => changesSince(world, folder, since),
          pack,
        })
  const isExcluded = excludedBy(world.cwd, options.exclude)
  const { library } = selection
  const targets = selection.targets.filter((path) => !isExcluded(path))
  const settings = [...new Set(targets.flatMap((path) => library.settings(path)?.path ?? []))]
  const broken = settings.filter((path) => !targets.includes(path) && hasErrors(path))
  const all = [...broken, ...targets]
  return { ...selection, named, targets: all, sheets: sheetsBeside(world, library, cache), cache, pack }

  function hasErrors(path: string) {
    return library
      .file(path)
      ?.readFindings()
      .some(({ severity }) => severity === 'error')
  }
}

async function reported(world: World, work: Selected, options: Options, printing: Printing) {
  const known = options.new ? await foundBefore(world, work, options) : null
  const { counts, file: counted } = createCount()
  const outcome = createOutcome(world)
  const take: Take = (report) => {
    const seen = known ? newOnly(report, known) : report
    counted(seen)
    outcome.file(seen)
    printing.file(seen)
  }
  // threads read the texts anew, which a fix has changed
  await checkAll(world, work, options.fix ? 1 : options.jobs, take)
  work.sheets.end()
  work.pack?.end()
  for (const [path, why] of work.closed) take(reportFolder(path, why, world.cwd))
  return { counts, verdict: outcome.verdict }
}

/** The fingerprints of what was found in the same records as they were. */
async function foundBefore(world: World, work: Selected, options: Options): Promise<ReadonlySet<string>> {
  const before = await asOf(world, world.cwd, options.since)
  const was = await selectBefore(before, work.named, work.targets)
  const known = new Set<string>()
  await checkAll(before, { ...work, ...was }, options.jobs, (report) => {
    for (const one of fingerprintsOf(report)) known.add(one)
  })
  return known
}

function wholeNumber(text: string, world: World): number {
  if (/^[1-9]\d*$/.test(text)) return Number(text)
  throw new InvalidArgumentError(sayIn(world.bundle)`A whole number from 1 is expected.`)
}

const collected = (one: string, before: readonly string[]) => [...before, one]

async function fromStdin(world: World, paths: readonly string[], options: Options, pack: Pack | null) {
  const { stdinFilename, since, staged, fix } = options
  if (1 < paths.length || since !== undefined || staged || fix)
    throw new CouldNotRun(phrase`\`-\` stands alone: no other paths, no --since, no --staged and no --fix beside it`)
  if (!stdinFilename)
    throw new CouldNotRun(phrase`\`-\` needs --stdin-filename, whose ending says what kind of record it is`)
  return selectText(world, stdinFilename, await world.stdin(), pack)
}

/** Files that are named, as a hook names them, are checked from the index even where they did not change. */
async function fromIndex(world: World, paths: readonly string[], pack: Pack | null) {
  const { world: indexed, changes } = await staged(world)
  return select(indexed, paths, { changesIn: async () => changes, alsoNamed: true, pack })
}
