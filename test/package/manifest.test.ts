import { existsSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { commandNames } from '../../client/src/command-names.ts'

interface Manifest {
  readonly version: string
  readonly activationEvents: readonly string[]
  readonly engines: { readonly vscode: string }
  readonly devDependencies: Readonly<Record<string, string>>
  readonly dependencies?: unknown
  readonly contributes: Readonly<Record<string, unknown>> & {
    readonly configuration: { readonly properties: Readonly<Record<string, { readonly scope: string }>> }
  }
}
const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as Manifest

test('the extension is woken by YAML, JSON and libraries, not by every window', () => {
  expect(manifest.activationEvents).toEqual([
    'onLanguage:yaml',
    'onLanguage:json',
    'workspaceContains:**/wattproof.yaml',
  ])
})

test('it claims no language and no schema, so that other YAML extensions go on working', () => {
  const contributed = Object.keys(manifest.contributes).sort()
  expect(contributed).toEqual(['commands', 'configuration', 'configurationDefaults', 'menus', 'walkthroughs'])
})

test('it is typed against the oldest editor that it promises to run in', () => {
  expect(`^${manifest.devDependencies['@types/vscode']}`).toBe(manifest.engines.vscode)
})

test('the changelog has a section of this version, with its date', () => {
  const sections = [...readFileSync('CHANGELOG.md', 'utf8').matchAll(/^## \[(.+)\](?: - (\d{4}-\d\d-\d\d))?$/gm)]
  expect(sections.map(([, name, date]) => [name, date !== undefined])).toContainEqual([manifest.version, true])
  expect(sections[0]![1]).toBe('Unreleased')
})

test('the programs are bundles, so that nothing else has to be installed', () => {
  expect(manifest.dependencies).toBeUndefined()
})

test('every setting of behaviour can differ from folder to folder', () => {
  const {
    'wattproof.trace.server': trace,
    'wattproof.language': language,
    'wattproof.units': units,
    ...behaviour
  } = manifest.contributes.configuration.properties
  expect(trace?.scope).toBe('window')
  expect([language?.scope, units?.scope]).toEqual(['window', 'window']) // one server, one language
  expect(Object.values(behaviour).every(({ scope }) => scope === 'resource')).toBe(true)
})

test('every command is registered, and every menu offers a command that there is, where it applies', () => {
  const { commands, menus } = manifest.contributes as unknown as {
    commands: readonly { command: string; title: string }[]
    menus: Readonly<Record<string, readonly { command: string; when: string }[]>>
  }
  const names = commands.map(({ command }) => command)
  expect(names).toEqual(expect.arrayContaining(commandNames.map((name) => `wattproof.${name}`)))
  expect(names).toHaveLength(commandNames.length)
  for (const [menu, items] of Object.entries(menus)) {
    expect(items.length, menu).toBeGreaterThan(0)
    for (const { command, when } of items) {
      expect(names).toContain(command)
      expect(when, `${menu}: ${command}`).toMatch(/resource|explorer/)
    }
  }
})

test('the walkthrough ends with a corrected record, and each of its steps leads to a command', () => {
  const [start] = manifest.contributes.walkthroughs as readonly {
    steps: readonly { description: string; completionEvents: readonly string[]; media: { markdown: string } }[]
  }[]
  for (const { description, media } of start!.steps) {
    const [, command = ''] = /\(command:wattproof\.(\w+)\)/.exec(description) ?? []
    expect(commandNames).toContain(command)
    expect(existsSync(media.markdown), media.markdown).toBe(true)
  }
  expect(start!.steps.at(-1)!.completionEvents).toEqual(['onContext:wattproof.practiceCorrected'])
})
