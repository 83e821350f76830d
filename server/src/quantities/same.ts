/** Values are read from text, so that equal ones may differ in the last bits. */
export const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-7 * Math.abs(b)
