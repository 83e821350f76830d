import { createHash } from 'node:crypto'
import { lstatSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { cacheFolder, type Environment } from '../../reader/cache-folder.ts'
import { createDraft, type Draft } from './draft.ts'
import { removeOld } from './remove-old.ts'

/** Short texts by name that are kept from run to run. */
export interface Pack {
  get(name: string): string | undefined
  /** @param text  without line breaks, of ASCII alone: so read, it takes one byte a character */
  set(name: string, text: string): void
  /** What is new is there from then on. A cache that cannot be written is no failure. */
  end(): void
}

export const readOnly = ({ get }: Pack): Pack => ({ get, set: () => {}, end: () => {} })

/** The most that a pack holds, in characters: some 40 000 records. */
const most = 64e6
/** What was not used stays as long as it is no more than what was, or than this. */
const leastUnused = 1e6

/**
 * A file in the user's cache folder for each folder that checks are started from. What other programs wrote there is ignored.
 *
 * @param programs  the files of the programs that find what is kept
 * @returns         null for a user without a place for it
 */
export function openPack(programs: readonly string[], cwd: string, env: Environment): Pack | null {
  const folder = cacheFolder(env, 'findings')
  if (folder === null) return null
  const path = join(folder, `${sha256(cwd).slice(0, 32)}.txt`)
  const head = [...programs.map((file) => sha256(readFileSync(file))), process.version].join(' ')
  const before = linesOf(path, head)
  const used = new Set<string>()
  const fresh = new Set<string>()
  let size = 0
  let draft: Draft | null = null
  const add = (name: string, line: string) => {
    size += line.length
    draft?.add(`${name} ${line}`)
  }
  return {
    get(name) {
      const text = textOf(before.get(name))
      if (text !== undefined) used.add(name)
      return text
    },
    set(name, text) {
      if (fresh.has(name)) return
      fresh.add(name)
      if (!draft) {
        draft = createDraft(path, most)
        draft.add(head)
      }
      add(name, lineOf(text))
    },
    end() {
      if (!draft) return
      const old = [...before].filter(([name]) => !fresh.has(name))
      for (const [name, line] of old) if (used.has(name)) add(name, line)
      // what nobody uses is the last in the file, so that it is the first to go
      const enough = Math.max(leastUnused, 2 * size)
      for (const [name, line] of old) if (!used.has(name) && size + line.length < enough) add(name, line)
      draft.end()
      draft = null
      removeOld(folder)
    },
  }
}

/** Each line has a hash of its text, as files are cut and spoilt. */
const lineOf = (text: string) => `${sha256(text).slice(0, 8)} ${text}`

function textOf(line: string | undefined): string | undefined {
  const text = line?.slice(9)
  return text !== undefined && line === lineOf(text) ? text : undefined
}

function linesOf(path: string, head: string): Map<string, string> {
  const lines = new Map<string, string>()
  try {
    const about = lstatSync(path)
    if (!about.isFile() || about.size > 2 * most) return lines
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

const sha256 = (what: string | Uint8Array) => createHash('sha256').update(what).digest('hex')
