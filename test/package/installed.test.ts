import { execFileSync, spawnSync } from 'node:child_process'
import { chmodSync, cpSync, existsSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { startServer } from '../editor/client.ts'
import { nodes } from './nodes.mjs'

const missing = nodes.filter(({ program }) => !existsSync(program)).map(({ version }) => `Node ${version}`)
if (missing.length > 0 && process.env.WATTPROOF_NO_SKIP)
  throw new Error(`${missing.join(', ')}: node test/package/nodes.mjs`)

// what `npm install` makes of the package: nothing of this checkout is beside it
describe.skipIf(missing.length > 0)('the tarball, installed in an empty prefix', () => {
  let scratch: string
  let program: string

  beforeAll(() => {
    scratch = mkdtempSync(join(tmpdir(), 'wattproof-installed-'))
    const npm = (...args: string[]) =>
      execFileSync('npm', args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] })
    const name = npm('pack', '--silent', '--ignore-scripts', '--pack-destination', scratch).trim()
    npm(
      'install',
      '--global',
      '--offline',
      '--no-audit',
      '--no-fund',
      '--prefix',
      join(scratch, 'prefix'),
      join(scratch, name),
    )
    program = join(scratch, 'prefix/bin/wattproof')
    cpSync('samples', join(scratch, 'samples'), { recursive: true })
  }, 120_000)
  afterAll(() => {
    spawnSync('chmod', ['-R', 'u+w', scratch])
    rmSync(scratch, { recursive: true, force: true })
  })

  const cases = [
    { args: ['--version'], code: 0, says: JSON.parse(readFileSync('package.json', 'utf8')).version },
    { args: ['check', 'samples/library'], code: 0, says: '18 files, 0 errors' },
    { args: ['check', 'samples/mistakes/decimal-point-moved.panel.yaml'], code: 1, says: 'is probably 22.1 V' },
    { args: ['values', 'samples/library/panels/tern-110.panel.yaml'], code: 0, says: '17.1 %' },
    { args: ['sheet', 'samples/library/panels/tern-110.panel.yaml'], code: 0, says: 'Rated power Pmax' },
    { args: ['report', 'samples/systems/boat.system.yaml'], code: 0, says: '<svg' },
    { args: ['explain', 'voc-below-vmp'], code: 0, says: 'Severity: error' },
  ]
  const run = (command: string, args: readonly string[], env: Record<string, string> = {}) =>
    spawnSync(command, args, {
      cwd: scratch,
      encoding: 'utf8',
      env: { ...process.env, XDG_CACHE_HOME: join(scratch, 'cache'), ...env },
    })

  test.each(nodes)('runs on Node $version', async ({ version, program: node }) => {
    expect(run(node, ['--version']).stdout.trim()).toBe(`v${version}`)
    for (const { args, code, says } of cases) {
      const { status, stdout, stderr } = run(node, [program, ...args])
      expect({ args, status, stderr }).toEqual({ args, status: code, stderr: '' })
      expect(stdout).toContain(says)
    }
    const server = await startServer({
      node,
      args: [resolve(scratch, 'prefix/lib/node_modules/wattproof/dist/server.js'), '--stdio'],
    })
    expect(server.serverInfo).toMatchObject({ name: 'wattproof' })
    await server.stop()
  })

  // a superuser may write anywhere, so that right is given up
  const asOthers = process.getuid?.() === 0 ? ['setpriv', '--bounding-set=-dac_override'] : []

  test.skipIf(process.platform !== 'linux')(
    'runs where nothing can be written, its cache included, and leaves nothing behind',
    () => {
      spawnSync('chmod', ['-R', 'a-w', scratch])
      const before = readdirSync(scratch, { recursive: true })
      const [command = '', ...rest] = [...asOthers, process.execPath]
      const plain = run(command, [...rest, '-e', 'fs.writeFileSync("probe", "")'])
      expect(plain.stderr).toContain('EACCES')
      for (const { args, code, says } of cases) {
        const { status, stdout, stderr } = run(command, [...rest, program, ...args])
        expect({ args, status, stderr }).toEqual({ args, status: code, stderr: '' })
        expect(stdout).toContain(says)
      }
      const refused = run(command, [...rest, program, 'report', 'samples/systems/boat.system.yaml', '-o', 'boat.html'])
      expect(refused.status).toBe(2)
      expect(refused.stderr).toBe('wattproof: boat.html cannot be written: you have no permission to write there\n')
      chmodSync(scratch, 0o755)
      expect(readdirSync(scratch, { recursive: true })).toEqual(before)
    },
  )
})
