import { readdirSync } from 'node:fs'

/** What each layer of server/src may import besides itself: our layers, then packages. In reading order. */
const mayImport = {
  wording: [],
  quantities: ['wording'],
  physics: [],
  text: ['wording', 'yaml'],
  findings: ['wording', 'text'],
  records: ['wording', 'text', 'quantities', 'findings', 'yaml'],
  values: ['wording', 'records', 'physics', 'quantities', 'findings'],
  rules: ['values', 'records', 'physics', 'quantities', 'findings'],
  slips: ['records', 'quantities', 'physics', 'text', 'findings'],
  review: ['wording', 'values', 'records', 'physics', 'quantities', 'findings'],
  library: ['wording', 'records', 'text', 'findings'],
  sheets: ['wording', 'records', 'quantities', 'text', 'findings'],
  rows: ['wording', 'records', 'quantities', 'text', 'csv-parse', 'csv-stringify'],
  report: ['wording', 'review', 'values', 'quantities', 'findings', 'text', '@observablehq/plot', '@xmldom/xmldom'],
  check: ['wording', 'sheets', 'library', 'rows', 'review', 'slips', 'rules', 'values', 'records', 'text', 'findings'],
}
/** These run on a machine, so they may import its modules and any package besides. */
const onMachine = {
  reader: ['wording', 'sheets'],
  editor: [...Object.keys(mayImport), 'reader'],
  terminal: [...Object.keys(mayImport), 'reader'],
}
/** client/src is flat. */
const ofClient = []

const packages = ['yaml', 'csv-parse', 'csv-stringify', '@observablehq/plot', '@xmldom/xmldom']
const place = (name) => (packages.includes(name) ? `node_modules/${name}/` : `^server/src/${name}/`)

const apart = [
  ...difference('server/src', [...Object.keys(mayImport), ...Object.keys(onMachine)]),
  ...difference('client/src', ofClient),
]
if (apart.length > 0) throw new Error(apart.join('; '))

export default {
  forbidden: [
    ...Object.entries(mayImport).map(([name, allowed]) => ({
      name: `${name}-imports`,
      severity: 'error',
      from: { path: place(name) },
      to: { pathNot: [name, ...allowed].map(place) }, // so Node, LSP and unresolved modules are out too
    })),
    ...Object.entries(onMachine).map(([name, allowed]) => ({
      name: `${name}-imports`,
      severity: 'error',
      from: { path: place(name) },
      to: { path: '^(server/src|client)/', pathNot: [name, ...allowed].map(place) },
    })),
    {
      name: 'client-has-no-logic',
      severity: 'error',
      from: { path: '^client/' },
      to: { path: '^server/', pathNot: '^server/src/editor/protocol(-changes)?[.]ts$' },
    },
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import'] },
  },
}

/** Folders that are not in the table, and those in the table that are not there. */
function difference(root, named) {
  const there = readdirSync(root, { withFileTypes: true }).flatMap((entry) => (entry.isDirectory() ? [entry.name] : []))
  return [
    ...there.filter((name) => !named.includes(name)).map((name) => `${root}/${name} is in no line of the import table`),
    ...named
      .filter((name) => !there.includes(name))
      .map((name) => `the import table names ${root}/${name}, which does not exist`),
  ]
}
