import { expect, test } from 'vitest'
import type { MarkupContent } from 'vscode-languageserver'
import { completion } from '../../server/src/editor/handlers/completion.ts'
import { hover } from '../../server/src/editor/handlers/hover.ts'
import { hereAt } from './here.ts'

const name = 'boat.system.yaml'

test.each([
  ['site: {', 'swings', 'true'],
  ['arrays: [{ ', 'shares_controller_with', 'main'],
  ['arrays: [{ ', 'disconnect', '{ current: 32 A }'],
  ['arrays: [{ ', 'output', '{ fuse: 40 A }'],
  ['arrays: [{ output: {', 'fuse', '40 A'],
  ['battery: {', 'place', 'inside'],
  ['battery: {', 'kept_above', '5 °C'],
  ['battery: {', 'charge_protection', 'heated'],
  ['battery: {', 'each_fuse', '125 A'],
  ['battery: {', 'interrupting_rating', '20 kA'],
  ['inverter: {', 'power', '2000 W'],
  ['inverter: {', 'surge', '4000 W'],
  ['loads: [{', 'current', '3.5 A'],
  ['loads: [{', 'charge', '45 Ah'],
  ['loads: [{', 'energy', '540 Wh'],
  ['loads: [{', 'at', 'evening'],
  ['loads: [{', 'one_of', 'galley'],
  ['loads: [{', 'own_breaker', 'true'],
  ['other_sources: [{', 'kind', 'dc-dc'],
])('%s %s: is proposed, and hover says what it is', (before, field, value) => {
  const closing = [...before].reverse().map((c) => ({ '{': ' }', '[': ']' })[c] ?? '')
  const end = closing.join('')
  const empty = hereAt(`format: 1\n${before} $0${end}\n`, { name })
  expect(completion(empty.here, empty.offset).map(({ label }) => label)).toContain(field)
  const typed = hereAt(`format: 1\n${before} ${field.slice(0, 1)}$0${field.slice(1)}: ${value}${end}\n`, { name })
  const { value: said } = hover(typed.here, typed.offset)!.contents as MarkupContent
  // a choice is said by what the chosen word means
  expect(said).toMatch(/^(?:[\w-]+: .{10,}|[A-Z].{10,}\.)$/m)
})
