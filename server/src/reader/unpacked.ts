import { mostUnpacked } from './limits.ts'

/**
 * Whether the streams of a PDF unpack to more than any datasheet holds: a browser sets no limit of memory for a worker or a view,
 * so this is asked before the library unpacks anything. Streams that are packed twice are unpacked twice; what cannot be unpacked
 * says nothing. The streams of a locked file are scrambled, and only the limit of time stops those.
 */
export async function unpacksTooFar(bytes: Uint8Array, most = mostUnpacked): Promise<boolean> {
  const text = new TextDecoder('latin1').decode(bytes)
  let left = most
  for (let at = text.indexOf('stream'); at >= 0; at = text.indexOf('stream', at + 6)) {
    if (text.startsWith('end', at - 3)) continue
    const head = text.slice(Math.max(0, at - 2000), at)
    const times = head.slice(head.lastIndexOf('obj') + 1).match(/\/(?:FlateDecode|Fl)\b/g)?.length ?? 0
    if (times === 0) continue
    const start = at + (text.startsWith('\r\n', at + 6) ? 8 : 7)
    const end = text.indexOf('endstream', start)
    left -= await unpackedSize(bytes.subarray(start, end < 0 ? undefined : end), times, left)
    if (left < 0) return true
    if (end > 0) at = end
  }
  return false
}

/** How much comes out of a stream, counted piece by piece and no further than needed [bytes]. */
async function unpackedSize(bytes: Uint8Array, times: number, most: number): Promise<number> {
  let stream: ReadableStream<Uint8Array> = new Blob([bytes as Uint8Array<ArrayBuffer>]).stream()
  for (let i = 0; i < Math.min(times, 4); i++)
    stream = stream.pipeThrough(
      new DecompressionStream('deflate') as unknown as TransformStream<Uint8Array, Uint8Array>,
    )
  const reader = stream.getReader()
  let size = 0
  try {
    for (let part = await reader.read(); !part.done && size <= most; part = await reader.read())
      size += part.value.length
    await reader.cancel()
  } catch {
    // damaged, or with bytes after its end, as most are: what came out before counts
  }
  return size
}
