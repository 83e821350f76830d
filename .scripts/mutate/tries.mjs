// Which tests a mutant is tried by, in which order.

/** @returns the tests that reach it by file, those of its own layer first: { file, distance, tests: [{ index, ms, isNamed }] } */
export function triesOf({ id, file: source }, reached) {
  const rule = /\/rules\/(?:.*\/)?([\w-]+)[.]ts$/.exec(source)?.[1]
  const named = rule && new RegExp(`(^|[ '])${rule}($|[ ':,])`)
  const tries = reached.map(({ file, once, tests }) => {
    // what runs while modules load may change any test: a rule those that name it, anything else the fast ones
    const isTried = once.includes(id)
      ? ({ name, ms }) => (named ? named.test(name) : ms <= 500)
      : ({ ids }) => ids.includes(id)
    const own = tests.map((test, index) => ({ ...test, index })).filter((test) => isTried(test) && test.ms <= slowest)
    own.sort((a, b) => a.ms - b.ms)
    return {
      file,
      distance: distance(file, source),
      tests: own.map(({ index, ms, name }) => ({ index, ms, isNamed: named?.test(name) ?? false })),
    }
  })
  return tries.filter(({ tests }) => tests.length > 0)
}

/** A test that takes longer [ms] is left out. */
const slowest = 12_000

/** How far a test is from a layer. */
function distance(test, source) {
  const [, , layer, room] = source.split('/')
  if (/no-worse|properties/.test(test)) return 4
  if (test.startsWith(`test/${layer}/${room}`)) return 0
  if (test.startsWith(`test/${layer}/`) || (layer === 'physics' && test.startsWith('test/published/'))) return 1
  return /^test[/](rules|systems)/.test(test) ? 2 : 3
}
