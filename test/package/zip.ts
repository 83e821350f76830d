import { inflateRawSync } from 'node:zlib'

interface Entry {
  readonly name: string
  readonly size: number
  readonly at: number
}

/** The names of the files in a zip archive. */
export const namesInZip = (zip: Buffer): string[] => entriesOf(zip).map(({ name }) => name)

/** The text of one of them, which is compressed. */
export function textInZip(zip: Buffer, name: string): string {
  const found = entriesOf(zip).find((entry) => entry.name === name)
  if (!found) throw new Error(`no ${name}`)
  const start = found.at + 30 + zip.readUInt16LE(found.at + 26) + zip.readUInt16LE(found.at + 28)
  return inflateRawSync(zip.subarray(start, start + found.size)).toString()
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
      size: zip.readUInt32LE(at + 20),
      at: zip.readUInt32LE(at + 42),
    })
    at += 46 + name + extra + comment
  }
  return entries.sort((a, b) => (a.name < b.name ? -1 : 1))
}
