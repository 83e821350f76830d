// Which tests a mutant is tried by, in which order.

/** @returns the tests that reach it, those of its own layer first and then the fastest: { file, index, ms } */
export function triesOf({ id, file: source }, reached) {
  const rule = /\/rules\/(?:.*\/)?([\w-]+)[.]ts$/.exec(source)?.[1]
  const named = rule && new RegExp(`(^|[ '])${rule}($|[ ',])`)
  const tries = reached.flatMap(({ file, once, tests }) =>
    tests.flatMap(({ name, ms, ids }, index) => {
      // what runs while modules load may change any test: a rule those that name it, anything else the fast ones
      const isTried = once.includes(id) ? (named ? named.test(name) : ms <= 500) : ids.includes(id)
      return isTried && ms <= slowest ? [{ file, index, ms }] : []
    }),
  )
  return tries.sort((a, b) => distance(a.file, source) - distance(b.file, source) || a.ms - b.ms)
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
