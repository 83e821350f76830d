// The messages in the examples of the rules, in another language: by the English that stands in the page.
import { build } from 'esbuild'
import { mkdtempSync, rmSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

/** @returns JSON of them for each language, given the texts of each */
export async function exampleMessages(languages) {
  const marksIn = await loaded()
  return Object.entries(languages).map(([language, texts]) => {
    const found = new Map()
    for (const [english, other] of marksIn({ texts, units: 'metric' })) {
      if ((found.get(english) ?? other) !== other)
        throw new Error(`"${english}" marks two examples; write more of either message`)
      found.set(english, other)
    }
    const sorted = [...found].sort(([a], [b]) => (a < b ? -1 : 1))
    return [language, `${JSON.stringify(Object.fromEntries(sorted), null, 2)}\n`]
  })
}

async function loaded() {
  const folder = mkdtempSync(join(tmpdir(), 'wattproof-examples-'))
  const outfile = join(folder, 'found.cjs')
  try {
    await build({
      entryPoints: ['test/rules/found.ts'],
      bundle: true,
      format: 'cjs',
      platform: 'node',
      outfile,
      logLevel: 'error',
      define: { 'import.meta.url': JSON.stringify(pathToFileURL('test/rules/found.ts').href) },
    })
    return createRequire(import.meta.url)(outfile).marksIn
  } finally {
    rmSync(folder, { recursive: true })
  }
}
