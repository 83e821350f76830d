/**
 * Panels by what the models of a family share, taken from the text alone: so that the siblings of one record are found
 * without reading a whole library.
 */
export interface Kin {
  put(path: string, text: string): void
  drop(path: string): void
  /** Paths of records with all but one of the shared values of this one, in no order. */
  of(path: string): ReadonlySet<string>
}

export function createKin(): Kin {
  const keys = new Map<string, readonly string[]>()
  const paths = new Map<string, Set<string>>()
  const drop = (path: string) => {
    for (const key of keys.get(path) ?? []) paths.get(key)?.delete(path)
    keys.delete(path)
  }
  return {
    put(path, text) {
      drop(path)
      const own = keysOf(text)
      keys.set(path, own)
      for (const key of own) {
        const others = paths.get(key)
        if (others) others.add(path)
        else paths.set(key, new Set([path]))
      }
    },
    drop,
    of(path) {
      const found = new Set((keys.get(path) ?? []).flatMap((key) => [...(paths.get(key) ?? [])]))
      found.delete(path)
      return found
    },
  }
}

const shared = [
  ['temperature_coefficients', 'pmax'],
  ['temperature_coefficients', 'voc'],
  ['temperature_coefficients', 'isc'],
  ['noct', 'temperature'],
  ['cells', 'in_series'],
] as const

/** All shared values but each in turn; none where a record says too little to tell its family. */
function keysOf(text: string): readonly string[] {
  const values = shared.map(([block, field]) => numberIn(blockOf(text, block), field))
  if (values.filter((value) => value !== '').length < 4) return []
  return values.map((_, left) => values.map((value, i) => (i === left ? '*' : value)).join(' '))
}

function blockOf(text: string, name: string): string {
  const start = new RegExp(`(?:^|[{,\\n])[ \\t]*["']?${name}["']?[ \\t]*:`).exec(text)
  if (!start) return ''
  const rest = text.slice(start.index + start[0].length)
  const end = /^\s*\{/.test(rest) ? rest.indexOf('}') : rest.search(/\n(?=[^\s#])/)
  return end < 0 ? rest : rest.slice(0, end)
}

/** The number as one value has one text; '' where there is none. */
function numberIn(block: string, field: string): string {
  const found = new RegExp(`(?:^|[{,\\s])["']?${field}["']?[ \\t]*:[ \\t]*["']?([-−–]?)[ \\t]*([\\d.,]+)`).exec(block)
  return found ? `${found[1] ? '-' : ''}${Number(found[2]!.replace(',', '.'))}` : ''
}
