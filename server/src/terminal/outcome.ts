import { reading } from '../records/facts.ts'
import { CouldNotRun } from './could-not-run.ts'
import type { FileReport } from './file-report.ts'
import { reportMistakes } from './mistakes.ts'
import type { World } from './world.ts'
import { phrase, sayIn } from '../wording/phrase.ts'

/** What a run is to say beside its findings, gathered file by file. */
export function createOutcome(world: World) {
  const stumbled: FileReport[] = []
  const unread: string[] = []
  let broken: string | undefined
  let files = 0
  return {
    file(report: FileReport): void {
      const { path, findings, brokenSettings } = report
      files++
      if (findings.some(({ trace }) => trace !== undefined)) stumbled.push(report)
      if (findings.some(({ rule }) => rule === reading.notRead.id)) unread.push(path)
      if (brokenSettings) broken ??= path
    },
    /** @throws CouldNotRun  where the run is not complete */
    verdict(): void {
      for (const { path, findings } of stumbled) reportMistakes(world, path, findings)
      if (broken !== undefined)
        throw new CouldNotRun(phrase`${broken} can be read only in part, so its settings do not all apply`)
      if (unread.length > 0) throw new CouldNotRun(phrase`${unread.join(', ')}: not read, so the run is not complete`)
      if (files === 0) world.err(`wattproof: ${sayIn(world.bundle)`nothing to check`}\n`)
    },
  }
}
