import { homedir } from 'node:os'
import { join } from 'node:path'

export type Environment = Readonly<Record<string, string | undefined>>

/** Where the programs keep from run to run what takes time to find out again; it may not be there yet. */
export function cacheFolder(env: Environment, ...within: string[]): string {
  const home =
    env.XDG_CACHE_HOME ||
    env.LOCALAPPDATA ||
    join(homedir(), process.platform === 'darwin' ? 'Library/Caches' : '.cache')
  return join(home, 'wattproof', ...within)
}
