import { build } from 'esbuild'
import { existsSync, readFileSync } from 'node:fs'

/** The field reference: every field of every record, from the schemas. */
export function fieldReference(tables) {
  const out = ['<!-- Generated from the schemas by `npm run generate`; do not edit. -->', '# Fields of the records', '']
  for (const [kind, table] of Object.entries(tables)) {
    out.push(`## ${table.title}`, '', table.description, '', '| field | what it is | example |', '|---|---|---|')
    rows(table.fields, '')
    out.push('')
    function rows(fields, prefix) {
      for (const f of fields) {
        const path = prefix + f.key + (f.type === 'list' ? '[]' : '')
        const must = f.required ? ' **required**' : ''
        const choices = f.choices
          ? ` One of ${f.choices.map((c) => `\`${c.value}\` (${c.description})`).join(', ')}.`
          : ''
        const unit = f.unit ? ` A bare number is in ${f.unit}.` : ''
        out.push(
          `| \`${path}\`${must} | ${f.description}${choices}${unit} | ${(f.examples ?? []).map((e) => `\`${e}\``).join(', ')} |`,
        )
        if (f.type === 'group') rows(f.fields, `${path}.`)
        if (f.type === 'list' && f.item.type === 'group') rows(f.item.fields, `${path}.`)
      }
    }
  }
  return out.join('\n')
}

/** The rule reference: the facts of each rule and its fixture. */
export async function ruleReference() {
  const facts = await allFacts()
  const out = [
    '<!-- Generated from the rules and their fixtures by `npm run generate`; do not edit. -->',
    '# Rules',
    '',
  ]
  for (const { title, rules } of facts) {
    out.push(`## ${title}`, '')
    for (const r of [...rules].sort((a, b) => a.id.localeCompare(b.id))) {
      out.push(`### ${r.id}`, '', `Severity: ${r.severity}. ${r.reason}`, '', `Source: ${r.source}.`, '')
      const fixture = `test/rules/${r.id}.md`
      if (existsSync(fixture))
        out.push(
          readFileSync(fixture, 'utf8')
            .replace(/^#.*\n+/, '')
            .replace(/^##/gm, '####')
            .trim(),
          '',
        )
    }
  }
  return out.join('\n')
}

async function allFacts() {
  const bundle = await build({
    entryPoints: ['server/src/check/facts.ts'],
    bundle: true,
    format: 'esm',
    write: false,
    logLevel: 'silent',
  })
  const module = await import(
    `data:text/javascript;base64,${Buffer.from(bundle.outputFiles[0].text).toString('base64')}`
  )
  return module.allFacts
}
