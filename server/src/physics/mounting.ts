/**
 * How much warmer than in the open a module runs at NOCT conditions, by mounting [K]. Open rack none, standoff about 75 mm
 * of air, canvas about 25 mm, bonded none. Canvas has no measurement of its own and is an estimate. Bonded gives a Ross
 * coefficient near 0.055 K m2/W, which the independent 0.0563 for a sloped roof without ventilation supports.
 *
 * @source M. K. Fuentes, "A simplified thermal model for flat-plate photovoltaic arrays", SAND85-0330 (1987);
 *         E. Skoplaki, J. A. Palyvos, Renewable Energy 34 (2009) 23-29
 */
export const installedNoctRise = { 'open rack': 0, standoff: 2, canvas: 11, bonded: 18 } as const

/** NOCT where a sheet gives none [°C]: the median of 3 865 open module ratings. */
export const assumedNoct = 46

/**
 * Ross coefficient of a module as it is mounted.
 *
 *     k = (NOCT + X - 20 °C) / 800 W/m2
 *
 * @param noct  nominal operating cell temperature [°C]
 * @param rise  X, how much warmer than in the open it runs at NOCT conditions [K]
 * @returns     k [K m2/W]
 * @source R. G. Ross, 15th IEEE Photovoltaic Specialists Conference (1981); SAND85-0330 (1987)
 */
export function rossCoefficient(noct: number, rise: number): number {
  return (noct + rise - 20) / 800
}

/**
 * Cell temperature of a module in the sun, by the Ross model, which leaves the wind out.
 *
 *     Tcell = Tair + k G
 *
 * Holds for steady sun and a light wind near 1 m/s, not for the minutes after a cloud.
 *
 * @param air         air temperature [°C]
 * @param irradiance  G, in the module's plane [W/m2], at least 0
 * @param k           Ross coefficient of the mounting [K m2/W]
 * @returns           cell temperature [°C]
 * @source R. G. Ross, 15th IEEE Photovoltaic Specialists Conference (1981)
 */
export function cellTemperature(air: number, irradiance: number, k: number): number {
  return air + k * irradiance
}
