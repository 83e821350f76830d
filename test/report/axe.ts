import axe from 'axe-core'
import type { Frame, Page } from 'playwright-core'

/** Serious and critical faults that axe-core finds on a page or a frame of one, each with what it was found at. */
export async function faults(page: Page | Frame): Promise<readonly string[]> {
  await page.evaluate(axe.source)
  const { violations } = await page.evaluate(() => (globalThis as unknown as { axe: typeof axe }).axe.run())
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(', ')}`)
}
