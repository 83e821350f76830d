import { build, type BuildOptions, type Plugin } from 'esbuild'
import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { startServer } from '../editor/client.ts'
import { scratch } from './run.ts'

/** One rule stumbles over a record of one name, as a mistake of ours would: with what the record says in what is thrown. */
const stumbling: Plugin = {
  name: 'stumbling',
  setup({ onLoad }) {
    onLoad({ filter: /rules[\\/]panel[\\/]voc-below-vmp[.]ts$/ }, ({ path }) => {
      const source = readFileSync(path, 'utf8')
      const body = /check\(\{ stc: \{ voc, vmp \} \}\) \{/
      const thrown =
        'check({ stc: { voc, vmp }, name }) { if (name.text === "secret") throw new TypeError(`no ${name.text}`);'
      if (!body.test(source)) throw new Error('the rule that is to stumble has changed')
      return { contents: source.replace(body, thrown), loader: 'ts' }
    })
  },
}
const odd = 'format: 1\nname: secret\nstc: { voc: 22.1 V, vmp: 18.6 V, imp: 5,92 A }\n'
const sound = 'format: 1\nname: Tern 110\nstc: { voc: 2.21 V, vmp: 18.6 V }\n'
const trace = /^wattproof \d+\.\d+\.\d+: internal-error in .*odd\.panel\.yaml: TypeError\n {4}at /

/** The programs as they are shipped, but for that rule. */
const folder = mkdtempSync(join(tmpdir(), 'stumbling-'))
afterAll(() => rmSync(folder, { recursive: true }))
beforeAll(async () => {
  cpSync('dist', folder, { recursive: true })
  const { programs } = (await import(pathToFileURL('.scripts/build/programs.mjs').href)) as {
    programs: { entry: string; outfile: string }[]
  }
  const wanted = programs.filter(({ outfile }) => /dist[/](?:terminal|server)[.]js$/.test(outfile))
  for (const { entry, ...options } of wanted)
    await build({
      ...(options as BuildOptions),
      entryPoints: [entry],
      outfile: join(folder, basename(options.outfile)),
      plugins: [stumbling],
      metafile: false,
    })
}, 60_000)

test('the command line reports the rest, one finding in the file, and the stack on standard error without its contents', () => {
  const cwd = scratch({ 'odd.panel.yaml': odd, 'sound.panel.yaml': sound })
  const run = (...args: string[]) =>
    spawnSync(process.execPath, [join(folder, 'wattproof.js'), ...args], { cwd, encoding: 'utf8' })
  const { status, stdout, stderr } = run('check', '--format', 'json')
  const { files } = JSON.parse(stdout) as { files: { findings: { rule: string; message: string }[] }[] }
  const [here, there] = files.map(({ findings }) => findings.map(({ rule }) => rule))
  expect(here!.filter((rule) => rule === 'internal-error')).toHaveLength(1)
  expect(here).toContain('decimal-comma-splits')
  expect(there).toContain('voc-below-vmp')
  expect(stderr).toMatch(trace)
  expect(stderr).not.toContain('secret')
  expect(status).toBe(1)
  const values = run('values', 'odd.panel.yaml')
  expect({ status: values.status, out: values.stdout }).toEqual({ status: 2, out: '' })
  expect(values.stderr).toMatch(trace)
  expect(values.stderr).toContain('please report it')
})

test('the language server goes on, with one finding in the file and the stack in its log', async () => {
  const client = await startServer({ args: [join(folder, 'server.js'), '--stdio'] })
  const uri = (name: string) => pathToFileURL(join(folder, name)).href
  await client.open(uri('odd.panel.yaml'), odd)
  await client.open(uri('sound.panel.yaml'), sound)
  const [here, there] = [await client.pull(uri('odd.panel.yaml')), await client.pull(uri('sound.panel.yaml'))]
  expect(here.filter(({ code }) => code === 'internal-error')).toHaveLength(1)
  expect(there.map(({ code }) => code)).toContain('voc-below-vmp')
  await client.until(() => client.log.length > 0)
  expect(client.log[0]).toMatch(trace)
  expect(client.log.join('\n')).not.toContain('secret')
  await client.stop()
})
