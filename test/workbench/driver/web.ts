import { spawn } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { createServer, type AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { unzip } from '../../package/zip.ts'
import { startBrowser, type Browser } from './browser.ts'
import { bundle, otherYamlExtension, writeManifest } from './extensions.mjs'
import { end, printed } from './processes.ts'
import { settings } from './settings.ts'
import { pictures, vsix } from './visit.ts'

/** A workbench that lives in a browser alone, with the packed extension and a copy of the samples, which it never writes to. */
export interface WebVisit extends Browser {
  readonly address: string
  picture(name: string): Promise<void>
}

/** @param withCases  whether the window runs the cases in its extension host as soon as it is open */
export async function visitWeb(withCases: boolean): Promise<WebVisit> {
  const scratch = mkdtempSync(join(tmpdir(), 'wattproof-web-'))
  const folder = join(scratch, 'samples')
  const extensions = join(scratch, 'extensions')
  cpSync('samples', folder, { recursive: true })
  mkdirSync(pictures, { recursive: true })
  const cases = layExtensions(extensions)
  const port = await freePort()
  const address = `http://localhost:${port}/`
  const options = {
    ...{ host: 'localhost', port, folderPath: folder, extensionDevelopmentPath: extensions },
    ...(withCases && { extensionTestsPath: cases }),
  }
  const server = spawn(process.execPath, ['test/workbench/driver/web-server.mjs', JSON.stringify(options)])
  const [browser] = await Promise.all([startBrowser(), printed(server, /Listening on http/)])
  // it says so a moment before it is true
  while (!(await fetch(address).catch(() => null))) await pause(50)
  return {
    ...browser,
    address,
    picture: async (name) => void (await browser.page.screenshot({ path: join(pictures, `web-${name}.png`) })),
    close: async () => {
      await browser.close()
      await end(server)
      rmSync(scratch, { recursive: true, force: true })
    },
  }
}

/** The packed extension, beside the other one for YAML and one that holds the cases. Returns the path of the cases. */
function layExtensions(folder: string): string {
  unzip(readFileSync(vsix), join(folder, 'packed'))
  otherYamlExtension(join(folder, 'other-yaml'))
  const companion = join(folder, 'companion')
  const contributes = { configurationDefaults: settings }
  writeManifest(companion, { name: 'companion', publisher: 'wattproof', contributes })
  return bundle('web', join(companion, 'cases.js'), 'browser')
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, 'localhost', () => {
      const { port } = server.address() as AddressInfo
      server.close(() => resolve(port))
    })
  })
}
