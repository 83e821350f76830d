import { spawnSync } from 'node:child_process'
import { describe, expect, test } from 'vitest'
import { scratch, wattproof } from './run.ts'

/** What is typed, and what the shell makes of it: in bash and fish all that is offered, in zsh the line once it is completed. */
const cases = [
  { typed: 'wattproof che', offered: ['check'] },
  { typed: 'wattproof check --fail', offered: ['--fail-on'] },
  { typed: 'wattproof check --format s', offered: ['sarif'] },
  { typed: 'wattproof new cl', offered: ['climate'] },
  { typed: 'wattproof explain voc-below-v', offered: ['voc-below-vmp'] },
  { typed: 'wattproof check tern', offered: ['tern-110.panel.yaml'] },
]

type Complete = (cwd: string, typed: string) => string

const shells: Readonly<Record<string, Complete>> = {
  bash(cwd, typed) {
    const words = typed.split(' ')
    // the shell itself completes file names where the function has nothing to say
    const ask = `source ./script; COMP_WORDS=(${words.join(' ')}); COMP_CWORD=${words.length - 1}; _wattproof
      if [ \${#COMPREPLY[@]} = 0 ]; then compgen -f -- ${words.at(-1)}; else printf '%s\\n' "\${COMPREPLY[@]}"; fi`
    return run('bash', ['-c', ask], cwd)
  },
  fish: (cwd, typed) =>
    run('fish', ['--no-config', '-c', `source ./script; complete -C '${typed}'`], cwd).replace(/\t.*/g, ''),
  zsh(cwd, typed) {
    const setup = 'autoload -Uz compinit; compinit -u -D; source ./script; wattproof() { print "<${@[-1]}>" }\n'
    const typist = { input: `${setup}${typed}\t\nexit\n`, timeout: 20_000 }
    return /\n<([\w.-]+)>\r/.exec(run('script', ['-qec', 'zsh -fi', '/dev/null'], cwd, typist))?.[1] ?? ''
  },
}

function run(program: string, args: readonly string[], cwd: string, more: { input?: string; timeout?: number } = {}) {
  const env = { ...process.env, HOME: cwd, TERM: 'dumb' }
  return spawnSync(program, args, { cwd, env, encoding: 'utf8', ...more }).stdout
}

describe.each(Object.keys(shells))('%s', (shell) => {
  const isThere = spawnSync(shell, ['--version']).status === 0
  if (!isThere && process.env.WATTPROOF_NO_SKIP) throw new Error(`${shell} is not installed`)

  test.skipIf(!isThere)('completes commands, options, what they take, and file names', () => {
    const cwd = scratch({ 'tern-110.panel.yaml': '', script: wattproof(['completion', shell]).out })
    const found = cases.map(({ typed }) => ({ typed, offered: shells[shell]!(cwd, typed).trim().split('\n') }))
    expect(found).toEqual(cases)
  })
})

test('a shell that it does not know', () => {
  const { code, err } = wattproof(['completion', 'sh'])
  expect(code).toBe(2)
  expect(err).toContain('bash, zsh, fish')
})
