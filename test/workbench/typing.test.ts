import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Locator } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { littleBoat } from '../editor/little-boat.ts'
import { pageOf } from './driver/editor-server.ts'
import { pictureFailures } from './driver/failures.ts'
import { missing, visit, vsix, type Visit } from './driver/visit.ts'
import { windowIn, type Window } from './driver/window.ts'

const record = 'systems/panels/knot-70.panel.yaml'
const boat = 'systems/little.system.yaml'
const panel = readFileSync('samples/systems/panels/puffin-115.panel.yaml', 'utf8')
const wrong = 'weight: 1.9 V'

// what a person sees who types a record and a boat, line by line, and looks at the findings after each line
describe.skipIf(missing)(missing ?? 'a record and a boat typed in a window', () => {
  let here: Visit
  let window: Window

  beforeAll(async () => {
    here = await visit([vsix])
    for (const path of [record, boat]) writeFileSync(join(here.folder, path), '')
    window = windowIn(here.page)
    await here.page.goto(pageOf(here.server, here.folder))
    await window.ready()
  })
  afterAll(() => here?.close())
  pictureFailures(() => here)

  test(
    'a record: no error on the line being typed, none at the end',
    () => typedWhole(record, panel, /1\.9\skg\s+60\.5\sW\/kg/),
    400_000,
  )

  test(
    'a boat: no error on the line being typed, none at the end',
    () => typedWhole(boat, littleBoat, /loads:\s+all\smet/),
    400_000,
  )

  test('an error of value does not wait until the line is left', async () => {
    await window.tab('knot-70').click()
    const editor = window.editor('knot-70.panel.yaml')
    await window.line(editor, /weight:\s1\.9/).click()
    await here.page.keyboard.press('End')
    await here.page.keyboard.press('Shift+Home')
    await here.page.keyboard.type(wrong, { delay: 30 })
    await expect.poll(() => errorsHere(editor), { timeout: 30_000 }).toBe(1)
    await here.picture('typed-slip')
  })

  /** @param last  what a line says of itself when the whole file has been looked at */
  async function typedWhole(path: string, text: string, last: RegExp): Promise<void> {
    const editor = await window.open(path.split('/').at(-1)!)
    await editor.locator('.view-lines').click()
    const doubted: string[] = []
    for (const line of text.trimEnd().split('\n')) {
      await indented(line.search(/\S/))
      await here.page.keyboard.type(line.trimStart(), { delay: 20 })
      // one look, when the editor has asked for the findings of the line
      await here.page.waitForTimeout(500)
      if ((await errorsHere(editor)) > 0) doubted.push(line)
      await enter()
    }
    await here.page.keyboard.press('Control+S')
    await here.picture(`typed-${path.split('/').at(-1)!.split('.')[0]!}`)
    expect(doubted).toEqual([])
    await expect
      .poll(() => readFileSync(join(here.folder, path), 'utf8').trimEnd(), { timeout: 10_000 })
      .toBe(text.trimEnd())
    await window.line(editor, last).waitFor()
    await here.page.waitForTimeout(2500)
    expect(await editor.locator('.squiggly-error').count()).toBe(0)
  }

  const cursor = async () =>
    /Ln (\d+), Col (\d+)/
      .exec((await window.cursor.textContent()) ?? '')
      ?.slice(1)
      .map(Number) ?? [0, 0]

  /** Ends a line and waits until the cursor is on the next; who sees that a list of proposals took the key presses it again. */
  async function enter(): Promise<void> {
    const [before = 0] = await cursor()
    for (let left = 2; ; left--) {
      await here.page.keyboard.press('Enter')
      const isNext = async () => (await cursor())[0] === before + 1
      if (
        await expect
          .poll(isNext, { timeout: 3000 })
          .toBe(true)
          .then(
            () => true,
            () => false,
          )
      )
        return
      await here.picture(`enter-${before}`)
      if (left === 0) throw new Error(`Enter does not end line ${before}`)
    }
  }

  /** Brings the cursor of a fresh line to a column, as a person would: what the editor indents by is kept or taken back. */
  async function indented(spaces: number): Promise<void> {
    const now = (await cursor())[1]! - 1
    for (let n = now; n < spaces; n++) await here.page.keyboard.press('Space')
    if (now <= spaces) return
    await here.page.keyboard.press('Shift+Home')
    await here.page.keyboard.press('Delete')
    for (let n = 0; n < spaces; n++) await here.page.keyboard.press('Space')
  }

  /** How many errors are marked on the line of the cursor. */
  async function errorsHere(editor: Locator): Promise<number> {
    const cursor = await editor.locator('.cursor').first().boundingBox()
    const marks = await editor.locator('.squiggly-error').all()
    const boxes = await Promise.all(marks.map((mark) => mark.boundingBox().catch(() => null)))
    return boxes.filter((box) => box && cursor && Math.abs(box.y + box.height / 2 - cursor.y - cursor.height / 2) < 10)
      .length
  }
})
