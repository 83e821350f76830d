// Draws a seeded sample of mutants and writes the sources that hold them, each behind a switch.
import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { Instrumenter } from '@stryker-mutator/instrumenter'

/**
 * @param files   paths of the sources
 * @param count   how many mutants to draw
 * @param seed    the same mutants for the same seed and source
 * @returns       how many there are in all, those that are drawn, and the text of each file with its mutants behind switches
 */
export async function drawMutants(files, count, seed) {
  const all = await instrument(files.map((name) => [name, true]))
  const rank = (mutant) =>
    createHash('sha256')
      .update(`${seed} ${keyOf(mutant)}`)
      .digest('hex')
  const ranked = all.mutants
    .map((mutant) => ({ mutant, rank: rank(mutant) }))
    .sort((a, b) => (a.rank < b.rank ? -1 : 1))
  const drawn = ranked.slice(0, count).map(({ mutant }) => mutant)
  const keys = new Set(drawn.map(keyOf))
  const places = new Map(drawn.map(({ fileName }) => [fileName, []]))
  for (const { fileName, location } of drawn) places.get(fileName).push(location)
  // once more with the places that are drawn alone: thousands of switches would slow every test
  const few = await instrument([...places])
  return {
    all: all.mutants.length,
    mutants: few.mutants.filter((mutant) => keys.has(keyOf(mutant))).map(described),
    sources: Object.fromEntries(few.files.map(({ name, content }) => [name, content])),
  }
}

const instrument = (files) =>
  instrumenter.instrument(
    files.map(([name, mutate]) => ({ name, mutate, content: readFileSync(name, 'utf8') })),
    { plugins: null, excludedMutations: [], ignorers: [] },
  )

const logger = { debug() {}, info() {}, isDebugEnabled: () => false }
const instrumenter = new Instrumenter(logger)

const keyOf = ({ fileName, location, mutatorName, replacement }) =>
  JSON.stringify([fileName, location, mutatorName, replacement])

function described({ id, fileName, location: { start, end }, replacement }) {
  const lines = readFileSync(fileName, 'utf8')
    .split('\n')
    .slice(start.line, end.line + 1)
  const code = lines.length === 1 ? lines[0].slice(start.column, end.column) : `${lines[0].slice(start.column)} …`
  return { id, file: fileName, line: start.line + 1, code, replacement }
}
