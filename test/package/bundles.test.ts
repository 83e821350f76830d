import { readFileSync, readdirSync, statSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

const bundles = readdirSync('dist', { recursive: true })
  .map(String)
  .filter((name) => name.endsWith('.js'))

describe.each(bundles)('dist/%s', (name) => {
  const text = readFileSync(`dist/${name}`, 'utf8')

  test('has no network code', () => {
    // a PDF's own objects are "fetched" from its bytes, by a method of that name
    expect(text.replace(/[.\w]\.fetch\(|async fetch\(|(?<=[;{}])fetch\([^()]*\)\{/g, '')).not.toMatch(
      /require\("(node:)?(https?|http2|tls|dgram|dns)"\)|\bfetch\(|\bXMLHttpRequest\b|\bWebSocket\(/,
    )
  })
  test('makes no code at run time', () => expect(text).not.toMatch(/\bnew Function\b|\beval\(/))
  test('points to no source map', () => expect(text).not.toContain('sourceMappingURL'))
})

test('what a window with any YAML file reads is small', () =>
  expect(statSync('dist/client.js').size).toBeLessThan(10_000))

test('the browser programs ask for no module that a browser has not', () => {
  const asked = ['web/server.js', 'web/client.js'].flatMap((name) =>
    [...readFileSync(`dist/${name}`, 'utf8').matchAll(/\brequire\("([^"]+)"\)/g)].map((match) => match[1]),
  )
  expect(new Set(asked)).toEqual(new Set(['vscode']))
})

test('the PDF library is in programs of its own, which start with the first sheet', () => {
  const readers = bundles.filter((name) => readFileSync(`dist/${name}`, 'utf8').includes('PasswordException'))
  expect(new Set(readers)).toEqual(new Set(['sheet-reader.js', 'view/sheet.js', 'web/sheet-reader.js']))
})
