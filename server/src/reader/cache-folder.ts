import { homedir } from 'node:os'
import { isAbsolute, join } from 'node:path'

export type Environment = Readonly<Record<string, string | undefined>>

/** Where the programs keep from run to run what takes time to find out again; it may not be there yet. null for a user without a home. */
export function cacheFolder(env: Environment, ...within: string[]): string | null {
  const named = [env.XDG_CACHE_HOME, env.LOCALAPPDATA].find((path) => path !== undefined && isAbsolute(path))
  try {
    const home = named ?? join(homedir(), process.platform === 'darwin' ? 'Library/Caches' : '.cache')
    return join(home, 'wattproof', ...within)
  } catch {
    return null
  }
}
