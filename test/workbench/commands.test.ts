import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { hostErrors, pageOf } from './driver/editor-server.ts'
import { pictureFailures } from './driver/failures.ts'
import { viewIn } from './driver/view.ts'
import { missing, visit, vsix, type Visit } from './driver/visit.ts'
import { windowIn, type Window } from './driver/window.ts'

describe.skipIf(missing)(missing ?? 'the commands that make and save files', () => {
  let here: Visit
  let window: Window

  beforeAll(async () => {
    here = await visit([vsix])
    window = windowIn(here.page)
    writeFileSync(
      join(here.folder, 'library/panels/unicode.panel.yaml'),
      'format: 1\nname: Unicode\nstc:\n  pmax: 110 W\n  voc: 22,6 V\n  isc: 6.15 A\n',
    )
    await here.page.goto(pageOf(here.server, here.folder))
    await window.ready()
  })
  afterAll(() => here?.close())
  pictureFailures(() => here)

  async function choose(name: string | RegExp) {
    await window.option(name).waitFor()
    await here.page.keyboard.press('Enter')
  }
  /** The window's own dialog for files: takes what it proposes. */
  async function save(proposed: string) {
    await expect.poll(() => window.input.inputValue(), { timeout: 10_000 }).toBe(join(here.folder, proposed))
    await here.page.keyboard.press('Enter')
  }
  /** The window makes a file first and then fills it. */
  const written = async (path: string) => {
    const file = join(here.folder, path)
    await expect.poll(() => existsSync(file) && readFileSync(file, 'utf8') !== '', { timeout: 15_000 }).toBe(true)
    return readFileSync(file, 'utf8')
  }

  test('Save Table of Records writes what a spreadsheet opens', async () => {
    await window.open('tern-110.panel.yaml')
    await window.command('Wattproof: Save Table of Records')
    await choose(/^Panels$/)
    await save('panels.csv')
    const [heading, ...rows] = (await written('panels.csv')).trim().split('\n')
    expect(heading).toContain('stc.pmax')
    expect(rows.some((row) => row.includes('Tern 110'))).toBe(true)
    await window.notice(`panels.csv is written: ${rows.length} records.`)
  })

  test('Compare Panels shows all of them side by side, by what somebody asks who chooses one', async () => {
    await window.command('Wattproof: Compare Panels')
    await viewIn(here.page).getByRole('heading', { name: 'Power left on a hot day, by mounting' }).waitFor()
    await viewIn(here.page).getByRole('cell', { name: 'tern-110' }).first().waitFor()
    await here.picture('compare-panels')
  })

  test('Save the Form for Measuring writes the sheet that is taken along', async () => {
    await window.open('van.system.yaml')
    await window.command('Wattproof: Save the Form for Measuring')
    await choose(/^Metric/)
    await save('systems/van-form.html')
    expect(await written('systems/van-form.html')).toMatch(/<html lang="en">[\s\S]*Voc/)
  })

  test('New Climate Record from the latitude is a draft that says it is a guess', async () => {
    await window.command('Wattproof: New Climate Record from Weather or Latitude')
    await window.option('Guessed from the latitude').click()
    await window.input.fill('43.5')
    await here.page.keyboard.press('Enter')
    const draft = window.editor('latitude-43.5.climate.yaml')
    await window.line(draft, 'latitude: 43.5').waitFor()
    await window.squiggle(draft, 'error').waitFor({ state: 'detached' })
    await here.picture('new-climate')
  })

  test('New Library is a draft of its settings in the folder of the window', async () => {
    await window.command('Wattproof: New Library')
    await window.line(window.editor('wattproof.yaml'), 'format: 1').waitFor()
    expect(existsSync(join(here.folder, 'wattproof.yaml'))).toBe(false)
    await here.picture('new-library')
  })

  test('Apply All Safe Fixes changes how numbers are written, not what they say', async () => {
    const record = await window.open('unicode.panel.yaml')
    await window.squiggle(record, 'error').waitFor()
    await window.command('Wattproof: Apply All Safe Fixes')
    await window.line(record, 'voc: 22.6 V').waitFor()
    await here.picture('safe-fixes')
  })

  test('nothing went wrong behind the window', () => {
    expect(hostErrors(here.server)).toEqual([])
  })
})
