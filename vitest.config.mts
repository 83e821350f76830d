// Where vitest looks when nobody names a file: a bare `npx vitest` builds what it tests, like `npm test`.
export { default } from './test/vitest.config.mts'
