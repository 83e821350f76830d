import { InvalidArgumentError, Option } from 'commander'
import { isDay } from '../../records/dates.ts'
import { formData } from '../../review/page/form-data.ts'
import { pageData } from '../../review/page/page-data.ts'
import { revisionOf } from '../git/revision.ts'
import { writeOutput } from '../output.ts'
import { reviewed, type Reviewed } from '../reviewed.ts'
import type { AddCommand } from './command.ts'
import { sayIn } from '../../wording/phrase.ts'
import { examples } from '../help/examples.ts'
import type { World } from '../world.ts'

interface Options {
  readonly output?: string
  readonly format?: 'html' | 'markdown'
  readonly units: 'metric' | 'us'
  readonly date?: string
  readonly form?: boolean
}

export const addReport: AddCommand = (program, world) => {
  const say = sayIn(world.bundle)
  program
    .command('report')
    .description(
      say`the page for a customer: what is proposed, pictures, parts, and on a second leaf what an installer needs`,
    )
    .argument('<system>', say`a system description`)
    .option('-o, --output <file>', say`write the page to a file; a record is never overwritten`)
    .addOption(
      new Option(
        '--format <format>',
        say`one HTML file with pictures, or text; by the name of the file, else html`,
      ).choices(['html', 'markdown']),
    )
    .addOption(
      new Option('--units <units>', say`lengths, weights and temperatures; cables stay as typed`)
        .choices(['metric', 'us'])
        .default('metric'),
    )
    .option(
      '--form',
      say`the sheet to take along and fill in: what each string should show in the sun and warmth of a day`,
    )
    .option('--date <date>', say`the date on the page, year-month-day; today by default`, (text) => day(text, world))
    .addHelpText(
      'after',
      `\n${say`The page needs no script and no network; a browser prints it on two sheets of A4 or Letter.`}\n${examples(
        world.bundle,
        'report boat.system.yaml -o boat.html',
        'report van.system.yaml -o van.html --units us --date 2026-11-27',
        'report boat.system.yaml --format markdown',
        'report boat.system.yaml --form -o boat-form.html',
      )}`,
    )
    .action(async (path: string, options: Options) => {
      const found = await reviewed(world, path)
      const { review, checked } = found
      const stamp = { date: options.date ?? world.today, revision: await revisionOf(world, pathsOf(found)) }
      const format = options.format ?? (/\.(md|markdown)$/i.test(options.output ?? '') ? 'markdown' : 'html')
      const { page, form } = world.pictures()
      const text = options.form
        ? form(formData(review.system, world.bundle), stamp, options.units, format, world.bundle)
        : page(
            pageData(review.system, review.figures, checked, world.bundle),
            stamp,
            options.units,
            format,
            world.bundle,
          )
      if (options.output === undefined) world.out(text)
      else await writeOutput(world, options.output, text)
    })
}

/** The system and every record that it names, first the system. */
function pathsOf({ library, checked, review: { system } }: Reviewed): readonly string[] {
  const used = [
    ...system.arrays.flatMap(({ panels, controller }) => [...panels.map(({ panel }) => panel), controller]),
    system.battery,
    system.climate,
  ]
  const settings = library.settings(checked.path)?.path
  return [...new Set([checked.path, ...used.flatMap((one) => one?.path ?? []), ...(settings ? [settings] : [])])]
}

function day(text: string, { bundle }: World): string {
  if (!isDay(text)) throw new InvalidArgumentError(sayIn(bundle)`Write a day of the calendar as 2026-11-27.`)
  return text
}
