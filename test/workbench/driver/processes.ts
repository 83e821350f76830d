import type { ChildProcess } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { setTimeout as pause } from 'node:timers/promises'

/** Asks again and again until there is an answer; for things outside a page, which has waiting of its own. */
export async function until<T>(what: string, ask: () => T | undefined | null | false, limit = 20_000): Promise<T> {
  for (let spent = 0; spent < limit; spent += 50) {
    const answer = ask()
    if (answer) return answer
    await pause(50)
  }
  throw new Error(`waited ${limit} ms for ${what}`)
}

/** Resolves with the first match in what a program prints; rejects with all of it when the program ends before. */
export function printed(child: ChildProcess, pattern: RegExp): Promise<RegExpExecArray> {
  return new Promise((resolve, reject) => {
    let text = ''
    const look = (chunk: Buffer) => {
      text += String(chunk)
      const match = pattern.exec(text)
      if (match) resolve(match)
    }
    child.stdout?.on('data', look)
    child.stderr?.on('data', look)
    child.once('error', reject)
    child.once('exit', (code) => reject(new Error(`ended with ${code} before ${pattern}:\n${text}`)))
  })
}

/** The process ids of everything that a process has started and that still runs. */
export function descendants(pid: number): number[] {
  try {
    const list = readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8')
    return list
      .split(' ')
      .filter(Boolean)
      .map(Number)
      .flatMap((child) => [child, ...descendants(child)])
  } catch {
    return [] // already gone
  }
}

export function commandLine(pid: number): string {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8').replaceAll('\0', ' ')
  } catch {
    return ''
  }
}

/** Ends a process and all that it started: politely, and after a while not. */
export async function end(child: ChildProcess): Promise<void> {
  const tree = child.pid === undefined ? [] : [child.pid, ...descendants(child.pid)]
  child.kill('SIGTERM')
  const gone = () => !tree.some(runs)
  await until('the processes to end', gone, 8000).catch(() =>
    tree.filter(runs).forEach((pid) => process.kill(pid, 'SIGKILL')),
  )
  await until('the processes to end', gone, 3000)
}

function runs(pid: number): boolean {
  try {
    return !/^State:\s+Z/m.test(readFileSync(`/proc/${pid}/status`, 'utf8'))
  } catch {
    return false
  }
}
