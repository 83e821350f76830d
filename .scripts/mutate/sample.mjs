// A checker for Stryker that lets only a seeded sample of the mutants through, so that a run ends within the hour.
import { createHash } from 'node:crypto'
import { relative } from 'node:path'
import { CheckStatus } from '@stryker-mutator/api/check'
import { PluginKind, declareClassPlugin } from '@stryker-mutator/api/plugin'

const { MUTATE_SEED = '1', MUTATE_SHARE = '1' } = process.env

/** The same mutants for the same seed and source, whatever their order. */
function isDrawn({ fileName, location, mutatorName, replacement }) {
  const name = JSON.stringify([MUTATE_SEED, relative('.', fileName), location, mutatorName, replacement])
  return createHash('sha256').update(name).digest().readUInt32BE() / 2 ** 32 < Number(MUTATE_SHARE)
}

class Sample {
  async init() {}

  async check(mutants) {
    return Object.fromEntries(
      mutants.map((mutant) => [
        mutant.id,
        isDrawn(mutant)
          ? { status: CheckStatus.Passed }
          : { status: CheckStatus.CompileError, reason: 'not in the sample' },
      ]),
    )
  }

  group(mutants) {
    return [mutants.map(({ id }) => id)]
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.Checker, 'sample', Sample)]
