import { closeSync, fsyncSync, openSync, realpathSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'

/** Writes a file beside its place and then renames it, so that it is never there in part. A device is written as it is. */
export function writeAside(path: string, text: string): void {
  const old = statSync(path, { throwIfNoEntry: false })
  if (old && !old.isFile()) return writeFileSync(path, text)
  const target = old ? realpathSync(path) : path
  const aside = `${target}.${process.pid}.part`
  const file = openSync(aside, 'wx', old ? old.mode & 0o777 : 0o666)
  try {
    try {
      writeFileSync(file, text)
      fsyncSync(file)
    } finally {
      closeSync(file)
    }
    renameSync(aside, target)
  } catch (error) {
    rmSync(aside, { force: true })
    throw error
  }
}
