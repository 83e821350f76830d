import type { Page } from 'playwright-core'

/** A key is answered within milliseconds. */
const patience = 5000

/**
 * A key that puts a view away, such as Enter in an input over one, is sometimes never answered by the browser, though the window has
 * taken it: whether it has an effect is what the tests look at anyway.
 */
export function withoutWaitingForViews(page: Page): Page {
  const { keyboard } = page
  const press = keyboard.press.bind(keyboard)
  keyboard.press = async (key, options) => {
    await Promise.race([press(key, options), page.waitForTimeout(patience)])
  }
  return page
}
