import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { bad, good } from './records.ts'
import { scratch, wattproof } from './run.ts'

const hostile = '\u001b[2J\u009b31m\u202egnp.\u2066'
const inQuotes = `"\\e[2J\\x9b31m\\u202egnp.\\u2066\\n::set-output name=x::y"`
const unseen = /[\0-\x08\x0B-\x1F\x7F-\x9F\u200E\u200F\u2028-\u202E\u2066-\u2069]/

const record = `${bad}maker: ${inQuotes}\nconstruction: ${inQuotes}\n${hostile.replace(/[\x1b\x9b]/g, '')}: 1\n`
const system = `format: 1\nname: ${inQuotes}\nkind: boat\narrays: [{ id: ${inQuotes}, panels: [{ panel: ${inQuotes}, count: 1 }] }]\n`

test.each(['text', 'json', 'sarif', 'github'])('nothing unseen reaches the output as %s', (format) => {
  const cwd = scratch({
    [`${hostile.replace(/\x9b/, '')}\n::warning::x.panel.yaml`]: record,
    '::error::y.panel.yaml': bad,
    'x.system.yaml': system,
  })
  const summary = join(cwd, 'summary.md')
  const { out, err } = wattproof(['check', '--format', format], { cwd, env: { GITHUB_STEP_SUMMARY: summary } })
  expect(out.length).toBeGreaterThan(500)
  expect(out).not.toMatch(unseen)
  expect(err).not.toMatch(unseen)
  if (format === 'json' || format === 'sarif') expect(JSON.stringify(JSON.parse(out))).toContain('\u202e')
  if (format === 'github') expect(readFileSync(summary, 'utf8')).not.toMatch(unseen)
})

test('no line of a record is a command to the runner', () => {
  const cwd = scratch({
    '::set-output name=x::y.panel.yaml': bad,
    'a.panel.yaml': `${good}construction: ${inQuotes}\n`,
  })
  const { out } = wattproof(['check', '--format', 'github'], { cwd })
  const [, token = ''] = /^::stop-commands::(\w{64})$/m.exec(out) ?? []
  const listening = [
    out.slice(0, out.indexOf(`::stop-commands::${token}`)),
    out.slice(out.indexOf(`\n::${token}::`)),
  ].join('')
  const commands = listening.split('\n').filter((line) => /^\s*::|##\[/.test(line) && !line.startsWith(`::${token}`))
  expect(commands.length).toBeGreaterThan(0)
  for (const line of commands) expect(line).toMatch(/^::(error|warning|notice) (file=[^:]+,line=\d|title=wattproof)/)
})

test.each([
  ['values', 'a.panel.yaml'],
  ['review', 'x.system.yaml'],
  ['check', 'no\u001b[2J\n.panel.yaml'],
  ['explain', '\u001b[2J'],
])('%s of %j shows nothing unseen', (...args) => {
  const cwd = scratch({ 'a.panel.yaml': record, 'x.system.yaml': system })
  const { out, err } = wattproof(args, { cwd })
  expect(out + err).not.toMatch(unseen)
  expect((out + err).length).toBeGreaterThan(10)
})
