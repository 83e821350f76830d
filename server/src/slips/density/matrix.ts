/** Inverse of a symmetric positive n x n matrix, row by row in one array, and half the logarithm of its determinant. */
export function invert(matrix: Float64Array, n: number): { inverse: Float64Array; halfLogDet: number } {
  const low = matrix.slice()
  let halfLogDet = 0
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = low[i * n + j]!
      for (let k = 0; k < j; k++) sum -= low[i * n + k]! * low[j * n + k]!
      if (i === j) {
        low[i * n + i] = Math.sqrt(sum)
        halfLogDet += 0.5 * Math.log(sum)
      } else low[i * n + j] = sum / low[j * n + j]!
    }
  const inverse = new Float64Array(n * n)
  for (let column = 0; column < n; column++) solve(low, n, column, inverse)
  return { inverse, halfLogDet }
}

/** A column of the inverse by Cholesky's factors, stored as a row, as the inverse is symmetric. */
function solve(low: Float64Array, n: number, column: number, inverse: Float64Array): void {
  const at = column * n
  for (let i = column; i < n; i++) {
    let sum = i === column ? 1 : 0
    for (let k = column; k < i; k++) sum -= low[i * n + k]! * inverse[at + k]!
    inverse[at + i] = sum / low[i * n + i]!
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = inverse[at + i]!
    for (let k = i + 1; k < n; k++) sum -= low[k * n + i]! * inverse[at + k]!
    inverse[at + i] = sum / low[i * n + i]!
  }
}
