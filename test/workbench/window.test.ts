import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Locator } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { hostErrors, pageOf } from './driver/editor-server.ts'
import { pictureFailures } from './driver/failures.ts'
import { missing, visit, vsix, type Visit } from './driver/visit.ts'
import { windowIn, type Window } from './driver/window.ts'

const name = 'decimal-point-moved.panel.yaml'
/** A record that a person goes on with; it is there before the window lists the files. */
const begun = 'library/panels/gull-110.panel.yaml'
const head = 'format: 1\nname: Gull 110\n'

// what a person sees who installs the package and opens a record with the decimal point of Voc in the wrong place
describe.skipIf(missing)(missing ?? 'the packed extension in a window', () => {
  let here: Visit
  let window: Window
  let editor: Locator

  beforeAll(async () => {
    here = await visit([vsix])
    writeFileSync(join(here.folder, begun), head)
    window = windowIn(here.page)
    await here.page.goto(pageOf(here.server, here.folder))
    await window.ready()
    editor = await window.open(name)
  })
  afterAll(() => here?.close())
  pictureFailures(() => here)

  test('the slip is marked, and the other lines say what they are worth', async () => {
    await window.squiggle(editor, 'error').waitFor()
    await window.line(editor, /pmax:\s110\sW\s+17\.1\s%,\shot\s82\.8\sW/).waitFor()
    await here.picture('record')
  })

  test('a hover explains the finding and the field', async () => {
    await window.token(editor, '2.21 V').hover()
    await window.hover.getByText('Voc 2.21 V is probably 22.1 V').first().waitFor()
    await here.picture('hover')
    await here.page.mouse.move(1000, 780)
  })

  test('a quick fix fixes it, and the record on disk differs in these characters alone', async () => {
    const before = readFileSync(join(here.folder, 'mistakes', name), 'utf8')
    await window.token(editor, '2.21 V').click()
    await window.cursor.filter({ hasText: 'Ln 14,' }).waitFor()
    const fix = window.fixes.filter({ hasText: '22.1 V' }).first()
    await window.press('Control+.', fix)
    await here.picture('quick-fix')
    await fix.click()
    await window.squiggle(editor, 'error').waitFor({ state: 'detached' })
    await here.page.keyboard.press('Control+S')
    await expect
      .poll(() => readFileSync(join(here.folder, 'mistakes', name), 'utf8'), { timeout: 10_000 })
      .toBe(before.replace('voc: 2.21 V', 'voc: 22.1 V'))
    await here.picture('fixed')
  })

  test('what the lines of the exemplary record are worth is inside the window', async () => {
    const exemplary = await window.open('tern-110.panel.yaml')
    const worth = [/per\scell\s0\.614/, /2\.63\sUSD\/W/, /171\sW\/m2/, /30\.6\sW\/kg/, /hot\scell\s90/]
    for (const one of worth) await window.line(exemplary, one).waitFor()
    await here.picture('exemplary')
    const box = (await exemplary.boundingBox())!
    const edge = box.x + box.width
    for (const one of worth) {
      const { x, width } = (await window.line(exemplary, one).locator('> span').boundingBox())!
      expect(x + width, String(one)).toBeLessThan(edge)
    }
  })

  test('plain YAML syntax is reported too, where no other extension does', async () => {
    const broken = await window.open('comma-in-braces.panel.yaml')
    await window.squiggle(broken, 'error').waitFor()
    await window.command('Problems: Focus on Problems View')
    await window.problems.first().waitFor()
    await here.picture('problems')
  })

  test('a new record begins as a commented skeleton beside the one that is open', async () => {
    await here.page.getByRole('tab', { name: /^tern-110/ }).click()
    await window.command('Wattproof: New Panel Record')
    await window.input.fill('knot-70')
    await here.picture('new-record')
    await here.page.keyboard.press('Enter')
    const fresh = window.editor('knot-70.panel.yaml')
    await window.line(fresh, /format:\s1/).waitFor()
    await here.picture('skeleton')
  })

  test('or, from a system, where the panels of its library are', async () => {
    await window.open('boat.system.yaml')
    await window.command('Wattproof: New Panel Record')
    await window.input.fill('dunlin-80')
    await here.page.keyboard.press('Enter')
    await window.line(window.editor('systems/panels/dunlin-80.panel.yaml'), /format:\s1/).waitFor()
  })

  test('an id is renamed in a system, and with it the file and every other place that names it', async () => {
    const text = (path: string) => readFileSync(join(here.folder, 'systems', path), 'utf8')
    const [van, hazard] = ['van.system.yaml', 'hazards/soft-insulation.system.yaml'] as const
    const before = { van: text(van), hazard: text(hazard), record: text('panels/gannet-200.panel.yaml') }
    await window.rename(await window.open(van), 'gannet-200', 'gannet-201')
    await expect.poll(() => text('panels/gannet-201.panel.yaml'), { timeout: 10_000 }).toBe(before.record)
    const renamed = (before: string) => before.replaceAll('gannet-200', 'gannet-201')
    await expect.poll(() => text(van), { timeout: 10_000 }).toBe(renamed(before.van))
    await expect.poll(() => text(hazard), { timeout: 10_000 }).toBe(renamed(before.hazard))
    expect(existsSync(join(here.folder, 'systems/panels/gannet-200.panel.yaml'))).toBe(false)
  })

  test('a record is typed line by line: Enter ends a line, whatever is proposed', async () => {
    const path = join(here.folder, begun)
    const lines = [
      'construction: flexible',
      'stc: { pmax: 110 W, vmp: 18.6 V }',
      'size: { length: 1.19 m }',
      'weight: 2 kg',
    ]
    const typed = await window.open('gull-110.panel.yaml')
    await window.line(typed, /Gull/).click()
    await here.page.keyboard.press('Control+End')
    for (const line of lines) {
      await here.page.keyboard.type(line, { delay: 60 })
      await here.page.keyboard.press('Enter')
    }
    await here.page.keyboard.press('Control+S')
    await expect.poll(() => readFileSync(path, 'utf8'), { timeout: 10_000 }).toBe(`${head}${lines.join('\n')}\n`)
    await here.picture('typed')
  })

  test('nothing went wrong behind the window, and nothing left this machine', () => {
    expect(hostErrors(here.server)).toEqual([])
    expect(here.outside).toEqual([])
  })
})
