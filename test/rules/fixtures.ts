import { readFileSync, readdirSync } from 'node:fs'

/** One YAML example of a rule's page. */
export interface Example {
  readonly rule: string
  readonly title: string
  /** panel unless the fence says another: ```yaml controller */
  readonly kind: string
  /** Other records of the library follow after `---`: of the same family, or those that `# name` in their first line names. */
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

/** The files of an example, that which is looked at first. */
export function filesOf({ kind, yaml }: Example): readonly { readonly path: string; readonly text: string }[] {
  return yaml.split(/^---\n/m).map((text, i) => {
    const [, name] = /^# (\S+[.]yaml)\n/.exec(text) ?? []
    return { path: name ?? (i === 0 ? `example.${kind}.yaml` : `other-${i}.panel.yaml`), text }
  })
}
