import { Option } from 'commander'
import type { ReadFile } from '../../records/read-file.ts'
import { hold, type Held } from '../../sheets/hold.ts'
import type { Sheet } from '../../sheets/sheet.ts'
import { sheetsBeside } from '../beside.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { absolute } from '../paths.ts'
import { select } from '../select.ts'
import { table } from '../tables/table.ts'
import type { AddCommand } from './command.ts'
import { translated, type Bundle } from '../../wording/bundle.ts'
import { inCatalogue, named, phrase, sayIn } from '../../wording/phrase.ts'
import { examples } from '../help/examples.ts'

export const addSheet: AddCommand = (program, world) => {
  const say = sayIn(world.bundle)
  program
    .command('sheet')
    .description(say`a panel record compared with its datasheet, value by value`)
    .argument('<record>', say`a panel record whose datasheet.source is a PDF`)
    .addOption(new Option('--format <format>', say`how to print`).choices(['text', 'json']).default('text'))
    .option('--no-cache', say`read the datasheet anew`)
    .addHelpText(
      'after',
      `\n${say`Sheets of panels only; those of controllers and batteries are not read.`}\n${examples(world.bundle, 'sheet panels/tern-110.panel.yaml')}`,
    )
    .action(async (path: string, { format, cache }: { format: 'text' | 'json'; cache: boolean }) => {
      const full = absolute(world.cwd, path)
      const { library } = await select(world, [path])
      const file = library.file(full)
      if (file?.kind !== 'panel')
        throw new CouldNotRun(phrase`\`${path}\` is no panel record; only sheets of panels are read`)
      const sheets = sheetsBeside(world, library, cache)
      const beside = await sheets.at(full)
      sheets.end()
      if (!beside) throw new CouldNotRun(phrase`\`${path}\` names no PDF as datasheet.source`)
      if (beside.state === 'missing') throw new CouldNotRun(phrase`${beside.source} is not there`)
      const { sheet, source } = beside
      if (sheet.problem !== null) throw new CouldNotRun(phrase`${source} cannot be read: ${named(sheet.problem)}`)
      const held = hold(file as ReadFile<'panel'>, sheet)
      world.out(format === 'json' ? toJson(source, sheet, held) : toText(source, held, world.bundle))
    })
}

function toJson(source: string, { pages }: Sheet, { model, fields, unused }: Held): string {
  const document = {
    version: 1,
    source,
    pages,
    model,
    fields: fields.map(({ field, status, reading }) => ({
      field: field.pointer,
      typed: field.text,
      status,
      page: reading?.page ?? null,
      text: reading?.text ?? null,
      label: reading?.label ?? null,
      box: reading?.box ?? null,
    })),
    unused: unused.map(({ field, page, text, label }) => ({ field, page, text, label })),
  }
  return `${JSON.stringify(document, null, 2)}\n`
}

function toText(source: string, { model, fields, unused }: Held, bundle: Bundle | undefined): string {
  const say = sayIn(bundle)
  const rows = fields.map(({ field, status, reading, text }) => [
    field.pointer,
    field.text,
    status === 'other' ? say`other: ${text ?? ''}` : translated(statuses[status], bundle),
    reading ? say`page ${reading.page}: ${shortened(reading.label)} ${shortened(reading.text)}` : '',
  ])
  const more = unused.map(({ field, typed, page, label }) => [
    field,
    '',
    say`not typed: ${typed}`,
    say`page ${page}: ${shortened(label)}`,
  ])
  const head = `${source}${model ? `, ${model}` : ''}\n`
  return head + table([[say`field`, say`typed`, say`the sheet`, say`where`], ...rows, ...more])
}

const statuses = { same: inCatalogue`same`, 'not found': inCatalogue`not found` } as const

const shortened = (text: string) => (text.length > 50 ? `${text.slice(0, 49)}…` : text)
