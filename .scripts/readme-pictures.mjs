// Takes the pictures of the README: the packed extension in the workbench that the tests drive, and the page for a customer in a
// browser. Run `npm run package` and `node test/workbench/install/install.mjs` first.
//   npm run readme-pictures
import { build } from 'esbuild'
import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'

const outfile = resolve('.output/drive.mjs')
mkdirSync('.output', { recursive: true })
await build({
  stdin: {
    contents: `export { pageOf } from './test/workbench/driver/editor-server.ts'
export { viewIn } from './test/workbench/driver/view.ts'
export { visit, vsix } from './test/workbench/driver/visit.ts'
export { windowIn } from './test/workbench/driver/window.ts'
export { launch } from './test/report/browser.ts'`,
    resolveDir: '.',
  },
  bundle: true,
  packages: 'external',
  platform: 'node',
  format: 'esm',
  outfile,
  logLevel: 'warning',
})
const { pageOf, viewIn, visit, vsix, windowIn, launch } = await import(pathToFileURL(outfile).href)
const media = (name) => resolve('client/media', name)

await inWorkbench()
await onPaper()

async function inWorkbench() {
  const here = await visit([vsix])
  try {
    const tern = `${here.folder}/library/panels/tern-110.panel.yaml`
    writeFileSync(tern, readFileSync(tern, 'utf8').replace('weight: 2.2 kg', 'weight: 2.6 kg'))
    const window = windowIn(here.page)
    await here.page.goto(pageOf(here.server, here.folder))
    await window.ready()
    const record = await window.open('decimal-point-moved.panel.yaml')
    await window.squiggle(record, 'error').waitFor()
    await window.token(record, '2.21 V').hover()
    await window.hover.getByText('Voc 2.21 V is probably 22.1 V').first().waitFor()
    await here.page.screenshot({ path: media('workbench.png') })

    await here.page.setViewportSize({ width: 1500, height: 900 })
    await window.command('View: Toggle Primary Side Bar Visibility')
    const panel = await window.open('tern-110.panel.yaml')
    await window.command('Wattproof: Show Sheet')
    await viewIn(here.page).locator('.mark.other').first().waitFor({ timeout: 60_000 })
    await window.token(panel, '2.6 kg').click({ force: true })
    await viewIn(here.page).locator('.mark.here').first().waitFor()
    await here.page.screenshot({ path: media('sheet.png') })

    const system = await window.open('boat.system.yaml')
    await window.command('Wattproof: Show Beside')
    await viewIn(here.page).getByRole('heading', { name: 'One-line diagram' }).waitFor()
    await window.token(system, 'coachroof').click({ force: true })
    await viewIn(here.page).locator('.here').first().waitFor()
    await here.page.screenshot({ path: media('beside.png') })
  } finally {
    await here.close()
  }
}

async function onPaper() {
  const page = resolve('.output/boat.html')
  const written = spawnSync(process.execPath, [
    'dist/wattproof.js',
    'report',
    'samples/systems/boat.system.yaml',
    '-o',
    page,
  ])
  if (written.status !== 0) throw new Error(String(written.stderr))
  const browser = await launch()
  const tab = await browser.newPage({ viewport: { width: 780, height: 720 } })
  await tab.goto(pathToFileURL(page).href)
  await tab.screenshot({ path: media('page.png') })
  await browser.close()
}
