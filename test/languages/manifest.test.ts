import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { withKeys, wordsOf } from '../../.scripts/package/manifest-words.mjs'

const read = (path: string) => JSON.parse(readFileSync(path, 'utf8')) as Record<string, string>
const manifest = read('package.json')

test.each(['de', 'es'])('%s has every command, setting and step of the manifest', (language) => {
  const own = read(`client/l10n/manifest.${language}.json`)
  const same = ['English', 'Deutsch', 'Español']
  expect(wordsOf(manifest).filter((text) => !same.includes(text) && !Object.hasOwn(own, text))).toEqual([])
})

test('a packed manifest has keys for words, and each language the same keys', () => {
  const given = {
    name: 'x',
    contributes: {
      commands: [
        { command: 'a', title: 'Do' },
        { command: 'b', title: 'Wattproof' },
      ],
    },
  }
  expect(withKeys(given, { de: { Do: 'Tun' } })).toEqual({
    manifest: {
      name: 'x',
      contributes: {
        commands: [
          { command: 'a', title: '%text0%' },
          { command: 'b', title: 'Wattproof' },
        ],
      },
    },
    files: { 'package.nls.json': { text0: 'Do' }, 'package.nls.de.json': { text0: 'Tun' } },
  })
})
