import { checkFile } from '../check/check.ts'
import type { Library } from '../library/library.ts'
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

/** A derived value that a change moves; null on the side where it is not known, or its record not there. */
interface Change {
  readonly id: string
  readonly label: string
  readonly unit: string
  readonly before: Side
  readonly now: Side
}

interface Side {
  readonly value: number | null
  readonly text: string | null
}

/** Prints which derived values differ from those at a revision, of the records that changed and of those that depend on them. */
export async function printChanges(
  world: World,
  paths: readonly string[],
  since: string,
  format: 'text' | 'json' | 'markdown',
): Promise<void> {
  const now = await select(world, paths, (folder) => changesSince(world, folder, since))
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

function changesOf(before: readonly Value[], now: readonly Value[]): readonly Change[] {
  const was = new Map(before.map((value) => [value.id, value]))
  const is = new Map(now.map((value) => [value.id, value]))
  return [...new Set([...was.keys(), ...is.keys()])].flatMap((id) => {
    const [one, other] = [was.get(id), is.get(id)]
    const { label, unit } = (other ?? one)!
    return isSame(one, other) ? [] : [{ id, label, unit, before: side(one), now: side(other) }]
  })
}

/** What is printed alike is the same: the last bits of a simulation are nobody's change. */
const isSame = (a: Value | undefined, b: Value | undefined) =>
  (a?.value ?? null) === (b?.value ?? null) || (a !== undefined && b !== undefined && a.text === b.text)

const side = (value: Value | undefined): Side =>
  value && value.value !== null ? { value: value.value, text: value.text } : { value: null, text: null }

function headIn(bundle: Bundle | undefined): readonly string[] {
  const say = sayIn(bundle)
  return [say`value`, say`before`, say`now`, say`change`]
}

const rows = (values: readonly Change[]) =>
  values.map((change) => [change.id, change.before.text ?? '-', change.now.text ?? '-', shareOf(change)])

function shareOf({ before, now }: Change): string {
  if (before.value === null || now.value === null || before.value === 0) return ''
  const percent = 100 * (now.value / before.value - 1)
  return `${percent < 0 ? '' : '+'}${percent.toFixed(1)} %`
}

const toText = ({ path, values }: Changed, head: readonly string[]) =>
  `${visible(path)}\n${table([head, ...rows(values)])}`

function toMarkdown({ path, values }: Changed, head: readonly string[]): string {
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell) => visible(cell).replaceAll('|', '\\|')).join(' | ')} |`
  return `**${visible(path)}**\n\n${[line(head), '| --- | --: | --: | --: |', ...rows(values).map(line)].join('\n')}\n`
}
