import { createHash } from 'node:crypto'
import {
  closeSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs'
import { join } from 'node:path'
import { cacheFolder, type Environment } from '../../reader/cache-folder.ts'

/** Short texts by name that are kept from run to run. */
export interface Pack {
  get(name: string): string | undefined
  /** @param text  without line breaks, of ASCII alone: so read, it takes one byte a character */
  set(name: string, text: string): void
  /** What is new is there from then on. A cache that cannot be written is no failure. */
  end(): void
}

export const readOnly = ({ get }: Pack): Pack => ({ get, set: () => {}, end: () => {} })

/** The most that is written, in characters: some 60 000 records. */
const most = 96e6
/** For how long a pack stays that nobody adds to, and a draft of a run that was stopped, in milliseconds. */
const day = 24 * 3600e3
const month = 30 * day

/**
 * A file in the user's cache folder for each folder that checks are started from. What another program wrote there is nothing to this one.
 *
 * @param programs  the files of the programs that find what is kept
 */
export function openPack(programs: readonly string[], cwd: string, env: Environment): Pack {
  const folder = cacheFolder(env, 'findings')
  const path = join(folder, `${sha256(cwd).slice(0, 32)}.txt`)
  const head = [...programs.map((file) => sha256(readFileSync(file))), process.version].join(' ')
  const before = linesOf(path, head)
  const used = new Set<string>()
  const fresh = new Set<string>()
  let draft: Draft | null = null
  return {
    get(name) {
      const text = before.get(name)
      if (text !== undefined) used.add(name)
      return text
    },
    set(name, text) {
      if (fresh.has(name)) return
      fresh.add(name)
      draft ??= createDraft(folder, path, head)
      draft.add(name, text)
    },
    end() {
      if (!draft) return
      // what nobody uses is the last in the file, so that it is the first to go
      for (const isUsed of [true, false])
        for (const [name, text] of before) if (used.has(name) === isUsed && !fresh.has(name)) draft.add(name, text)
      draft.end()
      draft = null
    },
  }
}

function linesOf(path: string, head: string): Map<string, string> {
  const lines = new Map<string, string>()
  try {
    const [first, ...rest] = readFileSync(path, 'latin1').split('\n')
    if (first !== head) return lines
    for (const line of rest) {
      const space = line.indexOf(' ')
      if (space > 0) lines.set(line.slice(0, space), line.slice(space + 1))
    }
  } catch {
    // there is none yet
  }
  return lines
}

interface Draft {
  add(name: string, text: string): void
  end(): void
}

/** Written under another name as it comes, so that it takes no memory, and nobody reads half of it. */
function createDraft(folder: string, path: string, head: string): Draft {
  const aside = `${path}.${process.pid}`
  let [file, size, portion] = [-1, 0, '']
  const attempt = (what: () => void) => {
    try {
      what()
    } catch {
      size = Infinity // everything is checked anew next time
    }
  }
  const write = () => attempt(() => writeSync(file, portion, null, 'latin1'))
  attempt(() => {
    mkdirSync(folder, { recursive: true })
    file = openSync(aside, 'w', 0o600)
    portion = head
  })
  return {
    add(name, text) {
      const line = `\n${name} ${text}`
      if ((size += line.length) > most) return
      portion += line
      if (portion.length < 1 << 16) return
      write()
      portion = ''
    },
    end() {
      if (file < 0) return
      write()
      attempt(() => {
        closeSync(file)
        if (size === Infinity) return rmSync(aside, { force: true })
        renameSync(aside, path)
        removeOld(folder)
      })
    },
  }
}

function removeOld(folder: string): void {
  for (const name of readdirSync(folder)) {
    const path = join(folder, name)
    const age = Date.now() - statSync(path).mtimeMs
    if (age > (name.endsWith('.txt') ? month : day)) rmSync(path, { force: true })
  }
}

const sha256 = (what: string | Uint8Array) => createHash('sha256').update(what).digest('hex')
