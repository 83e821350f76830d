import { readFileSync, writeFileSync } from 'node:fs'
import { join, win32 } from 'node:path'
import type { Log } from 'sarif'
import { describe, expect, test } from 'vitest'
import { createAddresses } from '../../server/src/editor/addresses.ts'
import { recordOfPath } from '../../server/src/records/kinds.ts'
import type { FileReport } from '../../server/src/terminal/file-report.ts'
import { formatSarif } from '../../server/src/terminal/formats/sarif.ts'
import { fromTop } from '../../server/src/terminal/from-top.ts'
import { addressOf, isWithin, pathsOn, slashed } from '../../server/src/terminal/paths.ts'
import { scratch, wattproof } from './run.ts'

// the functions that name files, with the paths of Windows; Node brings its rules for paths along on every system

describe('paths of Windows', () => {
  const { absolute, shown, folderOf } = pathsOn(win32)

  test.each([
    ['C:\\boats', 'panels\\tern.panel.yaml', 'C:/boats/panels/tern.panel.yaml'],
    ['C:\\boats', 'panels/tern.panel.yaml', 'C:/boats/panels/tern.panel.yaml'],
    ['c:\\boats', '..\\vans', 'C:/vans'],
    ['C:\\boats', 'D:\\vans\\x', 'D:/vans/x'],
    ['C:/boats', '\\vans', 'C:/vans'],
    ['\\\\office\\share\\boats', 'panels', '//office/share/boats/panels'],
  ])('in %s, %s is %s', (cwd, path, expected) => expect(absolute(cwd, path)).toBe(expected))

  test.each([
    ['C:\\boats', 'C:/boats/panels/tern.panel.yaml', 'panels/tern.panel.yaml'],
    ['C:\\boats\\deep', 'C:/boats/x', '../x'],
    ['c:\\boats', 'C:/Boats/x', 'x'],
    ['C:\\boats', 'C:/boats', '.'],
    ['C:\\boats', 'D:/vans/x', 'D:/vans/x'],
  ])('from %s, %s is shown as %s', (cwd, path, expected) => expect(shown(cwd, path)).toBe(expected))

  test.each([
    ['C:/boats/panels', 'C:/boats'],
    ['C:/boats', 'C:/'],
    ['C:/', 'C:/'],
    ['//office/share/boats', '//office/share/'],
  ])('the folder above %s is %s', (path, expected) => expect(folderOf(path)).toBe(expected))

  test.each([
    ['C:/', 'C:/boats', true],
    ['C:/boats', 'C:/boats/x', true],
    ['C:/boats', 'C:/boats-old/x', false],
    ['C:/boats', 'D:/boats/x', false],
  ])('within %s: %s is %s', (folder, path, expected) => expect(isWithin(folder, path)).toBe(expected))

  test.each([
    ['C:\\boats\\tern-110.panel.yaml', { kind: 'panel', id: 'tern-110' }],
    ['C:\\boats\\WATTPROOF.YAML', { kind: 'library', id: 'wattproof' }],
    ['C:\\tern.panel.yaml\\notes.txt', null],
  ])('%s is a record by its name alone', (path, expected) => expect(recordOfPath(path)).toEqual(expected))

  test.each([
    ['C:/boats/a b#1.yaml', 'file:///C:/boats/a%20b%231.yaml'],
    ['//office/share/x', 'file://office/share/x'],
    ['/boats/x', 'file:///boats/x'],
    ['C:/', 'file:///C:/'],
  ])('the address of %s is %s', (path, expected) => expect(addressOf(path)).toBe(expected))

  test('a drive is written one way', () => expect(slashed('c:\\boats')).toBe('C:/boats'))
})

test.each([
  ['file:///c%3A/boats/tern.panel.yaml', 'file:///C:/boats/tern.panel.yaml'],
  ['file:///C%3A/boats/a%20b.panel.yaml', 'file:///c:/boats/a b.panel.yaml'],
])('two spellings of one address are one file: %s', (one, other) => {
  const { pathOf } = createAddresses()
  expect(pathOf(one)).toBe(pathOf(other))
})

test('SARIF places from the top of the repository, and in full what lies on another drive', () => {
  const [span, message] = [{ start: 0, end: 1 }, 'm']
  const found = {
    rule: 'unused-record',
    severity: 'hint',
    message,
    pointer: '',
    span,
    corrections: [],
    reason: 'r',
    source: 's',
  } as const
  const report = (path: string, elsewhere: string): FileReport => ({
    ...{ path, kind: 'panel', text: 'x', starts: [0], accepted: [], base: '', brokenSettings: false },
    findings: [{ ...found, related: [{ path: elsewhere, span, message }] }],
  })
  const file = report('C:/boats/panels/a b.panel.yaml', 'D:/vans/c.panel.yaml')
  const shown = fromTop(file, 'C:\\boats\\panels', 'C:/boats', pathsOn(win32))
  const { runs } = JSON.parse(formatSarif([shown], 'C:/boats')) as Log
  const [result] = runs[0]!.results!
  expect(runs[0]!.originalUriBaseIds).toEqual({ '%SRCROOT%': { uri: 'file:///C:/boats/' } })
  expect(result!.locations![0]!.physicalLocation!.artifactLocation).toEqual({
    uri: 'panels/a%20b.panel.yaml',
    uriBaseId: '%SRCROOT%',
  })
  expect(result!.relatedLocations![0]!.physicalLocation!.artifactLocation).toEqual({
    uri: 'file:///D:/vans/c.panel.yaml',
  })
})

describe('lines that end as on Windows', () => {
  const name = 'comma-in-braces.panel.yaml'
  const plain = readFileSync(`samples/mistakes/${name}`, 'utf8')
  const crlf = plain.replaceAll('\n', '\r\n')
  const found = (text: string) =>
    JSON.parse(wattproof(['check', name, '--format', 'json'], { cwd: scratch({ [name]: text }) }).out) as {
      files: readonly { findings: readonly { range: unknown; rule: string; fingerprint: string }[] }[]
    }

  test('the findings are the same, at the same places, under the same fingerprints', () => {
    const { findings } = found(crlf).files[0]!
    expect(findings.length).toBeGreaterThan(0)
    expect(findings).toEqual(found(plain).files[0]!.findings)
  })

  test('a fix leaves every other character, and the table and what is made of it are the same', () => {
    const fixed = (text: string) => {
      const cwd = scratch({ [name]: text })
      wattproof(['check', name, '--fix'], { cwd })
      return readFileSync(join(cwd, name), 'utf8')
    }
    expect(fixed(plain)).not.toBe(plain)
    expect(fixed(crlf)).toBe(fixed(plain).replaceAll('\n', '\r\n'))
    const cwd = scratch({ 'a.panel.yaml': fixed(crlf) })
    const table = wattproof(['table', '.', '--format', 'csv'], { cwd }).out
    writeFileSync(join(cwd, 'a.csv'), table.replaceAll('\n', '\r\n'))
    wattproof(['new', 'panel', '--from', 'a.csv', '-o', 'made'], { cwd })
    const again = wattproof(['table', 'made', '--format', 'csv'], { cwd }).out
    expect(again).toBe(table.replace(/^a\.panel/m, 'made/a.panel'))
  })
})
