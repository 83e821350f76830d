import { expect, test } from 'vitest'
import { appendItem } from '../../server/src/text/edits.ts'
import { readTree } from '../../server/src/text/read-tree.ts'
import { applyEdits } from '../../server/src/text/span.ts'

const item = { id: 'n', panels: [{ panel: 'p', count: 2 }], wiring: { series: 2 } }
const added = (text: string) => applyEdits(text, appendItem(readTree(text), 'list', item, 'a')!)

test.each([
  {
    name: 'a block like the one before it',
    text: 'a: 1\nlist:\n  - id: m\n    panels: [{ panel: q, count: 1 }] # c\n    wiring: { series: 1 }\nb: 2\n',
    adds: '  - id: n\n    panels: [{ panel: p, count: 2 }]\n    wiring: { series: 2 }\n',
    before: 'b: 2',
  },
  {
    name: 'all in blocks, dashes at the margin, wide marks',
    text: 'list:\n-   id: m\n    panels:\n    -   panel: q\n        count: 1\n    wiring:\n        series: 1\n# end\n',
    adds: '-   id: n\n    panels:\n    -   panel: p\n        count: 2\n    wiring:\n        series: 2\n',
    before: '# end',
  },
  {
    name: 'quotes and aligned values',
    text: "list:\n  - id:     'm'\n    wiring: {series: 1}\n",
    adds: "  - id:     'n'\n    panels: [{ panel: p, count: 2 }]\n    wiring: {series: 2}\n",
    before: '',
  },
  {
    name: 'one line each',
    text: 'list:\n  - { id: m, wiring: { series: 1 } } # c\n',
    adds: '  - { id: n, panels: [{ panel: p, count: 2 }], wiring: { series: 2 } }\n',
    before: '',
  },
  {
    name: 'a comment behind the last of a list on several lines',
    text: 'list: [\n  { id: m }, # one\n  { id: k }, # two\n]\n',
    adds: '  { id: n, panels: [{ panel: p, count: 2 }], wiring: { series: 2 } },\n',
    before: ']\n',
  },
  { name: 'the first of a list left open', text: 'list: # none yet\nb: 1\n', adds: '  - id: n\n    panels: [{ panel: p, count: 2 }]\n    wiring: { series: 2 }\n', before: 'b: 1' }, // prettier-ignore
  { name: 'the first of a list that is missing', text: 'a:\n  - c: 1 # d\nb: 1\n', adds: 'list:\n  - id: n\n    panels: [{ panel: p, count: 2 }]\n    wiring: { series: 2 }\n', before: 'b: 1' }, // prettier-ignore
])('$name', ({ text, adds, before }) => {
  const at = before === '' ? text.length : text.lastIndexOf(before)
  expect(added(text)).toBe(text.slice(0, at) + adds + text.slice(at))
  const windows = text.replaceAll('\n', '\r\n')
  expect(added(windows)).toBe((text.slice(0, at) + adds + text.slice(at)).replaceAll('\n', '\r\n'))
})

test.each([
  ['list: [] # c\n', 'list: [{ id: n, panels: [{ panel: p, count: 2 }], wiring: { series: 2 } }] # c\n'],
  ['list: [{ id: m }]', 'list: [{ id: m }, { id: n, panels: [{ panel: p, count: 2 }], wiring: { series: 2 } }]'],
  ['{"a":1,"list":[]}', '{"a":1,"list":[{"id":"n","panels":[{"panel":"p","count":2}],"wiring":{"series":2}}]}'],
  ['{"a":1,"b":2}', '{"a":1,"list":[{"id":"n","panels":[{"panel":"p","count":2}],"wiring":{"series":2}}],"b":2}'],
  [
    '{\n  "list": [\n    {\n      "id": "m",\n      "panels": [{ "panel": "q", "count": 1 }]\n    }\n  ]\n}\n',
    '{\n  "list": [\n    {\n      "id": "m",\n      "panels": [{ "panel": "q", "count": 1 }]\n    },\n    {\n      "id": "n",\n      "panels": [{ "panel": "p", "count": 2 }],\n      "wiring": { "series": 2 }\n    }\n  ]\n}\n',
  ],
  [
    '{\n  "a": 1,\n  "b": 2\n}\n',
    '{\n  "a": 1,\n  "list": [{ "id": "n", "panels": [{ "panel": "p", "count": 2 }], "wiring": { "series": 2 } }],\n  "b": 2\n}\n',
  ],
  [
    'list: [\n  { id: m } # c\n]',
    'list: [\n  { id: m }, # c\n  { id: n, panels: [{ panel: p, count: 2 }], wiring: { series: 2 } }\n]',
  ],
])('%j', (text, expected) => expect(added(text)).toBe(expected))

test.each(['list: 3\n', 'list: { a: 1 }\n', '- 1\n'])('no place for it in %j', (text) =>
  expect(appendItem(readTree(text), 'list', item, 'a')).toBeNull(),
)
