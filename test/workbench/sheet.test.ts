import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Frame, Locator } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { faults } from '../report/axe.ts'
import { hostErrors, pageOf } from './driver/editor-server.ts'
import { pictureFailures } from './driver/failures.ts'
import { missing, visit, vsix, type Visit } from './driver/visit.ts'
import { inked, viewIn } from './driver/view.ts'
import { windowIn, type Window } from './driver/window.ts'

// what a person sees who opens the datasheet next to the record that is typed from it
describe.skipIf(missing)(missing ?? 'the sheet beside the record', () => {
  let here: Visit
  let window: Window
  let editor: Locator
  const record = () => join(here.folder, 'library/panels/tern-110.panel.yaml')

  beforeAll(async () => {
    here = await visit([vsix])
    const text = readFileSync(record(), 'utf8')
    writeFileSync(record(), text.replace('weight: 2.2 kg', 'weight: 2.6 kg').replace(/^ +imp: 5\.92 A\n/m, ''))
    window = windowIn(here.page)
    await here.page.goto(pageOf(here.server, here.folder))
    await window.ready()
    editor = await window.open('tern-110.panel.yaml')
  })
  afterAll(() => here?.close())
  pictureFailures(() => here)

  const view = () => viewIn(here.page)
  const frame = async (): Promise<Frame> => (await (await view().locator('body').elementHandle()).ownerFrame())!
  const mark = (name: string) => view().locator('.paper').getByRole('button', { name, exact: true })

  test('Show Sheet draws the page that the record was typed from', async () => {
    await window.command('Wattproof: Show Sheet')
    await mark('Voc 22.1 V, as the sheet prints it').waitFor({ timeout: 40_000 })
    expect(await inked(await frame())).toBeGreaterThan(0.005)
    await here.picture('sheet-light')
    expect(await faults(await frame())).toEqual([])
  })

  test('a printed number leads to its field, by mouse and by keyboard', async () => {
    await mark('Voc 22.1 V, as the sheet prints it').click()
    const line = lineOf(readFileSync(record(), 'utf8'), /voc: 22\.1 V/)
    await window.cursor.filter({ hasText: `Ln ${line},` }).waitFor()
    await mark('Isc 6.31 A, as the sheet prints it').focus()
    await here.page.keyboard.press('Enter')
    await window.cursor.filter({ hasText: `Ln ${line + 1},` }).waitFor()
  })

  test('the field of the cursor is marked on the page and in the table; a value that differs is reported', async () => {
    await window.token(editor, '2.6 kg').click({ force: true })
    await view().locator('.mark.here.other[data-field="/weight"]').waitFor()
    const row = view().locator('tr.here[data-field="/weight"]')
    expect(await row.locator('th, td').allInnerTexts()).toEqual(
      expect.arrayContaining(['2.6 kg', '2.2 kg', 'differs']) as string[],
    )
    await here.picture('sheet-differs')
  })

  test('what the sheet prints and the record lacks is offered', async () => {
    await mark('Imp 5.92 A is not in the record').click()
    const offer = await window.notice('Add imp: 5.92 A, as page 2 of the sheet prints it?')
    await offer.getByRole('button', { name: 'Add' }).click()
    await window.line(editor, /imp:\s5\.92\sA/).waitFor()
    await window.hideNotices()
    await mark('Imp 5.92 A, as the sheet prints it').waitFor()
  })

  test('the pictures are one press away, and the sheet again', async () => {
    await view().getByRole('button', { name: 'Show the pictures' }).click()
    await view().getByRole('heading', { name: 'Outline to scale' }).waitFor()
    await view().getByRole('button', { name: 'Show the sheet' }).click()
    await mark('Voc 22.1 V, as the sheet prints it').waitFor()
  })

  test('a new record is drafted from a sheet', async () => {
    await window.command('Wattproof: New Panel Record from a Sheet')
    const sheet = here.page.getByRole('option', { name: 'avocet.pdf' })
    await window.typePath(join(here.folder, 'library/sheets/'), sheet)
    await sheet.click()
    await here.page.getByRole('option', { name: 'Avocet 120' }).click() // it has two panels
    const draft = window.editor('avocet.panel.yaml')
    await window.line(draft, /pmax:\s120\sW/).waitFor()
    expect(existsSync(join(here.folder, 'library/panels/avocet.panel.yaml'))).toBe(false)
    await here.picture('sheet-draft')
  })

  test('nothing was asked of the network, and the extension host has no complaint', () => {
    const own = /^https:\/\/[^/]*vscode-resource\.vscode-cdn\.net\//
    expect(here.outside.filter((url) => !own.test(url))).toEqual([])
    expect(hostErrors(here.server)).toEqual([])
  })
})

const lineOf = (text: string, line: RegExp) => text.split('\n').findIndex((one) => line.test(one)) + 1
