import { execFileSync } from 'node:child_process'
import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { hostErrors, pageOf } from './driver/editor-server.ts'
import { pictureFailures } from './driver/failures.ts'
import { viewIn } from './driver/view.ts'
import { missing, visit, vsix, type Visit } from './driver/visit.ts'
import { windowIn, type Window } from './driver/window.ts'

describe.skipIf(missing)(missing ?? 'changes since a revision, and a panel that is chosen', () => {
  let here: Visit
  let window: Window
  const panel = 'systems/panels/puffin-115.panel.yaml'

  beforeAll(async () => {
    here = await visit([vsix], { settings: { 'git.enabled': true, 'git.autofetch': false } })
    window = windowIn(here.page)
    const git = (...command: string[]) =>
      execFileSync('git', ['-c', 'user.name=test', '-c', 'user.email=test', ...command], { cwd: here.folder })
    // of each system that names the panel two reviews are made: those of the boat are enough
    for (const name of ['hazards', 'measured']) rmSync(join(here.folder, 'systems', name), { recursive: true })
    git('init', '-q', '-b', 'main')
    git('add', '.')
    git('commit', '-qm', 'as it was')
    const path = join(here.folder, panel)
    writeFileSync(path, readFileSync(path, 'utf8').replace(/voc: (\d+)\.(\d) V/, 'voc: $1$2 V'))
    await here.page.goto(pageOf(here.server, here.folder))
    await window.ready()
  })
  afterAll(() => here?.close())
  pictureFailures(() => here)

  test('Show What Changed: findings that are new, and values that differ, down to the system', async () => {
    await window.open('puffin-115.panel.yaml')
    await window.squiggle(window.editor('puffin-115.panel.yaml'), 'error').waitFor()
    await expect
      .poll(
        async () => {
          await window.command('Wattproof: Show What Changed')
          const isAsked = await window
            .option('The last commit')
            .waitFor({ timeout: 2000 })
            .then(() => true)
            .catch(() => false)
          if (!isAsked) await here.page.keyboard.press('Escape') // the editor has not found the repository yet
          return isAsked
        },
        { timeout: 30_000 },
      )
      .toBe(true)
    await window.option('The last commit').click()
    const page = viewIn(here.page)
    await page.getByRole('heading', { name: 'systems/boat.system.yaml' }).waitFor()
    await page.getByRole('heading', { name: panel }).waitFor()
    await page.getByRole('heading', { name: 'systems/boat.system.yaml' }).waitFor()
    await page.getByText("exceeds the controller's 100 V").first().waitFor()
    await page.getByRole('columnheader', { name: 'before' }).first().waitFor()
    await here.picture('changes')
  })

  test('Put a Panel on a Surface: chosen by its figures, written with count and wiring, undone with one key', async () => {
    const boat = await window.open('boat.system.yaml')
    await window.command('Wattproof: Put a Panel on a Surface')
    await window.option('coachroof').click()
    await window.option(/skua-110.* rated, /).waitFor()
    await here.picture('put-panel')
    await window.option(/ rated, /).click()
    await here.page.locator('.tab.dirty').filter({ hasText: 'boat.system.yaml' }).waitFor()
    await window.notice(' on coachroof, ')
    await window.hideNotices()
    await boat.click()
    await here.page.keyboard.press('Control+Z')
    await here.page.locator('.tab.dirty').filter({ hasText: 'boat.system.yaml' }).waitFor({ state: 'detached' })
  })

  test('nothing went wrong behind the window', () => {
    expect(hostErrors(here.server)).toEqual([])
  })
})
