import {
  ConfigurationTarget,
  Position,
  commands,
  workspace,
  type CodeAction,
  type CompletionList,
  type DocumentSymbol,
  type Hover,
  type MarkdownString,
} from 'vscode'
import { good, slip } from './records.ts'
import { hasRule, hintsOf, holds, ours, replace, ruleOf, same, showNew, soon } from './tools.ts'

export async function aSlipIsMarkedOnItsOwnCharacters() {
  const document = await showNew('slip.panel.yaml', slip)
  const findings = await soon('the finding', () => ours(document.uri), hasRule('voc-below-vmp'))
  const finding = findings.find((each) => ruleOf(each) === 'voc-below-vmp')
  same(document.getText(finding?.range), '2.21 V')
  holds(finding?.message.includes('Voc 2.21 V is probably 22.1 V'), finding?.message)
}

export async function aRecordThatAgreesHasNoSquiggle() {
  const document = await showNew('good.panel.yaml', good)
  await soon(
    'hints',
    () => hintsOf(document),
    (hints) => hints.length > 0,
  )
  same(
    ours(document.uri)
      .filter(({ severity }) => severity < 2)
      .map(ruleOf),
    [],
  )
}

/** The editor withdraws a request while what it shows still changes; it is asked again. */
function withdrawn(error: unknown): CodeAction[] {
  if (String(error).includes('Canceled')) return []
  throw error
}

export async function aQuickFixPutsThePointBack() {
  const document = await showNew('fixed.panel.yaml', slip)
  const [finding] = await soon(
    'the finding',
    () => ours(document.uri).filter((f) => ruleOf(f) === 'voc-below-vmp'),
    (f) => f.length === 1,
  )
  holds(finding)
  const fixes = await soon(
    'the fix',
    () =>
      commands
        .executeCommand<CodeAction[]>('vscode.executeCodeActionProvider', document.uri, finding.range, undefined, 20)
        .then(undefined, withdrawn),
    (actions) => actions.some(({ title }) => title.includes('22.1 V')),
  )
  const edit = fixes.find(({ title }) => title.includes('22.1 V'))?.edit
  holds(edit, 'the fix has no edit')
  holds(await workspace.applyEdit(edit))
  same(document.getText(), good)
  await soon(
    'no finding',
    () => ours(document.uri),
    (findings) => !hasRule('voc-below-vmp')(findings),
  )
}

export async function aHoverTellsWhatTheNumberIsWorth() {
  const document = await showNew('hover.panel.yaml', good)
  const at = document.positionAt(document.getText().indexOf('110 W') + 1)
  const hovers = await soon(
    'a hover',
    () => commands.executeCommand<Hover[]>('vscode.executeHoverProvider', document.uri, at),
    (found) => found.length > 0,
  )
  const text = hovers
    .flatMap(({ contents }) => contents.map((part) => (part as MarkdownString).value ?? part))
    .join('\n')
  holds(/17\.1/.test(text), text)
}

export async function hintsFollowTheirSettings() {
  const document = await showNew('hints.panel.yaml', good)
  const before = await soon(
    'hints',
    () => hintsOf(document),
    (hints) => hints.some((hint) => /17\.1\d*\s%/.test(hint)),
  )
  holds(before.includes('kg'), `no unit behind the bare weight: ${before.join(' | ')}`)
  holds(
    before.every((hint) => hint.length <= 20),
    `a hint is too long: ${before.join(' | ')}`,
  )

  const settings = workspace.getConfiguration('wattproof.hints')
  await settings.update('derived', false, ConfigurationTarget.Workspace)
  await soon(
    'units alone',
    () => hintsOf(document),
    (hints) => hints.join() === 'kg',
  )
  await settings.update('units', false, ConfigurationTarget.Workspace)
  await soon(
    'no hints',
    () => hintsOf(document),
    (hints) => hints.length === 0,
  )
  await settings.update('derived', undefined, ConfigurationTarget.Workspace)
  await settings.update('units', undefined, ConfigurationTarget.Workspace)
  await soon(
    'all hints again',
    () => hintsOf(document),
    (hints) => hints.length === before.length,
  )
}

export async function completionOffersFieldsAndUnits() {
  const document = await showNew('half.panel.yaml', 'format: 1\nstc:\n  pmax: 110 \n  \n')
  const labels = async (line: number, character: number) => {
    const list = await commands.executeCommand<CompletionList>(
      'vscode.executeCompletionItemProvider',
      document.uri,
      new Position(line, character),
    )
    return list.items.map(({ label }) => (typeof label === 'string' ? label : label.label))
  }
  await soon(
    'fields',
    () => labels(3, 2),
    (found) => found.includes('vmp') && !found.includes('pmax'),
  )
  await soon(
    'units',
    () => labels(2, 12),
    (found) => found.some((label) => /\bW$/.test(label)),
  )
}

export async function theOutlineShowsTheFields() {
  const document = await showNew('outline.panel.yaml', good)
  const symbols = await soon(
    'symbols',
    () => commands.executeCommand<DocumentSymbol[] | undefined>('vscode.executeDocumentSymbolProvider', document.uri),
    (found) => Boolean(found?.length),
  )
  const flat = (list: readonly DocumentSymbol[]): string[] =>
    list.flatMap(({ name, children }) => [name, ...flat(children)])
  holds(
    flat(symbols ?? []).some((name) => /voc/i.test(name)),
    flat(symbols ?? []).join(),
  )
}

export async function aHalfTypedRecordKeepsWhatCanBeComputed() {
  const document = await showNew('typing.panel.yaml', good)
  await soon(
    'hints',
    () => hintsOf(document),
    (hints) => hints.some((hint) => /17\.1/.test(hint)),
  )
  await replace(document, 'voc:', 'vo\n  voc:')
  holds(
    (await hintsOf(document)).some((hint) => /17\.1/.test(hint)),
    'the efficiency went away while typing',
  )
}
