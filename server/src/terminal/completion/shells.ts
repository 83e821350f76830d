import type { Words } from './words.ts'

export type Shell = 'bash' | 'zsh' | 'fish'

/** The script that a shell reads to complete what is typed behind `wattproof`; everything else is a file name. */
export const scripts: Readonly<Record<Shell, (commands: readonly Words[]) => string>> = { bash, zsh, fish }

/** `'check --format'` and `'check -f'`, each before what follows it. */
const valueCases = (commands: readonly Words[], offer: (choices: readonly string[]) => string) =>
  commands.flatMap(({ name, options }) =>
    options
      .filter(({ choices }) => choices.length > 0)
      .map(
        ({ flags, choices }) => `    ${flags.map((flag) => `'${name} ${flag}'`).join(' | ')}) ${offer(choices)} ;;\n`,
      ),
  )

function bash(commands: readonly Words[]): string {
  const offer = (words: readonly string[]) => `offered='${words.join(' ')}'`
  return `_wattproof() {
  local word=\${COMP_WORDS[COMP_CWORD]} offered=
  COMPREPLY=()
  case "\${COMP_WORDS[1]} \${COMP_WORDS[COMP_CWORD - 1]}" in
${valueCases(commands, offer).join('')}  esac
  if [ -z "$offered" ]; then
    case "$COMP_CWORD \${COMP_WORDS[1]} $word" in
    '1 '*) ${offer(commands.map(({ name }) => name))} ;;
${commands
  .flatMap(({ name, options, choices }) => [
    `    ?*' ${name} -'*) ${offer(options.flatMap(({ flags }) => flags))} ;;\n`,
    ...(choices.length > 0 ? [`    '2 ${name} '*) ${offer(choices)} ;;\n`] : []),
  ])
  .join('')}    esac
  fi
  COMPREPLY=($(compgen -W "$offered" -- "$word"))
}
complete -o default -F _wattproof wattproof
`
}

function zsh(commands: readonly Words[]): string {
  const offer = (words: readonly string[]) => `compadd -- ${words.join(' ')}; return`
  const described = (what: string, all: readonly (readonly [string, string])[]) =>
    `offered=(${all.map(([word, description]) => `'${word}:${description}'`).join(' ')}); _describe ${what} offered; return`
  return `#compdef wattproof
_wattproof() {
  local -a offered
  case "$words[2] $words[CURRENT-1]" in
${valueCases(commands, offer).join('')}  esac
  case "$CURRENT $words[2] $words[CURRENT]" in
    '2 '*) ${described(
      'command',
      commands.map(({ name, description }) => [name, description]),
    )} ;;
${commands
  .flatMap(({ name, options, choices }) => [
    `    *' ${name} -'*) ${described(
      'option',
      options.flatMap(({ flags, description }) => flags.map((flag) => [flag, description] as const)),
    )} ;;\n`,
    ...(choices.length > 0 ? [`    '3 ${name} '*) ${offer(choices)} ;;\n`] : []),
  ])
  .join('')}  esac
  _files
}
compdef _wattproof wattproof
`
}

function fish(commands: readonly Words[]): string {
  const lines = commands.flatMap(({ name, description, options, choices }) => {
    const within = `complete -c wattproof -n '__fish_seen_subcommand_from ${name}'`
    return [
      `complete -c wattproof -f -n __fish_use_subcommand -a ${name} -d '${description}'`,
      ...(choices.length > 0 ? [`${within} -f -a '${choices.join(' ')}'`] : []),
      ...options.map(({ flags, description, takesValue, choices }) => {
        const names = flags.map((flag) => (flag.startsWith('--') ? `-l ${flag.slice(2)}` : `-s ${flag.slice(1)}`))
        const value = choices.length > 0 ? [`-x -a '${choices.join(' ')}'`] : takesValue ? ['-r'] : []
        return [within, ...names, ...value, `-d '${description}'`].join(' ')
      }),
    ]
  })
  return `${lines.join('\n')}\n`
}
