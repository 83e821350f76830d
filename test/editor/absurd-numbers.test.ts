import { describe, expect, test } from 'vitest'
import { hover } from '../../server/src/editor/handlers/hover.ts'
import { inlayHints } from '../../server/src/editor/handlers/inlay-hints.ts'
import { inventory } from '../../server/src/text/tree-queries.ts'
import { recordsIn } from '../check/any-record.ts'
import { hereAt } from './here.ts'

const absurd = ['1e308', '1e-308', '0', '-1', '.inf', '.nan', '1_000', '0x1F', '1e999']
const folders = ['', '/panels', '/batteries', '/climates', '/controllers'].map((name) => `samples/systems${name}`)
const records = [
  ...folders.flatMap(recordsIn),
  ...recordsIn('samples/library/panels').filter(({ path }) => path.startsWith('tern-110')),
]
const others = Object.fromEntries(records.map(({ path, text }) => [path, text]))
const numbers = /(?<=[ [{])-?\d+(?:\.\d+)?(?= ?[A-Za-z%°/]|[,\]}\n])/g
const settings = { hints: { units: true, derived: true }, codeLens: true }

describe('numbers that no record holds are shown as nothing else but what was typed', () => {
  test.each(records)('$path', ({ path, text }) => {
    for (const [i, { index, 0: number }] of [...text.matchAll(numbers)].entries()) {
      // each number in its turn
      const typed = absurd[i % absurd.length]!
      const source = text.slice(0, index) + typed + text.slice(index + number.length)
      const { here } = hereAt(source, { name: path, others })
      const { tree, findings } = here.checked
      const shown = [
        ...findings.flatMap(({ message, corrections }) => [message, ...corrections.map((one) => one.text)]),
        ...inventory(tree).scalars.map(({ span }) => JSON.stringify(hover(here, span.start)?.contents)),
        JSON.stringify(inlayHints(here, { start: 0, end: source.length }, settings)),
      ]
      const odd = shown.filter((one) => /Infinity|NaN|\d{20}/.test(one?.replaceAll(typed, '') ?? ''))
      expect(odd, `${number} as ${typed}`).toEqual([])
    }
  })
})
