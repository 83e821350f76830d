import { readdirSync, readFileSync } from 'node:fs'

const folders = [
  'samples/mistakes',
  'samples/library/panels',
  ...['', '/batteries', '/climates', '/controllers'].map((name) => `samples/systems${name}`),
]
const samples = folders.flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => /[.](panel|controller|battery|climate|system)[.]ya?ml$/.test(name))
    .sort()
    .map((name) => ({ path: name, text: readFileSync(`${folder}/${name}`, 'utf8') })),
)
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
