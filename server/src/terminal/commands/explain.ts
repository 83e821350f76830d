import { join } from 'node:path'
import { currentRuleId } from '../../check/former-rule-ids.ts'
import { distance } from '../../records/nearest.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { table } from '../tables/table.ts'
import type { AddCommand } from './command.ts'

export const addExplain: AddCommand = (program, world) => {
  program
    .command('explain')
    .description('what a rule looks at and why, as on the reference page')
    .argument('[rule]', 'the id of a rule, such as voc-below-vmp; without it all rules are listed')
    .addHelpText('after', '\nExamples:\n  wattproof explain\n  wattproof explain voc-below-vmp')
    .action(async (id: string | undefined) => {
      const page = await world.read(join(world.home, 'schemas', 'rules.md'))
      const rules = new Map(
        page
          .split(/^### /m)
          .slice(1)
          .map((part) => [part.slice(0, part.search(/\s/)), ownPart(part)]),
      )
      if (id === undefined)
        return world.out(table([...rules].map(([rule, text]) => [rule, ...severityAndReason(text)])))
      const text = rules.get(currentRuleId(id))
      if (text === undefined) throw new CouldNotRun(`there is no rule \`${id}\`${suggestion(id, [...rules.keys()])}`)
      world.out(`${text}\n`)
    })
}

const severityAndReason = (text: string) => /^Severity: (\w+)\. (.*)$/m.exec(text)?.slice(1) ?? []

/** Without the title of the next group of rules. */
const ownPart = (part: string) => part.replace(/\n## [^]*$/, '').trim()

/** `; did you mean X?`, or nothing where no id is near. */
function suggestion(typed: string, ids: readonly string[]): string {
  const near = ids.map((id) => ({ id, away: distance(typed, id) })).sort((a, b) => a.away - b.away)[0]
  return near && near.away <= Math.max(2, typed.length / 4) ? `; did you mean \`${near.id}\`?` : ''
}
