import { slip } from './records.ts'
import { commandLine, descendants } from '../driver/processes.ts'
import { hasRule, holds, ours, showNew, soon } from './tools.ts'

/** A language server that dies is started again, and the person need not notice. */
export async function aServerThatDiesIsStartedAgain() {
  if (process.platform !== 'linux') return // its process is found by what only Linux tells
  const servers = () => descendants(process.pid).filter((pid) => /dist[/\\]server\.js/.test(commandLine(pid)))
  const [first, ...others] = await soon('the server', servers, (found) => found.length > 0)
  holds(first && others.length === 0, 'there is more than one language server')
  process.kill(first, 'SIGKILL')
  await soon('another server', servers, (found) => found.length === 1 && found[0] !== first)
  const document = await showNew('after.panel.yaml', slip)
  await soon('findings again', () => ours(document.uri), hasRule('voc-below-vmp'))
}
