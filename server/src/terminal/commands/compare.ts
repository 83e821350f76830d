import { Option } from 'commander'
import { panelsSideBySide } from '../compare/side-by-side.ts'
import type { TableOptions } from '../compare/options.ts'
import { panelColumns } from '../compare/panel-columns.ts'
import type { AddCommand } from './command.ts'

export const addCompare: AddCommand = (program, world) => {
  program
    .command('compare')
    .description('panels side by side: efficiency, hot power, weight, price, warranty')
    .argument('<path...>', 'panel records and folders of them')
    .addOption(
      new Option('--format <format>', 'how to print').choices(['text', 'json', 'csv', 'markdown']).default('text'),
    )
    .option('--sort <column>', 'best first by one column; what is not known comes last')
    .option(
      '--filter <condition>',
      'only rows that meet it, such as "efficiency >= 20"; can be repeated',
      (one: string, before: readonly string[]) => [...before, one],
      [] as readonly string[],
    )
    .option('--columns <names>', 'these columns only, separated by commas')
    .addHelpText('after', () => `\n${help}`)
    .action(async (paths: readonly string[], options: TableOptions) =>
      world.out(await panelsSideBySide(world, paths, options)),
    )
}

const help = `Columns: ${panelColumns.map(({ key }) => key).join(', ')}

Examples:
  wattproof compare panels
  wattproof compare tern-110.panel.yaml heron-100.panel.yaml
  wattproof compare panels --sort price_per_kwh_warranted --filter "surface = ETFE" --columns efficiency,price_per_kwh_warranted
  wattproof compare panels --format csv`
