import { randomBytes } from 'node:crypto'
import { closeSync, mkdirSync, openSync, renameSync, rmSync, writeSync } from 'node:fs'
import { dirname } from 'node:path'

/** Lines of a file that is not there before it is whole. */
export interface Draft {
  add(line: string): void
  end(): void
}

/** Characters that are written at once. */
const portionLength = 1 << 16

export function removeQuietly(path: string): void {
  try {
    rmSync(path, { force: true })
  } catch {
    // somebody else's, or in use
  }
}

/**
 * Written under another name as it comes, so that it takes no memory, and nobody reads half of it. What cannot be written leaves nothing.
 *
 * @param most  characters beyond which lines are left out
 */
export function createDraft(path: string, most: number): Draft {
  const aside = `${path}.${randomBytes(6).toString('hex')}`
  let file: number | null = null
  let [size, portion, isWhole] = [0, '', true]
  const attempt = (what: () => void) => {
    if (!isWhole) return
    try {
      what()
    } catch {
      isWhole = false
    }
  }
  const write = () =>
    attempt(() => {
      if (writeSync(file!, portion, null, 'latin1') < portion.length) isWhole = false
      portion = ''
    })
  attempt(() => {
    mkdirSync(dirname(path), { recursive: true, mode: 0o700 })
    file = openSync(aside, 'wx', 0o600)
  })
  return {
    add(line) {
      size += line.length + 1
      if (size > most) return
      portion += `${line}\n`
      if (portion.length >= portionLength) write()
    },
    end() {
      write()
      if (file === null) return
      closeSync(file)
      attempt(() => renameSync(aside, path))
      if (!isWhole) removeQuietly(aside)
    },
  }
}
