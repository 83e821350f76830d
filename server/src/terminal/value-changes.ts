import { checkFile } from '../check/check.ts'
import type { Library } from '../library/library.ts'
import { changesOf, shareOf, type Change } from '../values/changes.ts'
import type { Value } from '../values/value.ts'
import { asOf } from './as-of.ts'
import { selectBefore } from './before.ts'
import { shown } from './paths.ts'
import { select } from './select.ts'
import { changesSince } from './since.ts'
import { table } from './tables/table.ts'
import { jsonText, visible } from './visible.ts'
import type { World } from './world.ts'
import type { Bundle } from '../wording/bundle.ts'
import { sayIn } from '../wording/phrase.ts'

/** Prints which derived values differ from those at a revision, of the records that changed and of those that depend on them. */
export async function printChanges(
  world: World,
  paths: readonly string[],
  since: string,
  format: 'text' | 'json' | 'markdown',
): Promise<void> {
  const now = await select(world, paths, { changesIn: (folder) => changesSince(world, folder, since) })
  const before = await selectBefore(await asOf(world, world.cwd, since), paths, now.targets)
  const files = now.targets.flatMap((path) => {
    const changes = changesOf(valuesIn(world, before.library, path), valuesIn(world, now.library, path))
    return changes.length > 0 ? [{ path: shown(world.cwd, path), values: changes }] : []
  })
  if (format === 'json') world.out(jsonText({ version: 1, since, files }))
  else if (files.length === 0) world.err(`wattproof: ${sayIn(world.bundle)`no derived value differs from ${since}`}\n`)
  else {
    const write = format === 'markdown' ? toMarkdown : toText
    world.out(files.map((file) => write(file, headIn(world.bundle))).join('\n'))
  }
}

type Changed = { readonly path: string; readonly values: readonly Change[] }

const valuesIn = (world: World, library: Library, path: string): readonly Value[] =>
  checkFile(library, path, { today: world.today })?.values() ?? []

function headIn(bundle: Bundle | undefined): readonly string[] {
  const say = sayIn(bundle)
  return [say`value`, say`before`, say`now`, say`change`]
}

const rows = (values: readonly Change[]) =>
  values.map((change) => [change.id, change.before.text ?? '-', change.now.text ?? '-', shareOf(change)])

const toText = ({ path, values }: Changed, head: readonly string[]) =>
  `${visible(path)}\n${table([head, ...rows(values)])}`

function toMarkdown({ path, values }: Changed, head: readonly string[]): string {
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell) => visible(cell).replaceAll('|', '\\|')).join(' | ')} |`
  return `**${visible(path)}**\n\n${[line(head), '| --- | --: | --: | --: |', ...rows(values).map(line)].join('\n')}\n`
}
