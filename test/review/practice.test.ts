import { expect, test } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { createLibrary } from '../../server/src/library/create.ts'

// Isc 6.6 A: 1.5 times that is 9.9 A (IEC 62548 practice), 1.56 times 10.3 A (NEC 690.9), as quoted by trade articles
test.each([
  ['', 10, 'information', '12 A'],
  ['', 12, undefined, undefined],
  ['practice: IEC\n', 10, undefined, undefined],
  ['practice: IEC\n', 16, 'error', '10 A'],
  ['practice: NEC\n', 10, 'warning', '12 A'],
  ['practice: NEC\n', 16, undefined, undefined],
])('with the settings "%s" a string fuse of %d A is, as a finding, %s', (settings, fuse, severity, fix) => {
  const library = createLibrary()
  if (settings) library.put('wattproof.yaml', `format: 1\n${settings}`)
  library.put(
    'own.system.yaml',
    `format: 1
arrays:
  - panels: [{ panel: { stc: { pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.6 A }, limits: { series_fuse: 20 A } }, count: 4 }]
    wiring: { in_series: 1, in_parallel: 4 }
    string_fuse: ${fuse} A
`,
  )
  const { findings } = checkFile(library, 'own.system.yaml', { today: '2026-11-25' })!
  const found = findings.find(({ rule }) => rule === 'string-fuse-off')
  expect([found?.severity, found?.corrections[0]?.text]).toEqual([severity, fix])
})
