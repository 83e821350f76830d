import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { program, wattproof } from './run.ts'

const record = 'samples/mistakes/decimal-point-moved.panel.yaml'
const link = /\u001b\]8;;([^\u001b]*)\u001b\\voc-below-vmp\u001b\]8;;\u001b\\/

/** As on a terminal of that kind. */
function onTerminal(env: Record<string, string>): string {
  const { CI: _, FORCE_COLOR: __, NO_COLOR: ___, TERM_PROGRAM: ____, ...plain } = process.env
  const command = `${process.execPath} ${program} check ${record}`
  const options = { encoding: 'utf8', env: { ...plain, TERM: 'xterm-256color', ...env } } as const
  return spawnSync('script', ['-qec', command, '/dev/null'], options).stdout
}

const isLinux = process.platform === 'linux'

test.skipIf(!isLinux)('a rule leads to its page on this disk, in a terminal that shows links', () => {
  const [, address = ''] = link.exec(onTerminal({ VTE_VERSION: '7600' })) ?? []
  const page = new URL(address)
  expect(page.protocol).toBe('file:')
  expect(existsSync(fileURLToPath(page))).toBe(true)
  expect(readFileSync(fileURLToPath(page), 'utf8')).toContain(`\n### ${page.hash.slice(1)}\n`)
})

test.skipIf(!isLinux).each([
  { where: 'a terminal that does not show them', env: {} },
  { where: 'a terminal without colours', env: { VTE_VERSION: '7600', NO_COLOR: '1' } },
])('no link in $where', ({ env }) => {
  const printed = onTerminal(env as Record<string, string>)
  expect(printed).toContain('voc-below-vmp')
  expect(printed).not.toContain('\u001b]8')
})

test.each([
  { what: 'as it is', env: {} },
  { what: 'with colours forced', env: { FORCE_COLOR: '1', VTE_VERSION: '7600' } },
  { what: 'with links forced', env: { FORCE_HYPERLINK: '1' } },
])('a pipe gets no link, $what', ({ env }) => {
  const { out } = wattproof(['check', record], { env: env as Record<string, string> })
  expect(out).toContain('voc-below-vmp')
  expect(out).not.toContain('\u001b]8')
})
