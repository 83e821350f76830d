import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { chromium, type Page } from 'playwright-core'
import { withoutWaitingForViews } from './keys.ts'

const flags = [
  ...['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
  ...['--disable-background-networking', '--disable-component-update', '--disable-sync'],
]

export interface Browser {
  readonly page: Page
  /** Addresses outside this machine that the page asked for; there should be none. */
  readonly outside: readonly string[]
  close(): Promise<void>
}

export const chromiumPath = (): string | undefined =>
  process.env.CHROMIUM ??
  (process.env.PATH ?? '')
    .split(delimiter)
    .flatMap((folder) => ['chromium', 'chromium-browser'].map((name) => join(folder, name)))
    .find((path) => existsSync(path))

export async function startBrowser(): Promise<Browser> {
  const profile = mkdtempSync(join(tmpdir(), 'wattproof-browser-'))
  // a webview lives in a page of another origin, which needs its cookies for the worker that feeds it
  const cookies = { profile: { cookie_controls_mode: 0, block_third_party_cookies: false } }
  mkdirSync(join(profile, 'Default'))
  writeFileSync(join(profile, 'Default', 'Preferences'), JSON.stringify(cookies))
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: chromiumPath(),
    args: flags,
    viewport: { width: 1300, height: 800 },
    locale: 'en-US',
  })
  const outside: string[] = []
  context.on('request', (request) => {
    const { protocol, hostname } = new URL(request.url())
    if (/^(https?|wss?):$/.test(protocol) && !/(^|\.)localhost$|^127\./.test(hostname)) outside.push(request.url())
  })
  const page = withoutWaitingForViews(context.pages()[0] ?? (await context.newPage()))
  page.setDefaultTimeout(20_000)
  return {
    page,
    outside,
    close: async () => {
      await context.close()
      rmSync(profile, { recursive: true, force: true })
    },
  }
}
