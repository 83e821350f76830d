import { stemOf } from '../../records/stem.ts'
import { draftOf } from '../../sheets/draft.ts'
import { indexOf } from '../../sheets/models.ts'
import type { SheetModel } from '../../sheets/sheet.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { absolute, folderOf, shown } from '../paths.ts'
import type { World } from '../world.ts'
import { named, phrase } from '../../wording/phrase.ts'

interface Options {
  readonly model?: string
  readonly all?: boolean
  readonly output?: string
}

/** The drafts that a sheet gives, each with the file it goes to; null for standard output. */
export async function draftsFrom(
  world: World,
  from: string,
  { model, all, output }: Options,
): Promise<readonly { readonly text: string; readonly path: string | null }[]> {
  const path = absolute(world.cwd, from)
  const sheets = world.sheets(true)
  const read = await sheets.at(path)
  sheets.end()
  if (!read) throw new CouldNotRun(phrase`there is no file \`${from}\``)
  const { sheet, sha256 } = read
  if (sheet.problem !== null) throw new CouldNotRun(phrase`${from} cannot be read: ${named(sheet.problem)}`)
  if (all && output === undefined)
    throw new CouldNotRun(phrase`--all writes one file a model: name their folder with -o`)
  const chosen = all ? sheet.models : [one(sheet.models, model, from)]
  const folder =
    output === undefined ? world.cwd : all ? absolute(world.cwd, output) : folderOf(absolute(world.cwd, output))
  return chosen.map((one) => ({
    text: draftOf(one, {
      source: shown(folder, path),
      sha256,
      several: sheet.models.length > 1,
      today: world.today,
      bundle: world.bundle,
    }),
    path: output === undefined ? null : all ? `${folder}/${stemOf(one.name)}.panel.yaml` : absolute(world.cwd, output),
  }))
}

function one(models: readonly SheetModel[], name: string | undefined, from: string): SheetModel {
  const names = models.map((one) => one.name)
  if (name === undefined && models.length === 1) return models[0]!
  const at = name === undefined ? -1 : indexOf(names, name)
  if (at >= 0) return models[at]!
  if (name !== undefined && models.length === 1) return models[0]!
  throw new CouldNotRun(
    name === undefined
      ? phrase`${from} has ${models.length} models; name one with --model: ${names.join(', ')}`
      : phrase`${from} has no model ${name}; name one with --model: ${names.join(', ')}`,
  )
}
