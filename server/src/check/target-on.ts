import { shapeOf } from '../review/fit.ts'
import type { Target } from '../review/choosing/laid-array.ts'
import type { ResolvedArray, ResolvedSystem, Surface } from '../review/resolved.ts'
import { phrase, type Phrase } from '../wording/phrase.ts'

interface Problem {
  readonly problem: Phrase
}

/** The surfaces of a system that panels can be compared on. */
export const comparableSurfaces = ({ system }: ResolvedSystem): readonly string[] =>
  idsOf(system.surfaces.filter((surface) => shapeOf(surface)))

/** Ids of the arrays that lie on a surface. */
export const arraysOn = (system: ResolvedSystem, id: string): readonly string[] =>
  idsOf(lyingOn(system, (surface) => surface?.id?.value === id).map(({ entry }) => entry))

const lyingOn = ({ arrays }: ResolvedSystem, isMeant: (surface: Surface | undefined) => boolean) =>
  arrays.filter(({ panels }) => panels.some((one) => isMeant(one.surface)))

/** Arrays of which no panel names a surface, or that hold none yet. */
export const unplacedArrays = ({ arrays }: ResolvedSystem): ResolvedSystem['arrays'] =>
  arrays.filter(({ panels }) => panels.every(({ entry }) => !entry.surface))

/** For a surface on which none lies: one that names no surface and is called like it, or of which nothing else can be meant. */
function arrayMeantFor(system: ResolvedSystem, surface: Surface): ResolvedArray | undefined {
  const unplaced = unplacedArrays(system)
  const isLeft = (other: Surface) => lyingOn(system, (one) => one === other).length === 0
  const isMeant = system.arrays.length === 1 || system.system.surfaces.filter(isLeft).length === 1
  return unplaced.length === 1 && isMeant
    ? unplaced[0]
    : unplaced.find(({ entry }) => entry.id?.value === surface.id?.value)
}

/**
 * A surface by its id, with the array that new panels would belong to.
 *
 * @param array  its id; without one it is the only array on the surface
 * @returns  what is wrong, where there is no such place or it could be several
 */
export function targetOn(system: ResolvedSystem, id: string, array?: string): Target | Problem {
  const { surfaces } = system.system
  const surface = surfaces.find((one) => one.id?.value === id)
  if (!surface) return { problem: phrase`there is no surface \`${id}\`; ${thereAre(surfaces, 'surfaces')}` }
  if (!shapeOf(surface)) return { problem: phrase`surface ${id} has no length and width` }
  if (array !== undefined) {
    const named = system.arrays.find(({ entry }) => entry.id?.value === array)
    if (named) return { system, surface, array: named }
    const entries = system.arrays.map(({ entry }) => entry)
    return { problem: phrase`there is no array \`${array}\`; ${thereAre(entries, 'arrays')}` }
  }
  const [only, ...more] = lyingOn(system, (one) => one === surface)
  if (more.length === 0) {
    const own = only ?? arrayMeantFor(system, surface)
    return { system, surface, ...(own && { array: own }) }
  }
  const names = idsOf([only!, ...more].map(({ entry }) => entry)).join(', ')
  return { problem: phrase`several arrays lie on ${id}; name one with --array: ${names}` }
}

/** The same where the first of several arrays will do. */
export function firstTargetOn(system: ResolvedSystem, id: string): Target | null {
  const target = targetOn(system, id, arraysOn(system, id)[0])
  return 'problem' in target ? null : target
}

interface WithId {
  readonly id?: { readonly value: string }
}

const idsOf = (list: readonly WithId[]) => list.flatMap(({ id }) => id?.value ?? [])

function thereAre(list: readonly WithId[], what: 'surfaces' | 'arrays'): Phrase {
  const names = idsOf(list).join(', ')
  if (what === 'arrays')
    return names === '' ? phrase`the system has no arrays with an id` : phrase`the system has the arrays ${names}`
  return names === '' ? phrase`the system has no surfaces with an id` : phrase`the system has the surfaces ${names}`
}
