import { cpSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { scratch } from '../terminal/run.ts'
import { startServer } from './client.ts'

const at = (path: string) => ({ textDocument: { uri: `file://${process.cwd()}/${path}` } })
const boat = 'samples/systems/boat.system.yaml'
const folders = [`file://${process.cwd()}/samples`]

interface Pictures {
  readonly title: string
  readonly pictures: readonly { readonly title: string; readonly svg: string }[]
  readonly surfaces: readonly string[]
}

async function opened(path: string, args?: readonly string[]) {
  const client = await startServer({ folders, ...(args && { args }) })
  await client.open(at(path).textDocument.uri, readFileSync(path, 'utf8'))
  return client
}

test('a system: its pictures, the field at a place, the place of a field, the page', async () => {
  const { request, stop } = await opened(boat)
  const drawn = await request<Pictures>('wattproof/pictures', at(boat))
  expect(drawn).toMatchObject({ title: 'Sailing boat, 10 m', surfaces: ['bimini', 'coachroof'] })
  expect(drawn.pictures.map(({ svg }) => svg.slice(0, 4))).toEqual(Array(6).fill('<svg'))
  const lines = readFileSync(boat, 'utf8').split('\n')
  const line = lines.findIndex((text) => text.includes('cable: { size: 6 mm2'))
  const field = await request<string>('wattproof/field', { ...at(boat), position: { line, character: 20 } })
  expect(field).toBe('/arrays/0/cable/size')
  const place = await request<object>('wattproof/place', { ...at(boat), field: '/arrays/0/cable/none' })
  expect(place).toMatchObject({ uri: at(boat).textDocument.uri, range: { start: { line } } })
  const panel = await request<{ uri: string }>('wattproof/place', {
    ...at(boat),
    field: 'panel:puffin-115',
  })
  expect(panel.uri).toMatch(/puffin-115\.panel\.yaml$/)
  const page = await request<{ html: string }>('wattproof/page', {
    ...at(boat),
    units: 'us',
    revision: null,
  })
  expect(page.html).toMatch(/^<!doctype html>[^]*For the installer/)
  const compared = await request<{ table: string }>('wattproof/comparison', {
    ...at(boat),
    surface: 'bimini',
  })
  expect(compared.table).toMatch(/^<table><caption>Every panel of the library on bimini/)
  await stop()
})

test('the program that draws is read with the first picture, not before', async () => {
  const dist = join(scratch(), 'dist')
  cpSync('dist', dist, { recursive: true })
  rmSync(join(dist, 'pictures.js'))
  const { request, stop } = await opened(boat, [join(dist, 'server.js'), '--stdio'])
  const symbols = await request<unknown[]>('textDocument/documentSymbol', at(boat))
  expect(symbols.length).toBeGreaterThan(3)
  expect(await request<unknown>('wattproof/pictures', at(boat))).toBeNull()
  await stop()
})
