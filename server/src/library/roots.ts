/** Which library a path belongs to, by the settings files and the folders that were opened. */
export interface Roots {
  /** A settings file is there. */
  put(path: string): void
  drop(path: string): void
  /** Folders that are opened side by side, each ending in a slash. */
  setFolders(folders: readonly string[]): void
  /** The folder of the nearest settings upward, or else the outermost opened one; '' where there is neither. */
  of(path: string): string
  /** The settings file of a root; of two in one folder the last. */
  settingsOf(root: string): string | undefined
}

export function createRoots(): Roots {
  const settings = new Map<string, readonly string[]>()
  let folders: readonly string[] = []
  /** By folder. */
  const known = new Map<string, string>()

  return {
    put(path) {
      const folder = folderOf(path)
      settings.set(folder, [...(settings.get(folder) ?? []).filter((one) => one !== path), path])
      known.clear()
    },
    drop(path) {
      const folder = folderOf(path)
      const rest = (settings.get(folder) ?? []).filter((one) => one !== path)
      if (rest.length > 0) settings.set(folder, rest)
      else settings.delete(folder)
      known.clear()
    },
    setFolders(list) {
      folders = [...list].sort((a, b) => a.length - b.length)
      known.clear()
    },
    of(path) {
      const folder = folderOf(path)
      const root = known.get(folder) ?? find(folder)
      known.set(folder, root)
      return root
    },
    settingsOf: (root) => settings.get(root)?.at(-1),
  }

  function find(start: string): string {
    for (let folder = start; folder !== ''; folder = folderOf(folder.slice(0, -1)))
      if (settings.has(folder)) return folder
    return settings.has('') ? '' : (folders.find((folder) => start.startsWith(folder)) ?? '')
  }
}

/** With its slash; '' for a bare name. */
const folderOf = (path: string) => path.slice(0, Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1)
