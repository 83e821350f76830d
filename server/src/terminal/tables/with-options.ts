import { Option, type Command } from 'commander'

/** The options of every command that prints a table. */
export const withTableOptions = (command: Command): Command =>
  command
    .addOption(
      new Option('--format <format>', 'how to print').choices(['text', 'json', 'csv', 'markdown']).default('text'),
    )
    .option('--sort <column>', 'by one column, with a minus before it the other way; what is not known comes last')
    .option(
      '--filter <condition>',
      'only rows that meet it, such as "efficiency >= 20"; can be repeated',
      (one: string, before: readonly string[]) => [...before, one],
      [] as readonly string[],
    )
    .option('--columns <names>', 'these columns only, separated by commas')
