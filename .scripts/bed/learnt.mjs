import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { bands } from '../calibrate/bands.mjs'
import { calibrate } from '../calibrate/groups.mjs'

const folder = 'node_modules/.cache/bed'

/** What some of the open ratings teach, in place of the generated files; kept, as it takes a minute to learn. */
export async function learnt(rows) {
  const seen = rows.map(({ sort: _, ...row }) => row)
  const sources = readdirSync('.scripts/calibrate').map((name) => readFileSync(`.scripts/calibrate/${name}`))
  const hash = createHash('md5')
  for (const part of [JSON.stringify(seen), ...sources, readFileSync('server/src/slips/density/features.ts')])
    hash.update(part)
  const path = `${folder}/${hash.digest('hex')}.json`
  if (existsSync(path)) return JSON.parse(readFileSync(path, 'utf8'))
  const given = {
    calibration: `export const calibration = ${JSON.stringify(await calibrate(seen))}`,
    bands: `export const percents = [0.1, 0.5, 1, 5, 50, 95, 99, 99.5, 99.9]; export const bands = ${JSON.stringify(bands(seen))}`,
  }
  mkdirSync(folder, { recursive: true })
  writeFileSync(path, JSON.stringify(given))
  return given
}
