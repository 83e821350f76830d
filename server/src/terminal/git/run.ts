import { execFile } from 'node:child_process'
import { careful, carefulEnv, findGit } from './command.ts'
import type { Git } from '../world.ts'

/** Runs git with nothing of the repository's own being run; null where there is no git. */
export function runGit(cwd: string, env: Readonly<Record<string, string | undefined>>): Git {
  const found = new Map<string, string | null>()
  return (folder, args, { input, indexFile } = {}) => {
    const program = found.get(folder) ?? findGit(env, cwd, folder)
    found.set(folder, program)
    if (program === null) return Promise.resolve(null)
    const options = { cwd: folder, maxBuffer: 1 << 29, env: carefulEnv(env, indexFile), encoding: 'buffer' } as const
    return new Promise((resolve) => {
      const child = execFile(program, [...careful, ...args], options, (error, out, err) => {
        if (error && typeof error.code !== 'number') resolve(null)
        else resolve({ code: Number(error?.code ?? 0), out, err: err.toString() })
      })
      child.stdin?.on('error', () => {}) // it may end without having read its input
      child.stdin?.end(input ?? '')
    })
  }
}
