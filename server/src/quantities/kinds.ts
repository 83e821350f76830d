import { currencyCodes } from './currencies.ts'
import type { Dimension } from './dimension.ts'
import type { QuantityKind } from './quantity.ts'

interface KindFacts {
  /** In plain words, for messages: "a voltage". */
  readonly name: string
  readonly dimensions: readonly Dimension[]
  /** Usual units as a datasheet would print them, commonest first. */
  readonly units: readonly string[]
  readonly example: string
}

const relative = ['%/°C', '%/K', '1/K', 'ppm/K', '%/°F']

export const kinds: Readonly<Record<QuantityKind, KindFacts>> = {
  power: one('power', 'a power', ['W', 'kW', 'mW'], '110 W'),
  voltage: one('voltage', 'a voltage', ['V', 'mV', 'kV'], '22.1 V'),
  current: one('current', 'a current', ['A', 'mA'], '6.31 A'),
  length: one('length', 'a length', ['mm', 'cm', 'm', 'in', 'ft'], '1190 mm'),
  area: one('area', 'an area', ['mm2', 'cm2', 'm2', 'AWG', 'in2', 'ft2'], '6 mm2'),
  mass: one('mass', 'a weight', ['kg', 'g', 'lb', 'oz'], '2.2 kg'),
  ratio: one('ratio', 'a share', ['%', 'ppm'], '17.1 %'),
  temperature: one('temperature', 'a temperature', ['°C', '°F', 'K'], '46 °C'),
  money: one('money', 'a price', currencyCodes, '289 USD'),
  duration: one('duration', 'a time', ['years', 'months', 'weeks', 'days', 'h', 'min', 's'], '2 days'),
  angle: one('angle', 'an angle', ['deg', 'rad'], '30 deg'),
  charge: one('charge', 'a charge', ['Ah', 'mAh', 'kAh'], '100 Ah'),
  energy: one('energy', 'an energy', ['Wh', 'kWh', 'MWh', 'kJ', 'MJ', 'J'], '1280 Wh'),
  irradiation: one('irradiation', 'solar energy per area', ['kWh/m2', 'Wh/m2', 'MJ/m2', 'kJ/m2'], '4.8 kWh/m2'),
  irradiance: one('irradiance', 'an irradiance', ['W/m2', 'kW/m2'], '780 W/m2'),
  resistance: one('resistance', 'a resistance', ['mohm', 'ohm', 'kohm'], '12 mohm'),
  'power-coefficient': {
    name: 'a change of power per degree',
    dimensions: ['per-kelvin', 'power-per-kelvin'],
    units: [...relative, 'W/°C', 'W/K', 'mW/K'],
    example: '-0.38 %/°C',
  },
  'voltage-coefficient': {
    name: 'a change of voltage per degree',
    dimensions: ['per-kelvin', 'voltage-per-kelvin'],
    units: [...relative, 'mV/°C', 'mV/K', 'V/°C', 'V/K'],
    example: '-0.29 %/°C',
  },
  'current-coefficient': {
    name: 'a change of current per degree',
    dimensions: ['per-kelvin', 'current-per-kelvin'],
    units: [...relative, 'mA/°C', 'mA/K', 'A/°C', 'A/K'],
    example: '0.05 %/°C',
  },
  'temperature-range': {
    name: 'a temperature range',
    dimensions: ['temperature'],
    units: ['°C', '°F', 'K'],
    example: '-40..85 °C',
  },
  tolerance: { name: 'a tolerance', dimensions: ['ratio', 'power'], units: ['%', 'W'], example: '0/+5 %' },
}

/** Usual units of a kind, in the order that a datasheet would think of them. */
export const unitsFor = (kind: QuantityKind): readonly string[] => kinds[kind].units

/** What a number in a unit of a dimension is, in plain words. */
export const unitNames: Readonly<Record<Dimension, string>> = {
  power: 'a power',
  voltage: 'a voltage',
  current: 'a current',
  length: 'a length',
  area: 'an area',
  mass: 'a weight',
  ratio: 'a plain share',
  temperature: 'a temperature',
  'per-kelvin': 'a relative change per degree',
  'power-per-kelvin': 'a power per degree',
  'voltage-per-kelvin': 'a voltage per degree',
  'current-per-kelvin': 'a current per degree',
  money: 'a currency',
  duration: 'a time',
  angle: 'an angle',
  charge: 'a charge',
  energy: 'an energy',
  irradiation: 'solar energy per area',
  irradiance: 'an irradiance',
  resistance: 'a resistance',
}

function one(dimension: Dimension, name: string, units: readonly string[], example: string): KindFacts {
  return { name, dimensions: [dimension], units, example }
}
