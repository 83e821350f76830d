import {
  Position,
  commands,
  workspace,
  type CodeLens,
  type Hover,
  type MarkdownString,
  type TextDocument,
} from 'vscode'
import { good } from './records.ts'
import { bytes, hasRule, holds, inFolder, ours, replace, showNew, soon } from './tools.ts'

const systemOf = (panel: string) => `format: 1\nname: Boat\narrays:\n  - panels: [{ panel: ${panel}, count: 2 }]\n`
/** The id in such a system. */
const atId = new Position(3, 24)

export async function aSystemSeesItsPanels() {
  const panel = await showNew('seen.panel.yaml', good)
  const system = await showNew('sees.system.yaml', systemOf('seen'))
  await soon(
    'the panel in a hover over its id',
    () => hoverText(system),
    (text) => text.includes('110 W, flexible'),
  )
  await soon(
    'the system above the panel',
    () => commands.executeCommand<CodeLens[]>('vscode.executeCodeLensProvider', panel.uri, 10),
    (lenses) => lenses.some(({ command }) => command?.title.includes('1 system')),
  )
  await replace(system, 'panel: seen', 'panel: unseen')
  await soon('the id that names nothing', () => ours(system.uri), hasRule('unknown-record'))
  await replace(system, 'panel: unseen', 'panel: seen')
  await soon(
    'the panel seen again',
    () => ours(system.uri),
    (found) => !hasRule('unknown-record')(found),
  )
}

export async function aFileFarTooLargeForARecordIsNotRead() {
  const large = inFolder('large.panel.yaml')
  await workspace.fs.writeFile(large, bytes('#'.repeat(2 << 20)))
  const [finding] = await soon('the finding', () => ours(large), hasRule('file-not-read'))
  holds(finding?.message.includes('it has 2.0 MiB'), finding?.message)
  await workspace.fs.delete(large)
}

async function hoverText({ uri }: TextDocument): Promise<string> {
  const hovers = await commands.executeCommand<Hover[]>('vscode.executeHoverProvider', uri, atId)
  return hovers.flatMap(({ contents }) => contents.map((part) => (part as MarkdownString).value ?? part)).join('\n')
}
