/** Whether a value lies in a closed band. */
export const inside = (value: number, [low, high]: readonly [number, number]): boolean => low <= value && value <= high

/** A number for a message: three digits, no exponent. */
export const short = (value: number): string => String(Number(value.toPrecision(3)))
