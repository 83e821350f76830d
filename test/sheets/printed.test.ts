import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { sheetOf } from '../../server/src/reader/read-bytes.ts'
import { bareName, type SheetModel } from '../../server/src/sheets/sheet.ts'
import { chromiumPath, startBrowser, type Browser } from '../workbench/driver/browser.ts'

interface Answer {
  readonly name: string
  readonly models: Readonly<Record<string, Readonly<Record<string, number>>>>
}

const folder = 'test/sheets/printed'
const answers = JSON.parse(readFileSync(`${folder}/answers.json`, 'utf8')) as readonly Answer[]

/** Sheets whose words and layouts a browser prints; see the README beside them. */
const run = test.skipIf(chromiumPath() === undefined && !process.env.WATTPROOF_NO_SKIP)

let browser: Browser
beforeAll(async () => {
  if (chromiumPath()) browser = await startBrowser()
}, 60_000)
afterAll(() => browser?.close())

async function print(name: string): Promise<Uint8Array> {
  await browser.page.setContent(readFileSync(`${folder}/${name}.html`, 'utf8'))
  return new Uint8Array(await browser.page.pdf({ preferCSSPageSize: true }))
}

const modelOf = (models: readonly SheetModel[], name: string) =>
  name === '' ? models[0] : models.find((model) => bareName(model.name).includes(bareName(name)))

run('what a browser prints is read: 85 % of the values and none wrong', { timeout: 120_000 }, async () => {
  const wrong: string[] = []
  const counts = { right: 0, all: 0 }
  for (const { name, models } of answers) {
    const sheet = await sheetOf(await print(name))
    for (const [model, values] of Object.entries(models)) {
      const readings = modelOf(sheet.models, model)?.readings ?? []
      for (const [field, value] of Object.entries(values)) {
        const reading = readings.find((one) => one.field === field)
        counts.all += 1
        if (reading === undefined) continue
        if (parseFloat(reading.typed) === value) counts.right += 1
        else wrong.push(`${name} ${model} ${field}: ${reading.typed}, not ${value}`)
      }
    }
  }
  expect(wrong).toEqual([])
  expect(counts.right / counts.all).toBeGreaterThan(0.85)
})
