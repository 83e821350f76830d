import { readFileSync } from 'node:fs'
import { deflateSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { createReader, type Reader } from '../../server/src/reader/ask.ts'
import { unpacksTooFar } from '../../server/src/reader/unpacked.ts'
import { locked } from './hostile/locked.ts'
import { catalogue, ofLines, onePage, page, pdf, stream } from './hostile/pdf.ts'

let reader: Reader
beforeAll(() => void (reader = createReader('dist/sheet-reader.js')))
afterAll(() => reader.end())

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
  ['drawings that draw the next one twelve times each', () => multiplied(12), /took more than 5 s/],
  ['a drawing that draws itself', () => multiplied(1, 5), /no text/],
  ['more than 50 MB', () => Buffer.concat([good, Buffer.alloc(50e6)]), /more than 50 MB/],
]

/** @param last  the object that the last drawing draws; without one it writes a letter */
function multiplied(depth: number, last?: number): Buffer {
  const resources = (number: number) => `/Resources<</XObject<</X ${number} 0 R>>>>`
  const drawings = Array.from({ length: depth }, (_, i) => {
    const next = i < depth - 1 ? i + 6 : last
    return stream(
      Buffer.from(next ? '/X Do '.repeat(12) : 'BT /F 8 Tf (a) Tj ET'),
      `/Type/XObject/Subtype/Form/BBox[0 0 200 200]${next ? resources(next) : ''}`,
    )
  })
  return pdf(
    catalogue,
    onePage,
    page.replace('/Contents', `${resources(5)}/Contents`),
    stream(Buffer.from('/X Do')),
    ...drawings,
  )
}

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

test('a sheet with a script, an address and a file inside is read for its printed text alone', async () => {
  const more =
    '/OpenAction<</S/JavaScript/JS(while\\(true\\){})>>/URI<</Base(http://127.0.0.1:9/)>>/Names<</EmbeddedFiles<</Names[(a) 6 0 R]>>>>'
  const { sheet } = await reader.read(
    ofLines(['Pmax 100 W', 'Vmp 18.0 V', 'Imp 5.56 A', 'Voc 21.6 V', 'Isc 5.95 A'], more),
  )
  expect(sheet.problem).toBeNull()
  const typed = sheet.models[0]!.readings.map((one) => one.typed)
  expect(typed).toEqual(['100 W', '18.0 V', '5.56 A', '21.6 V', '5.95 A'])
})
