import type { Measure } from '../records/field.ts'
import type { Panel } from '../records/records.generated.ts'
import { indexIn } from './in-order.ts'

/** Panels by what the models of a family share, so that the siblings of one record are found without comparing it with all. */
export interface Kin {
  /** A record is there, or has changed; it is read when somebody asks. */
  put(path: string): void
  drop(path: string): void
  /** Reads a record that is there or has changed, before somebody asks. */
  gather(path: string): void
  /** What a record shares with its kin: those with one of these in common. It is read for it if need be. */
  keys(path: string): readonly string[]
  /** Where these come from for records that are not to be read for them. */
  keysFrom(known: KnownKeys): void
  /**
   * Paths of records with all but one of the shared values of this one, in path order. Of a family larger than any maker's
   * those beside it in that order, so that a library of copies takes no more time than another.
   */
  of(path: string): readonly string[]
}

export type KnownKeys = (path: string) => readonly string[] | undefined

/** How many on each side: the power classes of a family have names that stand together. */
const reach = 8

/**
 * @param atOnce  how many changed records are read when somebody asks; where there are more, they are none's kin until they
 *   are gathered
 */
export function createKin(read: (path: string) => Panel | undefined, atOnce = Infinity): Kin {
  const groups = new Map<string, Group>()
  /** Those of each path: the groups themselves, as keys of their own would take more memory than all the rest. */
  const groupsOf = new Map<string, readonly Group[]>()
  const changed = new Set<string>()
  let known: KnownKeys = () => undefined
  const drop = (path: string) => {
    for (const { key, paths } of groupsOf.get(path) ?? []) {
      paths.splice(indexIn(paths, path), 1)
      if (paths.length === 0) groups.delete(key)
    }
    groupsOf.delete(path)
  }
  const add = (path: string) => {
    drop(path)
    const own = (known(path) ?? keysRead(path)).map(groupOf)
    groupsOf.set(path, own)
    for (const { paths } of own) paths.splice(indexIn(paths, path), 0, path)
  }
  return {
    put: (path) => changed.add(path),
    drop(path) {
      changed.delete(path)
      drop(path)
    },
    gather,
    keys(path) {
      gather(path)
      return (groupsOf.get(path) ?? []).map(({ key }) => key)
    },
    keysFrom: (from) => (known = from),
    of(path) {
      if (changed.size > atOnce) {
        gather(path)
      } else {
        for (const one of changed) add(one)
        changed.clear()
      }
      const found = new Set<string>()
      for (const { paths } of groupsOf.get(path) ?? []) {
        const here = indexIn(paths, path)
        for (const other of paths.slice(Math.max(0, here - reach), here + reach + 1)) found.add(other)
      }
      found.delete(path)
      return [...found].sort()
    },
  }

  function gather(path: string) {
    if (changed.delete(path)) add(path)
  }

  function keysRead(path: string): readonly string[] {
    const panel = read(path)
    return panel ? keysOf(panel) : []
  }

  function groupOf(key: string): Group {
    const group = groups.get(key) ?? { key, paths: [] }
    groups.set(key, group)
    return group
  }
}

/** Paths of the records with one key, in order. */
interface Group {
  readonly key: string
  readonly paths: string[]
}

/** The family by its name, and all shared values but each in turn, where a record has enough of them. */
function keysOf({ maker, family, temperature_coefficients: c, noct, cells }: Panel): readonly string[] {
  const name = family?.text.trim()
  const own = name ? [`${maker?.text.trim() ?? ''} ${name}`] : []
  const values = [c.pmax, c.voc, c.isc, noct.temperature].map((measure) => textOf(measure))
  values.push(cells.in_series ? String(cells.in_series.value) : '')
  if (values.filter((value) => value !== '').length < 4) return own
  return [...own, ...values.map((_, left) => values.map((value, i) => (i === left ? '*' : value)).join(' '))]
}

/** One text for a value, in whatever unit it was typed; '' where there is none. */
const textOf = (measure: Measure | undefined): string =>
  measure ? `${measure.quantity.dimension} ${measure.value.toPrecision(9)}` : ''
