import { InvalidArgumentError, Option } from 'commander'
import type { Severity } from '../../findings/finding.ts'
import { reading } from '../../records/facts.ts'
import { sheetsBeside } from '../beside.ts'
import { checkAll } from '../check-all.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { reportFolder, type FileReport } from '../file-report.ts'
import { formatGithub, summaryTable } from '../formats/github.ts'
import { formatJson } from '../formats/json.ts'
import { formatSarif } from '../formats/sarif.ts'
import { formatText } from '../formats/text.ts'
import { repositoryOf } from '../git/repository.ts'
import { changesSince } from '../since.ts'
import { staged } from '../staged.ts'
import { tellMistakes } from '../mistakes.ts'
import { fromTop } from '../from-top.ts'
import { writeOutput, writeSummary } from '../output.ts'
import { select, selectText } from '../select.ts'
import { count, reaches } from '../severity.ts'
import type { World } from '../world.ts'
import type { AddCommand } from './command.ts'

interface Options {
  readonly format: 'text' | 'json' | 'sarif' | 'github'
  readonly output?: string
  readonly failOn: Severity
  readonly since?: string
  readonly staged?: true
  readonly stdinFilename?: string
  readonly jobs?: number
  readonly cache: boolean
}

export const addCheck: AddCommand = (program, world, end) => {
  program
    .command('check')
    .description('findings in records: what is wrong, by how much, and what would fix it')
    .argument('[path...]', 'files and folders, or - for standard input; the current folder if none is given')
    .addOption(
      new Option('--format <format>', 'how to print').choices(['text', 'json', 'sarif', 'github']).default('text'),
    )
    .option('-o, --output <file>', 'write the format to a file; the terminal still gets text')
    .addOption(
      new Option('--fail-on <severity>', 'the least severity that makes the exit code 1')
        .choices(['error', 'warning', 'information'])
        .default('error'),
    )
    .option('--since <revision>', 'only what changed since a git revision, and what depends on it')
    .addOption(
      new Option('--staged', 'as the next commit would hold them: what is staged, and what depends on it').conflicts(
        'since',
      ),
    )
    .option('--stdin-filename <path>', 'the name that standard input would have')
    .option('--jobs <n>', 'how many threads; by default as many as pay', wholeNumber)
    .option('--no-cache', 'read every datasheet anew; otherwise what was read is kept, by content')
    .addHelpText(
      'after',
      '\nExamples:\n  wattproof check panels\n  wattproof check --since origin/main --format github',
    )
    .action(async (paths: string[], options: Options) => {
      const files = await checked(world, paths, options)
      await print(world, files, options)
      for (const { path, findings } of files) tellMistakes(world, path, findings)
      const broken = files.find(({ brokenSettings }) => brokenSettings)
      if (broken) throw new CouldNotRun(`${broken.path} can be read only in part, so its settings do not all apply`)
      const unread = files.filter(({ findings }) => findings.some(({ rule }) => rule === reading.notRead.id))
      if (unread.length > 0)
        throw new CouldNotRun(`${unread.map(({ path }) => path).join(', ')}: not read, so the run is not complete`)
      if (files.length === 0) world.err('wattproof: nothing to check\n')
      end(reaches(count(files), options.failOn) ? 1 : 0)
    })
}

async function checked(world: World, paths: readonly string[], options: Options): Promise<readonly FileReport[]> {
  const selection = paths.includes('-')
    ? await fromStdin(world, paths, options)
    : options.staged
      ? await fromIndex(world, paths)
      : await select(world, paths, options.since === undefined ? undefined : since(options.since))
  const { library, targets } = selection
  const settings = [...new Set(targets.flatMap((path) => library.settings(path)?.path ?? []))]
  const broken = settings.filter((path) => !targets.includes(path) && hasErrors(path))
  const all = [...broken, ...targets]
  const sheets = await sheetsBeside(world, library, all, options.cache)
  const reports = await checkAll(world, { ...selection, targets: all, sheets }, options.jobs)
  return [...reports, ...[...selection.closed].map(([path, why]) => reportFolder(path, why, world.cwd))]

  function since(revision: string) {
    return (folder: string) => changesSince(world, folder, revision)
  }
  function hasErrors(path: string) {
    return library.file(path)?.readFindings.some(({ severity }) => severity === 'error')
  }
}

function wholeNumber(text: string): number {
  if (/^[1-9]\d*$/.test(text)) return Number(text)
  throw new InvalidArgumentError('A whole number from 1 is expected.')
}

async function fromStdin(world: World, paths: readonly string[], { stdinFilename, since, staged }: Options) {
  if (1 < paths.length || since !== undefined || staged)
    throw new CouldNotRun('`-` stands alone: no other paths, no --since and no --staged beside it')
  if (!stdinFilename) throw new CouldNotRun('`-` needs --stdin-filename, whose ending tells the kind of record')
  return selectText(world, stdinFilename, await world.stdin())
}

/** Files that are named, as a hook names them, are checked from the index even where they did not change. */
async function fromIndex(world: World, paths: readonly string[]) {
  const { world: indexed, changes } = await staged(world)
  return select(indexed, paths, async () => changes, true)
}

async function print(world: World, files: readonly FileReport[], { format, output }: Options): Promise<void> {
  const top = (await repositoryOf(world, world.cwd)) ?? world.cwd
  const seen = fromTop(files, world.cwd, top)
  const formatted = {
    text: () => formatText(files, false),
    json: () => formatJson(files),
    sarif: () => formatSarif(seen, top),
    github: () => formatGithub(seen),
  }[format]()
  if (output === undefined) {
    world.out(format === 'text' ? formatText(files, world.colour) : formatted)
  } else {
    await writeOutput(world, output, formatted)
    world.out(formatText(files, world.colour))
  }
  const { GITHUB_STEP_SUMMARY: summary } = world.env
  if (format === 'github' && summary) await writeSummary(world, summary, summaryTable(seen))
}
