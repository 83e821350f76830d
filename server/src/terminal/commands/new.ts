import { Argument } from 'commander'
import { recordOfPath } from '../../records/kinds.ts'
import type { RecordKind } from '../../records/field-info.ts'
import { schemas } from '../../records/schemas.generated.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { absolute } from '../paths.ts'
import { skeleton } from '../../records/skeleton.ts'
import type { AddCommand } from './command.ts'

export const addNew: AddCommand = (program, world) => {
  program
    .command('new')
    .description('a commented skeleton record, to be filled in')
    .addArgument(new Argument('<kind>', 'the kind of record').choices(Object.keys(schemas)))
    .option('-o, --output <file>', 'write it to a file that is not there yet')
    .addHelpText('after', '\nExamples:\n  wattproof new panel\n  wattproof new panel -o panels/tern-110.panel.yaml')
    .action(async (kind: RecordKind, { output }: { output?: string }) => {
      const info = schemas[kind]
      if (!info) throw new CouldNotRun(`there is no skeleton of ${kind}`)
      if (output === undefined) return world.out(skeleton(info))
      const path = absolute(world.cwd, output)
      const ending = kind === 'library' ? 'wattproof.yaml' : `.${kind}.yaml`
      if (recordOfPath(path)?.kind !== kind)
        throw new CouldNotRun(`\`${output}\` would not be read as ${kind}: its name must end in ${ending}`)
      if (await world.standing(path)) throw new CouldNotRun(`\`${output}\` is there already and stays as it is`)
      await world.write(path, skeleton(info)).catch((error: NodeJS.ErrnoException) => {
        throw new CouldNotRun(`${output} cannot be written (${error.code})`)
      })
    })
}
