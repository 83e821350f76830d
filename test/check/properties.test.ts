import fc from 'fast-check'
import { readFileSync, readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { applyEdits } from '../../server/src/text/span.ts'
import { check, today } from './checked.ts'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'

const read = (folder: string) =>
  readdirSync(folder)
    .filter((name) => /[.](panel|controller|battery|climate|system)[.]/.test(name))
    .map((name) => ({ path: name, text: readFileSync(`${folder}/${name}`, 'utf8') }))
const mistakes = read('samples/mistakes')
const samples = [
  ...mistakes,
  ...read('samples/library/panels'),
  ...read('samples/systems'),
  ...['batteries', 'climates', 'controllers'].flatMap((folder) => read(`samples/systems/${folder}`)),
]
const sample = fc.constantFrom(...samples)
const settings = readFileSync('samples/mistakes/wattproof.yaml', 'utf8')

/** The findings of a text, and what each of its values comes to. */
function whole(path: string, text: string) {
  const library = createLibrary()
  library.put('wattproof.yaml', settings)
  library.put(path, text)
  const checked = checkFile(library, path, { today })!
  return { checked, values: checked.values() }
}

test('the beginning of any sample can be checked: nothing throws, every place lies inside the text', () => {
  fc.assert(
    fc.property(sample, fc.double({ min: 0, max: 1, noNaN: true }), ({ path, text }, share) => {
      const start = text.slice(0, Math.round(share * text.length))
      for (const { span, message } of whole(path, start).checked.findings) {
        expect(0 <= span.start && span.start <= span.end && span.end <= start.length).toBe(true)
        expect(message).toMatch(/[.?]$/)
      }
    }),
    { numRuns: 150, seed: 1 },
  )
})

test('so can a sample with a piece cut out or typed in', () => {
  const piece = fc.constantFrom(
    '',
    ' ',
    '{',
    '}',
    '[',
    '- ',
    ': ',
    '#',
    '"',
    "'",
    '\t',
    '\n',
    ',',
    '&a ',
    '*a ',
    '~',
    '0',
    '-',
    '°',
    '|',
  )
  const share = fc.double({ min: 0, max: 1, noNaN: true })
  fc.assert(
    fc.property(sample, share, fc.nat(12), piece, ({ path, text }, at, length, typed) => {
      const from = Math.round(at * text.length)
      const edited = text.slice(0, from) + typed + text.slice(from + length)
      for (const { span } of whole(path, edited).checked.findings) expect(span.end).toBeLessThanOrEqual(edited.length)
    }),
    { numRuns: 150, seed: 2 },
  )
})

describe('corrections of the planted mistakes', () => {
  const cases = mistakes.flatMap(({ path, text }) => {
    const { findings } = check(text, { path, settings })
    return findings.flatMap((finding) =>
      finding.corrections.map((correction, i) => ({ path, text, finding, correction, name: `${finding.rule} ${i}` })),
    )
  })

  test('there are some for most', () => {
    expect(new Set(cases.map(({ path }) => path)).size).toBeGreaterThan(mistakes.length * 0.7)
  })

  test.each(cases.filter(({ name }) => name.endsWith(' 0')))(
    '$path: $name makes the finding go',
    ({ path, text, finding, correction }) => {
      const left = check(applyEdits(text, correction.edits), { path, settings }).findings
      expect(left.filter(({ rule, pointer }) => rule === finding.rule && pointer === finding.pointer)).toEqual([])
    },
  )

  test.each(cases.filter(({ name }) => name.endsWith(' 0')))(
    '$path: $name leaves no error that was not there',
    ({ path, text, correction }) => {
      const serious = (of: string) =>
        check(of, { path, settings })
          .findings.filter(({ severity }) => severity === 'error')
          .map(({ rule, pointer }) => `${rule} ${pointer}`)
      const before = serious(text)
      expect(serious(applyEdits(text, correction.edits)).filter((one) => !before.includes(one))).toEqual([])
    },
  )
})

test('what keeps its meaning changes no value that could be read', () => {
  const odd: readonly [string, string][] = [
    ['18.6 V', '18,6 V'],
    ['-0.38 %/°C', '−0.38 %/ºC'],
    ['2.2 kg', '2.2 Kg'],
    ['-40..85 °C', '-40~85 ℃'],
    ['289 USD', 'US$ 289'],
    ['pmax: 110 W', 'pmax: 110 watts'],
  ]
  const tern = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
  let same = 0
  for (const [from, to] of odd) {
    const text = tern.replace(from, to)
    const before = whole('a.panel.yaml', text)
    for (const { pointer, rule, corrections } of before.checked.findings)
      for (const { certainty, edits } of corrections) {
        if (certainty !== 'same') continue
        same++
        const after = whole('a.panel.yaml', applyEdits(text, edits))
        for (const [at, { value }] of before.checked.fields)
          expect(after.checked.fields.get(at)?.value, at).toEqual(value)
        expect(after.values.map(({ value }) => value)).toEqual(before.values.map(({ value }) => value))
        const others = before.checked.findings.filter((f) => f.pointer !== pointer || f.rule !== rule)
        expect(after.checked.findings.map((f) => `${f.rule} ${f.message}`)).toEqual(
          others.map((f) => `${f.rule} ${f.message}`),
        )
      }
  }
  expect(same).toBeGreaterThan(1)
})
