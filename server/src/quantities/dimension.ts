/** What a number may measure. The value of a quantity is in the unit behind each name. */
export const baseUnits = {
  power: 'W',
  voltage: 'V',
  current: 'A',
  length: 'm',
  area: 'm2', // conductor sizes too: 6 mm2 is 6e-6, AWG sizes are read as their area
  mass: 'kg',
  ratio: '1',
  temperature: 'degC',
  'per-kelvin': '1/K',
  'power-per-kelvin': 'W/K',
  'voltage-per-kelvin': 'V/K',
  'current-per-kelvin': 'A/K',
  money: '', // the unit is the currency's ISO 4217 code
  duration: 's',
  angle: 'deg',
  charge: 'Ah',
  energy: 'Wh',
  irradiation: 'kWh/m2',
  irradiance: 'W/m2',
  resistance: 'ohm',
} as const

export type Dimension = keyof typeof baseUnits
