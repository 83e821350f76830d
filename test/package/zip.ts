import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { inflateRawSync } from 'node:zlib'

interface Entry {
  readonly name: string
  readonly size: number
  readonly isDeflated: boolean
  readonly at: number
}

/** The names of the files in a zip archive. */
export const namesInZip = (zip: Buffer): string[] => entriesOf(zip).map(({ name }) => name)

/** The text of one of them. */
export function textInZip(zip: Buffer, name: string): string {
  const found = entriesOf(zip).find((entry) => entry.name === name)
  if (!found) throw new Error(`no ${name}`)
  return contents(zip, found).toString()
}

export function unzip(zip: Buffer, folder: string): void {
  for (const entry of entriesOf(zip)) {
    const path = join(folder, entry.name)
    mkdirSync(dirname(path), { recursive: true })
    writeFileSync(path, contents(zip, entry))
  }
}

function contents(zip: Buffer, { at, size, isDeflated }: Entry): Buffer {
  const start = at + 30 + zip.readUInt16LE(at + 26) + zip.readUInt16LE(at + 28)
  const bytes = zip.subarray(start, start + size)
  return isDeflated ? inflateRawSync(bytes) : bytes
}

/** From the directory at the end of the archive. */
function entriesOf(zip: Buffer): readonly Entry[] {
  const end = zip.lastIndexOf(Buffer.from('PK\x05\x06', 'latin1'))
  const entries: Entry[] = []
  let at = zip.readUInt32LE(end + 16)
  for (let left = zip.readUInt16LE(end + 10); left > 0; left--) {
    const [name, extra, comment] = [28, 30, 32].map((field) => zip.readUInt16LE(at + field)) as [number, number, number]
    entries.push({
      name: zip.toString('utf8', at + 46, at + 46 + name),
      isDeflated: zip.readUInt16LE(at + 10) === 8,
      size: zip.readUInt32LE(at + 20),
      at: zip.readUInt32LE(at + 42),
    })
    at += 46 + name + extra + comment
  }
  return entries.sort((a, b) => (a.name < b.name ? -1 : 1))
}
