import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'

const folders = readdirSync('server/src')
let root: string

/** The folders of the sources with a file each, under the import table of the project. */
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'layers-'))
  for (const name of ['.dependency-cruiser.mjs', 'tsconfig.json']) cpSync(name, join(root, name))
  symlinkSync(resolve('node_modules'), join(root, 'node_modules'))
  for (const folder of folders) put(`server/src/${folder}/a.ts`, 'export const a = 1')
  put('client/src/a.ts', 'export const a = 1')
})
afterEach(() => rmSync(root, { recursive: true }))

function put(path: string, text: string) {
  mkdirSync(join(root, path, '..'), { recursive: true })
  writeFileSync(join(root, path), `${text}\n`)
}

function cruise() {
  const program = resolve('node_modules/dependency-cruiser/bin/dependency-cruise.mjs')
  const args = [program, '--config', '.dependency-cruiser.mjs', 'server/src', 'client/src']
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' })
  return { status, said: stdout + stderr }
}

test('the folders as they are pass', () => expect(cruise()).toMatchObject({ status: 0 }))

test('a new folder is rejected until the table lists it, and the table names none that does not exist', () => {
  put('server/src/planted/a.ts', 'export const a = 1')
  put('client/src/planted/a.ts', 'export const a = 1')
  rmSync(join(root, 'server/src/slips'), { recursive: true })
  const { status, said } = cruise()
  expect(status).not.toBe(0)
  expect(said).toContain('server/src/planted is in no line of the import table')
  expect(said).toContain('client/src/planted is in no line of the import table')
  expect(said).toContain('the import table names server/src/slips, which does not exist')
})

const planted = [
  ['server/src/quantities', '../text/a.ts', 'quantities-imports'],
  ['server/src/physics', 'node:fs', 'physics-imports'],
  ['server/src/text', '../records/a.ts', 'text-imports'],
  ['server/src/findings', '../rules/a.ts', 'findings-imports'],
  ['server/src/records', '../library/a.ts', 'records-imports'],
  ['server/src/values', '../rules/a.ts', 'values-imports'],
  ['server/src/rules', '../review/a.ts', 'rules-imports'],
  ['server/src/slips', '../rules/a.ts', 'slips-imports'],
  ['server/src/review', '../rules/a.ts', 'review-imports'],
  ['server/src/library', '../check/a.ts', 'library-imports'],
  ['server/src/sheets', '../check/a.ts', 'sheets-imports'],
  ['server/src/check', '../editor/a.ts', 'check-imports'],
  ['server/src/check', 'vscode-languageserver', 'check-imports'],
  ['server/src/reader', '../terminal/a.ts', 'reader-imports'],
  ['server/src/editor', '../terminal/a.ts', 'editor-imports'],
  ['server/src/terminal', '../editor/a.ts', 'terminal-imports'],
  ['server/src/terminal', '../../../client/src/a.ts', 'terminal-imports'],
  ['client/src', '../../server/src/check/a.ts', 'client-has-no-logic'],
] as const

test('every planted bad import is rejected by the rule of its folder', () => {
  planted.forEach(([folder, from], i) =>
    put(`${folder}/planted-${i}.ts`, `import { a } from '${from}'\nexport const b = a`),
  )
  const { status, said } = cruise()
  expect(status).not.toBe(0)
  const missed = planted.filter(([folder, , rule], i) => !said.includes(`${rule}: ${folder}/planted-${i}.ts`))
  expect(missed).toEqual([])
})
