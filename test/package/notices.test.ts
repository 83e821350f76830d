import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { textInZip } from './zip.ts'

test('the notices are those of the packages in the bundles', () => {
  execFileSync(process.execPath, ['.scripts/notices.mjs', '--check'], { stdio: 'pipe' })
  const notices = readFileSync('THIRD-PARTY-NOTICES', 'utf8')
  for (const name of ['commander', 'vscode-languageclient', 'vscode-languageserver', 'yaml'])
    expect(notices).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+\\nLicence: (MIT|ISC)\\n`, 'm'))
})

test('both packages hold them', () => {
  const notices = readFileSync('THIRD-PARTY-NOTICES', 'utf8')
  expect(textInZip(readFileSync('wattproof.vsix'), 'extension/THIRD-PARTY-NOTICES')).toBe(notices)
  expect(readFileSync('test/package/npm-files.txt', 'utf8')).toContain('THIRD-PARTY-NOTICES\n')
})
