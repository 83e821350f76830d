import { readFileSync } from 'node:fs'
import { relative } from 'node:path'
import { defineConfig } from 'vitest/config'
import { BaseSequencer } from 'vitest/node'

/** What a mutation run puts in: the tests in their order, and the sources with their mutants. See .scripts/mutate.mjs. */
const path = process.env['MUTATE_PLAN']
const plan = JSON.parse(path ? readFileSync(path, 'utf8') : '{ "tests": [], "sources": {} }') as {
  readonly tests: readonly string[]
  readonly sources: Readonly<Record<string, string>>
}

class InOrder extends BaseSequencer {
  override async sort(files: Parameters<BaseSequencer['sort']>[0]) {
    const place = (path: string) => plan.tests.indexOf(relative('.', path))
    return [...files].sort((a, b) => place(a.moduleId) - place(b.moduleId))
  }
}

export default defineConfig({
  root: '.',
  plugins: [
    {
      name: 'mutants',
      enforce: 'pre',
      load: (id) => plan.sources[relative('.', id.split('?')[0]!)] ?? null,
    },
  ],
  test: {
    include: [...plan.tests],
    runner: '.scripts/mutate/runner.mjs',
    fileParallelism: false,
    testTimeout: 0,
    reporters: ['dot'],
    sequence: { sequencer: InOrder },
  },
})
