import { defineConfig } from 'vitest/config'

/** The tests that a mutation run asks: see .scripts/mutate.mjs. */
export default defineConfig({
  root: '.',
  test: { include: (process.env['MUTATE_TESTS'] ?? '').split(' ') },
})
