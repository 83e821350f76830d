// Measures; each `bench-*.mjs` beside this one prints its own figures. Build first.
import { spawnSync } from 'node:child_process'
import { readdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const here = fileURLToPath(new URL('.', import.meta.url))
for (const name of readdirSync(here)
  .filter((file) => /^bench-.+\.mjs$/.test(file))
  .sort()) {
  console.log(`\n${name.slice('bench-'.length, -'.mjs'.length)}`)
  const { status } = spawnSync(process.execPath, [here + name], { stdio: 'inherit' })
  if (status !== 0) process.exitCode = 1
}
