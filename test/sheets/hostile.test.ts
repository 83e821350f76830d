import { readFileSync } from 'node:fs'
import { deflateSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { createReader, type Reader } from '../../server/src/reader/ask.ts'
import { unpacksTooFar } from '../../server/src/reader/unpacked.ts'
import { locked } from './hostile/locked.ts'

let reader: Reader
beforeAll(() => void (reader = createReader('dist/sheet-reader.js')))
afterAll(() => reader.end())

/** A PDF of numbered objects; the first is the catalogue. */
function pdf(...first: readonly (string | Buffer | readonly string[])[]): Buffer {
  const objects: readonly (string | Buffer)[] = first.flat()
  const parts: Buffer[] = [Buffer.from('%PDF-1.7\n')]
  const places: number[] = []
  let start = parts[0]!.length
  const add = (part: Buffer) => {
    parts.push(part)
    start += part.length
  }
  objects.forEach((object, i) => {
    places.push(start)
    add(Buffer.concat([Buffer.from(`${i + 1} 0 obj\n`), Buffer.from(object), Buffer.from('\nendobj\n')]))
  })
  const table = places.map((at) => `${String(at).padStart(10, '0')} 00000 n \n`).join('')
  parts.push(Buffer.from(`xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${table}`))
  parts.push(Buffer.from(`trailer <</Root 1 0 R/Size ${objects.length + 1}>>\nstartxref\n${start}\n%%EOF`))
  return Buffer.concat(parts)
}

const stream = (content: Buffer, more = '') =>
  Buffer.concat([Buffer.from(`<</Length ${content.length}${more}>>\nstream\n`), content, Buffer.from('\nendstream')])
const catalogue = '<</Type/Catalog/Pages 2 0 R>>'
const onePage = '<</Type/Pages/Count 1/Kids[3 0 R]>>'
const page = '<</Type/Page/Parent 2 0 R/MediaBox[0 0 200 200]/Contents 4 0 R>>'

const good = readFileSync('samples/library/sheets/bittern-200.pdf')

const strangers: readonly (readonly [string, () => Buffer, RegExp])[] = [
  ['nothing at all', () => Buffer.alloc(0), /damaged or no PDF/],
  ['no PDF', () => Buffer.from('name: Tern 110'), /damaged or no PDF/],
  ['cut in the middle', () => good.subarray(0, good.length / 2), /./],
  ['locked with a password', () => Buffer.from(locked, 'base64'), /locked with a password/],
  ['a page without text', () => pdf(catalogue, onePage, page, stream(Buffer.from('0 0 100 100 re f'))), /no text/],
  ['pages that hold each other', () => pdf(catalogue, '<</Type/Pages/Count 9/Kids[2 0 R 2 0 R]>>'), /./],
  ['a page tree that is its own parent', () => pdf(catalogue, '<</Type/Pages/Count 1/Kids[1 0 R]>>'), /./],
  [
    'arrays nested 200 000 deep',
    () =>
      pdf(
        catalogue,
        onePage,
        page.replace('/Contents', `/A ${'['.repeat(2e5)}${']'.repeat(2e5)}/Contents`),
        stream(Buffer.from('q Q')),
      ),
    /./,
  ],
  [
    'a million objects',
    () =>
      pdf(
        catalogue,
        onePage,
        page,
        stream(Buffer.from('q Q')),
        Array.from({ length: 1e6 }, () => 'null'),
      ),
    /./,
  ],
  [
    'a stream that unpacks to 512 MB',
    () =>
      pdf(
        catalogue,
        onePage,
        page,
        stream(deflateSync(deflateSync(Buffer.alloc(1 << 29, ' '))), '/Filter[/FlateDecode/FlateDecode]'),
      ),
    /took more than (?:300 MB|5 s)/,
  ],
]

test.each(strangers)('%s ends in words, and the next sheet is read', { timeout: 60_000 }, async (_, make, words) => {
  const { sheet } = await reader.read(make())
  expect(sheet.problem).toMatch(words)
  expect(sheet.models).toEqual([])
  expect((await reader.read(good)).sheet.problem).toBeNull()
})

describe('before a browser unpacks a sheet', () => {
  const packed = (content: Buffer, filter: string) =>
    new Uint8Array(pdf(catalogue, onePage, page, stream(content, `/Filter${filter}`)))
  const large = Buffer.alloc(1 << 20, ' ')

  test.each([
    ['packed once', deflateSync(large), '/FlateDecode'],
    ['packed twice', deflateSync(deflateSync(large)), '[/FlateDecode/FlateDecode]'],
    ['under its short name', deflateSync(large), '/Fl'],
    ['with bytes behind its end', Buffer.concat([deflateSync(large), Buffer.from('\r\n ')]), '/FlateDecode'],
  ])('what it unpacks to is counted: %s', async (_, content, filter) => {
    expect(await unpacksTooFar(packed(content, filter), 1e6)).toBe(true)
    expect(await unpacksTooFar(packed(content, filter), 2e6)).toBe(false)
  })

  test('over all streams together, and no further than the limit', async () => {
    const half = stream(deflateSync(Buffer.alloc(700_000, ' ')), '/Filter/FlateDecode')
    expect(await unpacksTooFar(new Uint8Array(pdf(catalogue, onePage, page, half, half)), 1e6)).toBe(true)
    const bomb = strangers.find(([what]) => what.includes('512 MB'))![1]()
    const before = process.memoryUsage().rss
    expect(await unpacksTooFar(new Uint8Array(bomb))).toBe(true)
    expect(process.memoryUsage().rss - before).toBeLessThan(200e6)
  })

  test('every sample, damaged and locked files included, is let through', async () => {
    for (const bytes of [good, good.subarray(0, 2000), Buffer.from(locked, 'base64'), Buffer.alloc(0)])
      expect(await unpacksTooFar(new Uint8Array(bytes))).toBe(false)
  })
})

test('more than fifty pages: the first fifty are read', { timeout: 60_000 }, async () => {
  const kids = Array.from({ length: 400 }, (_, i) => `${i + 5} 0 R`).join(' ')
  const pages = Array.from({ length: 400 }, () => page)
  const many = pdf(catalogue, `<</Type/Pages/Count 400/Kids[${kids}]>>`, 'null', stream(Buffer.from('q Q')), ...pages)
  expect((await reader.read(many)).sheet).toMatchObject({ pages: 50, problem: /no text/ })
})
