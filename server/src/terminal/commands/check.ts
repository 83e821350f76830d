import { InvalidArgumentError, Option } from 'commander'
import type { Severity } from '../../findings/finding.ts'
import { reading } from '../../records/facts.ts'
import { sheetsBeside } from '../beside.ts'
import { asOf } from '../as-of.ts'
import { selectBefore } from '../before.ts'
import { checkAll, type Work } from '../check-all.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { reportFolder, type FileReport } from '../file-report.ts'
import { formatGithub, summaryTable } from '../formats/github.ts'
import { formatJson } from '../formats/json.ts'
import { formatJunit } from '../formats/junit.ts'
import { formatSarif } from '../formats/sarif.ts'
import { formatText, plain, styleOf } from '../formats/text.ts'
import { repositoryOf } from '../git/repository.ts'
import { changesSince } from '../since.ts'
import { excludedBy, expanded } from '../patterns.ts'
import { fixedIn } from '../fixed-in.ts'
import { newOnly } from '../new-only.ts'
import { staged } from '../staged.ts'
import { reportMistakes } from '../mistakes.ts'
import { fromTop } from '../from-top.ts'
import { writeOutput, writeSummary } from '../output.ts'
import { select, selectText, type Selection } from '../select.ts'
import { count, reaches } from '../severity.ts'
import type { World } from '../world.ts'
import type { AddCommand } from './command.ts'
import { phrase, sayIn } from '../../wording/phrase.ts'
import { examples } from '../help/examples.ts'

interface Options {
  readonly format: 'text' | 'json' | 'sarif' | 'github' | 'junit'
  readonly output?: string
  readonly failOn: Severity
  readonly since?: string
  readonly staged?: true
  readonly stdinFilename?: string
  readonly jobs?: number
  readonly cache: boolean
  readonly new?: true
  readonly fix?: true
  readonly diff?: true
  readonly showAccepted?: true
  readonly quiet?: true
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
    .option('--jobs <n>', say`how many threads; by default as many as pay`, (text) => wholeNumber(text, world))
    .option('--no-cache', say`read every datasheet anew; otherwise what was read is kept, by content`)
    .addHelpText(
      'after',
      examples(world.bundle, 'check panels', 'check --since origin/main --new --format github', 'check --diff'),
    )
    .action(async (paths: string[], options: Options) => {
      const work = await selected(world, await expanded(world, paths), options)
      if (options.fix || options.diff) {
        const fixed = await fixedIn(world, work, options)
        if (options.diff) return end(fixed > 0 ? 1 : 0)
      }
      const files = await reported(world, work, options)
      await print(world, files, options)
      for (const { path, findings } of files) reportMistakes(world, path, findings)
      const broken = files.find(({ brokenSettings }) => brokenSettings)
      if (broken)
        throw new CouldNotRun(phrase`${broken.path} can be read only in part, so its settings do not all apply`)
      const unread = files.filter(({ findings }) => findings.some(({ rule }) => rule === reading.notRead.id))
      if (unread.length > 0)
        throw new CouldNotRun(
          phrase`${unread.map(({ path }) => path).join(', ')}: not read, so the run is not complete`,
        )
      if (files.length === 0) world.err(`wattproof: ${say`nothing to check`}\n`)
      end(reaches(count(files), options.failOn) ? 1 : 0)
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
  const selection = named.includes('-')
    ? await fromStdin(world, named, options)
    : options.staged
      ? await fromIndex(world, named)
      : await select(world, named, since === undefined ? undefined : (folder) => changesSince(world, folder, since))
  const isExcluded = excludedBy(world.cwd, options.exclude)
  const { library } = selection
  const targets = selection.targets.filter((path) => !isExcluded(path))
  const settings = [...new Set(targets.flatMap((path) => library.settings(path)?.path ?? []))]
  const broken = settings.filter((path) => !targets.includes(path) && hasErrors(path))
  const all = [...broken, ...targets]
  const sheets = await sheetsBeside(world, library, all, options.cache)
  return { ...selection, named, targets: all, sheets }

  function hasErrors(path: string) {
    return library.file(path)?.readFindings.some(({ severity }) => severity === 'error')
  }
}

async function reported(world: World, work: Selected, options: Options): Promise<readonly FileReport[]> {
  // threads read the texts anew, which a fix has changed
  const reports = await checkAll(world, work, options.fix ? 1 : options.jobs)
  const closed = [...work.closed].map(([path, why]) => reportFolder(path, why, world.cwd))
  if (!options.new) return [...reports, ...closed]
  const before = await asOf(world, world.cwd, options.since)
  const was = await selectBefore(before, work.named, work.targets)
  return [...newOnly(reports, await checkAll(before, { ...was, sheets: work.sheets }, options.jobs)), ...closed]
}

function wholeNumber(text: string, world: World): number {
  if (/^[1-9]\d*$/.test(text)) return Number(text)
  throw new InvalidArgumentError(sayIn(world.bundle)`A whole number from 1 is expected.`)
}

const collected = (one: string, before: readonly string[]) => [...before, one]

async function fromStdin(world: World, paths: readonly string[], options: Options) {
  const { stdinFilename, since, staged, fix } = options
  if (1 < paths.length || since !== undefined || staged || fix)
    throw new CouldNotRun(phrase`\`-\` stands alone: no other paths, no --since, no --staged and no --fix beside it`)
  if (!stdinFilename)
    throw new CouldNotRun(phrase`\`-\` needs --stdin-filename, whose ending says what kind of record it is`)
  return selectText(world, stdinFilename, await world.stdin())
}

/** Files that are named, as a hook names them, are checked from the index even where they did not change. */
async function fromIndex(world: World, paths: readonly string[]) {
  const { world: indexed, changes } = await staged(world)
  return select(indexed, paths, async () => changes, true)
}

async function print(world: World, files: readonly FileReport[], options: Options): Promise<void> {
  const { format, output, showAccepted = false, quiet = false } = options
  const out = (text: string) => (quiet ? undefined : world.out(text))
  const top = (await repositoryOf(world, world.cwd)) ?? world.cwd
  const seen = fromTop(files, world.cwd, top)
  const formatted = {
    text: () => formatText(files, { ...plain, bundle: world.bundle }, showAccepted),
    json: () => formatJson(files, showAccepted),
    sarif: () => formatSarif(seen, top),
    github: () => formatGithub(seen, world.bundle),
    junit: () => formatJunit(files, options.failOn),
  }[format]()
  if (output === undefined) {
    out(format === 'text' ? formatText(files, styleOf(world), showAccepted) : formatted)
  } else {
    await writeOutput(world, output, formatted)
    out(formatText(files, styleOf(world), showAccepted))
  }
  const { GITHUB_STEP_SUMMARY: summary } = world.env
  if (format === 'github' && summary) await writeSummary(world, summary, summaryTable(seen, world.bundle))
}
