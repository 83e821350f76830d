import { readdirSync, readFileSync } from 'node:fs'
import ts from 'typescript'
import { describe, expect, test } from 'vitest'

const read = (path: string) => JSON.parse(readFileSync(path, 'utf8')) as Record<string, string>
const holes = (template: string) => [...template.matchAll(/\{\d\}/g)].map(([hole]) => hole).sort()

interface Literal {
  readonly text: string
  /** Whether it goes through the bundles of the editor. */
  readonly isSaid: boolean
}

const literals = readdirSync('client/src').flatMap((name) => literalsIn(readFileSync(`client/src/${name}`, 'utf8')))
const said = new Set(literals.filter(({ isSaid }) => isSaid).map(({ text }) => text))

/** Texts of the source, with {} where something is put in; types and imports are none. */
function literalsIn(source: string): readonly Literal[] {
  const found: Literal[] = []
  const visit = (node: ts.Node, isSaid: boolean): void => {
    if (ts.isImportDeclaration(node) || ts.isLiteralTypeNode(node)) return
    if (ts.isStringLiteralLike(node)) found.push({ text: node.text, isSaid })
    if (ts.isTemplateExpression(node))
      found.push({
        text: [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('{}'),
        isSaid,
      })
    const isCall = ts.isCallExpression(node) && node.expression.getText().endsWith('l10n.t')
    ts.forEachChild(node, (child) => visit(child, isCall && child === node.arguments[0]))
  }
  const file = ts.createSourceFile('source.ts', source, ts.ScriptTarget.Latest, true)
  visit(file, false)
  return found
}

describe.each(['de', 'es'])('%s', (language) => {
  const bundle = read(`client/l10n/bundle.l10n.${language}.json`)

  test('every text of the extension has a translation, and no translation is left over', () => {
    expect(said.size).toBeGreaterThan(80)
    expect([...said].filter((text) => !Object.hasOwn(bundle, text))).toEqual([])
    expect(Object.keys(bundle).filter((text) => !said.has(text))).toEqual([])
  })

  test('what goes into a text goes into its translation', () => {
    const unlike = Object.entries(bundle).filter(([text, own]) => holes(text).join() !== holes(own).join())
    expect(unlike).toEqual([])
  })
})

test('whatever else is a text in the extension is no sentence', () => {
  const sentence = /^[A-Z]?[a-z]+ [a-z]+ |^[A-Z][a-z]+ .*[.?]$/
  const names = [
    'the language server failed: {}', // for the console
    'the language server is not watched:',
    'it has {0} MiB, and a record has a few KiB', // said by the server
    'it is no regular file',
  ]
  const left = literals.filter(({ text, isSaid }) => !isSaid && sentence.test(text)).map(({ text }) => text)
  expect(left.filter((text) => !names.includes(text))).toEqual([])
})
