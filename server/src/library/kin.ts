/**
 * Panels by what the models of a family share, taken from the text alone: so that the siblings of one record are found
 * without reading a whole library.
 */
export interface Kin {
  put(path: string, text: string): void
  drop(path: string): void
  /**
   * Paths of records with all but one of the shared values of this one, in path order. Of a family larger than any maker's
   * those beside it in that order, so that a library of copies takes no more time than another.
   */
  of(path: string): readonly string[]
}

/** How many on each side: the power classes of a family have names that stand together. */
const reach = 8

export function createKin(): Kin {
  const keys = new Map<string, readonly string[]>()
  const paths = new Map<string, string[]>()
  const drop = (path: string) => {
    for (const key of keys.get(path) ?? []) {
      const others = paths.get(key)!
      others.splice(placeIn(others, path), 1)
    }
    keys.delete(path)
  }
  return {
    put(path, text) {
      drop(path)
      const own = keysOf(text)
      keys.set(path, own)
      for (const key of own) {
        const others = paths.get(key)
        if (others) others.splice(placeIn(others, path), 0, path)
        else paths.set(key, [path])
      }
    },
    drop,
    of(path) {
      const found = new Set<string>()
      for (const key of keys.get(path) ?? []) {
        const others = paths.get(key)!
        const here = placeIn(others, path)
        for (const other of others.slice(Math.max(0, here - reach), here + reach + 1)) found.add(other)
      }
      found.delete(path)
      return [...found].sort()
    },
  }
}

/** Where a path is in a sorted list, or would be. */
function placeIn(sorted: readonly string[], path: string): number {
  let low = 0
  let high = sorted.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (sorted[middle]! < path) low = middle + 1
    else high = middle
  }
  return low
}

/** What the models of a family share, by block and field. */
const shared = (
  [
    ['temperature_coefficients', 'pmax'],
    ['temperature_coefficients', 'voc'],
    ['temperature_coefficients', 'isc'],
    ['noct', 'temperature'],
    ['cells', 'in_series'],
  ] as const
).map(([block, field]) => ({
  block: new RegExp(`(?:^|[{,\\n])[ \\t]*["']?${block}["']?[ \\t]*:`),
  field: new RegExp(`(?:^|[{,\\s])["']?${field}["']?[ \\t]*:[ \\t"']*(?:([-−–])[ \\t]*)?([\\d.,]+)`),
}))
const [maker, family] = ['maker', 'family'].map(
  (field) => new RegExp(`^[ \\t]*["']?${field}["']?[ \\t]*:(.*)`, 'm'),
) as [RegExp, RegExp]

/** The family by its name, and all shared values but each in turn, where a record has enough of them. */
function keysOf(text: string): readonly string[] {
  const name = wordsOf(family.exec(text)?.[1])
  const own = name ? [`${wordsOf(maker.exec(text)?.[1])} ${name}`] : []
  const values = shared.map(({ block, field }) => numberIn(blockOf(text, block), field))
  if (values.filter((value) => value !== '').length < 4) return own
  return [...own, ...values.map((_, left) => values.map((value, i) => (i === left ? '*' : value)).join(' '))]
}

/** A value without its quotes, comma and comment. */
function wordsOf(typed = ''): string {
  const isMark = (sign: string | undefined) => sign !== undefined && ` \t"',`.includes(sign)
  const value = typed.split('#', 1)[0]!
  let [start, end] = [0, value.length]
  while (isMark(value[start])) start++
  while (start < end && isMark(value[end - 1])) end--
  return value.slice(start, end)
}

function blockOf(text: string, block: RegExp): string {
  const start = block.exec(text)
  if (!start) return ''
  const rest = text.slice(start.index + start[0].length)
  const end = /^\s*\{/.test(rest) ? rest.indexOf('}') : rest.search(/\n(?=[^\s#])/)
  return end < 0 ? rest : rest.slice(0, end)
}

/** The number as one value has one text; '' where there is none. */
function numberIn(block: string, field: RegExp): string {
  const found = field.exec(block)
  return found ? `${found[1] ? '-' : ''}${Number(found[2]!.replace(',', '.'))}` : ''
}
