import { chmodSync, existsSync, symlinkSync } from 'node:fs'
import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { bad, doubtful, good } from './records.ts'
import { program, scratch, wattproof } from './run.ts'

const files = { 'good.panel.yaml': good, 'bad.panel.yaml': bad, 'doubtful.panel.yaml': doubtful, 'notes.txt': 'x' }

test.each([
  { args: ['check', 'good.panel.yaml'], code: 0 },
  { args: ['check', 'bad.panel.yaml'], code: 1 },
  { args: ['check'], code: 1 },
  { args: ['check', '.'], code: 1 },
  { args: ['check', 'doubtful.panel.yaml'], code: 0 },
  { args: ['check', 'doubtful.panel.yaml', '--fail-on', 'warning'], code: 1 },
  { args: ['check', 'bad.panel.yaml', '--format', 'json'], code: 1 },
  { args: ['check', 'good.panel.yaml', '--no-cache', '--jobs', '2'], code: 0 },
  { args: ['--version'], code: 0 },
  { args: ['check', '--help'], code: 0 },
  { args: ['values', 'good.panel.yaml'], code: 0 },
  { args: ['explain', 'voc-below-vmp'], code: 0 },
])('$args ends with $code', ({ args, code }) => {
  const run = wattproof(args, { cwd: scratch(files) })
  expect(run).toMatchObject({ code, err: '' })
  expect(run.out).not.toBe('')
})

test.each([
  { why: 'unknown option', args: ['check', '--formt', 'json'], says: /unknown option '--formt'[^]*--format/ },
  { why: 'unknown command', args: ['chek'], says: /unknown command 'chek'[^]*check/ },
  { why: 'unknown format', args: ['check', '--format', 'xml'], says: /text, json, sarif, github/ },
  { why: 'missing path', args: ['check', 'nowhere'], says: /no file or folder `nowhere`/ },
  { why: 'no record', args: ['check', 'notes.txt'], says: /`notes.txt` is no record/ },
  { why: 'one missing of two', args: ['check', 'bad.panel.yaml', 'gone.panel.yaml'], says: /`gone.panel.yaml`/ },
  { why: 'jobs', args: ['check', '--jobs', '0'], says: /whole number from 1/ },
  { why: 'no repository', args: ['check', '--since', 'HEAD'], says: /needs a git repository/ },
  { why: 'no name for standard input', args: ['check', '-'], says: /--stdin-filename/ },
  {
    why: 'unwritable output',
    args: ['check', '-o', 'no/such/folder.json'],
    says: /cannot be written: its folder does not exist/,
  },
  { why: 'unknown kind', args: ['new', 'inverter'], says: /panel/ },
  { why: 'unknown rule', args: ['explain', 'voc-belo-vmp'], says: /did you mean `voc-below-vmp`/ },
  { why: 'values of a folder', args: ['values', '.'], says: /is a folder/ },
  { why: 'serve without a channel', args: ['serve'], says: /--stdio/ },
])('could not run: $why', ({ args, says }) => {
  const run = wattproof(args, { cwd: scratch(files) })
  expect(run).toMatchObject({ code: 2, out: '' })
  expect(run.err).toMatch(/^wattproof: /)
  expect(run.err).toMatch(says)
})

test('settings that can be read only in part are shown, and the run counts as not done', () => {
  const run = wattproof(['check', 'good.panel.yaml'], {
    cwd: scratch({ ...files, 'wattproof.yaml': 'format: 1\nsite: { hottest: 35 kg }\n' }),
  })
  expect(run.code).toBe(2)
  expect(run.out).toMatch(/^wattproof\.yaml:2:/m)
  expect(run.err).toMatch(/wattproof\.yaml can be read only in part/)
})

test('a file that may not be read is a finding, and the run counts as not done', () => {
  const cwd = scratch(files)
  // a link out of the folder is not followed; where there are no links, the file is shut
  if (existsSync('/proc/self/mem')) symlinkSync('/proc/self/mem', join(cwd, 'x.panel.yaml'))
  else chmodSync(join(cwd, 'good.panel.yaml'), 0)
  const run = wattproof(['check'], { cwd })
  expect(run.code).toBe(2)
  expect(run.out).toMatch(/^\w+\.panel\.yaml:1:1: error file-not-read: This file was not read: /m)
  expect(run.out).toMatch(/voc-below-vmp/)
  expect(run.err).toMatch(/\.panel\.yaml: not read, so the run is not complete/)
})

test('a folder under the name of a record is no reason to stumble', () => {
  const cwd = scratch({ 'odd.panel.yaml/inner.panel.yaml': bad })
  expect(wattproof(['check'], { cwd }).out).toMatch(/^odd\.panel\.yaml\/inner\.panel\.yaml:3:/m)
})

test('a link that leads nowhere is passed over', () => {
  const cwd = scratch(files)
  symlinkSync('gone.panel.yaml', join(cwd, 'link.panel.yaml'))
  expect(wattproof(['check', '--format', 'json'], { cwd })).toMatchObject({ code: 1, err: '' })
})

test('a folder without records is clean, and says so on the other stream', () => {
  expect(wattproof(['check'], { cwd: scratch() })).toMatchObject({
    code: 0,
    out: '0 files, 0 errors\n',
    err: 'wattproof: nothing to check\n',
  })
})

test('a reader that has seen enough is no failure', async () => {
  const cwd = scratch(Object.fromEntries(Array.from({ length: 300 }, (_, i) => [`p${i}.panel.yaml`, bad])))
  const run = spawn(
    'sh',
    ['-c', `"${process.execPath}" "${program}" check --format json | head -1; echo "\${PIPESTATUS:-}"`],
    { cwd },
  )
  let err = ''
  run.stderr.on('data', (piece) => (err += String(piece)))
  await new Promise((done) => run.on('close', done))
  expect(err).toBe('')
})

test('an interrupt ends it by the signal, which a shell reports as 130', async () => {
  const run = spawn(process.execPath, [program, 'check', '-', '--stdin-filename', 'x.panel.yaml'], { cwd: scratch() })
  let out = ''
  run.stdout.on('data', (piece) => (out += String(piece)))
  await new Promise((done) => setTimeout(done, 300))
  run.kill('SIGINT')
  const signal = await new Promise((done) => run.on('exit', (_, name) => done(name)))
  expect({ signal, out }).toEqual({ signal: 'SIGINT', out: '' })
})
