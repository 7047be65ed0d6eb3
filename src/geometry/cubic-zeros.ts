/**
 * Where a cubic polynomial is nought for t from 0 to 1. It is split at its turns, so that each
 * stretch only rises or only falls; in a stretch Newton's steps are held between its ends.
 */

/** A value so near to nought at a turn or at an end is nought, in the unit of the values. */
const TOUCH = 1e-9
/** A zero so little outside counts as the end. */
const OUTSIDE = 1e-9
/** Zeros nearer than this are one. */
const SAME = 1e-6
/** Newton doubles the digits each time; where it must be held in, the stretch is halved. */
const ROUNDS = 60

/** Ascending; a touch counts once. Given by its Bernstein coefficients; none where all are nought. */
export function cubicZeros(h0: number, h1: number, h2: number, h3: number): number[] {
  const [most, least] = [Math.max(h0, h1, h2, h3), Math.min(h0, h1, h2, h3)]
  if (least > TOUCH || most < -TOUCH || most - least < TOUCH) return []
  const a = h3 - 3 * h2 + 3 * h1 - h0
  const b = 3 * (h2 - 2 * h1 + h0)
  const c = 3 * (h1 - h0)
  const found: number[] = []
  if (Math.abs(h0) <= Math.max(TOUCH, OUTSIDE * Math.abs(c))) found.push(0)
  let [from, low] = [0, h0]
  for (const to of [...turns(a, b, c), 1]) {
    const high = to === 1 ? h3 : value(a, b, c, h0, to)
    if (low * high < 0) found.push(between(a, b, c, h0, from, to, low))
    if (to < 1 && Math.abs(high) <= TOUCH) found.push(to)
    ;[from, low] = [to, high]
  }
  if (Math.abs(h3) <= Math.max(TOUCH, OUTSIDE * Math.abs(3 * (h3 - h2)))) found.push(1)
  return found.filter((t, i) => i === 0 || t - found[i - 1]! > SAME)
}

const value = (a: number, b: number, c: number, d: number, t: number): number =>
  ((a * t + b) * t + c) * t + d

/** Where the slope 3at² + 2bt + c is nought, inside 0 to 1. */
function turns(a: number, b: number, c: number): number[] {
  const root = b * b - 3 * a * c
  if (root < 0) return []
  // The larger of −b ± √ keeps its digits; the other turn follows from the product of both.
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(root))
  const both = [q / (3 * a), c / q].filter((t) => t > 0 && t < 1)
  return both.sort((x, y) => x - y)
}

/** The one zero between two ts whose values differ in sign; `low` is the value at `from`. */
function between(
  a: number,
  b: number,
  c: number,
  d: number,
  from: number,
  to: number,
  low: number,
): number {
  let [left, right] = [from, to]
  let t = (left + right) / 2
  for (let i = 0; i < ROUNDS; i++) {
    const height = value(a, b, c, d, t)
    if (height === 0) return t
    if (height * low > 0) left = t
    else right = t
    const step = height / ((3 * a * t + 2 * b) * t + c)
    const next = t - step
    const held = next > left && next < right ? next : (left + right) / 2
    if (Math.abs(held - t) < 1e-15) return held
    t = held
  }
  return t
}
