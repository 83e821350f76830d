// Changes the source in small ways (mutants) and counts how many of them the tests notice: a seeded sample of 1 000 over four
// layers. Prints the figures and keeps the mutants that no test notices beside the tests.
//   npm run mutate [FOLDER...]    MUTATE_SEED and MUTATE_COUNT draw another sample
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { drawMutants } from './mutate/draw.mjs'
import { createRuns } from './mutate/runs.mjs'

const layers = ['quantities', 'physics', 'slips', 'review']
/** Tests that start no program and take no minutes. */
const asked = ['quantities', 'physics', 'published', 'slips', 'review', 'rules', 'systems', 'values', 'check']
const notAsked = /(command|fuzz|repeats|statistics)[.]test[.]ts$|(check|review)[/]properties|systems[/]references/
const { MUTATE_SEED = '1', MUTATE_COUNT = '1000' } = process.env

const wanted = process.argv.length > 2 ? process.argv.slice(2) : layers
const files = wanted.flatMap((layer) => filesIn(`server/src/${layer}`, /(?<![.]generated)[.]ts$/))
const tests = asked.flatMap((name) => filesIn(`test/${name}`, /[.]test[.]ts$/)).filter((path) => !notAsked.test(path))

const folder = '.output/mutate'
rmSync(folder, { recursive: true, force: true })
mkdirSync(`${folder}/noticed`, { recursive: true })

const { all, mutants, sources } = await drawMutants(files, Number(MUTATE_COUNT), MUTATE_SEED)
console.log(`${mutants.length} of ${all} mutants drawn`)
const runs = createRuns(
  folder,
  mutants.map(({ id }) => id),
  sources,
)

const reached = await runs.reach(tests)
await runs.tryTogether(reached)
await runs.tryAlone(reached)

const noticed = new Set(readdirSync(`${folder}/noticed`))
const survivors = mutants.filter(({ id }) => !noticed.has(id))
for (const layer of wanted) {
  const own = mutants.filter(({ file }) => file.startsWith(`server/src/${layer}/`))
  if (own.length > 0) print(layer, own)
}
print('all', mutants)
const isReached = (id) => reached.some(({ ids, once }) => ids.has(id) || once.has(id))
writeFileSync(
  'test/mutation/survivors.json',
  `[\n${survivors
    .map(({ id, file, line, code, replacement }) => ({
      at: `${file}:${line}`,
      code,
      replacement,
      reached: isReached(id),
    }))
    .sort((a, b) => (a.at < b.at ? -1 : 1))
    .map((one) => `  ${JSON.stringify(one)}`)
    .join(',\n')}\n]\n`,
)

function print(name, own) {
  const count = own.filter(({ id }) => noticed.has(id)).length
  console.log(`${name}: ${count} of ${own.length} noticed, ${((100 * count) / own.length).toFixed(1)} %`)
}

function filesIn(place, pattern) {
  const names = readdirSync(place, { recursive: true }).map((name) => `${place}/${name}`)
  return names.filter((name) => pattern.test(name)).sort()
}
