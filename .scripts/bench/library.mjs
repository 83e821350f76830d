import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { groupOf, readRatings } from '../calibrate/ratings.mjs'
import { load } from '../load.mjs'

/**
 * A folder of panels as catalogues have them: families of eight power classes, all fields typed, every record true. Families
 * differ in their cells, coefficients and sizes, classes in their currents.
 *
 * @param mistaken  how often a mistake is made: one record in so many has the point of Isc moved; 0 for none
 */
export function makeLibrary(folder, size, mistaken = 0) {
  mkdirSync(folder, { recursive: true })
  writeFileSync(join(folder, 'wattproof.yaml'), 'format: 1\nname: Library\ncurrency: USD\n')
  const typed = readFileSync('samples/library/panels/tern-110.panel.yaml', 'utf8')
  for (let i = 0; i < size; i++) {
    const isc = /(?<=stc:[^]*?isc: )[\d.]+/
    const text = panel(typed, i >> 3, i & 7)
    const isMistaken = mistaken > 0 && i % mistaken === Math.min(7, mistaken - 1)
    writeFileSync(
      join(folder, `bird-${String(i >> 3).padStart(4, '0')}-${i & 7}.panel.yaml`),
      isMistaken ? text.replace(isc, (digits) => digits.replace('.', '')) : text,
    )
  }
}

/**
 * A folder of panels of which no more is typed than public lists print: ratings, coefficients and sizes. Most have hints, for no
 * weight, limit or datasheet is given.
 */
export async function makeListed(folder, size) {
  const { halves, printed, yamlOf } = await load(`export { halves, printed, yamlOf } from './test/slips/rows.ts'`)
  const rows = halves(readRatings('test/published/data/modules-open.csv').filter(groupOf)).flat()
  mkdirSync(folder, { recursive: true })
  for (const row of rows.slice(0, size)) writeFileSync(join(folder, `${row.id}.panel.yaml`), yamlOf(row, printed(row)))
}

function panel(typed, family, step) {
  // a larger cell gives more current at the same voltage, and the panel is longer by as much
  const volts = 1 + 0.004 * (family % 7)
  const amperes = (1 + 0.012 * step) * (1 + 0.03 * (family % 11))
  const [vmp, imp] = [18.6 * volts, 5.92 * amperes].map((x, i) => Number(x.toFixed(i + 1)))
  const length = Math.round(1190 * (1 + 0.03 * (family % 11)))
  const pmax = Math.round(vmp * imp)
  const set = {
    name: `Bird ${family} ${pmax}`,
    family: `Bird ${family}`,
    'stc.pmax': `${pmax} W`,
    'stc.vmp': `${vmp.toFixed(1)} V`,
    'stc.imp': `${imp.toFixed(2)} A`,
    'stc.voc': `${(22.1 * volts).toFixed(1)} V`,
    'stc.isc': `${(6.31 * amperes).toFixed(2)} A`,
    'stc.efficiency': `${((100 * pmax) / ((length / 1000) * 540)).toFixed(1)} %`,
    'temperature_coefficients.pmax': `-0.${36 + (family % 5)} %/°C`,
    'temperature_coefficients.voc': `-0.${27 + (family % 4)} %/°C`,
    'noct.pmax': `${Math.round(17.2 * volts * 4.71 * amperes)} W`,
    'noct.vmp': `${(17.2 * volts).toFixed(1)} V`,
    'noct.imp': `${(4.71 * amperes).toFixed(2)} A`,
    'noct.voc': `${(20.6 * volts).toFixed(1)} V`,
    'noct.isc': `${(5.1 * amperes).toFixed(2)} A`,
  }
  let group = ''
  const lines = typed.split('\n').map((line) => {
    const [, blanks, key] = /^( *)([\w-]+):/.exec(line) ?? []
    if (blanks === '') group = key
    const value = set[blanks ? `${group}.${key}` : key]
    return value === undefined ? line : line.replace(/(?<=: ).*?(?=$| #)/, value)
  })
  return lines
    .join('\n')
    .replace(/(?<=length: )\d+/, String(length))
    .replace(/(?<=datasheet: \{ source: )[^,}]+(?:, sha256: \w+)?/, `https://example.com/bird-${family}.pdf`)
}
