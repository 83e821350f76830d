import { readdirSync, readFileSync } from 'node:fs'

const folders = [
  'samples/mistakes',
  'samples/library/panels',
  ...['', '/batteries', '/climates', '/controllers'].map((name) => `samples/systems${name}`),
]
/** The records of a folder of samples, by their names. */
export const recordsIn = (folder: string) =>
  readdirSync(folder)
    .filter((name) => /[.](panel|controller|battery|climate|system)[.]ya?ml$/.test(name))
    .sort()
    .map((name) => ({ path: name, text: readFileSync(`${folder}/${name}`, 'utf8') }))

const samples = folders.flatMap(recordsIn)
const pieces = [
  ...'\t \n\r:,-#{}[]&*!|>\'"%@`?~_<=;0189aAV°±\ufeff\u0085\0\ufffd',
  ...[
    ': ',
    '- ',
    ' # x',
    '1e999',
    '0x1f',
    '1,5',
    '{ ',
    ' }',
    '&a ',
    '*a ',
    '\r\n',
    ' NaN',
    '---\n',
    '<<: ',
    '"x" ',
    '>= ',
    '110 W',
    'voc:',
    '- 0.3',
    '1.,6 A',
  ],
]

const slipsOfUnit: readonly ((number: string, unit: string) => string)[] = [
  (number) => number,
  (number) => `${number} A`,
  (number) => `${number} kg`,
  (number, unit) => `${number.replaceAll('0', 'O')} ${unit}`,
  (number, unit) => `${number} ${unit}x`,
  (number, unit) => `${number} x 735 x 2.5 ${unit}`,
  (number, unit) => `${number} / 7 ${unit}`,
  (number, unit) => `${Number(number) * 10} ${unit}`,
]

/** A text with one of its quantities in another unit, without one or with a slip: every twelfth quantity, each in its turn. */
export function spoiled(text: string): readonly string[] {
  return [...text.matchAll(/(?<=: )(\d+(?:\.\d+)?) ([A-Za-z%°]+\d?)(?=[,\s}])/g)]
    .filter((_, i) => i % 12 === 0)
    .map(({ 0: all, 1: number = '', 2: unit = '', index }, i) => {
      const typed = slipsOfUnit[i % slipsOfUnit.length]!(number, unit)
      return text.slice(0, index) + typed + text.slice(index + all.length)
    })
}

/** A sample with bytes that are noise, or edits as a hand makes them. `pick(n)` is a whole number below n. */
export function anyRecord(pick: (below: number) => number): { readonly path: string; readonly text: string } {
  const { path, text } = samples[pick(samples.length)]!
  if (pick(3) === 0) {
    const noise = Array.from({ length: pick(30) }, () => pieces[pick(pieces.length)]).join('')
    return { path, text: noise }
  }
  // mistakes show in a few lines as well as in a whole record, and sooner
  const from = pick(3) === 0 ? pick(text.length) : 0
  const length = pick(25) === 0 ? 200 + pick(1500) : 40 + pick(160)
  let edited = text.slice(from, from + length)
  for (let left = 1 + pick(4); 0 < left; left--) {
    const at = pick(edited.length + 1)
    const lineEnd = edited.indexOf('\n', at) + 1 || edited.length
    const change = pick(6)
    const piece = pieces[pick(pieces.length)]!
    if (change === 0) edited = edited.slice(0, at) + edited.slice(at + 1 + pick(6))
    else if (change === 1) edited = edited.slice(0, lineEnd) + edited.slice(at, lineEnd) + edited.slice(lineEnd)
    else if (change === 2) edited = edited.slice(0, at) + piece.repeat(1 + pick(30)) + edited.slice(at)
    else edited = edited.slice(0, at) + piece + edited.slice(at + pick(3))
  }
  return { path, text: edited }
}
