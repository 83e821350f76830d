import { recordOfPath } from '../records/kinds.ts'
import { folderOf, isWithin } from './paths.ts'
import type { World } from './world.ts'

/** A world whose records are these texts, in place of those on disk below `top`; everything else is as it is. */
export function inPlaceOfDisk(world: World, top: string, texts: ReadonlyMap<string, string>): World {
  const folders = new Set([top])
  for (const path of texts.keys())
    for (let folder = folderOf(path); !folders.has(folder); folder = folderOf(folder)) folders.add(folder)
  const isRecordHere = (path: string) => isWithin(top, path) && recordOfPath(path) !== null
  return {
    ...world,
    known: async (folder) => [...texts.keys()].filter((path) => isWithin(folder, path)),
    readRecord: async (path, within) =>
      isRecordHere(path) ? (texts.get(path) ?? null) : world.readRecord(path, within),
    standing: async (path) => {
      if (isRecordHere(path)) return texts.has(path) ? 'file' : null
      return folders.has(path) ? 'folder' : world.standing(path)
    },
    list: async (folder) =>
      [...texts.keys()]
        .filter((path) => folderOf(path) === folder)
        .map((path) => ({
          name: path.slice(path.lastIndexOf('/') + 1),
          standing: 'file',
        })),
  }
}
