export const round = (v, digits) => Number(v.toPrecision(digits))
