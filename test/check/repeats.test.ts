import { expect, test } from 'vitest'
import { check } from './checked.ts'

// Anything that tries more than a few steps for each character does not end here before the limit of a test.
const length = 8000
const signs = [
  ...'&*!|>\'"%@`#,[]{}?:-_=~<;.0a °±()/\\\t\n\r\u2028\u0085\ufeff\0',
  '- ',
  ': ',
  ', ',
  '# ',
  ' #',
  '""',
  '" "',
  '&a ',
  '; accept x ',
  "',",
]
const frames: readonly ((run: string) => string)[] = [
  (run) => run,
  (run) => `name: ${run}`,
  (run) => `name: ${run}\n"x\n`,
  (run) => `name: { a: ${run}`,
  (run) => `name: [ ${run} ]`,
  (run) => `"${run}: 1`,
  (run) => `maker: ${run} x`,
  (run) => `stc:\n  voc: 22${run}V\n  isc:${run}\n`,
  (run) => `# ${run}`,
]

test.each(signs.map((sign) => ({ sign: JSON.stringify(sign), run: sign.repeat(length / sign.length) })))(
  '$sign without end is checked',
  ({ run }) => {
    for (const frame of frames)
      expect(check(frame(run)).findings.map(({ rule }) => rule)).not.toContain('internal-error')
  },
)

test.each([...'&!*-'])('26 times %s before a quoted line', (sign) => {
  expect(check(`name: ${sign.repeat(26)}\n"x" y\n`).findings.length).toBeGreaterThan(0)
})
