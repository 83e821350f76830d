import type { Locator, Page } from 'playwright-core'
import { expect } from 'vitest'

/** The parts of the window that a test looks at or presses. */
export type Window = ReturnType<typeof windowIn>

export function windowIn(page: Page) {
  const quickInput = page.locator('.quick-input-widget')

  /** A key can meet a window that is not ready for it, so it is pressed until the effect shows. */
  async function press(keys: string, effect: Locator): Promise<void> {
    for (let left = 4; ; left--) {
      for (const chord of keys.split(' ')) await page.keyboard.press(chord)
      try {
        return await effect.waitFor({ timeout: 4000 })
      } catch (error) {
        if (left === 0) throw error
        await page.keyboard.press('Escape')
      }
    }
  }

  async function choose(keys: string, text: string, option: string | RegExp): Promise<void> {
    await pressAndType(keys, text)
    const wanted = quickInput.getByRole('option', { name: option })
    await wanted.first().waitFor()
    // it may be listed before the list is filtered, and then Enter takes nothing
    const taken = wanted.and(quickInput.locator('.monaco-list-row.focused'))
    await taken.waitFor({ timeout: 3000 }).catch(() => {})
    await page.waitForTimeout(100)
    await page.keyboard.press('Enter')
  }

  /** What opens in the window in that moment takes the focus, and the input closes before a word is in it. */
  async function pressAndType(keys: string, text: string, tries = 3): Promise<void> {
    await press(keys, quickInput)
    const input = quickInput.locator('input.input').first()
    await input.fill(text, { timeout: 5000 }).catch((error: unknown) => {
      if (tries === 0) throw error
      return pressAndType(keys, text, tries - 1)
    })
  }

  /** The cursor may lie over it, and a line that is drawn anew in that moment has nothing to click on. */
  async function clicked(place: Locator, tries = 5): Promise<void> {
    await place.click({ force: true }).catch((error: unknown) => {
      if (tries === 0 || !String(error).includes('not visible')) throw error
      return clicked(place, tries - 1)
    })
  }

  /** The window's own dialog for files writes a folder over what is typed, on a busy machine twice. */
  async function typePath(path: string, offered: Locator): Promise<void> {
    const input = quickInput.locator('input.input').first()
    await expect.poll(() => input.inputValue(), { timeout: 10_000 }).toMatch(/\/$/)
    const retyped = async () => {
      await input.fill(path)
      await offered.waitFor({ timeout: 4000 }).catch(() => {})
      return [await input.inputValue(), await offered.isVisible()]
    }
    await expect.poll(retyped, { timeout: 20_000 }).toEqual([path, true])
  }

  const editor = (name: string) => page.locator(`.editor-instance .monaco-editor[data-uri$="/${name}"]`).first()

  return {
    press,
    typePath,
    editor,
    async ready(): Promise<void> {
      await page.waitForFunction(() => 'driver' in globalThis, null, { timeout: 60_000 })
      await page.evaluate(() =>
        (
          globalThis as unknown as { driver: { whenWorkbenchRestored(): Promise<void> } }
        ).driver.whenWorkbenchRestored(),
      )
    },
    command: (title: string) => choose('F1', `>${title}`, title),
    async open(name: string): Promise<Locator> {
      await choose('Control+P', name, new RegExp(name.replaceAll('.', '\\.')))
      await editor(name).waitFor()
      return editor(name)
    },
    async rename(within: Locator, id: string, newId: string): Promise<void> {
      const place = within.locator('.view-line').getByText(id).first()
      await place.waitFor()
      await clicked(place)
      const box = page.locator('.rename-box input')
      await press('F2', box)
      await box.fill(newId)
      await page.keyboard.press('Enter')
      await within.locator('.view-line').getByText(newId).first().waitFor()
    },
    line: (within: Locator, text: string | RegExp) => within.locator('.view-line').filter({ hasText: text }).first(),
    token: (within: Locator, text: string) => within.locator('.view-line').getByText(text, { exact: true }).first(),
    squiggle: (within: Locator, kind: 'error' | 'warning' | 'info') => within.locator(`.squiggly-${kind}`).first(),
    hover: page.locator('.monaco-hover .monaco-hover-content').filter({ visible: true }),
    cursor: page.locator('[id="status.editor.selection"]'),
    fixes: page.locator('.action-widget [role="option"]'),
    problems: page.locator('.markers-panel [role="treeitem"]'),
    completions: page.locator('.suggest-widget.visible [role="option"]'),
    outline: page.locator('.outline-tree [role="treeitem"]'),
    /** Messages shown in the window, read where it is kept: a driven window shows no toasts. */
    async notice(text: string): Promise<Locator> {
      const center = page.locator('.notifications-center.visible')
      if (!(await center.isVisible())) await page.locator('[id="status.notifications"]').click()
      const notice = center.locator('.notification-list-item').filter({ hasText: text }).first()
      await notice.waitFor()
      return notice
    },
    /** Messages shown in the window lies over a part of it until it is put away. */
    hideNotices: () => page.locator('[id="status.notifications"]').click(),
    input: quickInput.locator('input.input').first(),
    option: (name: string | RegExp) => quickInput.getByRole('option', { name }).first(),
    tab: (name: string) => page.locator('.tab').filter({ hasText: name }).first(),
  }
}
