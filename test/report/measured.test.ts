import { mkdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { Browser } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { scratch, wattproof } from '../terminal/run.ts'
import { faults } from './axe.ts'
import { launch, missing } from './browser.ts'

const screenshots = resolve('.output/screenshots')
const sample = 'samples/systems/measured/day-sailer.system.yaml'

describe.skipIf(missing)(missing ?? 'what was measured, in a browser', () => {
  let browser: Browser
  beforeAll(async () => {
    mkdirSync(screenshots, { recursive: true })
    browser = await launch()
  })
  afterAll(() => browser?.close())

  test.each([
    { name: 'form', options: ['--form'], sheets: 1, says: 'To be measured: Day sailer, 7 m' },
    { name: 'page', options: [], sheets: 3, says: 'Measured on the day: Day sailer, 7 m' },
  ])('the $name prints on $sheets sheet(s) of A4 and of Letter, and axe finds no fault', async (one) => {
    const file = join(scratch(), 'out.html')
    expect(wattproof(['report', sample, '-o', file, ...one.options]).code).toBe(0)
    const page = await browser.newPage()
    await page.goto(`file://${file}`)
    expect(await faults(page)).toEqual([])
    expect(await page.locator('h1').last().textContent()).toBe(one.says)
    await page.screenshot({ path: join(screenshots, `measured-${one.name}.png`), fullPage: true })
    for (const format of ['A4', 'Letter']) {
      const pdf = await page.pdf({ format, printBackground: true })
      const { numPages } = await getDocument({ data: new Uint8Array(pdf) }).promise
      expect(numPages, format).toBe(one.sheets)
    }
    await page.close()
  })

  test('the picture of the power left says its numbers to those who do not see it', async () => {
    const file = join(scratch(), 'out.html')
    wattproof(['report', sample, '-o', file])
    const page = await browser.newPage()
    await page.goto(`file://${file}`)
    const label = await page.locator('svg[aria-label^="Power left of coachroof by year"]').getAttribute('aria-label')
    expect(label).toContain('2024-06-08: 98 % ± 6.2 %; 2025-06-14: 96 %')
    expect(label).toContain('Warranted: 78 % until year 5.0')
    await page.close()
  })
})
