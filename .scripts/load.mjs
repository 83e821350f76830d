import { createRequire } from 'node:module'
import { runInThisContext } from 'node:vm'
import { build } from 'esbuild'

/**
 * Sources as one module, in this process.
 *
 * @param given  texts in place of generated files, by the name before `.generated.ts`
 */
export async function load(contents, given = {}) {
  const replaced = {
    name: 'given',
    setup: (b) =>
      b.onLoad({ filter: /(calibration|bands)\.generated\.ts$/ }, ({ path }) => {
        const source = given[/(calibration|bands)\.generated\.ts$/.exec(path)[1]]
        return source === undefined ? undefined : { contents: source, loader: 'ts' }
      }),
  }
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: '.', loader: 'ts' },
    bundle: true,
    platform: 'node',
    format: 'cjs',
    write: false,
    plugins: [replaced],
  })
  const module = { exports: {} }
  runInThisContext(`(require, module, exports) => {${outputFiles[0].text}\n}`)(
    createRequire(import.meta.url),
    module,
    module.exports,
  )
  return module.exports
}
