import type { Dimension } from './dimension.ts'

/** `base = (number - offset) x factor / divisor`; two whole numbers, so that a conversion rounds once. */
export interface Unit {
  readonly symbol: string
  readonly dimension: Dimension
  readonly factor: number
  readonly divisor: number
  readonly offset: number
}

/**
 * Every unit that a record may carry, by each of its spellings, blanks taken out. All factors are exact.
 *
 * @source NIST Special Publication 811 (2008), appendix B; a year is its "year (365 days)", a month a twelfth of that
 */
export const units: ReadonlyMap<string, Unit> = new Map(rows().flatMap(spelt))

/** The unit behind a spelling. */
export const findUnit = (spelling: string): Unit | undefined => units.get(spelling)

type Row = readonly [dimension: Dimension, spellings: string, factor?: number, divisor?: number, offset?: number]

function spelt([dimension, spellings, factor = 1, divisor = 1, offset = 0]: Row): [string, Unit][] {
  const names = spellings.split(' ')
  const unit = { symbol: names[0]!, dimension, factor, divisor, offset }
  return names.map((name) => [name, unit])
}

/** The first spelling is the usual symbol. */
function rows(): Row[] {
  return [
    ['power', 'W Wp watt watts Wpeak Watt Watts'],
    ['power', 'kW kWp kilowatt kilowatts', 1000],
    ['power', 'mW milliwatt milliwatts', 1, 1000],
    ['power', 'MW MWp megawatt megawatts', 1e6],
    ['voltage', 'V Vdc VDC volt volts Volt Volts'],
    ['voltage', 'mV mVdc millivolt millivolts', 1, 1000],
    ['voltage', 'kV kVdc kilovolt kilovolts', 1000],
    ['current', 'A Adc ADC amp amps ampere amperes'],
    ['current', 'mA milliamp milliamps', 1, 1000],
    ['current', 'kA', 1000],
    ['length', 'm meter meters metre metres', 1],
    ['length', 'mm millimeter millimeters millimetre millimetres', 1, 1000],
    ['length', 'cm centimeter centimeters centimetre centimetres', 1, 100],
    ['length', 'km', 1000],
    ['length', `in inch inches " ''`, 254, 10000],
    ['length', `ft foot feet '`, 3048, 10000],
    ['area', 'm2 sqm'],
    ['area', 'cm2 sqcm', 1, 1e4],
    ['area', 'mm2 sqmm qmm', 1, 1e6],
    ['area', 'in2 sqin', 64516, 1e8],
    ['area', 'ft2 sqft', 9290304, 1e8],
    ['area', 'kcmil MCM', Math.PI * 64516, 4e11], // a thousand circles of 0.001 in
    ['mass', 'kg kgs kilogram kilograms kilo'],
    ['mass', 'g gram grams gr', 1, 1000],
    ['mass', 't tonne tonnes', 1000],
    ['mass', 'lb lbs pound pounds lbm', 45359237, 1e8],
    ['mass', 'oz ounce ounces', 45359237, 16e8],
    ['ratio', '1 fraction'],
    ['ratio', '% percent pct', 1, 100],
    ['ratio', '‰', 1, 1000],
    ['ratio', 'ppm', 1, 1e6],
    ['temperature', '°C degC C C° deg.C oC celsius'],
    ['temperature', '°F degF F F° deg.F fahrenheit', 5, 9, 32],
    ['temperature', 'K kelvin °K degK', 1, 1, 273.15],
    ...coefficients(),
    ['duration', 's sec secs second seconds'],
    ['duration', 'min mins minute minutes', 60],
    ['duration', 'h hr hrs hour hours', 3600],
    ['duration', 'days d day', 86400],
    ['duration', 'weeks wk wks week', 604800],
    ['duration', 'months mo mos month', 2628000],
    ['duration', 'years yr yrs year y a', 31536000],
    ['angle', 'deg ° degree degrees'],
    ['angle', 'rad radian radians', 180 / Math.PI],
    ['charge', 'Ah A·h Amp-hour amp-hours'],
    ['charge', 'mAh', 1, 1000],
    ['charge', 'kAh', 1000],
    ['energy', 'Wh W·h'],
    ['energy', 'kWh', 1000],
    ['energy', 'MWh', 1e6],
    ['energy', 'J joule joules', 1, 3600],
    ['energy', 'kJ', 1000, 3600],
    ['energy', 'MJ', 1e6, 3600],
    ['irradiation', 'kWh/m2 kWh/m2/day kWh/m2/d'],
    ['irradiation', 'Wh/m2 Wh/m2/day Wh/m2/d', 1, 1000],
    ['irradiation', 'kJ/m2 kJ/m2/day kJ/m2/d', 1, 3600],
    ['irradiation', 'MJ/m2 MJ/m2/day MJ/m2/d', 1000, 3600],
    ['irradiance', 'W/m2 W/sqm'],
    ['irradiance', 'kW/m2 kW/sqm', 1000],
    ['irradiance', 'mW/cm2', 10],
    ['resistance', 'ohm Ω ohms'],
    ['resistance', 'mohm mΩ milliohm milliohms', 1, 1000],
    ['resistance', 'kohm kΩ', 1000],
  ]
}

/** Change per degree: a numerator over K, °C or °F (a fahrenheit is 5/9 K). */
function coefficients(): Row[] {
  const over: [string, string, number, number][] = [
    ['per-kelvin', '%', 1, 100],
    ['per-kelvin', 'ppm', 1, 1e6],
    ['per-kelvin', '1', 1, 1],
    ['per-kelvin', '‰', 1, 1000],
    ['power-per-kelvin', 'W', 1, 1],
    ['power-per-kelvin', 'mW', 1, 1000],
    ['voltage-per-kelvin', 'V', 1, 1],
    ['voltage-per-kelvin', 'mV', 1, 1000],
    ['current-per-kelvin', 'A', 1, 1],
    ['current-per-kelvin', 'mA', 1, 1000],
  ]
  const degrees: [string, number, number][] = [
    ['K kelvin °K', 1, 1],
    ['°C C degC deg.C C° oC ° deg', 1, 1],
    ['°F F degF deg.F F°', 9, 5],
  ]
  return over.flatMap(([dimension, top, factor, divisor]) =>
    degrees.map(([bottom, times, by]): Row => {
      const tops = top === '1' ? ['1', ''] : top === '%' ? ['%', 'percent', 'pct'] : [top]
      const spellings = tops.flatMap((t) => bottom.split(' ').map((b) => `${t}/${b}`))
      return [dimension as Dimension, spellings.join(' '), factor * times, divisor * by]
    }),
  )
}
