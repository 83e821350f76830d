import { random } from '../../server/src/physics/random.ts'

const words = ['/Length 99999999', '/Kids[2 0 R]', '<<', '>>', '[[[[[[[[', '/Filter/FlateDecode', 'stream\n', 'endobj', '0 0 R', '-1', '1e309', '\0\0\0\0'] // prettier-ignore

/** A PDF with a few random bytes, cuts, copies and words of the format put in: most are damaged, some are odd and can be read. */
export function spoiled(pdf: Uint8Array, seed: number): Uint8Array {
  let state = seed
  const draw = () => {
    const drawn = random(state)
    state = drawn.state
    return drawn.value
  }
  let bytes = Buffer.from(pdf)
  const at = () => Math.floor(draw() * bytes.length)
  const some = () => Math.floor(draw() ** 3 * 400)
  for (let edits = 1 + Math.floor(draw() * 6); edits > 0; edits--) {
    const from = at()
    const kind = Math.floor(draw() * 5)
    if (kind === 0) bytes[from] = Math.floor(draw() * 256)
    else if (kind === 1) bytes = Buffer.concat([bytes.subarray(0, from), bytes.subarray(from + some())])
    else if (kind === 2) {
      const copied = at()
      bytes = Buffer.concat([bytes.subarray(0, from), bytes.subarray(copied, copied + some()), bytes.subarray(from)])
    } else if (kind === 3) {
      const word = words[Math.floor(draw() * words.length)]!
      bytes = Buffer.concat([bytes.subarray(0, from), Buffer.from(word, 'latin1'), bytes.subarray(from)])
    } else if (draw() < 0.2) bytes = bytes.subarray(0, from)
  }
  return new Uint8Array(bytes)
}
