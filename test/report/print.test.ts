import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { faults } from './axe.ts'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { scratch, wattproof } from '../terminal/run.ts'
import { launch, missing } from './browser.ts'
import { hostile } from './hostile.ts'

const screenshots = resolve('.output/screenshots')

// what a customer gets: opened in a real browser, printed by it, read by a real screen reader's rules
describe.skipIf(missing)(missing ?? 'the page in a browser', () => {
  let browser: Browser
  beforeAll(async () => {
    mkdirSync(screenshots, { recursive: true })
    browser = await launch()
  })
  afterAll(() => browser?.close())

  const pageOf = (system: string, ...options: string[]) => {
    const file = join(scratch(), 'page.html')
    const run = wattproof(['report', system, '-o', file, ...options])
    if (run.code !== 0) throw new Error(run.err)
    return file
  }

  test.each([
    ...['boat', 'van', 'cabin'].map((name) => ({
      name,
      language: 'en',
      first: 'What is proposed',
      last: '"Not checked" does not mean in order.',
    })),
    {
      name: 'boat',
      language: 'de',
      first: 'Was vorgeschlagen wird',
      last: '„Nicht geprüft“ heißt nicht, dass es in Ordnung ist.',
    },
    { name: 'boat', language: 'es', first: 'Qué se propone', last: '«No comprobado» no significa correcto.' },
  ])(
    '$name in $language prints on two sheets of A4 and of Letter, nothing under 9 pt',
    async ({ name, language, first, last }) => {
      const page = await browser.newPage()
      await page.goto(`file://${pageOf(`samples/systems/${name}.system.yaml`, '--language', language)}`)
      await page.screenshot({ path: join(screenshots, `page-${name}-${language}.png`), fullPage: true })
      for (const format of ['A4', 'Letter']) {
        const pdf = await page.pdf({ format, printBackground: true })
        writeFileSync(join(screenshots, `page-${name}-${language}-${format}.pdf`), pdf)
        const { sheets, sizes, words } = await printed(pdf)
        expect(sheets, format).toBe(2)
        expect(Math.min(...sizes), format).toBeGreaterThanOrEqual(8.99)
        expect(words, format).toContain(first)
        expect(words, format).toContain(last)
      }
      await page.close()
    },
  )

  test.each([
    { system: 'samples/systems/boat.system.yaml', width: 1000 },
    { system: 'samples/systems/cabin.system.yaml', width: 400 },
  ])('axe finds no fault in $system, $width px wide', async ({ system, width }) => {
    const page = await browser.newPage({ viewport: { width, height: 800 } })
    await page.goto(`file://${pageOf(system)}`)
    expect(await faults(page)).toEqual([])
    await page.close()
  })

  test('names and notes of a stranger stay text: nothing runs, nothing is asked for', async () => {
    const page = await browser.newPage()
    const asked: string[] = []
    page.on('request', (request) => asked.push(request.url()))
    const said: string[] = []
    page.on('dialog', (dialog) => {
      said.push(dialog.message())
      dialog.dismiss().catch(() => null)
    })
    const file = pageOf(hostile(scratch()))
    await page.goto(`file://${file}`)
    expect(await page.locator('h1').first().innerText()).toContain('<img src=x onerror=alert(1)>')
    expect(await page.locator('script, img, iframe, a, object, foreignObject').count()).toBe(0)
    expect(
      await page.evaluate(() =>
        [...document.querySelectorAll('*')]
          .flatMap((e) => e.getAttributeNames())
          .filter((name) => name.startsWith('on')),
      ),
    ).toEqual([])
    expect(/\u202e|\u001b/.test(readFileSync(file, 'utf8'))).toBe(false)
    expect({ said, asked: asked.map((url) => url.replace(/^file:.*/, 'file')) }).toEqual({ said: [], asked: ['file'] })
    await page.close()
  })
})

/** The sheets of a PDF with the heights of all letters on them [pt] and their words. */
async function printed(pdf: Buffer) {
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise
  const sizes: number[] = []
  let words = ''
  for (let at = 1; at <= document.numPages; at++) {
    const { items } = await (await document.getPage(at)).getTextContent()
    for (const item of items) {
      if (!('str' in item) || item.str.trim() === '') continue
      const [a, b] = item.transform as [number, number]
      sizes.push(Math.hypot(a, b))
      words += `${item.str} `
    }
  }
  return { sheets: document.numPages, sizes, words: words.replace(/\s+/g, ' ') }
}
