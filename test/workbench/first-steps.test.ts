import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Frame } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { hostErrors, pageOf } from './driver/editor-server.ts'
import { pictureFailures } from './driver/failures.ts'
import { missing, visit, vsix, type Visit } from './driver/visit.ts'
import { viewIn } from './driver/view.ts'
import { windowIn, type Window } from './driver/window.ts'

// the first minutes of somebody who installed the package: the walkthrough, then records as tables
describe.skipIf(missing)(missing ?? 'the first minutes', () => {
  let here: Visit
  let window: Window

  beforeAll(async () => {
    here = await visit([vsix])
    window = windowIn(here.page)
    await here.page.goto(pageOf(here.server, here.folder))
    await window.ready()
  })
  afterAll(() => here?.close())
  pictureFailures(() => here)

  const step = (id: string) => here.page.locator(`[data-step-id="wattproof.wattproof#start#${id}"]`)
  const isDone = (id: string) => step(id).locator('.codicon-getting-started-step-checked').first().waitFor()
  const option = (name: string | RegExp) =>
    here.page.locator('.quick-input-widget').getByRole('option', { name }).first()
  /** The window's own dialog for files: a path and Enter. */
  async function dialog(name: string) {
    await window.typePath(join(here.folder, 'library/panels', name), option(name))
    await here.page.keyboard.press('Enter')
  }
  /** A page of Markdown as the editor draws it, two frames deep. */
  const shownPage = (text: string) =>
    expect
      .poll(async () => (await Promise.all(here.page.frames().map(textOf))).some((shown) => shown.includes(text)), {
        timeout: 20_000,
      })
      .toBe(true)
  const practice = () => window.editor('practice.panel.yaml')

  test('the walkthrough opens a practice record and notices that it did', async () => {
    await window.command('Welcome: Open Walkthrough...')
    await window.input.fill('Proofread')
    await option('Proofread a panel record').waitFor()
    await here.page.keyboard.press('Enter')
    await step('open').waitFor()
    await here.picture('walkthrough')
    await here.page.getByRole('button', { name: 'Open the Record' }).first().click()
    await window.squiggle(practice(), 'error').waitFor()
    await here.picture('walkthrough-record')
  })

  test('by keyboard alone: the pictures, the next finding, the page of its rule, its fix', async () => {
    await window.command('Wattproof: Show Beside')
    await viewIn(here.page).locator('figure').first().waitFor()
    await window.press('F8', here.page.getByText('Voc 1.98 V is probably 19.8 V').first())
    await here.picture('walkthrough-finding')
    await here.page.keyboard.press('Escape')
    await window.command('Wattproof: Show the Page of a Rule')
    await option(/^voc-below-vmp.*at the cursor/).waitFor()
    await here.page.keyboard.press('Enter')
    await shownPage('A panel gives its highest voltage')
    await here.picture('rule-page')
    await here.page.keyboard.press('Control+W')
    await window.command('View: Focus First Editor Group')
    await window.press('Control+.', window.fixes.filter({ hasText: '19.8 V' }).first())
    await here.page.keyboard.press('Enter')
    await window.squiggle(practice(), 'error').waitFor({ state: 'detached' })
  })

  test('which is the end of the walkthrough', async () => {
    await window.command('Welcome: Open Walkthrough...')
    await window.input.fill('Proofread')
    await option('Proofread a panel record').waitFor()
    await here.page.keyboard.press('Enter')
    for (const id of ['open', 'beside', 'correct']) await isDone(id)
    await here.picture('walkthrough-done')
  })

  test('the records are shown as a table', async () => {
    await window.open('tern-110.panel.yaml')
    await window.command('Wattproof: Show Table of Records')
    await option(/^Panels$/).waitFor()
    await here.page.keyboard.press('Enter')
    await window.tab('Preview panel records').waitFor()
    await shownPage('library/panels/tern-110.panel.yaml')
    await here.picture('table')
  })

  test('a spreadsheet becomes records, each with the findings of its cells, and none is overwritten', async () => {
    writeFileSync(
      join(here.folder, 'library/panels/new.csv'),
      'Name;Voc (V);Vmp (V)\nKnot 70;2,01;16,9\nKnot 90;20,2;17\n',
    )
    await window.open('tern-110.panel.yaml')
    await window.command('Wattproof: New Records from a Table')
    await dialog('new.csv')
    await option(/^Panels$/).waitFor()
    await here.page.keyboard.press('Enter')
    const made = join(here.folder, 'library/panels/knot-70.panel.yaml')
    await expect
      .poll(() => existsSync(made) && readFileSync(made, 'utf8'), { timeout: 10_000 })
      .toBe('format: 1\nname: Knot 70\nstc:\n  vmp: 16.9 V\n  voc: 2.01 V\n')
    await window.squiggle(window.editor('knot-70.panel.yaml'), 'error').waitFor()
    await here.picture('records-from-table')
  })

  test('a finding in the list leads to the page of its rule', async () => {
    await window.command('Problems: Focus on Problems View')
    await here.page.locator('.markers-panel').getByText('missing-field').first().click()
    await window.tab('Preview missing-field').waitFor()
  })

  test('nothing went wrong behind the window, and nothing left this machine', () => {
    expect(hostErrors(here.server)).toEqual([])
    const own = /^https:\/\/[^/]*vscode-resource\.vscode-cdn\.net\// // of the editor's own views
    expect(here.outside.filter((url) => !own.test(url))).toEqual([])
  })
})

/** A frame may be gone by the time that it is asked. */
const textOf = (frame: Frame) =>
  frame
    .locator('body')
    .innerText({ timeout: 1000 })
    .catch(() => '')
