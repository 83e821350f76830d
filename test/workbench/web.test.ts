import type { Locator } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { Outcome } from './cases/run-cases.ts'
import { pictureFailures } from './driver/failures.ts'
import { missing } from './driver/visit.ts'
import { visitWeb, type WebVisit } from './driver/web.ts'
import { inked, viewIn } from './driver/view.ts'
import { windowIn, type Window } from './driver/window.ts'

// VS Code in a browser, where the extension and its language server are workers and no folder is on a disk
describe.skipIf(missing)(missing ?? 'the packed extension in a browser', () => {
  test('every case passes in the extension host', async () => {
    const here = await visitWeb(true)
    let outcomes: readonly Outcome[] = []
    const lines: string[] = []
    try {
      let settle: (code: number) => void
      const ended = new Promise<number>((resolve) => (settle = resolve))
      await here.page.exposeFunction('codeAutomationLog', (_: string, words: unknown[]) => {
        const line = words.join(' ')
        if (line.startsWith('outcomes ')) outcomes = JSON.parse(line.slice(9)) as Outcome[]
        else lines.push(line)
      })
      await here.page.exposeFunction('codeAutomationExit', (code: number) => settle(code))
      await here.page.goto(here.address)
      const code = await Promise.race([ended, new Promise<null>((resolve) => setTimeout(() => resolve(null), 150_000))])
      expect(code, `the cases did not run:\n${lines.slice(-20).join('\n')}`).not.toBeNull()
      expect(outcomes.length).toBeGreaterThan(10)
      expect(outcomes.filter(({ problem }) => problem)).toEqual([])
      expect(here.outside).toEqual([])
    } finally {
      await here.close()
    }
  }, 200_000)

  describe('in its window', () => {
    let here: WebVisit
    let window: Window
    let editor: Locator
    const name = 'decimal-point-moved.panel.yaml'
    const item = (name: string) => here.page.locator('.explorer-folders-view').getByRole('treeitem', { name })

    beforeAll(async () => {
      here = await visitWeb(false)
      window = windowIn(here.page)
      await here.page.goto(here.address)
      await item('mistakes').click({ timeout: 60_000 })
      await item(name).dblclick()
      editor = window.editor(name)
    })
    afterAll(() => here?.close())
    pictureFailures(() => here)

    test('the slip is marked, and the other lines say what they are worth', async () => {
      await window.squiggle(editor, 'error').waitFor()
      await window.line(editor, /pmax:\s110\sW\s+17\.1\s%,\shot\s82\.8\sW/).waitFor()
      await here.picture('record')
    })

    test('a new record begins as a commented skeleton', async () => {
      await window.command('Wattproof: New Panel Record')
      await window.input.fill('knot-70')
      await here.page.keyboard.press('Enter')
      await window.line(window.editor('knot-70.panel.yaml'), /format:\s1/).waitFor()
      await here.picture('skeleton')
    })

    test('an id is renamed in a system, and with it the file', async () => {
      await item('mistakes').first().click() // makes room
      await item('systems').first().click()
      await item('van.system.yaml').dblclick()
      const van = window.editor('van.system.yaml')
      await window.rename(van, 'gannet-200', 'gannet-201')
      // the hover over the cursor; the first may come before the file is seen under its new name
      await window.press('Control+K Control+I', window.hover.getByText('Gannet 200').first())
      await here.page.keyboard.press('Escape')
    })

    test('a panel is put on a surface; without git there is nothing to hold changes against', async () => {
      await item('boat.system.yaml').dblclick()
      await window.editor('boat.system.yaml').waitFor()
      await window.command('Wattproof: Put a Panel on a Surface')
      await window.option('coachroof').click()
      await window.option(/skua-110.* rated, /).click()
      await here.page.locator('.tab.dirty').filter({ hasText: 'boat.system.yaml' }).waitFor()
      await here.page.keyboard.press('Control+Z')
      await window.command('Wattproof: Show What Changed')
      await window.notice('There is no git repository with a commit in this window.')
      await window.hideNotices()
    })

    test('records as a table, and a climate from the latitude', async () => {
      await window.command('Wattproof: Show Table of Records')
      await window.option(/^Panels$/).click()
      await viewIn(here.page).getByRole('cell', { name: 'Tern 110' }).first().waitFor()
      await here.picture('table')
      await window.command('Wattproof: New Climate Record from Weather or Latitude')
      await window.option('Guessed from the latitude').click()
      await window.input.fill('43.5')
      await here.page.keyboard.press('Enter')
      await window.line(window.editor('latitude-43.5.climate.yaml'), 'latitude: 43.5').waitFor()
    })

    const breakPromise = () => {
      // eslint-disable-next-line @typescript-eslint/no-floating-promises -- what the server has to survive
      Promise.reject(new Error('broken'))
    }
    test.each([
      { death: 'ends', how: () => globalThis.close() },
      { death: 'fails where nothing catches it', how: () => void setTimeout(() => JSON.parse('{'), 0) },
      {
        death: 'breaks a promise that nobody waits for',
        how: breakPromise,
      },
    ])('a language server that $death comes back, and no finding is left over or there twice', async ({ how }) => {
      const [first] = await servers()
      await first!.worker.evaluate(how).catch(() => null) // a worker that is gone does not answer
      await expect
        .poll(async () => (await servers()).map(({ name }) => name), { timeout: 20_000 })
        .toEqual([expect.not.stringMatching(first!.name) as string])
      await here.page.locator('.tab').filter({ hasText: name }).click()
      await window.squiggle(editor, 'error').waitFor()
      await window.token(editor, '2.21 V').click({ force: true }) // the cursor may lie over it
      await window.press('Control+.', window.fixes.and(here.page.locator('.focused')).filter({ hasText: '22.1 V' }))
      await here.page.keyboard.press('Enter')
      await window.squiggle(editor, 'error').waitFor({ state: 'detached' })
      await here.page.keyboard.press('Control+Z')
      await window.squiggle(editor, 'error').waitFor()
      expect(here.outside).toEqual([])
    })

    test('the view beside the record is drawn in the worker, and follows what is typed', async () => {
      await item('library').click()
      await item('panels').first().click()
      await item('tern-110.panel.yaml').dblclick()
      const record = window.editor('tern-110.panel.yaml')
      await record.waitFor()
      await window.command('Wattproof: Show Beside')
      const view = viewIn(here.page)
      await view.getByRole('heading', { name: 'Outline to scale' }).waitFor()
      await view.getByRole('button', { name: 'Voc 22.1 V', exact: true }).first().waitFor()
      await here.picture('beside')
      await window.token(record, '22.1 V').click({ force: true })
      await view.locator('[data-field="/stc/voc"].here').first().waitFor()
    })

    test('the sheet is read in a worker of its own and drawn beside the record', async () => {
      await window.command('Wattproof: Show Sheet')
      const view = viewIn(here.page)
      await view
        .locator('.paper')
        .getByRole('button', { name: 'Voc 22.1 V, as the sheet prints it' })
        .waitFor({ timeout: 40_000 })
      const frame = await (await view.locator('body').elementHandle()).ownerFrame()
      expect(await inked(frame!)).toBeGreaterThan(0.005)
      await here.picture('sheet')
      expect(here.outside).toEqual([])
    })

    /** The workers that hold a language server, with the names of their locks. */
    async function servers() {
      const named = here.page.workers().map(async (worker) => ({
        worker,
        name: (await worker.evaluate(() => self.name).catch(() => '')).replace(/^.* -> /, ''),
      }))
      return (await Promise.all(named)).filter(({ name }) => name.startsWith('wattproof-'))
    }
  })
})
