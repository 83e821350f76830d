import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { familyRules } from '../../server/src/check/panel.ts'

test('every rule that compares a panel with others is asked before a record counts as clean', () => {
  const folder = 'server/src/rules/panel'
  const comparing = readdirSync(folder).filter((name) =>
    /\bfamilyRule\(/.test(readFileSync(`${folder}/${name}`, 'utf8')),
  )
  expect(familyRules.map(({ id }) => `${id}.ts`).sort()).toEqual(comparing.sort())
})
