import { onSurface } from '../compare/on-surface.ts'
import type { TableOptions } from '../tables/options.ts'
import { panelColumns } from '../../check/panel-columns.ts'
import { panelsSideBySide } from '../compare/side-by-side.ts'
import { surfaceColumns } from '../compare/surface-columns.ts'
import { surfaceReport } from '../compare/surface-report.ts'
import { writePanel } from '../compare/write-panel.ts'
import { withTableOptions } from '../tables/with-options.ts'
import { CouldNotRun } from '../could-not-run.ts'
import type { World } from '../world.ts'
import type { AddCommand } from './command.ts'
import { phrase, sayIn } from '../../wording/phrase.ts'
import { examples } from '../help/examples.ts'

export const addCompare: AddCommand = (program, world) => {
  const say = sayIn(world.bundle)
  withTableOptions(
    world,
    program
      .command('compare')
      .description(say`panels side by side, or every panel of the library on one surface of a system`)
      .argument('<path...>', say`panel records and folders of them; with --surface, one system description`),
  )
    .option('--surface <id>', say`the surface of the system that the panels lie on`)
    .option('--array <id>', say`the array that they belong to, where several lie on the surface`)
    .option('--with <panel>', say`set a panel beside those of the library: its file or id`)
    .option('--write <panel>', say`put this panel (its id or file), its count and wiring into the system description`)
    .addHelpText('after', () => `\n${help(world)}`)
    .action(async (paths: readonly string[], options: Options) => world.out(await compared(world, paths, options)))
}

interface Options extends TableOptions {
  readonly surface?: string
  readonly array?: string
  readonly with?: string
  readonly write?: string
}

async function compared(world: World, paths: readonly string[], options: Options): Promise<string> {
  const { surface, array, write } = options
  const [path, ...more] = paths as readonly [string, ...string[]]
  if (surface === undefined) {
    if (array !== undefined || options.with !== undefined || write !== undefined)
      throw new CouldNotRun(phrase`--array, --with and --write need a system and --surface`)
    if (paths.some((one) => /\.system\.(ya?ml|json)$/i.test(one)))
      throw new CouldNotRun(phrase`name a surface of the system with --surface`)
    return panelsSideBySide(world, paths, options)
  }
  if (more.length > 0) throw new CouldNotRun(phrase`--surface takes one system description`)
  const comparison = await onSurface(world, path, {
    surface,
    ...(array !== undefined && { array }),
    ...(options.with !== undefined && { with: options.with }),
    ...(write !== undefined && { write }),
  })
  return write === undefined
    ? surfaceReport(comparison, options, world)
    : writePanel(world, comparison, comparison.write ?? write, options)
}

const keys = (columns: readonly { readonly key: string }[]) => columns.map(({ key }) => key).join(', ')

function help({ bundle }: World): string {
  const say = sayIn(bundle)
  return `${say`Columns: ${keys(panelColumns)}`}
${say`Columns on a surface: ${keys(surfaceColumns)}`}

${say`In CSV, a text that begins with = + - @, a tab, a carriage return or an apostrophe has an apostrophe before it, so that no spreadsheet takes it for a formula.`}
${say`With CSV, the notes below the table go to standard error.`}

${say`The panel of --with is marked: * in text and Markdown, the column beside in CSV, beside in JSON.`}
${examples(
  bundle,
  'compare panels',
  'compare tern-110.panel.yaml heron-100.panel.yaml',
  'compare panels --sort price_per_kwh_warranted --filter "surface = ETFE" --columns efficiency,price_per_kwh_warranted',
  'compare panels --format csv',
  'compare boat.system.yaml --surface coachroof',
  'compare boat.system.yaml --surface coachroof --with offers/new.panel.yaml',
  'compare boat.system.yaml --surface coachroof --write tern-110',
  'compare boat.system.yaml --surface bimini --array bimini --write tern-110 --format json',
)}`
}
