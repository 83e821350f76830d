import { expect, test } from 'vitest'
import type { QuantityKind } from '../../server/src/quantities/quantity.ts'
import { readQuantity } from '../../server/src/quantities/read.ts'
import { phraseInWords } from '../../server/src/wording/phrase.ts'

// every spelling of every unit, and what 1 of it is in the base unit of its kind
// source: NIST Special Publication 811 (2008), appendix B; BIPM, The International System of Units, 9th edition
const spellings: readonly (readonly [QuantityKind, number, string])[] = [
  ['power', 1, 'W,Wp,watt,watts,Wpeak'],
  ['power', 1000, 'kW,kWp,kilowatt,kilowatts'],
  ['power', 1e-3, 'mW,milliwatt,milliwatts'],
  ['power', 1e6, 'MW,MWp,megawatt,megawatts'],
  ['voltage', 1, 'V,Vdc,VDC,volt,volts'],
  ['voltage', 1e-3, 'mV,mVdc,millivolt,millivolts'],
  ['voltage', 1000, 'kV,kVdc,kilovolt,kilovolts'],
  ['current', 1, 'A,Adc,ADC,amp,amps,ampere,amperes'],
  ['current', 1e-3, 'mA,milliamp,milliamps'],
  ['current', 1000, 'kA'],
  ['length', 1, 'm,meter,meters,metre,metres'],
  ['length', 1e-3, 'mm,millimeter,millimetres'],
  ['length', 0.01, 'cm,centimeter,centimetres'],
  ['length', 1000, 'km'],
  ['length', 0.0254, 'in,inch,inches,"'],
  ['length', 0.3048, "ft,foot,feet,'"],
  ['area', 1, 'm2,sqm'],
  ['area', 1e-4, 'cm2,sqcm'],
  ['area', 1e-6, 'mm2,sqmm,qmm'],
  ['area', 6.4516e-4, 'in2,sqin'],
  ['area', 0.09290304, 'ft2,sqft'],
  ['area', 5.067074790974977e-7, 'kcmil,MCM'],
  ['mass', 1, 'kg,kgs,kilogram,kilograms'],
  ['mass', 1e-3, 'g,gram,grams'],
  ['mass', 1000, 't,tonne,tonnes'],
  ['mass', 0.45359237, 'lb,lbs,pound,pounds,lbm'],
  ['mass', 0.028349523125, 'oz,ounce,ounces'],
  ['ratio', 0.01, '%,percent,pct'],
  ['ratio', 1e-3, '‰'],
  ['ratio', 1e-6, 'ppm'],
  ['temperature', 1, '°C,degC,C'],
  ['temperature', (1 - 32) / 1.8, '°F,degF,F'],
  ['temperature', 1 - 273.15, 'K,kelvin'],
  ['power-coefficient', 0.01, '%/°C,%/K,percent/°C,pct/K'],
  ['power-coefficient', 0.018, '%/°F,%/F,%/degF'],
  ['power-coefficient', 1, 'W/K,W/°C'],
  ['voltage-coefficient', 1e-3, 'mV/K,mV/°C'],
  ['current-coefficient', 1e-3, 'mA/K,mA/°C'],
  ['duration', 1, 's,sec,secs,second,seconds'],
  ['duration', 60, 'min,mins,minute,minutes'],
  ['duration', 3600, 'h,hr,hrs,hour,hours'],
  ['duration', 86400, 'd,day,days'],
  ['duration', 604800, 'wk,wks,week,weeks'],
  ['duration', 2628000, 'mo,mos,month,months'],
  ['duration', 31536000, 'yr,yrs,year,years,y,a'],
  ['angle', 1, 'deg,°,degree,degrees'],
  ['angle', 180 / Math.PI, 'rad,radian,radians'],
  ['charge', 1, 'Ah,A·h'],
  ['charge', 1e-3, 'mAh'],
  ['charge', 1000, 'kAh'],
  ['energy', 1, 'Wh,W·h'],
  ['energy', 1000, 'kWh'],
  ['energy', 1e6, 'MWh'],
  ['energy', 1 / 3600, 'J,joule,joules'],
  ['energy', 1 / 3.6, 'kJ'],
  ['energy', 1e3 / 3.6, 'MJ'],
  ['irradiation', 1, 'kWh/m2,kWh/m2/day'],
  ['irradiation', 1e-3, 'Wh/m2'],
  ['irradiation', 1 / 3.6, 'MJ/m2'],
  ['irradiation', 1 / 3600, 'kJ/m2'],
  ['irradiance', 1, 'W/m2,W/sqm'],
  ['irradiance', 1000, 'kW/m2'],
  ['irradiance', 10, 'mW/cm2'],
  ['resistance', 1, 'ohm,Ω,ohms'],
  ['resistance', 1e-3, 'mohm,mΩ,milliohm,milliohms'],
  ['resistance', 1000, 'kohm,kΩ'],
]

test.each(spellings)('%s: 1 is %f in each of %s', (kind, value, units) => {
  const read = units.split(',').map((unit) => [unit, readQuantity(`1 ${unit}`, kind).quantity?.value] as const)
  expect(read.filter(([, one]) => !(Math.abs(one! - value) <= 1e-9 * Math.abs(value)))).toEqual([])
})

test('a share has no unit, or that of a fraction', () => {
  expect(readQuantity('0.17', 'ratio').quantity?.value).toBe(0.17)
})

const expected: readonly (readonly [QuantityKind, string, string])[] = [
  ['power', 'A power', '110 W'],
  ['voltage', 'A voltage', '22.1 V'],
  ['current', 'A current', '6.31 A'],
  ['length', 'A length', '1190 mm'],
  ['area', 'An area', '6 mm2'],
  ['mass', 'A weight', '2.2 kg'],
  ['ratio', 'A share', '17.1 %'],
  ['temperature', 'A temperature', '46 °C'],
  ['money', 'A price', '289 USD'],
  ['duration', 'A time', '2 days'],
  ['angle', 'An angle', '30 deg'],
  ['charge', 'A charge', '100 Ah'],
  ['energy', 'An energy', '1280 Wh'],
  ['irradiation', 'Solar energy per area', '4.8 kWh/m2'],
  ['irradiance', 'An irradiance', '780 W/m2'],
  ['resistance', 'A resistance', '12 mohm'],
  ['power-coefficient', 'A change of power per degree', '-0.38 %/°C'],
  ['voltage-coefficient', 'A change of voltage per degree', '-0.29 %/°C'],
  ['current-coefficient', 'A change of current per degree', '0.05 %/°C'],
  ['temperature-range', 'A temperature range', '-40..85 °C'],
  ['tolerance', 'A tolerance', '0/+5 %'],
]

test.each(expected)('what is no %s is answered with a name and an example, which reads', (kind, name, example) => {
  const { problem } = readQuantity('x'.repeat(400), kind)
  expect(phraseInWords(problem!.message).toLowerCase()).toContain(
    `${name} is expected here, such as ${example}, and this text has 400`.toLowerCase(),
  )
  expect(readQuantity(example, kind).problem).toBeUndefined()
})
