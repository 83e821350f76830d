// Draws a seeded sample of mutants and writes the sources that hold them, each behind a switch.
import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { Instrumenter } from '@stryker-mutator/instrumenter'

/**
 * @param files   paths of the sources
 * @param count   how many mutants to draw
 * @param seed    the same mutants for the same seed and source
 * @returns       how many there are in all, those that are drawn in the order of the draw, and the text of each file with its mutants behind switches
 */
export async function drawMutants(files, count, seed) {
  const all = keyed((await instrument(files.map((name) => [name, true]))).mutants)
  const ranked = all.map((mutant) => ({ mutant, rank: hashOf(`${seed} ${mutant.key}`) }))
  ranked.sort((a, b) => (a.rank < b.rank ? -1 : 1))
  const drawn = ranked.slice(0, count).map(({ mutant }) => mutant)
  const keys = new Map(drawn.map((mutant) => [placeOf(mutant), mutant.key]))
  const locations = new Map(drawn.map(({ fileName }) => [fileName, []]))
  for (const { fileName, location } of drawn) locations.get(fileName).push(location)
  // once more with the places that are drawn alone: thousands of switches would slow every test
  const few = await instrument([...locations])
  const described = few.mutants.flatMap((mutant) => {
    const key = keys.get(placeOf(mutant))
    return key === undefined ? [] : [{ ...description(mutant), key }]
  })
  const rank = new Map(drawn.map(({ key }, i) => [key, i]))
  return {
    all: all.length,
    mutants: described.sort((a, b) => rank.get(a.key) - rank.get(b.key)),
    sources: Object.fromEntries(few.files.map(({ name, content }) => [name, content])),
  }
}

export const hashOf = (text) => createHash('sha256').update(text).digest('hex').slice(0, 16)

const instrument = (files) =>
  instrumenter.instrument(
    files.map(([name, mutate]) => ({ name, mutate, content: readFileSync(name, 'utf8') })),
    { plugins: null, excludedMutations: [], ignorers: [] },
  )

const logger = { debug() {}, info() {}, isDebugEnabled: () => false }
const instrumenter = new Instrumenter(logger)

const placeOf = ({ fileName, location, mutatorName, replacement }) =>
  JSON.stringify([fileName, location, mutatorName, replacement])

/** Names each mutant by what it changes and not by its line, so that a sample stays one when lines are added around it. */
function keyed(mutants) {
  const seen = new Map()
  return mutants.map((mutant) => {
    const text = JSON.stringify([mutant.fileName, mutant.mutatorName, codeOf(mutant), mutant.replacement])
    const nth = seen.get(text) ?? 0
    seen.set(text, nth + 1)
    return { ...mutant, key: hashOf(`${text} ${nth}`) }
  })
}

function description({ id, fileName, location, replacement }) {
  const [first, ...more] = codeOf({ fileName, location }).split('\n')
  return {
    id,
    file: fileName,
    line: location.start.line + 1,
    code: more.length > 0 ? `${first} …` : first,
    replacement,
  }
}

const texts = new Map()

function codeOf({ fileName, location: { start, end } }) {
  if (!texts.has(fileName)) texts.set(fileName, readFileSync(fileName, 'utf8').split('\n'))
  const lines = texts.get(fileName).slice(start.line, end.line + 1)
  lines.push(lines.pop().slice(0, end.column))
  return [lines[0].slice(start.column), ...lines.slice(1)].join('\n')
}
