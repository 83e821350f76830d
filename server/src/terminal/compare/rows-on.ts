import { candidateAt, controllersOf, ownController } from '../../check/surface-comparison.ts'
import type { Library } from '../../library/library.ts'
import { rowOf } from '../../review/choosing/compare-on-surface.ts'
import type { SurfaceRow } from '../../review/choosing/row.ts'
import { libraryOf } from '../load.ts'
import type { SurfaceShare } from '../share.ts'
import type { World } from '../world.ts'
import { placeIn } from './place-in.ts'

/** The rows of many panels on a surface, in several threads where that pays; in any order. */
export async function rowsOn(world: World, library: Library, all: SurfaceShare): Promise<readonly SurfaceRow[]> {
  const threads = Math.min(world.processors, Math.floor(all.panels.length / worthwhile))
  if (threads <= 1) return rowsIn(library, all)
  const [own, ...others] = Array.from({ length: threads }, (_, i): SurfaceShare => {
    // each thread has some of every part of the list, where panels that are alike stand together
    const panels = all.panels.filter((_, n) => n % threads === i)
    const left = new Set(all.panels.filter((_, n) => n % threads !== i))
    return { ...all, panels, texts: new Map([...all.texts].filter(([path]) => !left.has(path))) }
  })
  const elsewhere = others.map((share) => world.inThread<readonly SurfaceRow[]>(share))
  return [rowsIn(library, own!), ...(await Promise.all(elsewhere))].flat()
}

/** Panels for each thread below which starting it costs more than it saves; measured. */
const worthwhile = 100

/** What a thread does. */
export const rowsOfShare = (share: SurfaceShare): readonly SurfaceRow[] => rowsIn(libraryOf(share.texts), share)

function rowsIn(library: Library, share: SurfaceShare): readonly SurfaceRow[] {
  const { place } = placeIn(library, share)
  const [own, controllers] = [ownController(place.array), controllersOf(library, share.system)]
  return share.panels
    .flatMap((path) => candidateAt(library, path) ?? [])
    .map((candidate) => rowOf(place, candidate, own, controllers))
}
