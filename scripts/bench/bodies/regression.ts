/**
 * Several unknown values from several known ones: least squares, with the scatter that is left
 * drawn jointly, because filled-in bodies that all lie on the line would be too well-behaved.
 * Any textbook on the multivariate normal; from memory.
 */
import { cholesky, type Matrix } from '../../../src/measurements/conditional.ts'
import type { Chance } from './chance.ts'

export interface Fit {
  readonly from: readonly number[]
  readonly to: readonly number[]
  /** One row a value to be found, one number a known value. */
  readonly slopes: Matrix
  /** Lower triangle of the covariance of what the line leaves. */
  readonly scatter: Matrix
}

const get = (list: readonly number[] | undefined, i: number): number => {
  const value = list?.[i]
  if (value === undefined) throw new Error(`regression: no value ${i}`)
  return value
}
export const times = (m: Matrix, v: readonly number[]): number[] =>
  m.map((row) => row.reduce((sum, a, i) => sum + a * get(v, i), 0))

export function meanOf(rows: Matrix): number[] {
  const first = rows[0]
  if (!first) throw new Error('regression: no rows')
  return first.map((_, i) => rows.reduce((sum, row) => sum + get(row, i), 0) / rows.length)
}

export function covarianceOf(a: Matrix, b: Matrix): Matrix {
  const [ma, mb] = [meanOf(a), meanOf(b)]
  return ma.map((_, i) =>
    mb.map((_, j) => {
      const sum = a.reduce(
        (s, row, k) => s + (get(row, i) - get(ma, i)) * (get(b[k], j) - get(mb, j)),
        0,
      )
      return sum / (a.length - 1)
    }),
  )
}

/** Solves L Lᵀ x = y. */
function solve(lower: Matrix, y: readonly number[]): number[] {
  const x: number[] = []
  for (const [i, row] of lower.entries()) {
    const rest = x.reduce((sum, value, k) => sum - get(row, k) * value, get(y, i))
    x.push(rest / get(row, i))
  }
  for (let i = x.length - 1; i >= 0; i--) {
    let rest = get(x, i)
    for (let k = i + 1; k < x.length; k++) rest -= get(lower[k], i) * get(x, k)
    x[i] = rest / get(lower[i], i)
  }
  return x
}

/** `known` and `wanted`: one row a woman, in the same order. */
export function fit(known: Matrix, wanted: Matrix): Fit {
  const within = cholesky(covarianceOf(known, known))
  const slopes = covarianceOf(wanted, known).map((row) => solve(within, row))
  const [from, to] = [meanOf(known), meanOf(wanted)]
  const left = wanted.map((row, k) => {
    const line = times(
      slopes,
      from.map((m, i) => get(known[k], i) - m),
    )
    return row.map((value, j) => value - get(to, j) - get(line, j))
  })
  return { from, to, slopes, scatter: cholesky(covarianceOf(left, left)) }
}

/** The values for one woman; `off` are her known values less the means they are held against. */
export function filled(f: Fit, off: readonly number[], chance: Chance, to = f.to): number[] {
  const [line, noise] = [times(f.slopes, off), times(f.scatter, f.to.map(chance))]
  return to.map((mean, j) => mean + get(line, j) + get(noise, j))
}
