import { join } from 'node:path'
import { currentRuleId } from '../../check/former-rule-ids.ts'
import { editDistance } from '../../quantities/edit-distance.ts'
import { translated, type Bundle } from '../../wording/bundle.ts'
import { phrase, sayIn, type Phrase } from '../../wording/phrase.ts'
import { rulePageIn } from '../../wording/rule-page.ts'
import { CouldNotRun } from '../could-not-run.ts'
import { table } from '../tables/table.ts'
import type { AddCommand } from './command.ts'
import { examples } from '../help/examples.ts'

export const addExplain: AddCommand = (program, world) => {
  const say = sayIn(world.bundle)
  program
    .command('explain')
    .description(say`what a rule looks at and why, as on the reference page`)
    .argument('[rule]', say`the id of a rule, such as voc-below-vmp; without it all rules are listed`)
    .addHelpText('after', examples(world.bundle, 'explain', 'explain voc-below-vmp'))
    .action(async (id: string | undefined) => {
      const page = await world.read(join(world.home, 'schemas', 'rules.md'))
      const rules = new Map(
        page
          .split(/^### /m)
          .slice(1)
          .map((part) => [part.slice(0, part.search(/\s/)), ownPart(part)]),
      )
      if (id === undefined)
        return world.out(table([...rules].map(([rule, text]) => [rule, ...severityAndReason(text, world.bundle)])))
      const text = rules.get(currentRuleId(id))
      if (text === undefined) throw new CouldNotRun(unknownRule(id, [...rules.keys()]))
      world.out(`${rulePageIn(text, world.bundle)}\n`)
    })
}

const severityAndReason = (text: string, bundle: Bundle | undefined) =>
  (/^Severity: (\w+)\. (.*)$/m.exec(text)?.slice(1) ?? []).map((one) => translated(one, bundle))

/** Without the title of the next group of rules. */
const ownPart = (part: string) => part.replace(/\n## [^]*$/, '').trim()

function unknownRule(typed: string, ids: readonly string[]): Phrase {
  const near = ids.map((id) => ({ id, away: editDistance(typed, id) })).sort((a, b) => a.away - b.away)[0]
  return near && near.away <= Math.max(2, typed.length / 4)
    ? phrase`there is no rule \`${typed}\`; did you mean \`${near.id}\`?`
    : phrase`there is no rule \`${typed}\``
}
