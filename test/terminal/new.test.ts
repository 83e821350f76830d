import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { scratch, wattproof } from './run.ts'

/** What a person does: uncomment lines as editors do it, and type the example where nothing stands. */
const filled = (skeleton: string) =>
  skeleton
    .replace(/^( *)# (?=(?:- )?\w+:|- )/gm, '$1')
    .replace(/^(\s*\w+:)\s*#.* Such as (.+)$/gm, '$1 $2')
    .replace(
      /^(\s*\w+:)\s*#.* (\w+) \| .*$/gm,
      (line, key, choice) => `${key} ${line.replace(/ \|.*/, '').split(' ').at(-1) ?? choice}`,
    )

// a climate wants twelve months and a system the records that it names, which no example can know
test.each(['panel', 'controller', 'battery', 'library'])(
  'a skeleton %s filled with its examples has no errors',
  (kind) => {
    const name = kind === 'library' ? 'wattproof.yaml' : `x.${kind}.yaml`
    const cwd = scratch()
    expect(wattproof(['new', kind, '-o', name], { cwd })).toMatchObject({ code: 0, out: '', err: '' })
    const skeleton = readFileSync(join(cwd, name), 'utf8')
    const run = wattproof(['check', '-', '--stdin-filename', name], { cwd: scratch(), input: filled(skeleton) })
    expect(run.out).not.toMatch(/: error /)
  },
)

test.each([
  ['panel', 'name; pmax, vmp, imp, voc and isc under stc; length and width under size'],
  ['controller', 'name and type; max_voltage under input; max_current under output'],
  ['battery', 'name, chemistry and nominal_voltage; amount under capacity'],
  ['climate', 'name, latitude and sun'],
  ['system', 'name, kind and arrays'],
])('a skeleton %s as it comes says once, and calmly, what is to be filled in', (kind, open) => {
  const { findings, code } = checkedAs(kind, wattproof(['new', kind]).out)
  expect(findings).toEqual([
    expect.objectContaining({ rule: 'missing-field', severity: 'information', field: '/name' }),
  ])
  expect(findings[0]?.message).toBe(`Still to be filled in: ${open}.`)
  expect(code).toBe(0)
})

test('once a rating is typed, what is still open is an error', () => {
  const begun = wattproof(['new', 'panel']).out.replace(/^ {2}pmax: {5}/m, '  pmax: 110 W')
  const { findings, code } = checkedAs('panel', begun)
  expect(findings.find(({ severity }) => severity === 'error')).toMatchObject({ rule: 'missing-field', field: '/name' })
  expect(code).toBe(1)
})

function checkedAs(kind: string, input: string) {
  const args = ['check', '-', '--stdin-filename', `x.${kind}.yaml`, '--format', 'json']
  const { out, code } = wattproof(args, { cwd: scratch(), input })
  const { findings } = JSON.parse(out).files[0] as { findings: { severity: string; message: string }[] }
  return { findings, code }
}

test('the folder that a record goes into is made', () => {
  const cwd = scratch()
  expect(wattproof(['new', 'panel', '-o', 'panels/x.panel.yaml'], { cwd }).code).toBe(0)
  expect(readFileSync(join(cwd, 'panels/x.panel.yaml'), 'utf8')).toContain('stc:')
})

test('a file that is there stays as it is', () => {
  const cwd = scratch({ 'x.panel.yaml': 'mine' })
  expect(wattproof(['new', 'panel', '-o', 'x.panel.yaml'], { cwd }).code).toBe(2)
  expect(readFileSync(join(cwd, 'x.panel.yaml'), 'utf8')).toBe('mine')
})

test('a name that would not be read as that kind is refused', () => {
  const run = wattproof(['new', 'panel', '-o', 'x.yaml'], { cwd: scratch() })
  expect(run.code).toBe(2)
  expect(run.err).toContain('.panel.yaml')
})
