import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { check } from './checked.ts'

const tern = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
const dear = (amount: string) =>
  tern.replace('voc: 22.1 V', 'voc: 2.21 V').replace(/amount: [\d.]+( USD)?/, `amount: ${amount}`)
const rules = (text: string, settings: string) => check(text, { settings }).findings.map(({ rule }) => rule)

test.each(['2890 USD', '2890'])('a fix is tried with the currency of the library: %s beside a slip', (amount) => {
  expect(rules(dear(amount), 'format: 1\ncurrency: USD\n').sort()).toEqual(['price-per-watt-unusual', 'voc-below-vmp'])
})

test('a rule that is off leaves what others find of the same mistake', () => {
  const text = tern.replace('voc: 22.1 V', 'voc: 2.21 V')
  const { findings } = check(text, { settings: 'format: 1\nseverities: { voc-below-vmp: off }\n' })
  expect(findings).toHaveLength(1)
  expect(findings[0]).toMatchObject({ pointer: '/stc/voc', corrections: [{ text: '22.1 V' }] })
  expect(findings[0]!.rule).not.toBe('voc-below-vmp')
})

test('a severity of the library decides what speaks for a mistake', () => {
  const text = tern.replace('voc: 22.1 V', 'voc: 2.21 V')
  const { findings } = check(text, { settings: 'format: 1\nseverities: { voc-below-vmp: hint }\n' })
  expect(findings.find(({ rule }) => rule === 'voc-below-vmp')).toBeUndefined()
  expect(findings.map(({ pointer, severity }) => [pointer, severity])).toContainEqual(['/stc/voc', 'error'])
})
