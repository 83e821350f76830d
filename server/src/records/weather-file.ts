/** A year of hourly weather as a file has it, hours of standard time in order from 1 January. */
export interface WeatherFile {
  /** [°], north and east positive */
  readonly latitude: number
  readonly longitude: number
  /** Hours before Greenwich. */
  readonly zone: number
  /** 0 January to 11 December, by hour. */
  readonly month: readonly number[]
  /** Global and diffuse sun on the horizontal, beam across its rays [Wh/m2]; air [°C]. */
  readonly global: readonly number[]
  readonly diffuse: readonly number[]
  readonly normal: readonly number[]
  readonly air: readonly number[]
}

/** Columns of the data lines, and the values that stand for none. */
const columns = { month: 1, air: 6, global: 13, normal: 14, diffuse: 15 } as const
const noAir = 99.9
const noSun = 9999

/**
 * Reads hourly weather in EPW format: eight header lines, the first with the place, then a line an hour.
 *
 * @returns the weather, or what is wrong with the file in words that follow its name
 * @source file format of the EnergyPlus weather converter, as described in its auxiliary programs manual
 */
export function readWeather(text: string): WeatherFile | string {
  const lines = text.split(/\r?\n/)
  const place = lines[0]?.split(',') ?? []
  if (place[0]?.trim().toUpperCase() !== 'LOCATION')
    return 'is no EPW file: its first line does not begin with LOCATION'
  const [latitude = NaN, longitude = NaN, zone = NaN] = place.slice(6, 9).map(numberOf)
  if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180 && Math.abs(zone) <= 14))
    return 'names no latitude, longitude and time zone in its first line'
  const year = {
    month: [] as number[],
    air: [] as number[],
    global: [] as number[],
    normal: [] as number[],
    diffuse: [] as number[],
  }
  for (const [i, line] of lines.slice(8).entries()) {
    if (line.trim() === '') continue
    const cells = line.split(',')
    const row = Object.entries(columns).map(([name, at]) => [name, numberOf(cells[at])] as const)
    if (row.some(([name, value]) => !isPlausible(name as keyof typeof columns, value)))
      return `has no month, air or sun in line ${i + 9} that can be used`
    for (const [name, value] of row) year[name as keyof typeof columns].push(name === 'month' ? value - 1 : value)
  }
  const hours = year.month.length
  if (hours !== 8760 && hours !== 8784) return `has ${hours} hours, where a year has 8760`
  return { latitude, longitude, zone, ...year }
}

const numberOf = (text: string | undefined) => (text === undefined || text.trim() === '' ? NaN : Number(text))

function isPlausible(name: keyof typeof columns, value: number): boolean {
  if (name === 'month') return Number.isInteger(value) && 1 <= value && value <= 12
  if (name === 'air') return -90 <= value && value < noAir
  return 0 <= value && value < noSun
}

/** The path of the file that a climate names, beside or below its record; null where it would lie elsewhere. */
export function weatherPath(record: string, name: string): string | null {
  if (!/\.epw$/i.test(name) || /^[/\\]|^[a-z]+:|(^|[/\\])\.\.([/\\]|$)/i.test(name)) return null
  return record.slice(0, Math.max(record.lastIndexOf('/'), record.lastIndexOf('\\')) + 1) + name.replace(/^\.\//, '')
}

/** The files of hourly weather that the text of a climate or a system names: read from the text, as they are wanted before it is read. */
export function weatherNamedIn(path: string, text: string): readonly string[] {
  if (!/\.(climate|system)\.(ya?ml|json)$/i.test(path)) return []
  const names = [...text.matchAll(/["']?\bhourly["']?\s*:\s*(?:"([^"\n]+)"|'([^'\n]+)'|([^\s#,}]+))/g)]
  return names.flatMap(([, double, single, plain]) => weatherPath(path, (double ?? single ?? plain)!) ?? [])
}
