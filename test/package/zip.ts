/** The names of the files in a zip archive, from its directory at the end. */
export function namesInZip(zip: Buffer): string[] {
  const end = zip.lastIndexOf(Buffer.from('PK\x05\x06', 'latin1'))
  const names: string[] = []
  let at = zip.readUInt32LE(end + 16)
  for (let left = zip.readUInt16LE(end + 10); left > 0; left--) {
    const [name, extra, comment] = [28, 30, 32].map((field) => zip.readUInt16LE(at + field)) as [number, number, number]
    names.push(zip.toString('utf8', at + 46, at + 46 + name))
    at += 46 + name + extra + comment
  }
  return names.sort()
}
