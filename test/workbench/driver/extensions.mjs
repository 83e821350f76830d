// The two extensions that tests bring along, and the bundle of the cases that run inside an extension host.
import { createVSIX } from '@vscode/vsce'
import { buildSync } from 'esbuild'
import { cpSync, mkdirSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'

const output = resolve('.output')

/** Bundles the cases as the one CommonJS file that an extension host loads, and returns its path. */
export const bundleCases = () => bundle('index', join(output, 'cases', 'index.js'), 'node')

export function bundle(name, outfile, platform) {
  buildSync({
    entryPoints: [resolve(`test/workbench/cases/${name}.ts`)],
    outfile,
    ...{ bundle: true, platform, format: 'cjs', target: 'es2022', external: ['vscode'] },
  })
  return outfile
}

/** An empty extension under development: a host takes test modules only where there is one. */
export function companion() {
  const folder = join(output, 'companion')
  writeManifest(folder, {
    name: 'companion',
    publisher: 'wattproof',
    extensionDependencies: ['wattproof.wattproof'],
  })
  return folder
}

/** Packs that other extension. */
export async function packOtherYamlExtension() {
  const folder = join(output, 'other-yaml')
  const packagePath = join(output, 'other-yaml.vsix')
  otherYamlExtension(folder)
  await createVSIX({ cwd: folder, packagePath, dependencies: false, allowMissingRepository: true, skipLicense: true })
  return packagePath
}

/** A small extension that says, under the name of the usual one, what YAML a file should not hold. */
export function otherYamlExtension(folder) {
  writeManifest(folder, {
    name: 'vscode-yaml',
    publisher: 'redhat',
    main: './extension.js',
    browser: './extension.js',
    activationEvents: ['onLanguage:yaml'],
    files: ['extension.js'],
    contributes: {
      configuration: { properties: { 'yaml.disableSchemaDetection': { type: 'array', default: [], scope: 'window' } } },
    },
  })
  cpSync(resolve('test/workbench/driver/other-yaml-extension.cjs'), join(folder, 'extension.js'))
}

export function writeManifest(folder, manifest) {
  mkdirSync(folder, { recursive: true })
  writeFileSync(join(folder, 'README.md'), 'Only for tests.\n')
  writeFileSync(
    join(folder, 'package.json'),
    JSON.stringify({ version: '1.0.0', engines: { vscode: '^1.100.0' }, ...manifest }),
  )
}
