import { good, slip } from './records.ts'
import { commandLine, descendants } from '../driver/processes.ts'
import { hasRule, holds, ours, replace, ruleOf, same, showNew, soon } from './tools.ts'

/** A language server that dies is started again, and the person need not notice: no finding is lost, left over or there twice. */
export async function aServerThatDiesIsStartedAgain() {
  if (process.platform !== 'linux') return // its process is found by what only Linux shows
  const servers = () => descendants(process.pid).filter((pid) => /dist[/\\]server\.js/.test(commandLine(pid)))
  const [first, ...others] = await soon('the server', servers, (found) => found.length > 0)
  holds(first && others.length === 0, 'there is more than one language server')
  const before = await showNew('before.panel.yaml', slip)
  const rules = (await soon('findings', () => ours(before.uri), hasRule('voc-below-vmp'))).map(ruleOf)

  process.kill(first, 'SIGKILL')
  await soon('another server', servers, (found) => found.length === 1 && found[0] !== first)
  const after = await showNew('after.panel.yaml', slip)
  same((await soon('findings again', () => ours(after.uri), hasRule('voc-below-vmp'))).map(ruleOf), rules)
  await soon(
    'each finding once',
    () => ours(before.uri).map(ruleOf),
    (again) => again.join() === rules.join(),
  )
  await replace(before, 'voc: 2.21 V', 'voc: 22.1 V')
  same(before.getText(), good)
  await soon(
    'the finding to go',
    () => ours(before.uri),
    (findings) => !hasRule('voc-below-vmp')(findings),
  )
}
