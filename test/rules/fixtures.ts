import { readFileSync, readdirSync } from 'node:fs'

/** One YAML example of a rule's page. */
export interface Example {
  readonly rule: string
  readonly title: string
  /** panel unless the fence says another: ```yaml controller */
  readonly kind: string
  /** Records of the same family follow behind `---`. */
  readonly yaml: string
}

const folder = new URL('.', import.meta.url)
const section = /^## (.+)\n[\s\S]*?```yaml ?(\w*)\n([\s\S]*?)```/gm

/** All examples of all rule pages beside this file. */
export const examples: readonly Example[] = readdirSync(folder)
  .filter((name) => name.endsWith('.md'))
  .flatMap((name) => {
    const page = readFileSync(new URL(name, folder), 'utf8')
    return [...page.matchAll(section)].map(([, title, kind, yaml]) => ({
      rule: name.slice(0, -3),
      title: title ?? '',
      kind: kind || 'panel',
      yaml: yaml ?? '',
    }))
  })
