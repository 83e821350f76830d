// All tests and the sources with their mutants as one script.
import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { Script } from 'node:vm'
import { build } from 'esbuild'

/**
 * @param files    the tests
 * @param sources  the text of each source that is not as on the disk
 * @returns        a function (require, module, exports), whose exports are by test file what loads it
 */
export async function bundleOf(files, sources) {
  const lines = files.map((file) => `${JSON.stringify(file)}: () => require(${JSON.stringify(`./${file}`)}),`)
  const { outputFiles } = await build({
    stdin: { contents: `module.exports = {\n${lines.join('\n')}\n}`, resolveDir: '.' },
    bundle: true,
    platform: 'node',
    format: 'cjs',
    packages: 'external',
    logLevel: 'silent',
    write: false,
    plugins: [{ name: 'own', setup: (b) => b.onLoad({ filter: /[.](ts|mjs)$/ }, own) }],
  })
  return new Script(`(require, module, exports) => {${outputFiles[0].text}\n}`, { filename: 'tests' })

  function own({ path }) {
    const text = sources[path.slice(resolve('.').length + 1)] ?? readFileSync(path, 'utf8')
    const contents = text.replaceAll('import.meta.url', JSON.stringify(`file://${path}`))
    return { contents, loader: path.endsWith('.ts') ? 'ts' : 'js' }
  }
}
