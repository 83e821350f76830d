import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { startServer } from '../editor/client.ts'
import { wattproof } from '../terminal/run.ts'

const mistake = 'samples/mistakes/decimal-point-moved.panel.yaml'
const inLanguage = (language: string, ...args: string[]) => wattproof([...args, '--language', language])

test('the command line prints English unless it is asked for another language, whatever the machine speaks', () => {
  const env = { LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8' }
  expect(wattproof(['check', mistake], { env }).out).toBe(inLanguage('en', 'check', mistake).out)
  expect(inLanguage('de', 'check', mistake).out).toContain(
    'Voc 2.21 V ist wahrscheinlich 22.1 V (Dezimalpunkt verschoben): der Wert liegt unter Vmp 18.6 V.',
  )
  expect(inLanguage('es', 'check', mistake).out).toContain(
    'Voc 2.21 V es probablemente 22.1 V (punto decimal desplazado): está por debajo de Vmp 18.6 V.',
  )
  expect(inLanguage('fr', 'check', mistake).err).toContain('en, de, es')
})

test('keys, rules, places and fingerprints are the same in every language', () => {
  const samples = ['en', 'de', 'es'].map((language) => inLanguage(language, 'check', 'samples', '--format', 'json').out)
  const [english, ...others] = samples.map((out) => JSON.stringify(JSON.parse(out, withoutWords)))
  expect(english).toContain('fingerprint')
  for (const other of others) expect(other).toBe(english)
  expect(new Set(samples).size).toBe(3)

  function withoutWords(key: string, value: unknown) {
    return ['message', 'why'].includes(key) ? '' : value
  }
})

test('a new record explains its fields in the language that is asked for', () => {
  const { out } = inLanguage('de', 'new', 'panel')
  expect(out).toContain('# Spannung ohne Last')
  expect(out).toMatch(/^ {2}voc:/m)
})

test('clients in two languages do not disturb each other', async () => {
  const text = readFileSync(mistake, 'utf8')
  const uri = 'file:///nowhere/tern.panel.yaml'
  const position = { line: text.split('\n').findIndex((line) => line.includes('voc: 2.21')), character: 4 }
  const clients = await Promise.all(
    [{ locale: 'de-AT' }, { locale: 'en' }, { locale: 'de', initializationOptions: { language: 'es' } }].map(
      startServer,
    ),
  )
  const said = await Promise.all(
    clients.map(async (client) => {
      await client.open(uri, text)
      const [first] = await client.pull(uri)
      const hover = await client.request<{ contents: { value: string } }>('textDocument/hover', {
        textDocument: { uri },
        position,
      })
      const actions = await client.request<{ title: string }[]>('textDocument/codeAction', {
        textDocument: { uri },
        range: first!.range,
        context: { diagnostics: [first] },
      })
      const form = await client.request<{ text: string }>('wattproof/skeleton', { kind: 'battery' })
      await client.stop()
      return { message: first!.message, code: first!.code, hover: hover.contents.value, title: actions[0]!.title, form }
    }),
  )
  expect(said.map(({ code }) => code)).toEqual(Array(3).fill('voc-below-vmp'))
  expect(said.map(({ message }) => message)).toEqual([
    expect.stringContaining('ist wahrscheinlich'),
    expect.stringContaining('is probably'),
    expect.stringContaining('es probablemente'),
  ])
  expect(said.map(({ title }) => title)).toEqual([
    '22.1 V verwenden (Dezimalpunkt verschoben)',
    'Use 22.1 V (decimal point moved)',
    'Usar 22.1 V (punto decimal desplazado)',
  ])
  expect(said.map(({ hover }) => hover.split('\n')[0])).toEqual([
    expect.stringContaining('**Voc**, Leerlaufspannung'),
    expect.stringContaining('**Voc**, open-circuit voltage'),
    expect.stringContaining('**Voc**, tensión de circuito abierto'),
  ])
  expect(said.map(({ form }) => form.text.split('. ')[0])).toEqual([
    '# Batterie-Datensatz',
    '# Battery record',
    '# Ficha de batería',
  ])
})

test('the page of a rule says how severe it is and why in the language that is asked for', () => {
  const page = inLanguage('de', 'explain', 'voc-below-vmp').out
  expect(page).toContain('Schweregrad: Fehler. Die höchste Spannung gibt ein Modul im Leerlauf')
  expect(page).toContain('#### In Ordnung')
  expect(inLanguage('es', 'explain').out).toMatch(/^voc-below-vmp +error +Un módulo da su mayor tensión en vacío/m)
})
