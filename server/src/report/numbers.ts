/** A figure without decimals. */
export const whole = (value: number): string => String(Math.round(value))

/** With one decimal, for volts and amperes. */
export const tenths = (value: number): string => value.toFixed(1)
