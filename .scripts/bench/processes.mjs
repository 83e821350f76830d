import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/**
 * What a Node program takes: medians over runs.
 *
 * @returns  processor time of all its threads and time by the clock [s], and the most memory that it held [MB]
 */
export function cost(args, runs) {
  const folder = mkdtempSync(join(tmpdir(), 'wattproof-cost-'))
  const used = join(folder, 'used')
  const report = join(folder, 'report.cjs')
  writeFileSync(
    report,
    `if (require('node:worker_threads').isMainThread) process.on('exit', () => require('node:fs').writeFileSync(${JSON.stringify(used)}, JSON.stringify(process.resourceUsage())))`,
  )
  const each = Array.from({ length: runs }, () => {
    const began = performance.now()
    const { status, error } = spawnSync(process.execPath, ['--require', report, ...args], { stdio: 'ignore' })
    const clock = (performance.now() - began) / 1000
    // 1 for findings
    if (error || status > 1) throw error ?? new Error(`${args.join(' ')} ended with ${status}`)
    const { userCPUTime, systemCPUTime, maxRSS } = JSON.parse(readFileSync(used, 'utf8'))
    return { processor: (userCPUTime + systemCPUTime) / 1e6, clock, memory: maxRSS / 1024 }
  })
  rmSync(folder, { recursive: true })
  return medians(each)
}

/** The median of each figure by itself. */
export function medians(each) {
  const keys = Object.keys(each[0])
  return Object.fromEntries(keys.map((key) => [key, median(each.map((one) => one[key]))]))
}

export function median(values) {
  return values.toSorted((a, b) => a - b)[values.length >> 1]
}
