import { expect, test } from 'vitest'
import { phraseInWords } from '../../server/src/wording/phrase.ts'
import { hazards } from '../../server/src/text/hazards/index.ts'
import { readTree } from '../../server/src/text/read-tree.ts'

test.each([
  { reason: 'a number that begins an item and a comma that ends nothing', text: 'certificates: [1.,6 A]\n' },
  { reason: 'a comment behind a lone carriage return', text: '#accept\rp' },
  {
    reason: 'a list in the second of two fields of one name',
    text: 'air:\n  a: [1]\nair:\n  mean_low: [1, 2, 3, 4, *5 °C]\n',
  },
])('$reason: nothing throws', ({ text }) => {
  const tree = readTree(text)
  expect(hazards.flatMap((rule) => rule.find(tree)).every(({ message }) => phraseInWords(message).endsWith('.'))).toBe(
    true,
  )
})
