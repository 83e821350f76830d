import path, { type PlatformPath } from 'node:path'

/** Forward slashes on every system: the library's keys, and what machines read. A drive is written one way. */
export const slashed = (path: string) =>
  path.replaceAll('\\', '/').replace(/^[a-z]:(?=\/)/, (drive) => drive.toUpperCase())

/** The functions below for a system; the program uses those of the one that it runs on. */
export const pathsOn = ({ dirname, relative, resolve }: PlatformPath) => ({
  /** An absolute path as the library knows it. */
  absolute: (cwd: string, path: string) => slashed(resolve(cwd, path)),
  /** A path as people and machines are shown it: from the current folder, in full where it is on another drive. */
  shown: (cwd: string, path: string) => slashed(relative(cwd, path)) || '.',
  folderOf: (path: string) => slashed(dirname(path)),
})

export const { absolute, shown, folderOf } = pathsOn(path)

/** Whether a path is the folder itself or somewhere below it. */
export const isWithin = (folder: string, path: string) =>
  path === folder || path.startsWith(folder.endsWith('/') ? folder : `${folder}/`)

/** The address of an absolute path with forward slashes: `/a b`, `C:/a b` or `//server/share`. */
export const addressOf = (path: string) =>
  `file:${path.startsWith('//') ? '' : path.startsWith('/') ? '//' : '///'}${escapedPath(path)}`

/** A path as part of an address: a relative one whose first part holds a colon would be read as a scheme. */
export const escapedPath = (path: string) =>
  encodeURI(path)
    .replaceAll('#', '%23')
    .replaceAll('?', '%3F')
    .replace(/^[^/]*/, (first) => (isOnDrive(path) ? first : first.replaceAll(':', '%3A')))

/** A path of Windows from the root of its drive. */
export const isOnDrive = (path: string) => /^[A-Za-z]:\//.test(path)
