import { Option } from 'commander'
import type { Severity } from '../../findings/finding.ts'
import { reviewJson } from '../formats/review-json.ts'
import { reviewText } from '../formats/review-text.ts'
import { reviewed } from '../reviewed.ts'
import { count, reaches } from '../severity.ts'
import type { AddCommand } from './command.ts'
import { sayIn } from '../../wording/phrase.ts'
import { examples } from '../help/examples.ts'

export const addReview: AddCommand = (program, world, end) => {
  const say = sayIn(world.bundle)
  program
    .command('review')
    .description(
      say`a customer's system, in figures: safety, balance through the year, fit, money, and what was not checked`,
    )
    .argument('<system>', say`a system description`)
    .addOption(new Option('--format <format>', say`how to print`).choices(['text', 'json']).default('text'))
    .addOption(
      new Option('--fail-on <severity>', say`the least severity that makes the exit code 1`)
        .choices(['error', 'warning', 'information'])
        .default('error'),
    )
    .addHelpText('after', examples(world.bundle, 'review boat.system.yaml', 'review boat.system.yaml --format json'))
    .action(async (path: string, { format, failOn }: { format: 'text' | 'json'; failOn: Severity }) => {
      const { review, report } = await reviewed(world, path)
      world.out(format === 'json' ? reviewJson(review, report, world.bundle) : reviewText(review, report, world))
      end(reaches(count([report]), failOn) ? 1 : 0)
    })
}
