import { execFileSync } from 'node:child_process'
import { readFileSync, statSync } from 'node:fs'
import { expect, test } from 'vitest'
import { namesInZip } from './zip.ts'

test('the extension package holds what it needs and nothing else', async () => {
  const names = namesInZip(readFileSync('wattproof.vsix'))
  await expect(names.join('\n') + '\n').toMatchFileSnapshot('vsix-files.txt')
})

test('the extension package stays below 1 MB', () => {
  expect(statSync('wattproof.vsix').size).toBeLessThan(1_000_000)
})

test('the npm package holds what it needs and nothing else', async () => {
  const printed = execFileSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
    encoding: 'utf8',
    stdio: 'pipe',
  })
  const [{ files }] = JSON.parse(printed) as [{ files: { path: string; mode: number }[] }]
  const names = files.map(({ path }) => path).sort()
  await expect(names.join('\n') + '\n').toMatchFileSnapshot('npm-files.txt')
})
