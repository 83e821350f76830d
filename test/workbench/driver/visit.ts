import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { installed, webInstalled } from '../install/place.mjs'
import { chromiumPath, startBrowser, type Browser } from './browser.ts'
import { startEditorServer, type Conditions, type EditorServer } from './editor-server.ts'
import { end } from './processes.ts'

export const vsix = resolve(process.env.WATTPROOF_VSIX ?? 'wattproof.vsix')
export const pictures = resolve('.output/screenshots')

/** What keeps these tests from running on this machine, as the name of a skipped block; null where all is there. */
export const missing: string | null =
  !installed() || !webInstalled()
    ? 'the workbench is not installed: node test/workbench/install/install.mjs'
    : !existsSync(chromiumPath() ?? '')
      ? 'there is no Chromium: apt-get install chromium'
      : null

// continuous integration sets this, so that nothing is skipped unseen
if (missing && process.env.WATTPROOF_NO_SKIP) throw new Error(missing)

/** One server, one browser and one copy of the samples, for the length of a test file. */
export interface Visit extends Browser {
  readonly server: EditorServer
  readonly folder: string
  picture(name: string): Promise<void>
}

export async function visit(extensions: readonly string[], conditions?: Conditions): Promise<Visit> {
  const scratch = mkdtempSync(join(tmpdir(), 'wattproof-folder-'))
  const folder = join(scratch, 'samples')
  cpSync('samples', folder, { recursive: true })
  mkdirSync(pictures, { recursive: true })
  const [server, browser] = await Promise.all([startEditorServer(extensions, conditions), startBrowser()])
  return {
    ...browser,
    server,
    folder,
    picture: async (name) => void (await browser.page.screenshot({ path: join(pictures, `${name}.png`) })),
    close: async () => {
      await browser.close()
      await end(server.process)
      for (const path of [scratch, server.data]) rmSync(path, { recursive: true, force: true })
    },
  }
}
