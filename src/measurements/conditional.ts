/**
 * What the other numbers lead one to expect of each: the conditional normal distribution, by a
 * Cholesky factor of our own. With P the inverse of the covariance, the value i given all others
 * has variance 1/P_ii and misses its expectation by (P d)_i / P_ii, d being the deviations from
 * the mean (any textbook on the multivariate normal; from memory).
 */
export type Matrix = readonly (readonly number[])[]

export interface Conditional {
  /** Measured less expected, in the units of the data. */
  readonly residual: number
  /** Standard deviation of the value once all others are known. */
  readonly sd: number
  /** Position of the value that is tied to this one most closely, by partial correlation. */
  readonly closest: number | undefined
}

/** One conditional per value; `covariance` must be symmetric and positive definite. */
export function conditionals(
  covariance: Matrix,
  deviations: readonly number[],
): readonly Conditional[] {
  const precision = inverse(covariance)
  return precision.map((row, i) => {
    const own = at(row, i)
    const pull = row.reduce((sum, weight, j) => sum + weight * at(deviations, j), 0)
    return { residual: pull / own, sd: 1 / Math.sqrt(own), closest: closestTo(precision, i) }
  })
}

function closestTo(precision: Matrix, i: number): number | undefined {
  let [best, strongest] = [undefined as number | undefined, 0]
  for (const [j, weight] of rowOf(precision, i).entries()) {
    const strength = Math.abs(weight) / Math.sqrt(at(rowOf(precision, j), j))
    if (j !== i && strength > strongest) [best, strongest] = [j, strength]
  }
  return best
}

/** Lower triangle L with L Lᵀ = a; throws when `a` is not positive definite. */
export function cholesky(a: Matrix): Matrix {
  const rows: number[][] = []
  for (let i = 0; i < a.length; i++) {
    const row: number[] = []
    rows.push(row)
    for (let j = 0; j <= i; j++) {
      const other = rowOf(rows, j)
      let rest = at(rowOf(a, i), j)
      for (let k = 0; k < j; k++) rest -= at(row, k) * at(other, k)
      if (i === j && !(rest > 0)) throw new Error(`cholesky: pivot ${i} is ${rest}`)
      row.push(i === j ? Math.sqrt(rest) : rest / at(other, j))
    }
  }
  return rows
}

/** Column by column: L y = e, then Lᵀ x = y. The inverse is symmetric, so columns are rows. */
function inverse(a: Matrix): Matrix {
  const lower = cholesky(a)
  return a.map((_, column) => {
    const y: number[] = []
    for (let i = 0; i < a.length; i++) {
      let rest = i === column ? 1 : 0
      for (let k = 0; k < i; k++) rest -= at(rowOf(lower, i), k) * at(y, k)
      y.push(rest / at(rowOf(lower, i), i))
    }
    const x = [...y]
    for (let i = a.length - 1; i >= 0; i--) {
      let rest = at(y, i)
      for (let k = i + 1; k < a.length; k++) rest -= at(rowOf(lower, k), i) * at(x, k)
      x[i] = rest / at(rowOf(lower, i), i)
    }
    return x
  })
}

function rowOf(matrix: Matrix, i: number): readonly number[] {
  const row = matrix[i]
  if (!row) throw new Error(`matrix: no row ${i}`)
  return row
}
function at(values: readonly number[], i: number): number {
  const value = values[i]
  if (value === undefined) throw new Error(`matrix: no value ${i}`)
  return value
}
