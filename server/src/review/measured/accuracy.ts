import type { ResolvedSystem } from '../resolved.ts'

/** How far a measured value may be off before it is doubted, and how well it was measured, as shares at 95 % confidence. */
export interface Accuracy {
  readonly limit: number
  readonly voltage: number
  readonly current: number
  readonly irradiance: number
}

/** 5 % is the usual tolerance of string measurements (IEC 62446-1; from memory); meters: common practice, no source. */
const usual: Accuracy = { limit: 0.05, voltage: 0.01, current: 0.02, irradiance: 0.05 }

/** As the settings of the library say, else as is usual. */
export function accuracyOf({ measuring }: ResolvedSystem): Accuracy {
  const typed = (key: keyof Accuracy) => {
    const value = measuring?.[key]?.value
    return value !== undefined && value > 0 ? value : usual[key]
  }
  return {
    limit: typed('limit'),
    voltage: typed('voltage'),
    current: typed('current'),
    irradiance: typed('irradiance'),
  }
}
