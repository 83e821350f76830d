import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { wattproof } from '../terminal/run.ts'

const boat = 'samples/systems/boat.system.yaml'
const measured = 'samples/systems/measured/day-sailer.system.yaml'
const panel = 'samples/library/panels/tern-110.panel.yaml'

const commands = ['check', 'values', 'compare', 'table', 'review', 'report', 'sheet', 'new', 'explain', 'completion']

/** What prints words for people. */
const printed: readonly (readonly string[])[] = [
  ['--help'],
  ...commands.map((name) => [name, '--help']),
  ['completion', 'zsh'],
  ['check', 'samples', '--show-accepted'],
  ['check', 'samples/mistakes', '--format', 'github'],
  ['check', 'nowhere'],
  ['check', 'samples', '--new'],
  ['check', '--jobs', 'x'],
  ['check', '--format', 'x'],
  ['check', '--fix', '--staged'],
  ['chekc'],
  ['values'],
  ['values', panel],
  ['values', boat],
  ['compare', 'samples/library/panels'],
  ['compare', 'samples/library/panels', '--filter', 'front >= 2'],
  ['compare', boat, '--surface', 'coachroof'],
  ['compare', boat, '--surface', 'nowhere'],
  ['table', 'samples/library/panels', '--columns', 'voltage'],
  ...['boat', 'van', 'cabin'].map((name) => ['review', `samples/systems/${name}.system.yaml`]),
  ['review', measured],
  ['review', panel],
  ...['html', 'markdown'].map((format) => ['report', boat, '--format', format]),
  ['report', measured],
  ['report', boat, '--form'],
  ['report', boat, '--date', 'x'],
  ['sheet', panel],
  ['new', 'panel'],
  ['new', 'system'],
  ['new', 'climate', '--latitude', '40'],
  ['new', 'climate', '--latitude', '99'],
  ['explain'],
  ['explain', 'voc-below-wmp'],
]

/** Words that English sentences are full of, and that neither of the others has. */
const english =
  /\b(?:the|of|and|is|are|not|with|for|from|that|which|than|below|above|needs?|known|panels?|loads?|batter(?:y|ies)|its|by|each|only|where|what|one|file|written|read|measured|wiring|given|price|weight|string)\b/i

/** What is no sentence: the line of a record, an example to copy, a field of a form, options and words to choose from. */
const stays = [
  /^ *\d* \| /,
  /^ *(?:wattproof|source <\() ?/,
  /^\s*#? ?(?:- )?[a-z_]+: [^#]*$/,
  /^--[\w-]+$/,
  /^(?:"[^"]*"[,)\s]*)+$/,
  /\bcompadd\b/,
]

/** Names and words that a person typed are said as they are. */
const typed = ['boat', 'van', 'cabin']
  .map((name) => readFileSync(`samples/systems/${name}.system.yaml`, 'utf8'))
  .join('\n')

const linesOf = (args: readonly string[], language: string) => {
  const { out, err } = wattproof([...args, '--language', language])
  return `${out}\n${err}`
    .replaceAll(/(?:aria-label|title)="([^"]*)"/g, '>$1<')
    .replaceAll(/<style>[^]*?<\/style>/g, '')
    .split(/\n|<[^>]*>/)
    .map((line) => line.trim())
}

const isLeft = (line: string) =>
  english.test(line) && !typed.includes(line) && !stays.some((pattern) => pattern.test(line))

test.each(printed.map((args) => ({ args, name: args.join(' ') })))('$name says no sentence in English', ({ args }) => {
  const spoken = new Set(linesOf(args, 'en'))
  for (const language of ['de', 'es']) {
    const left = linesOf(args, language).filter((line) => spoken.has(line) && isLeft(line))
    expect(left, language).toEqual([])
  }
})
