import { Option } from 'commander'
import type { Severity } from '../../findings/finding.ts'
import { reviewJson } from '../formats/review-json.ts'
import { reviewText } from '../formats/review-text.ts'
import { reviewed } from '../reviewed.ts'
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
      const { review, report } = await reviewed(world, path)
      world.out(format === 'json' ? reviewJson(review, report) : reviewText(review, report, world.colour))
      end(reaches(count([report]), failOn) ? 1 : 0)
    })
}
