import { execFileSync } from 'node:child_process'
import { readFileSync, statSync } from 'node:fs'
import { expect, test } from 'vitest'
import { namesInZip, textInZip } from './zip.ts'

test('the extension package holds what it needs and nothing else', async () => {
  const names = namesInZip(readFileSync('wattproof.vsix'))
  await expect(names.join('\n') + '\n').toMatchFileSnapshot('vsix-files.txt')
})

test('the extension package stays below 6 MB', () => {
  expect(statSync('wattproof.vsix').size).toBeLessThan(6_000_000)
})

test('no page of the extension points at a picture or a page that is not there', () => {
  const zip = readFileSync('wattproof.vsix')
  for (const page of ['extension/readme.md', 'extension/changelog.md']) {
    const targets = [...textInZip(zip, page).matchAll(/\]\(([^)]+)\)/g)].map(([, target]) => target as string)
    expect(targets.filter((target) => !/^(?:https:|#)/.test(target) || target.includes('.example'))).toEqual([])
  }
})

test('a picture of the README is in the npm package', () => {
  const pictures = [...readFileSync('README.md', 'utf8').matchAll(/!\[.*\]\((.+)\)/g)].map(([, path]) => path as string)
  const packed = readFileSync('test/package/npm-files.txt', 'utf8').split('\n')
  expect(pictures.length).toBeGreaterThan(0)
  for (const path of pictures) expect(packed).toContain(path)
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
