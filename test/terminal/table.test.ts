import { expect, test } from 'vitest'
import { scratch, wattproof } from './run.ts'

const panel = (name: string, pmax: string, weight: string, more = '') =>
  `format: 1\nname: ${name}\nstc: { pmax: ${pmax}, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A }\nsize: { length: 1190 mm, width: 540 mm }\nweight: ${weight}\n${more}`

const files = {
  'panels/a.panel.yaml': panel('Alpha', '110 W', '2.2 kg', 'notes: "=1+1"\n'),
  'panels/b.panel.yaml': panel('Beta', '0.2 kW', '4 lb', 'warranty: { exclusions: [uv, "foot, traffic"] }\n'),
  'panels/c.panel.yaml': panel('Gamma', '90 W', '3 kg', 'shelf: 7\n'),
  'climates/bay.climate.yaml': 'format: 1\nname: Bay\nlatitude: 43 deg\n',
}

test('every typed field is a column, as typed; what a spreadsheet would take for a formula is guarded', () => {
  const { out, code } = wattproof(['table', 'panels', '--format', 'csv'], { cwd: scratch(files) })
  expect(code).toBe(0)
  expect(out.split('\n')).toEqual([
    'file,format,name,stc.pmax,stc.vmp,stc.imp,stc.voc,stc.isc,size.length,size.width,weight,warranty.exclusions,notes,shelf',
    "panels/a.panel.yaml,1,Alpha,110 W,18.6 V,5.92 A,22.1 V,6.31 A,1190 mm,540 mm,2.2 kg,,'=1+1,",
    'panels/b.panel.yaml,1,Beta,0.2 kW,18.6 V,5.92 A,22.1 V,6.31 A,1190 mm,540 mm,4 lb,"[uv, ""foot, traffic""]",,',
    'panels/c.panel.yaml,1,Gamma,90 W,18.6 V,5.92 A,22.1 V,6.31 A,1190 mm,540 mm,3 kg,,,7',
    '',
  ])
})

test.each([
  [
    ['--sort', 'stc.pmax'],
    ['c', 'a', 'b'],
  ],
  [['--sort=-stc.pmax'], ['b', 'a', 'c']],
  [
    ['--filter', 'weight < 5 lb'],
    ['a', 'b'],
  ],
  [
    ['--filter', 'stc.pmax >= 100'],
    ['a', 'b'],
  ],
  [['--filter', 'name = beta'], ['b']],
  [
    ['--sort', 'price.amount'],
    ['a', 'b', 'c'],
  ],
])('%s compares what the texts mean', (args, ids) => {
  const { out } = wattproof(['table', 'panels', '--format', 'json', '--columns', 'name', ...args], {
    cwd: scratch(files),
  })
  const { version, rows } = JSON.parse(out)
  expect(version).toBe(1)
  expect(rows.map(({ file }: { file: string }) => file)).toEqual(ids.map((id) => `panels/${id}.panel.yaml`))
  expect(rows[0].fields).toEqual({ '/name': expect.any(String) })
})

test('records of every kind, or of one; a file that is named brings nothing along', () => {
  const cwd = scratch({
    ...files,
    'van.system.yaml': 'format: 1\nname: Van\nkind: vehicle\narrays: [{ panels: [{ panel: a, count: 1 }] }]\n',
  })
  const listed = (...args: string[]) =>
    JSON.parse(wattproof(['table', ...args, '--format', 'json'], { cwd }).out).rows.map(
      ({ kind }: { kind: string }) => kind,
    )
  expect(listed()).toEqual(['climate', 'panel', 'panel', 'panel', 'system'])
  expect(listed('--kind', 'climate')).toEqual(['climate'])
  expect(listed('panels/a.panel.yaml')).toEqual(['panel'])
  expect(listed('panels/*.yaml')).toEqual(['panel', 'panel', 'panel'])
})

test('Markdown escapes what its tables are made of', () => {
  const { out } = wattproof(['table', 'a.panel.yaml', '--format', 'markdown', '--columns', 'name'], {
    cwd: scratch({ 'a.panel.yaml': panel('"A | B"', '110 W', '2 kg') }),
  })
  expect(out).toBe('| file | name |\n| --- | --- |\n| a.panel.yaml | A \\| B |\n')
})

test.each([
  [['--columns', 'stc.vco'], /there is no column `stc\.vco`/],
  [['--filter', 'weight < heavy'], /`heavy` is no value of weight/],
  [['nowhere'], /there is no file or folder `nowhere`/],
])('%s cannot run', (args, message) => {
  const { code, err } = wattproof(['table', ...args], { cwd: scratch(files) })
  expect(code).toBe(2)
  expect(err).toMatch(message)
})
