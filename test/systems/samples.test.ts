import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { folder, libraryOf } from './library.ts'

const library = libraryOf()
const now = { today: '2026-11-25' }
const rows = readFileSync(`${folder}/README.md`, 'utf8')
  .split('\n')
  .filter((line) => /^\| \S+\.system\./.test(line))
  .map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  )
  .map(([file = '', field = '', severity = '', said = '', fix = '']) => ({ file, field, severity, said, fix }))

test.each(library.paths().filter((path) => !/\/(?:hazards|measured)\//.test(path)))(
  'nothing is found in %s',
  (path) => {
    expect(checkFile(library, path, now)?.findings).toEqual([])
  },
)

test('the table has every hazard', () => {
  expect(rows.map(({ file }) => file).sort()).toEqual(readdirSync(`${folder}/hazards`).sort())
})

test.each(rows)('$file: found on $field', ({ file, field, severity, said, fix }) => {
  const { findings } = checkFile(library, `${folder}/hazards/${file}`, now)!
  const reported = findings.find((finding) => finding.pointer === field && finding.message.includes(said))
  expect(
    reported?.severity,
    JSON.stringify(
      findings.map(({ pointer, message }) => ({ pointer, message })),
      null,
      1,
    ),
  ).toBe(severity)
  if (fix) expect(reported?.corrections[0]?.text).toBe(fix)
})
