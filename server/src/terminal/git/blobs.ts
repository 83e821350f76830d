import { recordOfPath } from '../../records/kinds.ts'
import { CouldNotRun } from '../could-not-run.ts'
import type { World } from '../world.ts'
import { phrase } from '../../wording/phrase.ts'

/** Records in a commit or the index: absolute path to the name of its contents in git. */
export type Blobs = ReadonlyMap<string, string>

/** The records of a commit. */
export async function committed(world: World, top: string, commit: string): Promise<Blobs> {
  const output = await world.git(top, ['ls-tree', '-r', '-z', '--full-tree', commit])
  if (output?.code !== 0) throw new CouldNotRun(phrase`git cannot list ${commit}`)
  return blobs(top, output.out.toString(), /^(\d+) blob ([0-9a-f]+)\t([^]+)$/)
}

/** The records of the index. */
export async function inIndex(world: World, top: string, indexFile?: string): Promise<Blobs> {
  const output = await world.git(top, ['ls-files', '-s', '-z'], { indexFile })
  if (output?.code !== 0) throw new CouldNotRun(phrase`git cannot list the index of ${top}`)
  return blobs(top, output.out.toString(), /^(\d+) ([0-9a-f]+) \d\t([^]+)$/)
}

/** The contents of blobs, as git keeps them: no filter is run. */
export async function contents(world: World, top: string, names: readonly string[]): Promise<readonly string[]> {
  const input = names.map((name) => `${name}\n`).join('')
  const printed = await world.git(top, ['cat-file', '--batch'], { input })
  if (printed?.code !== 0) throw new CouldNotRun(phrase`git cannot read the index of ${top}`)
  const texts: string[] = []
  for (let at = 0; texts.length < names.length;) {
    const lineEnd = printed.out.indexOf('\n', at)
    const size = Number(/ blob (\d+)$/.exec(printed.out.toString('latin1', at, lineEnd))?.[1] ?? NaN)
    if (Number.isNaN(size)) throw new CouldNotRun(phrase`git lacks the contents of ${names[texts.length]} in ${top}`)
    texts.push(printed.out.toString('utf8', lineEnd + 1, lineEnd + 1 + size))
    at = lineEnd + 1 + size + 1
  }
  return texts
}

/** Links (mode 120000) and submodules (160000) are left out: only files are records. */
function blobs(top: string, listed: string, entry: RegExp): Blobs {
  const found = listed.split('\0').flatMap((line) => {
    const [, mode, name, path] = entry.exec(line) ?? []
    return mode?.startsWith('100') && name && path && recordOfPath(path) ? [[`${top}/${path}`, name] as const] : []
  })
  return new Map(found)
}
