import type { Log, Region } from 'sarif'
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { bad, good } from './records.ts'
import { scratch, wattproof } from './run.ts'

const sarif = (cwd: string, ...args: string[]): Log =>
  JSON.parse(wattproof(['check', '--format', 'sarif', ...args], { cwd }).out)
const resultsOf = (log: Log) => log.runs[0]?.results ?? []

test('every result of the samples points at its rule, its file and its characters', () => {
  const log = sarif('.', 'samples')
  const run = log.runs[0]
  expect(log.version).toBe('2.1.0')
  expect(run?.columnKind).toBe('utf16CodeUnits')
  expect(run?.originalUriBaseIds?.['%SRCROOT%']?.uri).toMatch(/^file:\/\/\/.*\/$/)
  const rules = run?.tool.driver.rules ?? []
  expect(resultsOf(log).length).toBeGreaterThan(20)
  for (const { ruleId, ruleIndex, locations, partialFingerprints, level } of resultsOf(log)) {
    expect(rules[ruleIndex ?? -1]?.id, ruleId).toBe(ruleId)
    expect(['error', 'warning', 'note']).toContain(level)
    expect(partialFingerprints?.['wattproof/v1']).toMatch(/^[0-9a-f]{16}$/)
    const { artifactLocation, region } = locations?.[0]?.physicalLocation ?? {}
    const text = readFileSync(decodeURIComponent(artifactLocation?.uri ?? ''), 'utf8')
    if (region?.snippet?.text) expect(textAt(text, region)).toBe(region.snippet.text)
  }
})

test('a rule leads to its page and says how to read it without a network', () => {
  const { driver } = sarif('.', 'samples/library').runs[0]!.tool
  expect(driver.informationUri).toMatch(/^https:\/\//)
  const rule = driver.rules?.find(({ id }) => id === 'voc-below-vmp')
  expect(rule?.helpUri).toBe(`${driver.informationUri}rules#voc-below-vmp`)
  expect(rule?.help?.text).toContain('wattproof explain voc-below-vmp')
  const page = readFileSync('schemas/rules.md', 'utf8')
  const anchors = new Set([...page.matchAll(/^### ([\w-]+)$/gm)].map(([, id]) => id))
  const dead = driver.rules?.filter(({ helpUri }) => !anchors.has(helpUri?.split('#')[1]))
  expect(dead).toEqual([])
})

test('places in other files are named from the top of the repository, with their lines where those were checked too', () => {
  const others = resultsOf(sarif('.', 'samples/systems')).flatMap(({ locations, relatedLocations = [] }) =>
    relatedLocations.flatMap(({ physicalLocation: place }) =>
      place?.artifactLocation?.uri === locations?.[0]?.physicalLocation?.artifactLocation?.uri ? [] : [place],
    ),
  )
  expect(others.length).toBeGreaterThan(3)
  for (const place of others) {
    const text = readFileSync(decodeURIComponent(place?.artifactLocation?.uri ?? ''), 'utf8')
    expect(textAt(text, place?.region ?? {})).not.toBe('')
  }
})

test('nothing is empty: strict readers break on an empty object', () => {
  expect(JSON.stringify(sarif('.', 'samples'))).not.toMatch(/\{\}|"snippet":\{"text":""\}/)
})

test('a fix becomes a fix that does what it says', () => {
  const broken = good.replace('imp: 5.92 A', 'imp: 5,92 A')
  const log = sarif(scratch({ 'a.panel.yaml': broken }))
  const replacement = resultsOf(log).flatMap((r) => r.fixes ?? [])[0]?.artifactChanges[0]?.replacements[0]
  expect(replacement?.insertedContent?.text).toBe('5.92 A')
  expect(textAt(broken, replacement?.deletedRegion ?? {})).toBe('5,92 A')
})

test('what a person accepted is there, suppressed in the source with the reason', () => {
  const block =
    'stc:\n  pmax: 110 W\n  vmp: 18.6 V\n  imp: 5.92 A\n  voc: 2.21 V # accept voc-below-vmp: only a test\n  isc: 6.31 A\n'
  const log = sarif(scratch({ 'a.panel.yaml': good.replace(/^stc:.*\n/m, block) }))
  const accepted = resultsOf(log).filter((r) => r.suppressions)
  expect(accepted.map((r) => [r.ruleId, r.suppressions])).toEqual([
    ['voc-below-vmp', [{ kind: 'inSource', justification: 'only a test' }]],
  ])
})

test('paths are addresses', () => {
  const log = sarif(scratch({ 'von ä#1/a b.panel.yaml': bad }))
  expect(resultsOf(log)[0]?.locations?.[0]?.physicalLocation?.artifactLocation?.uri).toBe(
    'von%20%C3%A4%231/a%20b.panel.yaml',
  )
})

function textAt(text: string, { startLine = 1, startColumn = 1, endLine = 1, endColumn = 1 }: Region): string {
  const lines = text.split('\n').slice(startLine - 1, endLine)
  lines.push((lines.pop() ?? '').slice(0, endColumn - 1))
  return [(lines.shift() ?? '').slice(startColumn - 1), ...lines].join('\n')
}
