import { cpSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

const name = '<img src=x onerror=alert(1)></title></style></text></svg><script>alert(2)</script>'
const bidi = '\u202egnp\u202c "><a href=javascript:alert(3)>x</a> | `y` [z](javascript:alert(4))'

/** A system in which everything that can be named is named to break out of its text. Returns its path. */
export function hostile(folder: string): string {
  cpSync('samples/systems', folder, { recursive: true })
  const path = join(folder, 'boat.system.yaml')
  const quoted = (text: string) => JSON.stringify(text)
  const text = readFileSync(path, 'utf8')
    .replace('name: Sailing boat, 10 m', `name: ${quoted(name)}`)
    .replaceAll(/\bbimini\b/g, quoted(`b${bidi}`))
    .replace('name: hatch', `name: ${quoted(`"/><script>alert(5)</script>${bidi}`)}`)
    .replace('name: fridge', `name: ${quoted(`'"><svg onload=alert(6)>`)}`)
    .replace('name: alternator', `name: ${quoted('&lt;b&gt; %%% ${7*7} {{7*7}}')}`)
  writeFileSync(path, text)
  const panel = join(folder, 'panels/puffin-115.panel.yaml')
  const record = readFileSync(panel, 'utf8')
    .replace('name: Puffin 115', `name: ${quoted(`${name}${bidi}`)}`)
    .replace('- drilling', `- ${quoted('</li><script>alert(8)</script>')}`)
  writeFileSync(panel, record)
  return path
}
