import { Option, type Command } from 'commander'
import { sayIn } from '../../wording/phrase.ts'
import type { World } from '../world.ts'

/** The options of every command that prints a table. */
export function withTableOptions({ bundle }: World, command: Command): Command {
  const say = sayIn(bundle)
  return command
    .addOption(
      new Option('--format <format>', say`how to print`).choices(['text', 'json', 'csv', 'markdown']).default('text'),
    )
    .option('--sort <column>', say`by one column, with a minus before it the other way; what is not known comes last`)
    .option(
      '--filter <condition>',
      say`only rows that meet it, such as "efficiency >= 20"; can be repeated`,
      (one: string, before: readonly string[]) => [...before, one],
      [] as readonly string[],
    )
    .option('--columns <names>', say`these columns only, separated by commas`)
}
