/**
 * Cell temperature by the exponential model of measured modules.
 *
 *     Tmodule = G exp(a + b v) + Tair,  Tcell = Tmodule + G/1000 dT
 *
 * Holds for steady sun; the wind is that at 10 m height.
 *
 * @param air         air temperature [°C]
 * @param irradiance  G, in the module's plane [W/m2]
 * @param wind        v, at 10 m height [m/s]
 * @param c           coefficients of construction and mounting, see `sandiaCoefficients`
 * @returns           cell temperature [°C]
 * @source D. L. King, W. E. Boyson, J. A. Kratochvil, "Photovoltaic array performance model", SAND2004-3535, eqs. 11 and 12
 */
export function sandiaCellTemperature(air: number, irradiance: number, wind: number, c: SandiaCoefficients): number {
  return irradiance * Math.exp(c.a + c.b * wind) + air + (irradiance / 1000) * c.dT
}

export interface SandiaCoefficients {
  readonly a: number
  /** [s/m] */
  readonly b: number
  /** Cell above back surface at 1000 W/m2 [K]. */
  readonly dT: number
}

/** Published coefficients by construction and mounting. @source SAND2004-3535, table of section "temperature" (number from memory) */
export const sandiaCoefficients = {
  'glass/cell/glass, open rack': { a: -3.47, b: -0.0594, dT: 3 },
  'glass/cell/glass, close roof mount': { a: -2.98, b: -0.0471, dT: 1 },
  'glass/cell/polymer, open rack': { a: -3.56, b: -0.075, dT: 3 },
  'glass/cell/polymer, insulated back': { a: -2.81, b: -0.0455, dT: 0 },
  'polymer/thin film/steel, open rack': { a: -3.58, b: -0.113, dT: 3 },
} as const satisfies Record<string, SandiaCoefficients>

/**
 * Module temperature by a linear heat balance with the wind.
 *
 *     Tmodule = Tair + G / (u0 + u1 v)
 *
 * @param air         air temperature [°C]
 * @param irradiance  G, in the module's plane [W/m2]
 * @param wind        v, at the module [m/s]
 * @param u0          constant heat loss [W/m2 K]; 25.0 for seven crystalline modules on an open rack
 * @param u1          heat loss with the wind [W s/m3 K]; 6.84 for the same
 * @returns           module temperature [°C]
 * @source D. Faiman, "Assessing the outdoor operating temperature of photovoltaic modules",
 *         Progress in Photovoltaics 16 (2008) 307-315
 */
export function faimanTemperature(air: number, irradiance: number, wind: number, u0: number, u1: number): number {
  return air + irradiance / (u0 + u1 * wind)
}

/**
 * Cell temperature from NOCT, less what leaves as electricity, with the wind.
 *
 *     Tcell = Tair + G/800 (NOCT - 20) (1 - efficiency/0.9) 9.5/(5.7 + 3.8 v)
 *
 * @param air         air temperature [°C]
 * @param irradiance  G, in the module's plane [W/m2]
 * @param wind        v, at the module [m/s]
 * @param noct        nominal operating cell temperature [°C]
 * @param efficiency  of the module [1]
 * @returns           cell temperature [°C]
 * @source J. A. Duffie, W. A. Beckman, Solar Engineering of Thermal Processes, 4th ed. (2013), section 23.3 (number from memory)
 */
export function noctCellTemperature(
  air: number,
  irradiance: number,
  wind: number,
  noct: number,
  efficiency: number,
): number {
  return air + (irradiance / 800) * (noct - 20) * (1 - efficiency / 0.9) * (9.5 / (5.7 + 3.8 * wind))
}
