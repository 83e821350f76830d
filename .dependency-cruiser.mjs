/** What each layer of server/src may import besides itself: our layers, then packages. In reading order. */
const mayImport = {
  quantities: [],
  physics: [],
  text: ['yaml'],
  findings: ['text'],
  records: ['text', 'quantities', 'findings', 'yaml'],
  values: ['records', 'physics', 'quantities'],
  rules: ['values', 'records', 'physics', 'quantities', 'findings'],
  slips: ['records', 'quantities', 'text', 'findings'],
  review: ['rules', 'values', 'records', 'physics', 'quantities', 'findings'],
  library: ['records', 'text', 'findings'],
  sheets: ['records', 'quantities', 'text', 'findings'],
  check: ['sheets', 'library', 'review', 'slips', 'rules', 'values', 'records', 'text', 'findings'],
  report: ['review', 'values', 'records', 'quantities', 'findings'],
};
const packages = ['yaml'];
const place = (name) => (packages.includes(name) ? `node_modules/${name}/` : `^server/src/${name}/`);

export default {
  forbidden: [
    ...Object.entries(mayImport).map(([name, allowed]) => ({
      name: `${name}-imports`,
      severity: 'error',
      from: { path: place(name) },
      to: { pathNot: [name, ...allowed].map(place) }, // so Node, LSP and unresolved modules are out too
    })),
    {
      name: 'adapters-are-strangers',
      severity: 'error',
      from: { path: '^server/src/(editor|terminal)/' },
      to: { path: '^server/src/(editor|terminal)/', pathNot: '^server/src/$1/' },
    },
    {
      name: 'client-has-no-logic',
      severity: 'error',
      from: { path: '^client/' },
      to: { path: '^server/', pathNot: '^server/src/editor/protocol[.]ts$' },
    },
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
  ],
  options: { tsPreCompilationDeps: true, tsConfig: { fileName: 'tsconfig.json' }, doNotFollow: { path: 'node_modules' } },
};
