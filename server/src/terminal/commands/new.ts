import { Argument } from 'commander'
import { recordOfPath } from '../../records/kinds.ts'
import type { FieldInfo, RecordKind } from '../../records/field-info.ts'
import { schemas } from '../../records/schemas.generated.ts'
import { climateFromLatitude, climateFromWeather, isLatitude } from '../../review/climate-draft.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { mustBeFree, written } from '../new-file.ts'
import { absolute, shown } from '../paths.ts'
import { recordsFromRows } from '../rows/new-from-rows.ts'
import { skeleton } from '../../records/skeleton.ts'
import { whyNotRead } from '../why-not.ts'
import type { World } from '../world.ts'
import type { AddCommand } from './command.ts'
import { draftsFrom } from './new-from-sheet.ts'
import { phrase, phraseInWords, sayIn } from '../../wording/phrase.ts'
import { examples } from '../help/examples.ts'

export const addNew: AddCommand = (program, world, end) => {
  const say = sayIn(world.bundle)
  program
    .command('new')
    .description(say`a commented skeleton record, to be filled in`)
    .addArgument(new Argument('<kind>', say`the kind of record`).choices(Object.keys(schemas)))
    .option('-o, --output <path>', say`write it to a file that is not there yet; for several records, their folder`)
    .option(
      '--from <file>',
      say`a record for each row of a table (CSV); panel: draft it from a datasheet (PDF); climate: gather an EPW hourly weather file by month`,
    )
    .option('--model <name>', say`panel: the column or row of the datasheet`)
    .option('--all', say`panel: one file for each model of the datasheet, in the folder that -o names`)
    .option('--latitude <degrees>', say`climate: guess one from the latitude alone, marked as an assumption`)
    .addHelpText(
      'after',
      examples(
        world.bundle,
        'new panel',
        'new panel -o panels/tern-110.panel.yaml',
        'new climate --from example.epw -o example-bay.climate.yaml',
        'new panel --from panels.csv -o panels',
      ),
    )
    .action(async (kind: RecordKind, options: Options) => {
      const { output } = options
      const info = schemas[kind]
      if (!info) throw new CouldNotRun(phrase`there is no skeleton of ${kind}`)
      if (isTable(options)) return end(await fromTable(world, kind, options))
      if (isSheet(kind, options)) {
        const drafts = await draftsFrom(world, options.from!, options)
        const paths = drafts.flatMap(({ path }) => path ?? [])
        for (const path of paths) await mustBeFree(world, path, kind)
        if (new Set(paths).size < paths.length)
          throw new CouldNotRun(phrase`two models of the sheet would have one file name`)
        for (const { text, path } of drafts) path === null ? world.out(text) : await written(world, path, text)
        return
      }
      const text = await recordText(world, kind, info, options)
      if (output === undefined) return world.out(text)
      const path = absolute(world.cwd, output)
      await mustBeFree(world, path, kind)
      await written(world, path, text)
    })
}

const isTable = ({ from }: Options): boolean => from !== undefined && /\.[ct]sv$/i.test(from)

/** A record for each row. Where any has an error or a warning the exit code is that of `check`. */
async function fromTable(world: World, kind: RecordKind, { from, output, model, all, latitude }: Options) {
  if (model !== undefined || all || latitude !== undefined)
    throw new CouldNotRun(
      phrase`every row of a table becomes a record: --model, --all and --latitude are for other sources`,
    )
  if (output !== undefined && recordOfPath(output))
    throw new CouldNotRun(phrase`a table makes several records: name their folder with -o`)
  const { records, notes, report } = await recordsFromRows(world, kind, from!, output)
  for (const { path } of records) await mustBeFree(world, path, kind)
  for (const { path, text } of records) await written(world, path, text)
  const say = sayIn(world.bundle)
  for (const note of notes) world.err(`wattproof: ${from}: ${phraseInWords(note, world.bundle)}\n`)
  world.out(report.map((line) => `${line}\n`).join(''))
  const folder = shown(world.cwd, absolute(world.cwd, output ?? '.'))
  const wrote =
    records.length === 1
      ? say`wrote 1 ${kind} record to ${folder}`
      : say`wrote ${records.length} ${kind} records to ${folder}`
  world.err(`wattproof: ${wrote}\n`)
  const isBad = ({ severity }: { readonly severity: string }) => severity === 'error' || severity === 'warning'
  return records.some(({ findings }) => findings.some(isBad)) ? 1 : 0
}

/** A panel from a PDF, recognised by its suffix. */
function isSheet(kind: RecordKind, { from, model, all }: Options): boolean {
  if (kind === 'panel' && from !== undefined && /\.pdf$/i.test(from)) return true
  if (model !== undefined || all)
    throw new CouldNotRun(phrase`--model and --all choose from a datasheet: \`new panel --from SHEET.pdf\``)
  return false
}

interface Options {
  readonly output?: string
  readonly from?: string
  readonly latitude?: string
  readonly model?: string
  readonly all?: boolean
}

async function recordText(
  world: World,
  kind: RecordKind,
  info: FieldInfo,
  { from, latitude }: Options,
): Promise<string> {
  if (from === undefined && latitude === undefined) return skeleton(info, new Map(), world.bundle)
  if (kind !== 'climate')
    throw new CouldNotRun(
      phrase`--from reads a datasheet (.pdf) for a panel or weather for a climate record, and --latitude makes a climate record`,
    )
  if (from !== undefined && latitude !== undefined) throw new CouldNotRun(phrase`give --from or --latitude, not both`)
  return from === undefined ? assumed(latitude ?? '', world) : gathered(world, from)
}

async function gathered(world: World, from: string): Promise<string> {
  const text = await world.read(absolute(world.cwd, from)).catch((error: NodeJS.ErrnoException) => {
    throw new CouldNotRun(phrase`${from} cannot be read: ${whyNotRead(error)}`)
  })
  const climate = climateFromWeather(from, text, world.bundle)
  if ('problem' in climate) throw new CouldNotRun(climate.problem)
  return climate.text
}

function assumed(latitude: string, { bundle }: World): string {
  if (!isLatitude(latitude))
    throw new CouldNotRun(
      phrase`--latitude ${latitude}: a number of degrees from -66 to 66 is expected, south negative`,
    )
  return climateFromLatitude(Number(latitude), bundle)
}
