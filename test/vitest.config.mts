import { defineConfig } from 'vitest/config'

export default defineConfig({
  root: '.',
  test: {
    maxWorkers: 2,
    globalSetup: ['test/build-first.ts'],
    projects: [
      // many start programs: the limit is only there against a program that never ends
      { test: { name: 'layers', include: ['test/**/*.test.ts'], exclude: ['test/workbench/**'], testTimeout: 60_000 } },
      {
        test: {
          name: 'workbench',
          include: ['test/workbench/**/*.test.ts'],
          fileParallelism: false, // each starts an editor of its own
          testTimeout: 60_000,
          hookTimeout: 240_000,
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
})
