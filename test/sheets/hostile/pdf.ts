/** A PDF of numbered objects; the first is the catalogue. */
export function pdf(...first: readonly (string | Buffer | readonly string[])[]): Buffer {
  const objects: readonly (string | Buffer)[] = first.flat()
  const parts: Buffer[] = [Buffer.from('%PDF-1.7\n')]
  const places: number[] = []
  let start = parts[0]!.length
  const add = (part: Buffer) => {
    parts.push(part)
    start += part.length
  }
  objects.forEach((object, i) => {
    places.push(start)
    add(Buffer.concat([Buffer.from(`${i + 1} 0 obj\n`), Buffer.from(object), Buffer.from('\nendobj\n')]))
  })
  const table = places.map((at) => `${String(at).padStart(10, '0')} 00000 n \n`).join('')
  parts.push(Buffer.from(`xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${table}`))
  parts.push(Buffer.from(`trailer <</Root 1 0 R/Size ${objects.length + 1}>>\nstartxref\n${start}\n%%EOF`))
  return Buffer.concat(parts)
}

export const stream = (content: Buffer, more = '') =>
  Buffer.concat([Buffer.from(`<</Length ${content.length}${more}>>\nstream\n`), content, Buffer.from('\nendstream')])
export const catalogue = '<</Type/Catalog/Pages 2 0 R>>'
export const onePage = '<</Type/Pages/Count 1/Kids[3 0 R]>>'
export const page = '<</Type/Page/Parent 2 0 R/MediaBox[0 0 200 200]/Contents 4 0 R>>'

/** A page of lines of text, one below the other. */
export function ofLines(lines: readonly string[], more = ''): Buffer {
  const text = lines.map((line) => `(${line}) Tj 0 -14 Td`).join('\n')
  return pdf(
    catalogue.replace('>>', `${more}>>`),
    onePage,
    '<</Type/Page/Parent 2 0 R/MediaBox[0 0 400 400]/Contents 4 0 R/Resources<</Font<</F 5 0 R>>>>>>',
    stream(Buffer.from(`BT /F 9 Tf 20 370 Td ${text} ET`)),
    '<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>',
    '<</Type/Filespec/F(tern-110.pdf)/EF<</F 7 0 R>>>>',
    stream(Buffer.from('Weight 9 kg'), '/Type/EmbeddedFile'),
  )
}
