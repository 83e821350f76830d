import { spawn, spawnSync } from 'node:child_process'
import { expect, onTestFinished, test } from 'vitest'
import { program } from './run.ts'

const message = (content: object) => {
  const text = JSON.stringify({ jsonrpc: '2.0', ...content })
  return `Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`
}

test('serve is the language server: it answers, and ends when it is asked to', async () => {
  const run = spawn(process.execPath, [program, 'serve', '--stdio'])
  onTestFinished(() => void run.kill())
  let out = ''
  run.stdout.on('data', (piece) => (out += String(piece)))
  const ended = new Promise((done) => run.on('exit', done))
  run.stdin.write(
    message({ id: 1, method: 'initialize', params: { processId: null, rootUri: null, capabilities: {} } }),
  )
  await expect.poll(() => out, { timeout: 5000 }).toContain('"capabilities"')
  expect(out).toMatch(/^Content-Length: \d+\r\n/)
  run.stdin.write(message({ method: 'initialized', params: {} }) + message({ id: 2, method: 'shutdown' }))
  await expect.poll(() => out, { timeout: 5000 }).toContain('"id":2')
  run.stdin.write(message({ method: 'exit' }))
  expect(await ended).toBe(0)
})

test.each([
  { args: ['dist/server.js'], line: 'wattproof: this is the language server, which an editor starts with --stdio.' },
  { args: [program, 'serve'], line: 'wattproof: serve is started by an editor, with --stdio.' },
])('$args without a way to talk: one line that says so', ({ args, line }) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8', timeout: 10_000 })
  expect({ status, stdout, stderr }).toEqual({ status: 2, stdout: '', stderr: `${line}\n` })
})
