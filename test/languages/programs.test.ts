import { readFileSync } from 'node:fs'
import { pathToFileURL } from 'node:url'
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

const boat = 'samples/systems/boat.system.yaml'

// sentences are said in each language; whatever names something is the same in all, for whoever reads it with a program
test.each([
  { args: ['check', 'samples/mistakes'], says: true },
  { args: ['review', 'samples/systems/measured/day-sailer.system.yaml'], says: true },
  { args: ['compare', boat, '--surface', 'coachroof'], says: true },
  { args: ['compare', 'samples/library/panels'], says: true },
  { args: ['values', boat], says: false },
  { args: ['values', 'samples/library/panels/tern-110.panel.yaml'], says: false },
  { args: ['table', 'samples/library/panels'], says: false },
  { args: ['sheet', 'samples/library/panels/tern-110.panel.yaml'], says: false },
])('keys, names, places and fingerprints of $args are the same in every language', ({ args, says }) => {
  const samples = ['en', 'de', 'es'].map((language) => inLanguage(language, ...args, '--format', 'json').out)
  const [english, ...others] = samples.map((out) => JSON.stringify(JSON.parse(out, withoutSentences)))
  expect(english).toContain('"version":1')
  for (const other of others) expect(other).toBe(english)
  expect(new Set(samples).size).toBe(says ? 3 : 1)

  function withoutSentences(key: string, value: unknown) {
    return sentences.includes(key) && value !== null ? typeof value : value
  }
})

const sentences = ['message', 'why', 'not_checked', 'too_large', 'excluded', 'warranty_void', 'notes']

test('the help, its headings and its errors are in the language that is asked for, wherever that stands', () => {
  expect(wattproof(['--language', 'de', '--help']).out).toContain('Befehle:\n')
  expect(wattproof(['check', '--help', '--language=es']).out).toMatch(/Opciones:[^]*--fix +escribe/)
  expect(wattproof(['chekc', '--language', 'de']).err).toBe(
    'wattproof: unbekannter Befehl „chekc“\n(Ist check gemeint?)\n',
  )
  expect(inLanguage('es', 'check', '--format', 'yaml').err).toContain('«yaml» no es válido. Las opciones son text')
  expect(inLanguage('de', 'review', 'nowhere').err).toBe('wattproof: es gibt keine Datei `nowhere`\n')
})

test('the page for a customer says which language it is in', () => {
  expect(inLanguage('de', 'report', boat).out).toContain('<html lang="de">')
  expect(inLanguage('es', 'report', boat, '--form').out).toContain('<html lang="es">')
})

test('pictures beside the editor are in the language of the client', async () => {
  const client = await startServer({ locale: 'es' })
  const uri = pathToFileURL(boat).href
  await client.open(uri, readFileSync(boat, 'utf8'))
  const pictures = await client.request<{ pictures: { title: string; svg: string }[] }>('wattproof/pictures', {
    textDocument: { uri },
  })
  await client.stop()
  expect(pictures.pictures.map(({ title }) => title)).toContain('Energía por mes')
  expect(pictures.pictures.map(({ svg }) => svg).join('')).toContain('los módulos dan')
})

test('the page of a rule is in the language of the client, but for its examples', async () => {
  const client = await startServer({ locale: 'de' })
  const text =
    '# braces-around-number\n\nSeverity: error. { } makes a map of what is inside, so the number becomes the name of a field without a value.\n\n#### In order\n\n```yaml\nstc: { voc: 22.1 V }\n```\n'
  const page = await client.request<{ text: string }>('wattproof/rulePage', { text })
  await client.stop()
  expect(page.text).toMatch(
    /^# braces-around-number\n\nSchweregrad: Fehler\. [^]*\n\n#### In Ordnung\n\n```yaml\nstc: \{ voc: 22\.1 V \}\n```\n$/,
  )
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
