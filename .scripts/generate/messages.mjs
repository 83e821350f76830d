// Collects the templates of all messages: those that have a name, by `rule/name`, and the others by their English text.
import { readFileSync, readdirSync } from 'node:fs'
import { build } from 'esbuild'
import ts from 'typescript'

/** @returns the catalogue as JSON: what a bundle of another language replaces */
export async function messageCatalogue(root) {
  const paths = readdirSync(root, { recursive: true })
    .map((name) => `${root}/${name}`)
    .filter((path) => /[.]ts$/.test(path) && !/[.]d[.]ts$/.test(path))
    .sort()
  const sources = paths.map((path) => ({ path, text: readFileSync(path, 'utf8') }))
  const named = await namedIn(
    sources
      .filter(({ path, text }) => /[/](rules|hazards)[/]|facts[.]ts$/.test(path) || /\bmessages\b *[:=]/.test(text))
      .map(({ path }) => path),
  )
  const sentences = sources.filter(({ text }) => /\b(?:phrase|say|inCatalogue)`|sayIn[(]/.test(text)).flatMap(phrasesIn)
  const entries = [...named, ...sentences.map((template) => [template, template])]
  const sorted = [...new Map(entries)].sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
  return `${JSON.stringify(Object.fromEntries(sorted), null, 2)}\n`
}

/** The templates of whatever the modules export that has an id and messages. */
async function namedIn(paths) {
  const contents = paths.map((path, i) => `export * as m${i} from './${path}'`).join('\n')
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: '.', loader: 'ts' },
    bundle: true,
    format: 'esm',
    platform: 'browser',
    write: false,
  })
  const modules = await import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString('base64')}`)
  const found = new Map()
  const seen = new Set()
  collect(modules, 0)
  return [...found]

  function collect(value, depth) {
    if (typeof value !== 'object' || value === null || seen.has(value) || depth > 4) return
    seen.add(value)
    if (typeof value.id === 'string' && typeof value.messages === 'object')
      for (const [name, template] of Object.entries(value.messages)) found.set(`${value.id}/${name}`, template)
    if (typeof value.id === 'string' && typeof value.reason === 'string') found.set(`${value.id}/reason`, value.reason)
    for (const inner of Object.values(value)) collect(inner, depth + 1)
  }
}

/** The templates after the tags `phrase`, `say`, `sayIn(…)` and `inCatalogue`, with numbered placeholders. */
function phrasesIn({ path, text }) {
  const found = []
  visit(ts.createSourceFile(path, text, ts.ScriptTarget.Latest))
  return found

  function visit(node) {
    if (ts.isTaggedTemplateExpression(node) && isSaid(node.tag)) found.push(templateOf(node.template))
    ts.forEachChild(node, visit)
  }
}

const isSaid = (tag) =>
  ['phrase', 'say', 'inCatalogue'].includes(tag.text) || (ts.isCallExpression(tag) && tag.expression.text === 'sayIn')

const templateOf = (template) =>
  ts.isNoSubstitutionTemplateLiteral(template)
    ? template.text
    : template.head.text + template.templateSpans.map(({ literal }, i) => `{${i}}${literal.text}`).join('')
