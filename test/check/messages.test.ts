import { readdirSync, readFileSync } from 'node:fs'
import { expect, test, vi } from 'vitest'
import { checkFile } from '../../server/src/check/check.ts'
import { figure } from '../../server/src/findings/message.ts'
import { reviewOf } from '../../server/src/check/review.ts'
import { createLibrary } from '../../server/src/library/create.ts'
import { reviewRules } from '../../server/src/review/rules/index.generated.ts'
import { batteryRules } from '../../server/src/rules/battery/index.generated.ts'
import { climateRules } from '../../server/src/rules/climate/index.generated.ts'
import { controllerRules } from '../../server/src/rules/controller/index.generated.ts'
import { panelRules } from '../../server/src/rules/panel/index.generated.ts'
import { check } from './checked.ts'

const rules = [...panelRules, ...controllerRules, ...batteryRules, ...climateRules, ...reviewRules]
const folders = ['panel', 'controller', 'battery', 'climate'].map((kind) => `server/src/rules/${kind}`)
const files = [...folders, 'server/src/review/rules'].flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.ts') && !name.includes('generated'))
    .map((name) => ({ id: name.slice(0, -3), source: readFileSync(`${folder}/${name}`, 'utf8') })),
)

test.each(files)('$id says only messages that it has', ({ id, source }) => {
  const own = rules.find((rule) => rule.id === id)!
  // what is said of shared phrases goes through their own sayer, which the compiler checks
  const said = [...source.matchAll(/(?<!\b(?:say|word)\()\{\s*say: '(\w+)'/g)].map(([, name]) => name!)
  expect(said.filter((name) => !Object.hasOwn(own.messages, name))).toEqual([])
  expect(Object.keys(own.messages).filter((name) => !source.includes(`'${name}'`) && name !== 'missing')).toEqual([])
})

test('another language is a bundle of templates; what it lacks is said in English', () => {
  const library = createLibrary()
  const tern = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
  library.put(
    'tern-110.panel.yaml',
    tern.replace('voc: 22.1 V', 'voc: 2.21 V').replace('weight: 2.2 kg', 'weight: 9 kg'),
  )
  const texts = {
    'voc-below-vmp/below': 'Voc {voc} liegt unter Vmp {vmp}',
    'sentences/slip': '{claim}{borrowed}; {text} passt ({why}){like}.',
  }
  const { findings } = checkFile(library, 'tern-110.panel.yaml', {
    today: '2026-11-25',
    bundle: { texts, units: 'metric' },
  })!
  expect(findings.map(({ message }) => message)).toEqual([
    'Voc 2.21 V liegt unter Vmp 18.6 V; 22.1 V passt (decimal point moved).',
    expect.stringContaining('kg/m2; 1.6 to 4.8 is usual') as string,
  ])
})

test('so are what reading finds and what may have happened, by their English text or by name', () => {
  const library = createLibrary()
  const tern = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
  library.put('tern-110.panel.yaml', tern.replace('voc: 22.1 V', 'voc: 2.21 V').replace('surface:', 'surfaec:'))
  const texts = {
    '{0} has no field {1}, so it is not read.{2}': '{0} hat kein Feld {1}, es wird nicht gelesen.{2}',
    'The record': 'Der Datensatz',
    ' Did you mean {0}?': ' Ist {0} gemeint?',
    'the nearest known field': 'das ähnlichste Feld',
    'typos/pointMoved': 'Komma verrutscht',
  }
  const { findings } = checkFile(library, 'tern-110.panel.yaml', {
    today: '2026-11-25',
    bundle: { texts, units: 'metric' },
  })!
  expect(findings.map(({ message }) => message)).toEqual([
    'Der Datensatz hat kein Feld surfaec, es wird nicht gelesen. Ist surface gemeint?',
    'Voc 2.21 V is probably 22.1 V (Komma verrutscht): it is below Vmp 18.6 V.',
  ])
  expect(findings.map(({ corrections }) => corrections[0]?.why)).toEqual(['das ähnlichste Feld', 'Komma verrutscht'])
})

test('so are the reasons of rules and what a review could not check', () => {
  const library = createLibrary()
  const tern = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
  library.put('tern-110.panel.yaml', tern.replace('voc: 22.1 V', 'voc: 2.21 V'))
  library.put('shed.system.yaml', 'format: 1\nkind: cabin\narrays: [{ id: roof }]\n')
  const texts = {
    'voc-below-vmp/reason': 'Im Leerlauf ist die Spannung am höchsten.',
    'Balance of the year: no loads are given.': 'Jahresbilanz: es sind keine Verbraucher angegeben.',
    '{0}: {1} not given.': '{0}: ohne Angabe von {1}.',
    '{0} and {1}': '{0} und {1}',
    'output cable': 'Ausgangskabel',
  }
  const bundle = { texts, units: 'metric' } as const
  const today = { today: '2026-11-25', bundle }
  const { findings } = checkFile(library, 'tern-110.panel.yaml', today)!
  expect(findings.find(({ rule }) => rule === 'voc-below-vmp')?.reason).toBe(texts['voc-below-vmp/reason'])
  const lines = reviewOf(library, library.file('shed.system.yaml')!, undefined, bundle)!.figures.not_checked
  expect(lines).toContain('Jahresbilanz: es sind keine Verbraucher angegeben.')
  expect(lines).toContain('roof: ohne Angabe von disconnect, output fuse und Ausgangskabel.')
  expect(lines).toContain('Interrupting rating of the main fuse: not given.')
})

test('the catalogue has every template that a check says', () => {
  const catalogue = JSON.parse(readFileSync('server/messages.json', 'utf8')) as Record<string, string>
  const named = rules.flatMap(({ id, messages }) =>
    Object.entries(messages).map(([name, text]) => [`${id}/${name}`, text] as const),
  )
  expect(named.filter(([name, text]) => catalogue[name] !== text)).toEqual([])
  expect(catalogue).toMatchObject({
    'typos/pointMoved': 'decimal point moved',
    '{0} has no value.': '{0} has no value.',
    'A # begins a comment only after a space: add one, or put the text in quotes.': expect.any(String) as string,
  })
})

test('a list of thirteen months has no finding about the thirteenth but that it is one too many', () => {
  const sun = ['1.6', '2.5', '3.9', '4.8', '5.7', '6.2', '6.1', '5.4', '4.3', '2.8', '1.8', '1.4', '8']
  const { findings } = check(`format: 1\nname: Bay\nlatitude: 43.5 deg\nsun: [${sun.join(', ')}]\n`, {
    path: 'bay.climate.yaml',
  })
  expect(findings.map(({ rule }) => rule)).not.toContain('internal-error')
  expect(findings.filter(({ pointer }) => pointer.startsWith('/sun')).map(({ message }) => message)).toEqual([
    expect.stringContaining('12') as string,
  ])
})

test.each([
  { reason: 'a number that is none', value: figure(Number.NaN, '%') },
  { reason: 'a number without end', value: figure(1 / 0, 'V') },
  { reason: 'a count that is none', value: Number.NaN },
])('$reason is not said: that finding alone becomes a mistake of our own', ({ value }) => {
  vi.spyOn(climateRules[0], 'check').mockReturnValue({
    say: climateRules[0].id === 'climate-sun-impossible' ? 'impossible' : 'found',
    with: { sun: value, month: 'May', share: value, above: value, why: null },
    suspects: [{ pointer: '/name', text: 'Bay', span: { start: 16, end: 19 } }],
  } as never)
  const { findings } = check('format: 1\nname: Bay\nlatitude: 95 deg\n', { path: 'bay.climate.yaml' })
  vi.restoreAllMocks()
  expect(findings.find(({ rule }) => rule === 'internal-error')).toMatchObject({
    pointer: '/name',
    span: { start: 16 },
  })
  expect(findings.length).toBeGreaterThan(1)
  expect(findings.map(({ message }) => message).join('\n')).not.toMatch(/NaN|Infinity|undefined/)
})

test('no message has more than 300 characters, nor has that of another place', () => {
  const long = 'x'.repeat(400)
  const panels = `arrays: [{ id: a, panels: [{ panel: ${long}, count: 1 }] }]`
  const system = check(`format: 1\nname: Boat\nkind: boat\n${panels}\n`, { path: 'boat.system.yaml' })
  const panel = check(`format: 1\nname: Tern 120 ${'y'.repeat(400)}\nstc: { pmax: 110 W }\n`)
  const said = [...system.findings, ...panel.findings].flatMap(({ message, related, corrections }) => [
    message,
    ...related.map((one) => one.message),
    ...corrections.map(({ why }) => why),
  ])
  expect(said.join('\n')).toContain('xxx … xxx')
  expect(said.join('\n')).toContain('yyy … yyy')
  expect(Math.max(...said.map(({ length }) => length))).toBeLessThanOrEqual(300)
})
