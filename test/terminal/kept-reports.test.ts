import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import type { Finding } from '../../server/src/findings/finding.ts'
import { checkAll } from '../../server/src/terminal/check-all.ts'
import type { Pack } from '../../server/src/terminal/kept/pack.ts'
import { libraryOf } from '../../server/src/terminal/load.ts'
import type { World } from '../../server/src/terminal/world.ts'
import { bundleOf } from '../../server/src/wording/bundle.ts'
import { drawn, randomFrom } from '../slips/random.ts'

const day = '2026-11-01'

type Files = Readonly<Record<string, string>>

/** A system and more than it names, with a climate for all. */
const all: Files = {
  ...samples('samples/systems', /^(boat|panels|climates|controllers|batteries)/),
  '/lib/wattproof.yaml': 'format: 1\ncurrency: USD\nsite: { mounting: standoff, climate: example-bay }\n',
}
const skua = '/lib/panels/skua-110.panel.yaml'

function samples(folder: string, which: RegExp): Files {
  const names = readdirSync(folder, { recursive: true }).map((name) => String(name).replaceAll('\\', '/'))
  const wanted = names.filter((name) => which.test(name) && name.endsWith('.yaml'))
  return Object.fromEntries(wanted.map((name) => [`/lib/${name}`, readFileSync(join(folder, name), 'utf8')]))
}

function createPack() {
  const lines = new Map<string, string>()
  const taken: string[] = []
  const pack: Pack = {
    get(name) {
      if (lines.has(name)) taken.push(name)
      return lines.get(name)
    },
    set: (name, text) => void lines.set(name, text),
    end: () => {},
  }
  return { pack, lines, taken }
}

async function found(files: Files, pack: Pack | null, situation: Partial<World> = {}) {
  const texts = new Map(Object.entries(files))
  const library = libraryOf(texts)
  const sheets = { at: async () => undefined, end: () => {} }
  const world = { cwd: '/lib', today: day, progress: () => {}, ...situation } as unknown as World
  const work = { texts, library, targets: library.paths(), sheets, cache: true, pack }
  const byPath: Record<string, readonly Finding[]> = {}
  await checkAll(world, work, 1, ({ path, findings }) => (byPath[path] = findings))
  return byPath
}

const settings = '/lib/wattproof.yaml'
const boat = '/lib/boat.system.yaml'
const skua120 = '/lib/panels/skua-120.panel.yaml'
const family: Files = { ...all, [skua120]: all[skua]!.replace('Skua 110', 'Skua 120') }
const bay = '/lib/climates/example-bay.climate.yaml'
const hourly: Files = { ...all, [bay]: `${all[bay]}hourly: bay.epw\n` }
const yml = '/lib/wattproof.yml'
const twoSettings: Files = {
  ...all,
  [settings]: 'format: 1\nseverities: { no-rule: error, unknown-rule: error }\n',
  [yml]: 'format: 1\nseverities: { unknown-rule: off }\n',
}

function edit(path: string, from: string, to: string, files = all): Files {
  const text = files[path]!
  expect(text).toContain(from)
  return { ...files, [path]: text.replace(from, to) }
}

function without(path: string, { [path]: _, ...files }: Files): Files {
  return files
}

test('nothing is looked at twice', async () => {
  const { pack, lines, taken } = createPack()
  const first = await found(family, pack)
  expect(first).toEqual(await found(family, null))
  for (const [name, text] of lines)
    lines.set(
      name,
      text.replace('"findings":[]', '"findings":["kept"]').replace('"findings":[{', '"findings":["kept",{'),
    )
  const again = await found(family, pack)
  expect(Object.values(again).map(([kept]) => kept as unknown)).toEqual(Object.keys(family).map(() => 'kept'))
  expect(new Set(taken).size).toBe(lines.size)
})

test.each<[string, string, Files, Files]>([
  ['itself', skua, all, edit(skua, '22.1 V', '2.21 V')],
  ['one of its family', skua, without(skua120, family), family],
  ['one of its family that is gone', skua, family, without(skua120, family)],
  ['one of its family that was edited', skua, family, edit(skua120, '110 W', '120 W', family)],
  ['one that joins its family', skua, edit(skua120, 'family: Skua', 'family: Other', family), family],
  [
    'the severities of the settings',
    skua,
    all,
    edit(settings, 'currency', 'severities: { unused-record: error }\ncurrency'),
  ],
  [
    'the prices of the settings',
    skua,
    all,
    edit(settings, 'site', 'price_bands: { flexible: { low: 1 USD, high: 2 USD } }\nsite'),
  ],
  [
    'settings that are gone',
    skua,
    edit(settings, 'currency', 'severities: { unused-record: error }\ncurrency'),
    without(settings, all),
  ],
  ['a system that uses it now', skua, all, edit(boat, 'puffin-115, count: 2', 'skua-110, count: 2')],
  [
    'the only system that used it',
    '/lib/panels/puffin-115.panel.yaml',
    all,
    without(boat, { ...all, '/lib/other.system.yaml': 'format: 1\nname: Other\n' }),
  ],
  ['a panel of the system', boat, all, edit('/lib/panels/puffin-115.panel.yaml', '24.5 V', '124.5 V')],
  ['a panel of the system that is gone', boat, all, without('/lib/panels/puffin-115.panel.yaml', all)],
  ['a climate of the system', boat, all, edit('/lib/climates/example-bay.climate.yaml', '6.2', '0.1')],
  ['the weather of a climate', bay, hourly, { ...hourly, '/lib/climates/bay.epw': 'LOCATION,Bay' }],
  ['the settings that hold of two', settings, twoSettings, { [yml]: twoSettings[yml]!, ...twoSettings }],
  ['a controller of the system', boat, all, edit('/lib/controllers/example-mppt-30.controller.yaml', '100 V', '10 V')],
])('what is found in a record follows %s', async (_, path, before, after) => {
  const { pack } = createPack()
  const name = path.replace('/lib/', '')
  const first = await found(before, pack)
  const second = await found(after, pack)
  expect(second).toEqual(await found(after, null))
  expect(second[name]).not.toEqual(first[name])
  expect(await found(before, pack)).toEqual(first)
})

const german = bundleOf(JSON.parse(readFileSync('server/l10n/bundle.l10n.de.json', 'utf8')) as Files, 'metric')
test.each<[string, Partial<World>]>([
  ['the day', { today: '2036-11-01' }],
  ['the language', { bundle: german }],
  ['the units', { bundle: bundleOf(undefined, 'us') }],
  ['the folder that names are shown from', { cwd: '/' }],
])('and %s', async (_, situation) => {
  const { pack } = createPack()
  const files = edit('/lib/panels/skua-110.panel.yaml', 'weight: 2.2 kg', 'weight: 9.2 kg', family)
  const first = await found(files, pack)
  const second = await found(files, pack, situation)
  expect(second).toEqual(await found(files, null, situation))
  expect(second).not.toEqual(first)
})

test('whatever is edited, what is kept is what would be found', async () => {
  const random = randomFrom(20)
  const { pick } = drawn(random)
  const { pack, taken } = createPack()
  let files = family
  for (let step = 0; step < 40; step++) {
    files = edited(files)
    expect(await found(files, pack)).toEqual(await found(files, null))
  }
  expect(taken.length).toBeGreaterThan(400)

  function edited(files: Files): Files {
    const path = pick(Object.keys(family))
    const text = files[path]
    // what is gone comes back as it was
    if (text === undefined || random() < 0.2) return { ...files, [path]: family[path]! }
    if (random() < 0.1) return without(path, files)
    const digits = [...text.matchAll(/\d/g)].map(({ index }) => index)
    const at = pick(digits)
    return { ...files, [path]: text.slice(0, at) + pick([...'0123456789', '']) + text.slice(at + 1) }
  }
})
