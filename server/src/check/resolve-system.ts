import type { Library } from '../library/library.ts'
import type { ReadFile } from '../records/read-file.ts'
import type { RecordTypes, Reference } from '../records/records.generated.ts'
import type { ResolvedArray, ResolvedSystem, SiteTemperature, Used } from '../review/resolved.ts'
import { siteOf } from '../values/site.ts'

/** Years of weather that a review is made from: as many as make the figures steady to a tenth or two. */
export const manyYears = 11

/** A system with the records that it names. What cannot be found stays absent; `referenceFindings` tell of it. */
export function resolveSystem(library: Library, file: ReadFile<'system'>, years = manyYears): ResolvedSystem {
  const system = file.record
  const settings = library.settings(file.path)?.record
  const climate = find('climate', system.site.climate) ?? settingsClimate()
  const battery = find('battery', system.battery.battery)
  const assumed = siteOf(undefined)
  return {
    id: file.id,
    system,
    arrays: system.arrays.map(array),
    ...(battery && { battery }),
    ...(climate && { climate }),
    years,
    coldest: temperature('coldest'),
    hottest: temperature('hottest'),
  }

  function array(entry: ResolvedArray['entry']): ResolvedArray {
    const controller = find('controller', entry.controller)
    const panels = entry.panels.map((one) => {
      const panel = find('panel', one.panel)
      const surface = system.surfaces.find(({ id }) => id !== undefined && id.value === one.surface?.value)
      return { entry: one, ...(panel && { panel }), ...(surface && { surface }) }
    })
    return { entry, panels, ...(controller && { controller }) }
  }

  function find<K extends keyof RecordTypes>(
    kind: K,
    { id, inline }: Reference<RecordTypes[K]>,
  ): Used<RecordTypes[K]> | undefined {
    if (inline) return { record: inline, path: null }
    const files = id ? library.byId(kind, id.value, file.path) : []
    return files.length === 1 ? { record: files[0]!.record, path: files[0]!.path } : undefined
  }

  function settingsClimate() {
    const id = settings?.site.climate
    return id && !system.site.climate.id ? find('climate', { id }) : undefined
  }

  function temperature(which: 'coldest' | 'hottest'): SiteTemperature {
    const own = system.site[which]
    if (own) return { value: own.value, from: 'system' }
    const records = climate?.record.air[which]
    if (records) return { value: records.value, from: 'climate' }
    const setting = settings?.site[which]
    return setting ? { value: setting.value, from: 'settings' } : { value: assumed[which], from: 'assumed' }
  }
}
