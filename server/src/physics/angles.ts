export const radians = (degrees: number) => (degrees * Math.PI) / 180
export const degrees = (angle: number) => (angle * 180) / Math.PI
export const clamp = (x: number, low: number, high: number) => Math.min(high, Math.max(low, x))
