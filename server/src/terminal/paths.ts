import { dirname, relative, resolve } from 'node:path'

/** Forward slashes on every system: the library's keys, and what machines read. */
export const slashed = (path: string) => path.replaceAll('\\', '/')

/** An absolute path as the library knows it. */
export const absolute = (cwd: string, path: string) => slashed(resolve(cwd, path))

/** A path as people and machines are shown it: from the current folder. */
export const shown = (cwd: string, path: string) => slashed(relative(cwd, path)) || '.'

export const folderOf = (path: string) => slashed(dirname(path))

/** Whether a path is the folder itself or somewhere below it. */
export const isWithin = (folder: string, path: string) =>
  path === folder || path.startsWith(folder.endsWith('/') ? folder : `${folder}/`)
