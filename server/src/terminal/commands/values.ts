import { Option } from 'commander'
import { checkFile } from '../../check/check.ts'
import { reading } from '../../records/facts.ts'
import type { Value } from '../../values/value.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { tellMistakes } from '../mistakes.ts'
import { absolute } from '../paths.ts'
import { select } from '../select.ts'
import { jsonText } from '../visible.ts'
import { table } from '../table.ts'
import type { AddCommand } from './command.ts'

export const addValues: AddCommand = (program, world) => {
  program
    .command('values')
    .description('the derived values of a record, with formula and inputs')
    .argument('<file>', 'a panel record or a system description')
    .addOption(new Option('--format <format>', 'how to print').choices(['text', 'json']).default('text'))
    .addHelpText(
      'after',
      '\nExamples:\n  wattproof values tern-110.panel.yaml\n  wattproof values tern-110.panel.yaml --format json',
    )
    .action(async (path: string, { format }: { format: 'text' | 'json' }) => {
      const full = absolute(world.cwd, path)
      if ((await world.standing(full)) === 'folder') throw new CouldNotRun(`\`${path}\` is a folder; name one record`)
      const { library } = await select(world, [path])
      const file = library.file(full)
      if (file?.unread) throw new CouldNotRun(`\`${path}\` was not read: ${file.unread.because}`)
      const checked = checkFile(library, full, world)
      const mistake = checked?.findings.find(({ rule }) => rule === reading.internal.id)
      if (checked && mistake) {
        tellMistakes(world, path, [mistake])
        throw new CouldNotRun(mistake.message)
      }
      const values = checked?.values() ?? []
      if (format === 'json') world.out(toJson(values))
      else if (values.length) world.out(toText(values))
      else world.err(`wattproof: ${path} has no derived values; panel records and systems do\n`)
    })
}

/** In SI units, `inputs` too. */
function toJson(values: readonly Value[]): string {
  const shown = values.map(({ id, label, value, unit, text, formula, inputs, missing, source, uncertainty }) => {
    return { id, label, value, unit, text, formula, inputs, missing, source, uncertainty }
  })
  return jsonText({ version: 1, values: shown })
}

function toText(values: readonly Value[]): string {
  const rows = values.map(({ id, value, text, formula, inputs, missing }) =>
    value === null
      ? [id, 'not known', formula, `needs ${missing.join(', ')}`]
      : [id, text, formula, inputs.map((input) => `${input.name} ${input.text}`).join(', ')],
  )
  return table([['value', 'result', 'formula', 'from'], ...rows])
}
