import { readFile } from '../../server/src/records/read.ts'
import type { ReadFile } from '../../server/src/records/read-file.ts'
import { panelValues } from '../../server/src/values/panel-values.ts'
import { siteOf, type Site } from '../../server/src/values/site.ts'
import type { Value } from '../../server/src/values/value.ts'

/** The values of a panel typed as YAML, by id. */
export function valuesOf(yaml: string, site: Site = siteOf(undefined)): ReadonlyMap<string, Value> {
  const { record } = readFile('a.panel.yaml', yaml) as ReadFile<'panel'>
  return new Map(panelValues(record, site).map((value) => [value.id, value]))
}
