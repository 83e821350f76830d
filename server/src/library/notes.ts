import { Recent } from './recent.ts'

/** What is made of files, by their paths, of every one of them: plain data, kept as JSON but for what was used lately. */
export interface Notes<T> {
  has(path: string): boolean
  get(path: string): T | undefined
  set(path: string, note: T): void
  delete(path: string): void
  clear(): void
}

/** @param most  how many are at hand as they were made, at least */
export function createNotes<T>(most: number): Notes<T> {
  const recent = new Recent<T>(most)
  const texts = new Map<string, string>()
  return {
    has: (path) => texts.has(path),
    get(path) {
      const known = recent.get(path)
      if (known !== undefined) return known
      const text = texts.get(path)
      if (text === undefined) return undefined
      const note = JSON.parse(text) as T
      recent.set(path, note)
      return note
    },
    set(path, note) {
      texts.set(path, JSON.stringify(note))
      recent.set(path, note)
    },
    delete(path) {
      texts.delete(path)
      recent.delete(path)
    },
    clear() {
      texts.clear()
      recent.clear()
    },
  }
}
