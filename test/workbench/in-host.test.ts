import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Outcome } from './cases/run-cases.ts'
import { bundleCases, companion, packOtherYamlExtension } from './driver/extensions.mjs'
import { pageOf } from './driver/editor-server.ts'
import { missing, visit, vsix, type Visit } from './driver/visit.ts'

// the same cases that `npm run test:desktop` runs in a desktop editor, here beside another YAML extension
describe.skipIf(missing)(missing ?? 'the packed extension in the extension host', () => {
  let here: Visit
  let cases: readonly Outcome[] = []
  const lines: string[] = []

  beforeAll(async () => {
    const report = join(bundleCases(), '..', 'report.json')
    here = await visit([await packOtherYamlExtension(), vsix], { environment: { WATTPROOF_REPORT: report } })
    let settle: (code: number) => void
    const ended = new Promise<number>((resolve) => (settle = resolve))
    await here.page.exposeFunction('codeAutomationLog', (_: string, words: unknown[]) => lines.push(words.join(' ')))
    await here.page.exposeFunction('codeAutomationExit', (code: number) => settle(code))
    await here.page.goto(pageOf(here.server, here.folder, { extension: companion(), module: bundleCases() }))
    const code = await Promise.race([ended, new Promise<null>((resolve) => setTimeout(() => resolve(null), 150_000))])
    expect(code, `the cases did not run:\n${lines.slice(-20).join('\n')}`).not.toBeNull()
    cases = JSON.parse(readFileSync(report, 'utf8')) as Outcome[]
  })
  afterAll(() => here?.close())

  test('every case passes', () => {
    expect(cases.length).toBeGreaterThan(10)
    expect(cases.filter(({ problem }) => problem)).toEqual([])
  })

  test('the window has no complaint about the manifest', async () => {
    const logs = await here.page.evaluate(() =>
      (globalThis as unknown as { driver: { getLogs(): Promise<{ contents: string }[]> } }).driver.getLogs(),
    )
    const ours = logs.flatMap(({ contents }) => contents.split('\n')).filter((line) => /wattproof/i.test(line))
    expect(ours.filter((line) => /\[(error|warning)\]/.test(line))).toEqual([])
    expect(here.outside).toEqual([])
  })
})
