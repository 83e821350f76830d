/** Inverse of a symmetric positive matrix and half the logarithm of its determinant, by Cholesky's factors. */
export function invert(matrix: readonly Float64Array[]): { inverse: Float64Array[]; halfLogDet: number } {
  const n = matrix.length
  const low = matrix.map((row) => Float64Array.from(row))
  let halfLogDet = 0
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = low[i]![j]!
      for (let k = 0; k < j; k++) sum -= low[i]![k]! * low[j]![k]!
      low[i]![j] = i === j ? Math.sqrt(sum) : sum / low[j]![j]!
    }
    halfLogDet += Math.log(low[i]![i]!)
  }
  const inverse = matrix.map((_, column) => solve(low, column))
  return { inverse, halfLogDet }
}

function solve(low: readonly Float64Array[], column: number): Float64Array {
  const n = low.length
  const x = new Float64Array(n)
  for (let i = 0; i < n; i++) {
    let sum = i === column ? 1 : 0
    for (let k = 0; k < i; k++) sum -= low[i]![k]! * x[k]!
    x[i] = sum / low[i]![i]!
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i]!
    for (let k = i + 1; k < n; k++) sum -= low[k]![i]! * x[k]!
    x[i] = sum / low[i]![i]!
  }
  return x
}
