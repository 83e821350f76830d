import fc from 'fast-check'
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { inventory } from '../../server/src/text/tree-queries.ts'
import { applyEdits } from '../../server/src/text/span.ts'
import { folder, libraryOf } from './library.ts'

const library = libraryOf()
const systems = ['boat', 'van', 'cabin'].map((name) => `${folder}/${name}.system.yaml`)
const texts = systems.map((path) => library.file(path)!.tree)
const odd = fc.constantFrom(
  '0',
  '-1',
  '1e9',
  '99999 V',
  '-5 mm2',
  '0 m',
  'x',
  '[]',
  '{}',
  '~',
  '0 W',
  '-3 days',
  '370 deg',
  '100000',
  '1 mm',
)

test('whatever is typed in a system, it is reviewed, every figure is a number or null, and no text is undefined', () => {
  const path = `${folder}/odd.system.yaml`
  fc.assert(
    fc.property(
      fc.nat(systems.length - 1),
      fc.array(fc.tuple(fc.nat(10_000), odd), { minLength: 1, maxLength: 4 }),
      (which, changes) => {
        const tree = texts[which]!
        const { scalars } = inventory(tree)
        const spots = new Map(changes.map(([at, text]) => [scalars[at % scalars.length]!, text]))
        library.put(
          path,
          applyEdits(
            tree.text,
            [...spots].map(([{ span }, text]) => ({ span, text })),
          ),
        )
        const checked = checkFile(library, path, { today: '2026-11-25' })!
        const { figures } = checked.review!
        const seen = JSON.stringify(figures, (_, value) =>
          typeof value === 'number' && !Number.isFinite(value) ? 'NOT A NUMBER' : value,
        )
        expect(seen).not.toContain('NOT A NUMBER')
        for (const { message } of checked.findings) expect(message).not.toMatch(/undefined|NaN|Infinity/)
      },
    ),
    { numRuns: 150, examples: [[0, [[8110, '100000']]]] }, // a tilt of 100000 deg
  )
}, 120_000)
