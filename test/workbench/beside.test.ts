import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Frame, Locator } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { faults } from '../report/axe.ts'
import { scratch, wattproof } from '../terminal/run.ts'
import { hostErrors, pageOf } from './driver/editor-server.ts'
import { pictureFailures } from './driver/failures.ts'
import { missing, visit, vsix, type Visit } from './driver/visit.ts'
import { viewIn } from './driver/view.ts'
import { windowIn, type Window } from './driver/window.ts'

// what a person sees who opens the pictures next to a record and goes on typing
describe.skipIf(missing)(missing ?? 'the view beside the editor', () => {
  let here: Visit
  let window: Window
  let editor: Locator

  beforeAll(async () => {
    here = await visit([vsix])
    window = windowIn(here.page)
    await here.page.goto(pageOf(here.server, here.folder))
    await window.ready()
    editor = await window.open('tern-110.panel.yaml')
  })
  afterAll(() => here?.close())
  pictureFailures(() => here)

  const view = () => viewIn(here.page)
  const choice = (name: string) => here.page.locator('.quick-input-widget').getByRole('option', { name }).first()
  const frame = async (): Promise<Frame> => (await (await view().locator('body').elementHandle()).ownerFrame())!

  test('Show Beside draws the panel, with a policy that allows the package alone', async () => {
    await window.command('Wattproof: Show Beside')
    await view().locator('figure').nth(3).waitFor()
    expect(await view().locator('figure h2').allInnerTexts()).toEqual([
      'Current against voltage',
      'Power against voltage',
      'Power when hot, by mounting',
      'Outline to scale',
    ])
    const policy = await view().locator('meta[http-equiv]').getAttribute('content')
    expect(policy).toMatch(/^default-src 'none'; script-src \S+( \S+)*; style-src \S+( \S+)*$/)
    expect(policy).not.toMatch(/unsafe/)
    await here.picture('beside-panel-light')
    expect(await faults(await frame())).toEqual([])
  })

  test('a point leads to its line, by mouse and by keyboard', async () => {
    await view().getByRole('button', { name: 'Voc 22.1 V', exact: true }).first().click()
    const line = lineOf(readFileSync(join(here.folder, 'library/panels/tern-110.panel.yaml'), 'utf8'), /voc: 22\.1 V/)
    await window.cursor.filter({ hasText: `Ln ${line},` }).waitFor()
    await view().getByRole('button', { name: 'Isc 6.31 A', exact: true }).first().focus()
    await here.page.keyboard.press('Enter')
    await window.cursor.filter({ hasText: `Ln ${line + 1},` }).waitFor()
  })

  test('the field of the cursor is marked in the pictures', async () => {
    await window.token(editor, '22.1 V').click({ force: true })
    await view().locator('[data-field="/stc/voc"].here').first().waitFor()
    expect(
      await view()
        .locator('.here')
        .evaluateAll((parts) => [...new Set(parts.map((part) => part.getAttribute('data-field')))]),
    ).toEqual(['/stc/voc'])
  })

  test('it is drawn anew while somebody types, and what stays the same is not', async () => {
    await (
      await frame()
    ).evaluate(() => {
      document.querySelectorAll('figure').forEach((figure) => figure.setAttribute('data-before', ''))
    })
    await window.token(editor, '2.2 kg').click({ force: true })
    await here.page.keyboard.press('End')
    await here.page.keyboard.press('ArrowLeft')
    await here.page.keyboard.press('ArrowLeft')
    await here.page.keyboard.press('ArrowLeft')
    await here.page.keyboard.type('5')
    await view()
      .getByText(/2\.25 kg/)
      .first()
      .waitFor()
    expect(await view().locator('figure[data-before] h2').allInnerTexts()).toEqual([
      'Current against voltage',
      'Power against voltage',
      'Power when hot, by mounting',
    ])
    await here.page.keyboard.press('Control+Z')
    await view()
      .getByText(/ 2\.2 kg/)
      .first()
      .waitFor()
  })

  test('a system has plans, its year, the voltages and a one-line diagram', async () => {
    editor = await window.open('boat.system.yaml')
    await view().getByRole('heading', { name: 'One-line diagram' }).waitFor()
    expect(await view().locator('figure h2').allInnerTexts()).toEqual([
      'Plan of bimini',
      'Plan of coachroof',
      'Energy by month',
      'Battery through the year',
      'Voltage of the strings',
      'One-line diagram',
    ])
    await here.picture('beside-system-light')
    expect(await faults(await frame())).toEqual([])
  })

  test('the page for the customer is written where a person says, as the command line writes it', async () => {
    await view().getByRole('button', { name: 'Save the page for the customer' }).click()
    await choice('US').click()
    await expect.poll(() => window.input.inputValue()).toBe(join(here.folder, 'systems/boat.html'))
    await here.picture('save-page')
    await here.page.keyboard.press('Enter')
    await window.notice('boat.html is written.')
    await window.hideNotices()
    const expected = join(scratch(), 'boat.html')
    wattproof(['report', join(here.folder, 'systems/boat.system.yaml'), '-o', expected, '--units', 'us'])
    expect(readFileSync(join(here.folder, 'systems/boat.html'), 'utf8')).toBe(readFileSync(expected, 'utf8'))
  })

  test('a record that is typed for the page stays as it is', async () => {
    const record = join(here.folder, 'systems/van.system.yaml')
    const before = readFileSync(record, 'utf8')
    await view().getByRole('button', { name: 'Save the page for the customer' }).click()
    await choice('Metric').click()
    await expect.poll(() => window.input.inputValue()).toMatch(/boat\.html$/)
    await window.input.fill(record)
    await here.page.keyboard.press('Enter')
    await window.notice('van.system.yaml.html is written.')
    await window.hideNotices()
    expect(readFileSync(record, 'utf8')).toBe(before)
  })

  test('the panels of the library are compared on a surface, in a picture and a table that can be sorted', async () => {
    await view().getByRole('button', { name: 'Compare panels on coachroof' }).click()
    await view().locator('#comparison table').waitFor({ timeout: 60_000 })
    const weights = () =>
      view()
        .locator('#comparison td:nth-child(6)')
        .evaluateAll((cells) => cells.map((cell) => (cell as HTMLElement).dataset.sort!))
    const byWeight = view().getByRole('columnheader', { name: 'weight' }).getByRole('button')
    for (const sign of [-1, 1]) {
      await byWeight.click()
      const sorted = await weights()
      const known = sorted.filter((one) => one !== '').map(Number)
      expect(known).toEqual(known.toSorted((a, b) => sign * (a - b)))
      expect(sorted.slice(known.length).join('')).toBe('') // what is not known stays last
    }
    await here.picture('beside-comparison-light')
    expect(await faults(await frame())).toEqual([])
    await view().locator('#comparison tbody').getByRole('button', { name: 'gannet-200' }).click()
    await window.line(window.editor('gannet-200.panel.yaml'), /Gannet/).waitFor()
  })

  const themes = [
    { theme: 'Default Dark Modern', kind: 'vscode-dark' },
    { theme: 'Default High Contrast', kind: 'vscode-high-contrast' },
    { theme: 'Default High Contrast Light', kind: 'vscode-high-contrast-light' },
    { theme: 'Default Light Modern', kind: 'vscode-light' },
  ]
  test.each([{ record: 'boat.system.yaml', last: 'One-line diagram' }])(
    'the colours of $record are those of the theme',
    async ({ record, last }) => {
      mkdirSync(join(here.folder, '.vscode'), { recursive: true })
      // the file is open in a tab; keys would go to the view as long as it has the focus
      await here.page.locator('.tab', { hasText: record }).first().click()
      editor = window.editor(record)
      await editor.waitFor()
      for (const { theme, kind } of themes) {
        writeFileSync(join(here.folder, '.vscode/settings.json'), JSON.stringify({ 'workbench.colorTheme': theme }))
        await view().locator(`body.${kind}`).waitFor()
        await view().getByRole('heading', { name: last }).waitFor()
        await here.picture(`beside-${record.replace(/[.].*/, '')}-${kind}`)
        expect(await faults(await frame()), theme).toEqual([])
      }
    },
  )

  test('nothing was asked of the network, and the extension host has no complaint', () => {
    // the editor's own service worker answers for this host
    const own = /^https:\/\/[^/]*vscode-resource\.vscode-cdn\.net\//
    expect(here.outside.filter((url) => !own.test(url))).toEqual([])
    expect(hostErrors(here.server)).toEqual([])
  })
})

const lineOf = (text: string, line: RegExp) => text.split('\n').findIndex((one) => line.test(one)) + 1
