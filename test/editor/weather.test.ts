import { afterEach, expect, test } from 'vitest'
import { folderOf, full, startServer, type Client } from './client.ts'

const hours = [
  'LOCATION,Example,-,XYZ,demo,000000,36,0,0,10',
  ...Array<string>(7).fill('HEADER'),
  ...Array.from({ length: 12 }, (_, m) =>
    Array.from({ length: 24 * [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][m]! }, (_, h) => {
      const sun = 8 <= h % 24 && h % 24 < 16 ? 500 : 0
      return `2020,${m + 1},1,1,60,?,15,0,0,0,0,0,0,${sun},${sun},100`
    }),
  ).flat(),
].join('\n')
const climate = `format: 1
name: Place
latitude: 36 deg
sun: [3, 3, 4, 5, 6, 6, 6, 6, 5, 4, 3, 3]
air:
  mean_high: [12, 13, 15, 17, 20, 23, 25, 26, 24, 20, 15, 12]
  mean_low: [5, 5, 7, 9, 12, 15, 17, 17, 15, 12, 8, 5]
hourly: place.epw
`

let client: Client
let folder: ReturnType<typeof folderOf>
afterEach(async () => {
  await client.stop()
  folder.dispose()
})

/** Asks for the findings of the open climate whenever the server says that they may have changed, until they are so. */
async function reported(isSo: (messages: string) => boolean) {
  for (;;) {
    client.asked.length = 0
    const found = (await client.pull(folder.uriOf('place.climate.yaml'))) as { message: string }[]
    const messages = found.map(({ message }) => message).join('\n')
    if (isSo(messages)) return messages
    await client.until(() => client.asked.some(({ method }) => method === 'workspace/diagnostic/refresh'))
  }
}

test('a file of hourly weather that comes, goes bad and comes right is read again each time', async () => {
  folder = folderOf({ 'wattproof.yaml': 'format: 1\n', 'place.climate.yaml': climate })
  client = await startServer({ capabilities: full, folders: [folder.uri] })
  await client.open(folder.uriOf('place.climate.yaml'), climate)
  await reported((messages) => messages.includes('place.epw is not there'))
  const change = (type: number) =>
    client.notify('workspace/didChangeWatchedFiles', { changes: [{ uri: folder.uriOf('place.epw'), type }] })
  folder.write('place.epw', hours)
  await change(1)
  await reported((messages) => !messages.includes('place.epw'))
  folder.write('place.epw', 'no weather')
  await change(2)
  await reported((messages) => messages.includes('place.epw is no EPW file'))
  folder.remove('place.epw')
  await change(3)
  await reported((messages) => !messages.includes('is no EPW file'))
  expect(await reported((messages) => messages.includes('place.epw'))).toContain('place.epw is not there')
})

test('the server has the editor watch files of hourly weather', async () => {
  folder = folderOf({ 'wattproof.yaml': 'format: 1\n' })
  client = await startServer({ capabilities: full, folders: [folder.uri] })
  const watched = () => client.asked.filter(({ params }) => JSON.stringify(params)?.includes('.{epw,EPW}'))
  await client.until(() => watched().length > 0)
  expect(watched()[0]!.method).toBe('client/registerCapability')
})
