import { readFile } from '../../server/src/records/read.ts'

/** A panel record that nothing is wrong with but what is added on `top` or put in place of `stc` or `size`. */
export const panel = ({ top = '', stc = ratings, size = '{ length: 1190 mm, width: 540 mm }' } = {}): string =>
  `format: 1\nname: Tern 110\n${top}\nstc: ${stc}\nsize: ${size}\n`

export const ratings = '{ pmax: 110 W, vmp: 18.6 V, imp: 5.92 A, voc: 22.1 V, isc: 6.31 A }'

/** What reading finds, each as `rule [the marked characters] message`. */
export function reported(text: string, path = 'tern-110.panel.yaml'): string[] {
  const file = readFile(path, text)!
  return file
    .readFindings()
    .map(({ rule, span, message }) => `${rule} [${text.slice(span.start, span.end)}] ${message}`)
}
