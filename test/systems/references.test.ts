import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { folder, libraryOf } from './library.ts'

const now = { today: '2026-11-25' }
const boat = `${folder}/boat.system.yaml`
const panel = `${folder}/panels/puffin-115.panel.yaml`

test('a change of a panel is seen in the systems that use it', () => {
  const library = libraryOf()
  expect(checkFile(library, boat, now)!.findings).toEqual([])
  const { text } = library.file(panel)!.tree
  library.put(panel, text.replace('voc: 24.5 V', 'voc: 74.5 V'))
  const reported = checkFile(library, boat, now)!.findings.map(({ rule }) => rule)
  expect(reported).toContain('string-voltage-high')
  library.put(panel, text)
  expect(checkFile(library, boat, now)!.findings).toEqual([])
})

test('two records of one id are an ambiguity, with both places', () => {
  const library = libraryOf()
  library.put(`${folder}/old/puffin-115.panel.yaml`, library.file(panel)!.tree.text)
  const [first] = checkFile(library, boat, now)!.findings.filter(({ rule }) => rule === 'ambiguous-record')
  expect(first?.related.map(({ path }) => path)).toEqual([`${folder}/old/puffin-115.panel.yaml`, panel])
})

test('a surface that is not described is named with those that are', () => {
  const library = libraryOf()
  library.put(boat, library.file(boat)!.tree.text.replace('surface: coachroof', 'surface: foredeck'))
  const [one] = checkFile(library, boat, now)!.findings.filter(({ rule }) => rule === 'unknown-surface')
  expect(one?.message).toBe('No surface of this system is called foredeck; there are bimini, coachroof.')
})

test('a record in place of an id is checked by the schema of its own kind, without format and name', () => {
  const library = libraryOf()
  const text = library.file(boat)!.tree.text
  const inline = '{ type: mptt, input: { max_voltage: 100 V, max_curent: 3 A }, output: { max_current: 30 A } }'
  library.put(boat, text.replace('controller: example-mppt-30', `controller: ${inline}`))
  const reported = checkFile(library, boat, now)!.findings.map(({ rule, pointer }) => `${rule} ${pointer}`)
  expect(reported).toContain('not-a-choice /arrays/0/controller/type')
  expect(reported).toContain('unknown-field /arrays/0/controller/input/max_curent')
  expect(reported.filter((one) => one.startsWith('missing-field'))).toEqual([])
})

test('an accepted finding of a review is silent', () => {
  const library = libraryOf()
  const path = `${folder}/hazards/over-weight.system.yaml`
  const { text } = library.file(path)!.tree
  library.put(
    path,
    text.replace(/(limits: .*)/, '$1 # accept weight-limit-exceeded: the owner will strengthen the roof'),
  )
  const { findings, accepted } = checkFile(library, path, now)!
  expect([findings, accepted.length]).toEqual([[], 1])
})

const unused = (library: ReturnType<typeof libraryOf>) =>
  library.paths().flatMap((path) => {
    const found = checkFile(library, path, now)!.findings.filter(({ rule }) => rule === 'unused-record')
    return found.map(({ severity, pointer }) => `${severity} ${path.slice(folder.length + 1)} ${pointer}`)
  })

test('a record that no system names is reported by a hint at its name', () => {
  const library = libraryOf()
  const { text } = library.file(panel)!.tree
  library.put(`${folder}/panels/spare.panel.yaml`, text)
  expect(unused(library)).toEqual(['hint panels/spare.panel.yaml /name'])
})

test('no record is unused in a library without systems, nor a climate that the settings name', () => {
  const library = libraryOf()
  for (const path of library.paths()) if (path.endsWith('.system.yaml')) library.drop(path)
  expect(unused(library)).toEqual([])
  library.put(`${folder}/one.system.yaml`, 'format: 1\nname: One\n')
  expect(unused(library).filter((one) => one.includes('climate'))).toHaveLength(2)
  library.put(`${folder}/wattproof.yaml`, 'format: 1\nsite: { climate: example-bay }\n')
  expect(unused(library).filter((one) => one.includes('climate'))).toEqual([
    'hint climates/example-valley.climate.yaml /name',
  ])
})

test('settings that name a climate which is not there are reported', () => {
  const library = libraryOf()
  library.put(`${folder}/wattproof.yaml`, 'format: 1\nsite: { climate: example-bey }\n')
  const [one] = checkFile(library, `${folder}/wattproof.yaml`, now)!.findings
  expect([one?.rule, one?.pointer, one?.corrections[0]?.text]).toEqual([
    'unknown-record',
    '/site/climate',
    'example-bay',
  ])
})

test.each(['"9,5 °C"', '*5 °C'])(
  'a climate with air twice and %s in a list takes no finding from the system beside it',
  (item) => {
    const library = libraryOf()
    const climate = `${folder}/climates/example-bay.climate.yaml`
    const { text } = library.file(climate)!.tree
    library.put(climate, text.replace('  mean_low: [5, 5, 7, 9,', `air:\n  mean_low: [5, 5, 7, ${item},`))
    library.put(boat, library.file(boat)!.tree.text.replace('surface: coachroof', 'surface: foredeck'))
    const rules = (path: string) => checkFile(library, path, now)!.findings.map(({ rule }) => rule)
    expect(rules(climate)).toContain('field-twice')
    expect(rules(boat)).toContain('unknown-surface')
    expect([...rules(climate), ...rules(boat)]).not.toContain('internal-error')
  },
)
