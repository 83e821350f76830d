import { existsSync } from 'node:fs'
import { chromium, type Browser } from 'playwright-core'
import { chromiumPath } from '../workbench/driver/browser.ts'

/** What keeps these tests from running on this machine; null where all is there. */
export const missing: string | null = existsSync(chromiumPath() ?? '')
  ? null
  : 'there is no Chromium: apt-get install chromium'

// continuous integration sets this, so that nothing is skipped unseen
if (missing && process.env.WATTPROOF_NO_SKIP) throw new Error(missing)

export const launch = (): Promise<Browser> =>
  chromium.launch({ executablePath: chromiumPath()!, args: ['--no-sandbox', '--disable-gpu'] })
