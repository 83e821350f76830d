/** Boltzmann constant over the elementary charge [V/K]. @source SI brochure, 9th edition (2019), exact values */
export const boltzmannVolt = 1.380649e-23 / 1.602176634e-19

/** Standard test conditions: irradiance [W/m2] and cell temperature [K]. @source IEC 60904-3, IEC 61215 (from memory) */
export const stcIrradiance = 1000
export const stcKelvin = 298.15

/** 0 °C in kelvin. */
export const zeroCelsius = 273.15
