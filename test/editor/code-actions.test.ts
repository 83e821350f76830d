import { describe, expect, test } from 'vitest'
import type { CodeAction, SnippetTextEdit, TextDocumentEdit, TextEdit } from 'vscode-languageserver'
import { codeActions } from '../../server/src/editor/handlers/code-actions.ts'
import { checkFile } from '../../server/src/check/check.ts'
import { tern } from './client.ts'
import { applied, clients, hereAt } from './here.ts'

type Options = Parameters<typeof hereAt>[1] & { only?: string[]; reason?: string }

function actionsAt(fixture: string, { only, ...options }: Options = {}) {
  const { here, offset, source, workspace } = hereAt(fixture, options)
  return { actions: codeActions(here, { start: offset, end: offset }, [], only), source, here, workspace }
}

/** Chooses an action by how its title begins and gives the text and its findings afterwards. */
function check(fixture: string, title: string | RegExp, after: string, options: Options = {}) {
  const { actions, source, here, workspace } = actionsAt(fixture, options)
  const action = actions.find((one) =>
    typeof title === 'string' ? one.title.replace(/^Use /, '').startsWith(title) : title.test(one.title),
  )!
  expect(action, `${title} among ${actions.map((one) => one.title).join(' | ')}`).toBeDefined()
  const now = applied(source, editsOf(action, options.reason ?? ''))
  expect(now).toBe(after)
  workspace.put(here.path, now)
  return {
    action,
    rules: checkFile(workspace.library, here.path, { today: here.today })!.findings.map(({ rule }) => rule),
  }
}

function editsOf({ edit }: CodeAction, reason: string): TextEdit[] {
  const all = edit?.changes
    ? Object.values(edit.changes).flat()
    : (edit!.documentChanges as TextDocumentEdit[]).flatMap((one) => one.edits)
  return all.map((one) => ('snippet' in one ? { range: one.range, newText: snippetText(one, reason) } : one))
}

const snippetText = ({ snippet }: SnippetTextEdit, reason: string) =>
  snippet.value.replace('$1', reason).replace(/\\([\\$}])/g, '$1')

describe('fixes', () => {
  test('the only one is preferred', () => {
    const { action, rules } = check(tern.replace('voc:', 'vo$0cc:'), 'voc', tern)
    expect(action).toMatchObject({ kind: 'quickfix', isPreferred: true })
    expect(rules).not.toContain('unknown-field')
  })

  test('a comment, quotes and line ends stay', () => {
    check(
      'format: 1\r\nstc:\r\n  voc: "22,1$0 V" # typ\r\n',
      '22.1 V',
      'format: 1\r\nstc:\r\n  voc: "22.1 V" # typ\r\n',
    )
  })

  test('all that keeps its meaning at once, and nothing else', () => {
    const before = tern.replace('22.1 V', '22,1 V').replace('5.92 A', '5,92 A').replace('110 W', '11.0 W')
    const after = tern.replace('110 W', '11.0 W')
    const { action } = check(`$0${before}`, 'Fix all', after, { only: ['source.fixAll'] })
    expect(action.kind).toBe('source.fixAll.wattproof')
    expect(actionsAt(`$0${before}`, { only: ['quickfix'] }).actions.map(({ kind }) => kind)).not.toContain(
      'source.fixAll.wattproof',
    )
  })
})

test('decimal commas, case, labels and no-break spaces of a record are put right in one step', () => {
  const right = `${tern}weight: 2.2 kg\nlimits: { bend: 30 deg, operating_temperature: -40..85 °C }\n`
  const typed = right
    .replace('22.1 V', '22,1 V')
    .replace('  imp: 5.92 A', '  imp:\u00A05,92\u00A0A')
    .replace('flexible', 'Flexible')
    .replace('  isc:', '  Kurzschlussstrom:')
    .replace('2.2 kg', '2,2\u00A0kg')
  check(`$0${typed}`, 'Fix all', right, { only: ['source.fixAll'] })
  check(typed.replace('22,1', '22$0,1'), 'Fix all 6', right)
})

describe('acceptance', () => {
  const slip = tern.replace('22.1 V', '2.21 V')

  test('a comment with the cursor where the reason goes', () => {
    const { rules } = check(
      slip.replace('2.21', '2.$021'),
      'Accept voc-below-vmp',
      slip.replace('2.21 V', '2.21 V  # accept voc-below-vmp: as printed'),
      { reason: 'as printed' },
    )
    expect(rules).not.toContain('voc-below-vmp')
  })

  test('without a reason it does not count', () => {
    const { rules } = check(
      slip.replace('2.21', '2.$021'),
      'Accept voc-below-vmp',
      slip.replace('2.21 V', '2.21 V  # accept voc-below-vmp: '),
      { client: clients.bare },
    )
    expect(rules).toContain('voc-below-vmp')
    expect(rules).toContain('acceptance-without-reason')
  })

  test('JSON has a list', () => {
    const json =
      '{\n  "format": 1,\n  "stc": { "pmax": "110 W", "vmp": "18.6 V", "imp": "5.92 A", "voc": "2.21 V", "isc": "6.31 A" }\n}\n'
    const accepted = ',\n  "accepted": [{ "rule": "voc-below-vmp", "field": "/stc/voc", "because": "as printed" }]\n}\n'
    const { rules } = check(json.replace('2.21', '2.$021'), 'Accept voc-below-vmp', json.replace('\n}\n', accepted), {
      name: 'tern.panel.json',
      reason: 'as printed',
    })
    expect(rules).not.toContain('voc-below-vmp')
  })

  test('a slip of typing is not offered to be accepted', () => {
    expect(
      actionsAt(tern.replace('voc:', 'vo$0cc:'))
        .actions.map(({ title }) => title)
        .join(),
    ).not.toContain('Accept')
  })
})

describe('an acceptance that matches nothing', () => {
  test.each([
    { why: 'the whole comment', before: '22.1 V  # acc$0ept voc-below-vmp: old', after: '22.1 V' },
    {
      why: 'one of two',
      before: '22.1 V  # acc$0ept voc-below-vmp: old ; accept voc-coefficient-implausible: too',
      after: '22.1 V  # accept voc-coefficient-implausible: too',
    },
    { why: 'behind other words', before: '22.1 V  # typ ; acc$0ept voc-below-vmp: old', after: '22.1 V  # typ' },
  ])('$why', ({ before, after }) => {
    check(tern.replace('22.1 V', before), 'Remove', tern.replace('22.1 V', after))
  })

  test('a line of its own', () => {
    check(`# acc$0ept voc-below-vmp: old\n${tern}`, 'Remove', tern)
  })

  test('an item of the list', () => {
    const item = '{ rule: voc-below-vmp, field: /stc/voc, because: old }'
    check(`${tern}accepted: [$0${item}]\n`, 'Remove', tern)
    const other = '{ rule: isc-below-imp, field: /stc/isc, because: old }'
    check(`${tern}accepted: [$0${item}, ${other}]\n`, 'Remove', `${tern}accepted: [${other}]\n`)
    check(`${tern}accepted:\n  - $0${item}\n  - ${other}\n`, 'Remove', `${tern}accepted:\n  - ${other}\n`)
  })
})

test('the same quantity in another unit', () => {
  const { action } = check(tern.replace('1190 mm', '11$090 mm'), 'Write as 119', tern.replace('1190 mm', '119.0 cm'))
  expect(action.kind).toBe('refactor.rewrite')
})
