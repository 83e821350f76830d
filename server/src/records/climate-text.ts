import type { ClimateOfWeather } from './epw.ts'
import { spelledScalar } from '../text/spelling.ts'
import type { Bundle } from '../wording/bundle.ts'
import { sayIn } from '../wording/phrase.ts'

/** A climate record as text, ready to be written to a `.climate.yaml` file. `source` says where the numbers come from. */
export function climateText(
  climate: Omit<ClimateOfWeather, 'longitude' | 'hours'> & { readonly longitude?: number },
  source: string,
  comments: readonly string[] = [],
  bundle?: Bundle,
): string {
  const list = (values: readonly number[], decimals: number) => `[${values.map((v) => round(v, decimals)).join(', ')}]`
  return [
    ...comments.map((line) => `# ${line}`),
    'format: 1',
    `name: ${spelledScalar(climate.name, 'plain', false)}`,
    `latitude: ${round(climate.latitude, 2)} deg`,
    ...(climate.longitude === undefined ? [] : [`longitude: ${round(climate.longitude, 2)} deg`]),
    `sun: ${list(climate.sun, 2)} # ${sayIn(bundle)`kWh/m2 a day on the horizontal, January first`}`,
    'air:',
    `  mean_high: ${list(climate.meanHigh, 1)} # °C`,
    `  mean_low: ${list(climate.meanLow, 1)}`,
    `  coldest: ${round(climate.coldest, 1)} °C`,
    `  hottest: ${round(climate.hottest, 1)} °C`,
    `source: ${spelledScalar(source, 'plain', false)}`,
    '',
  ].join('\n')
}

const round = (value: number, decimals: number) => String(Number(value.toFixed(decimals)))
