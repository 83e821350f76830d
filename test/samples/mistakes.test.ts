import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkFolder, isSerious } from './checked.ts'

const severities = ['error', 'warning']
const found = checkFolder('samples/mistakes')
const rows = readFileSync('samples/mistakes/README.md', 'utf8')
  .split('\n')
  .filter((line) => /^\| \S+\.panel\./.test(line))
  .map((line) => line.split('|').slice(1, -1).map((cell) => cell.trim()))
  .map(([file = '', field = '', severity = '', said = '', fix = '']) => ({ file, field, severity, said, fix }))

test('the table has every record, and at least sixteen', () => {
  const files = readdirSync('samples/mistakes').filter((name) => name.includes('.panel.'))
  expect(rows.map(({ file }) => file).sort()).toEqual(files.sort())
  expect(rows.length).toBeGreaterThanOrEqual(16)
})

test.each(rows)('$file: found on $field', ({ file, field, severity, said, fix }) => {
  const here = (found.get(`samples/mistakes/${file}`) ?? []).filter((finding) => finding.field === field && isSerious(finding))
  const reported = here.find(({ message }) => message.includes(said))
  expect(reported, JSON.stringify(here, null, 1)).toBeDefined()
  expect(severities.indexOf(reported?.severity ?? '')).toBeLessThanOrEqual(severities.indexOf(severity))
  if (fix) expect(reported?.correction).toMatchObject({ field, text: fix })
})

test('the settings beside them are in order', () => {
  expect((found.get('samples/mistakes/wattproof.yaml') ?? []).filter(isSerious)).toEqual([])
})
