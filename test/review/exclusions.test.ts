import { expect, test } from 'vitest'
import { useThatIsExcluded } from '../../server/src/review/exclusions.ts'
import { resolved } from './resolved.ts'

const use = (exclusion: string, kind: string, surface: string, construction = 'flexible') => {
  const system = resolved(`
kind: ${kind}
surfaces: [{ id: roof, ${surface} }]
arrays: [{ id: main, panels: [{ panel: { construction: ${construction} }, count: 1, surface: roof }] }]
`)
  const { panel, surface: laid } = system.arrays[0]!.panels[0]!
  return useThatIsExcluded(exclusion, system, panel!.record, laid)?.say ?? null
}

test.each([
  ['damage by salt water', 'boat', 'mounting: canvas', 'boat'],
  ['marine use', 'vehicle', 'mounting: canvas', null],
  ['mobile applications', 'vehicle', 'mounting: canvas', 'moves'],
  ['vehicles', 'boat', 'mounting: canvas', 'moves'],
  ['vehicles', 'cabin', 'mounting: canvas', null],
  ['foot traffic', 'cabin', 'walked_on: true', 'walkedOn'],
  ['foot traffic', 'boat', 'mounting: bonded, walked_on: false', null],
  ['foot traffic', 'boat', 'mounting: bonded', 'steppedOn'],
  ['foot traffic', 'boat', 'mounting: canvas', null],
  ['foot traffic', 'cabin', 'mounting: bonded', null],
  ['bent panels', 'boat', 'curvature: 20 deg', 'bends'],
  ['bent panels', 'boat', 'curvature: 1 deg', null],
  ['bent panels', 'boat', 'mounting: canvas', null],
  ['adhesives', 'cabin', 'mounting: bonded', 'bonded'],
  ['adhesives', 'cabin', 'mounting: standoff', null],
  ['permanent installation', 'cabin', 'mounting: standoff', 'mounted'],
  ['permanent installation', 'cabin', 'tilt: 5 deg', null],
  ['yellowing under UV', 'cabin', 'mounting: standoff', 'sun'],
  ['acts of war', 'boat', 'mounting: bonded', null],
])('"%s" excludes a %s with %s as: %s', (exclusion, kind, surface, expected) => {
  expect(use(exclusion, kind, surface)).toBe(expected)
})

test('a rigid panel is not bent by what it lies on', () => {
  expect(use('bending', 'boat', 'curvature: 20 deg', 'rigid')).toBeNull()
})

test('a system that does not say what it is on is none of these', () => {
  const system = resolved('arrays: [{ id: main, panels: [{ panel: { construction: flexible }, count: 1 }] }]\n')
  const { panel, surface } = system.arrays[0]!.panels[0]!
  const say = (exclusion: string) => useThatIsExcluded(exclusion, system, panel!.record, surface)
  expect(['marine use', 'vehicles', 'foot traffic', 'bending', 'glue', 'fixed'].map(say)).toEqual(
    Array<null>(6).fill(null),
  )
})
