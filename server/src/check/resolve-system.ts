import type { Library } from '../library/library.ts'
import type { ReadFile } from '../records/read-file.ts'
import { weatherPath } from '../records/weather-file.ts'
import type { RecordTypes, Reference } from '../records/records.generated.ts'
import { inWatts } from '../review/in-watts.ts'
import { chargeVoltage } from '../values/chemistry.ts'
import type { ResolvedArray, ResolvedMeasurement, ResolvedSystem, SiteTemperature, Used } from '../review/resolved.ts'
import { siteOf } from '../values/site.ts'

/** Years of weather that a review is made from: as many as make the figures steady to a tenth or two. */
export const manyYears = 11

/** A system with the records that it names. What cannot be found stays absent; `referenceFindings` report it. */
export function resolveSystem(library: Library, file: ReadFile<'system'>, years = manyYears): ResolvedSystem {
  const typed = file.record
  const settings = library.settings(file.path)?.record
  const climate = find('climate', typed.site.climate) ?? settingsClimate()
  const hours = climate?.record.hourly && weatherPath(climate.path ?? file.path, climate.record.hourly.value)
  const weather = hours ? library.weather(hours) : undefined
  const battery = find('battery', typed.battery.battery)
  const series = Math.max(1, typed.battery.in_series?.value ?? 1)
  const nominal = battery?.record.nominal_voltage?.value
  const charging = battery && (chargeVoltage(battery.record) ?? nominal)
  const system = inWatts(typed, nominal ? nominal * series : null, charging ? charging * series : null)
  const assumed = siteOf(undefined)
  const arrays = system.arrays.map(array)
  return {
    id: file.id,
    system,
    arrays,
    measurements: system.measurements.map(measurement),
    ...(settings && { measuring: settings.measurements }),
    ...(battery && { battery }),
    ...(climate && { climate }),
    ...(settings?.practice && { practice: settings.practice.value }),
    ...(weather && typeof weather !== 'string' && { weather }),
    years,
    coldest: temperature('coldest'),
    hottest: temperature('hottest'),
  }

  function array(entry: ResolvedArray['entry']): ResolvedArray {
    const other = system.arrays.find(({ id }) => id !== undefined && id.value === entry.shares_controller_with?.value)
    const shares = other !== undefined && other !== entry
    const controller = find('controller', (shares ? other : entry).controller)
    const panels = entry.panels.map((one) => {
      const panel = find('panel', one.panel)
      const surface = system.surfaces.find(({ id }) => id !== undefined && id.value === one.surface?.value)
      return { entry: one, ...(panel && { panel }), ...(surface && { surface }) }
    })
    return { entry, panels, ...(controller && { controller }), ...(shares && { shares }) }
  }

  function measurement(entry: ResolvedMeasurement['entry']): ResolvedMeasurement {
    const named = entry.array?.value
    const only = arrays.length === 1 && named === undefined ? arrays[0] : undefined
    const on = only ?? arrays.find(({ entry: { id } }) => id !== undefined && id.value === named)
    const reference = find('panel', entry.reference.panel)
    return { entry, ...(on && { array: on }), ...(reference && { reference }) }
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
    return id && !typed.site.climate.id ? find('climate', { id }) : undefined
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
