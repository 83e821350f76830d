import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { scratch, wattproof } from '../terminal/run.ts'

test('a record of a newer format is an error on its number, the rest is checked, and no fix rewrites it', () => {
  const name = 'decimal-point-moved.panel.yaml'
  const text = readFileSync(`samples/mistakes/${name}`, 'utf8').replace('format: 1', 'format: 2')
  const cwd = scratch({ [name]: text })
  const { out, code } = wattproof(['check', name, '--fix'], { cwd })
  expect(code).toBe(1)
  expect(out).toContain(`${name}:1:9: error wrong-format: This is format 2, and only format 1 is known.`)
  expect(out).toContain('error voc-below-vmp: ')
  expect(readFileSync(join(cwd, name), 'utf8')).toBe(text)
})
