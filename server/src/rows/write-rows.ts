import { stringify } from 'csv-stringify/sync'

/** Comma-separated values (RFC 4180) of cells that are guarded already; the first line is the head. */
export const csvText = (lines: readonly (readonly string[])[]): string =>
  stringify([...lines], { quoted_match: /^\s|\s$/ })

/** A table in Markdown; the first line is the head. */
export const markdownText = ([head = [], ...lines]: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...lines].map((line) => `| ${line.map(inMarkdown).join(' | ')} |\n`).join('')

/** Text that Markdown shows as it is, in one line. A row of dashes is left alone. */
export const inMarkdown = (text: string): string => text.replace(/[\\|<>*_`[\]]/g, '\\$&').replace(/\s+/g, ' ')
