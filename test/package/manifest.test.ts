import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

interface Manifest {
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
  expect(contributed).toEqual(['commands', 'configuration', 'configurationDefaults', 'menus'])
})

test('it is typed against the oldest editor that it promises to run in', () => {
  expect(`^${manifest.devDependencies['@types/vscode']}`).toBe(manifest.engines.vscode)
})

test('the programs are bundles, so that nothing else has to be installed', () => {
  expect(manifest.dependencies).toBeUndefined()
})

test('every setting of behaviour can differ from folder to folder', () => {
  const {
    'wattproof.trace.server': trace,
    'wattproof.language': language,
    ...behaviour
  } = manifest.contributes.configuration.properties
  expect(trace?.scope).toBe('window')
  expect(language?.scope).toBe('window') // one server, one language
  expect(Object.values(behaviour).every(({ scope }) => scope === 'resource')).toBe(true)
})
