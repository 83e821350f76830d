import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { readFile } from '../../server/src/records/read.ts'
import type { ReadFile } from '../../server/src/records/read-file.ts'
import { hold } from '../../server/src/sheets/hold.ts'
import { sampleSheet } from './sample.ts'

const folder = 'samples/library/panels'

test.each(readdirSync(folder))('%s says what its sheet prints', async (name) => {
  const file = readFile(`${folder}/${name}`, readFileSync(`${folder}/${name}`, 'utf8')) as ReadFile<'panel'>
  const source = file.fields.get('/datasheet/source')!.value as string
  const { fields } = hold(file, await sampleSheet(source.replace('sheets/', '')))
  expect(
    fields
      .filter(({ status }) => status === 'other')
      .map(({ field, text }) => `${field.pointer} ${field.text} ${text}`),
  ).toEqual([])
  const same = fields.filter(({ status }) => status === 'same').length
  expect(same / fields.length).toBeGreaterThan(0.75)
})
