// A printed efficiency beside 17.1 % of the outline: what may be that of the cells is information, what is no habit of sheets is not.
import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'

function severityOf(construction: string, technology: string, efficiency: number) {
  const library = createLibrary()
  library.put(
    'it.panel.yaml',
    [
      'format: 1',
      'name: Tern',
      `construction: ${construction}`,
      `stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A, efficiency: ${efficiency} % }`,
      'size: { length: 1190 mm, width: 540 mm }',
      `cells: { technology: ${technology} }`,
      '',
    ].join('\n'),
  )
  const { findings } = checkFile(library, 'it.panel.yaml', { today: '2026-09-01' })!
  return findings.find(({ pointer, severity }) => pointer === '/stc/efficiency' && severity !== 'hint')?.severity
}

const constructions = ['flexible', 'folding', 'rigid']
const crystalline = ['mono', 'perc', 'poly']
const each = constructions.flatMap((construction) =>
  crystalline.map((technology) => [construction, technology] as const),
)

test.each(each)('%s, %s: as much as the outline gives is nothing', (construction, technology) => {
  expect(severityOf(construction, technology, 17.1)).toBeUndefined()
})

test.each(each.filter(([construction]) => construction !== 'rigid'))(
  '%s, %s: 21 %% may be that of the cells',
  (construction, technology) => {
    expect(severityOf(construction, technology, 21)).toBe('information')
  },
)

// above one and a half times that of the outline, from what cells cannot have to what nothing has
test.each(
  each.flatMap(([construction, technology]) =>
    [28, 30, 45, 171, 200].map((percent) => [construction, technology, percent] as const),
  ),
)('%s, %s: %s %% is an error', (construction, technology, percent) => {
  expect(severityOf(construction, technology, percent)).toBe('error')
})
