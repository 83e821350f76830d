import { spawnSync } from 'node:child_process'
import { cpSync, readFileSync, readdirSync } from 'node:fs'
import { expect, test } from 'vitest'
import { program, scratch, wattproof } from './run.ts'

const readme = readFileSync('README.md', 'utf8')
const fenced = [...readme.matchAll(/^ *```(\w*)\n([^]*?)^ *```$/gm)].map(([, language = '', text = '']) => ({
  language,
  text,
}))
const blocks = (language: string) => fenced.filter((block) => block.language === language).map(({ text }) => text)

/** Commands that can be copied as they are, each with what it prints. */
const tour = fenced.flatMap(({ language, text }, i) => {
  const after = fenced[i + 1]
  return language === 'sh' && after?.language === '' && /^ *(?:wattproof|sed) /.test(text)
    ? [{ command: text.trim(), lines: after.text.replace(/^ {3}/gm, '').split('\n') }]
    : []
})

test('what the tour shows is what the command line prints', () => {
  const shown = tour.filter(({ command }) => command.startsWith('wattproof'))
  expect(shown.length).toBeGreaterThanOrEqual(5)
  for (const { command, lines } of shown) {
    const { out } = wattproof(command.split(' ').slice(1))
    // columns may be narrower here, and … stands for what is left out
    const plain = (line: string) => line.replace(/ +/g, ' ').trim()
    const printed = out.split('\n').map(plain)
    for (const line of lines.map(plain)) {
      const start = line.replace(/…$/, '')
      expect(
        printed.some((other) => (line.endsWith('…') ? other.startsWith(start) : other === start)),
        line,
      ).toBe(true)
    }
  }
})

test('a command in the running text can be copied, too, if it has no place for a name', () => {
  const folder = scratch()
  cpSync('samples', `${folder}/samples`, { recursive: true })
  cpSync('samples/library/panels', `${folder}/panels`, { recursive: true })
  const inText = [...readme.matchAll(/`wattproof ([^`]+)`/g)].map(([, args = '']) => args)
  // what fish is to read, another shell cannot: completion.test.ts does it in fish
  const whole = inText.filter((args) => !/[A-Z]{4,}|^serve|\| source$/.test(args))
  expect(whole.length).toBeGreaterThanOrEqual(7)
  for (const args of whole) {
    const run = spawnSync(`node ${program} ${args}`, { cwd: folder, shell: true, encoding: 'utf8' })
    // 1 says that there are findings: a record that was only begun lacks its ratings
    expect(run.status, `${args}: ${run.stderr}`).toBeLessThanOrEqual(args.includes('--from panels.csv') ? 1 : 0)
    expect(readdirSync(folder)).toEqual(expect.arrayContaining(args.match(/(?<=-o |> )[\w.]+(?=$)/g) ?? []))
  }
})

test('the tour finds what only the sheet knows', () => {
  const { command, lines } = tour.find((step) => step.command.startsWith('sed'))!
  const [said = ''] = lines
  const [, from = '', to = '', path = ''] = /s\/\^(.+)\/(.+)\/' (\S+)/.exec(command) ?? []
  const record = readFileSync(path, 'utf8')
  expect(record).toContain(`\n${from}`)
  const run = wattproof(['check', '-', '--stdin-filename', path], { input: record.replace(from, to) })
  expect(run.out).toContain(said.trim().slice(1))
})

test('the record that explains the format has no findings above a hint', () => {
  const record = blocks('yaml').find((text) => text.startsWith('format: 1\nname:')) ?? ''
  const run = wattproof(['check', '-', '--stdin-filename', 'a.panel.yaml', '--fail-on', 'information'], {
    cwd: scratch(),
    input: record,
  })
  expect(run.out).toMatch(/^1 file, 0 errors(, \d+ hints?)?\n$/m)
  expect(run.code).toBe(0)
})

test('the settings that explain the library are in order', () => {
  const settings = blocks('yaml').find((text) => text.startsWith('format: 1\ncurrency:')) ?? ''
  const run = wattproof(['check', '-', '--stdin-filename', 'wattproof.yaml', '--fail-on', 'information'], {
    cwd: scratch(),
    input: settings,
  })
  expect(run.out).toBe('1 file, 0 errors\n')
})

test('nothing warns about the system that explains what a system can say', () => {
  const system = blocks('yaml').find((text) => text.startsWith('format: 1\nname: Ketch')) ?? ''
  const named = ['check', '-', '--stdin-filename', 'samples/systems/readme.system.yaml', '--fail-on', 'warning']
  const run = wattproof(named, { input: system })
  expect(run.out).toMatch(/^1 file, 0 errors(, 1 information)?\n$/m)
  expect(run.code).toBe(0)
})

test('the commands of the table are the commands there are, and every option of check is reported', () => {
  const help = wattproof(['--help']).out
  const there = [...help.matchAll(/^ {2}([a-z]+) /gm)].map(([, name]) => name).filter((name) => name !== 'help')
  const reported = [
    ...(blocks('').find((text) => text.startsWith('wattproof check   ')) ?? '').matchAll(/^wattproof ([a-z]+)/gm),
  ].map(([, name]) => name)
  expect(new Set(reported)).toEqual(new Set(there))
  const options = [...wattproof(['check', '--help']).out.matchAll(/(--[a-z-]+)/g)].map(([, name]) => name as string)
  for (const option of new Set(options)) {
    if (option !== '--help' && option !== '--output') expect(readme, option).toContain(option)
  }
})
