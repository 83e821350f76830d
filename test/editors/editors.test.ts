import { spawnSync } from 'node:child_process'
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { delimiter, join, resolve } from 'node:path'
import { describe, expect, onTestFinished, test } from 'vitest'
import { good, slip } from '../workbench/cases/records.ts'

const boat = 'format: 1\nname: Boat\narrays:\n  - panels: [{ panel: tern, count: 2 }]\n'
const scripts = resolve('test/editors')

const editors = [
  {
    name: 'Neovim',
    program: 'nvim',
    language: 'lua',
    args: ['--headless', '--clean', '-c', `luafile ${scripts}/neovim.lua`],
  },
  {
    name: 'Emacs with lsp-mode',
    program: 'emacs',
    language: 'elisp',
    client: 'lsp-mode',
    args: ['--batch', '--no-init-file', '--load', `${scripts}/emacs.el`],
  },
]

/** The settings for an editor. */
const block = (language: string) =>
  new RegExp(`^\`\`\`${language}\\n([^]*?)^\`\`\`$`, 'm').exec(readFileSync('README.md', 'utf8'))![1]!

const isThere = (program: string) =>
  (process.env.PATH ?? '').split(delimiter).some((folder) => existsSync(join(folder, program)))

const lisp = '/usr/share/emacs/site-lisp/elpa'
const isLispThere = (name: string) => existsSync(lisp) && readdirSync(lisp).some((one) => one.startsWith(`${name}-`))

// the editors of the distribution, with their own clients of the protocol
describe.each(editors)('$name', ({ program, language, client, args }) => {
  const missing = !isThere(program) ? program : client !== undefined && !isLispThere(client) ? client : null
  if (missing !== null && process.env.WATTPROOF_NO_SKIP) throw new Error(`${missing} is not installed`)

  test.skipIf(missing !== null)('shows findings, takes a fix, and renames an id with its file', () => {
    const scratch = mkdtempSync(join(tmpdir(), 'wattproof-editors-'))
    onTestFinished(() => rmSync(scratch, { recursive: true, force: true }))
    const [records, report] = [join(scratch, 'records'), join(scratch, 'report.json')]
    mkdirSync(records)
    writeFileSync(join(records, 'tern.panel.yaml'), slip)
    writeFileSync(join(records, 'boat.system.yaml'), boat)

    // the settings as the README prints them, with the program on the path
    const settings = join(scratch, `settings.${language}`)
    writeFileSync(settings, block(language))
    mkdirSync(join(scratch, 'bin'))
    symlinkSync(resolve('dist/wattproof.js'), join(scratch, 'bin/wattproof'))
    const path = `${join(scratch, 'bin')}${delimiter}${process.env.PATH}`
    const env = { ...process.env, PATH: path, HOME: scratch, RECORDS: records, SETTINGS: settings, REPORT: report }
    const { stderr } = spawnSync(program, args, { encoding: 'utf8', env, timeout: 50_000 })
    expect(existsSync(report), stderr).toBe(true)
    const { findings, problem } = JSON.parse(readFileSync(report, 'utf8')) as { findings: string[]; problem?: string }

    expect(problem, stderr).toBeUndefined()
    expect(findings.filter((rule) => rule === 'voc-below-vmp')).toHaveLength(1)
    expect(readdirSync(records).sort()).toEqual(['boat.system.yaml', 'gull.panel.yaml'])
    expect(readFileSync(join(records, 'gull.panel.yaml'), 'utf8')).toBe(good)
    expect(readFileSync(join(records, 'boat.system.yaml'), 'utf8')).toBe(boat.replace('tern', 'gull'))
  })
})
