import { spawnSync } from 'node:child_process'
import { expect, test } from 'vitest'
import { kinds, samples } from './samples.ts'

const python = '/usr/bin/python3' // Debian's, which has Debian's packages
const valid = (kind: string, paths: readonly string[]) =>
  spawnSync(python, ['test/schemas/valid.py', `schemas/${kind}.schema.json`, ...paths], { encoding: 'utf8' })
const missing = spawnSync(python, ['-c', 'import jsonschema, ruamel.yaml']).status !== 0

test.skipIf(missing && !process.env.WATTPROOF_NO_SKIP)(
  "Debian's python3-jsonschema finds every sample valid; left out without python3-jsonschema and python3-ruamel.yaml",
  () => {
    for (const kind of kinds) {
      const paths = samples.filter((sample) => sample.kind === kind).map((sample) => sample.path)
      expect(paths.length, kind).toBeGreaterThan(0)
      const { status, stdout, stderr } = valid(kind, paths)
      expect({ kind, status, stdout, stderr }).toEqual({ kind, status: 0, stdout: '', stderr: '' })
    }
    expect(valid('panel', ['samples/mistakes/wrong-unit.panel.yaml']).stdout).toContain('$.stc.isc')
  },
)
