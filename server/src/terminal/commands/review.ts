import { Option } from 'commander'
import { checkFile } from '../../check/check.ts'
import type { Severity } from '../../findings/finding.ts'
import { reading } from '../../records/facts.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { reportOf } from '../file-report.ts'
import { reviewJson } from '../formats/review-json.ts'
import { reviewText } from '../formats/review-text.ts'
import { loadSystem } from '../load-system.ts'
import { tellMistakes } from '../mistakes.ts'
import { absolute } from '../paths.ts'
import { count, reaches } from '../severity.ts'
import type { AddCommand } from './command.ts'

export const addReview: AddCommand = (program, world, end) => {
  program
    .command('review')
    .description(
      "a customer's system, in figures: safety, balance through the year, fit, money, and what was not checked",
    )
    .argument('<system>', 'a system description')
    .addOption(new Option('--format <format>', 'how to print').choices(['text', 'json']).default('text'))
    .addOption(
      new Option('--fail-on <severity>', 'the least severity that makes the exit code 1')
        .choices(['error', 'warning', 'information'])
        .default('error'),
    )
    .addHelpText(
      'after',
      '\nExamples:\n  wattproof review boat.system.yaml\n  wattproof review boat.system.yaml --format json',
    )
    .action(async (path: string, { format, failOn }: { format: 'text' | 'json'; failOn: Severity }) => {
      const full = absolute(world.cwd, path)
      const standing = await world.standing(full)
      if (!standing) throw new CouldNotRun(`there is no file \`${path}\``)
      if (standing === 'folder') throw new CouldNotRun(`\`${path}\` is a folder; name one system`)
      const library = await loadSystem(world, path, full)
      const file = library.file(full)
      if (file?.kind !== 'system')
        throw new CouldNotRun(`\`${path}\` is no system description; its name ends in .system.yaml`)
      if (file.unread) throw new CouldNotRun(`\`${path}\` was not read: ${file.unread.because}`)
      const checked = checkFile(library, full, world)!
      const report = reportOf(library, checked, world.cwd)
      const { review } = checked
      tellMistakes(world, report.path, checked.findings)
      if (!review)
        throw new CouldNotRun(checked.findings.find(({ rule }) => rule === reading.internal.id)?.message ?? '')
      world.out(format === 'json' ? reviewJson(review, report) : reviewText(review, report, world.colour))
      end(reaches(count([report]), failOn) ? 1 : 0)
    })
}
