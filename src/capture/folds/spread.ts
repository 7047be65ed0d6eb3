/** Smoothing and growing of fields on the grid, row by row and column by column. */
import type { Field } from './grid.ts'

/** Samples of a function on whole cells, `reach` to each side. */
export const sampled = (reach: number, f: (x: number) => number): Float64Array =>
  Float64Array.from({ length: 2 * reach + 1 }, (_, k) => f(k - reach))

export function gauss(sigma: number): Float64Array {
  const bell = sampled(Math.ceil(4 * sigma), (x) => Math.exp(-(x * x) / (2 * sigma * sigma)))
  const sum = bell.reduce((all, value) => all + value, 0)
  return bell.map((value) => value / sum)
}

/** Convolved across with one kernel and down with another; beyond the border lies nought. */
export function convolved(field: Field, across: Float64Array, down: Float64Array): Field {
  return pass(pass(field, across, 1), down, field.width)
}

function pass({ width, height, data }: Field, kernel: Float64Array, step: number): Field {
  const out = new Float32Array(data.length)
  const reach = (kernel.length - 1) / 2
  const long = step === 1 ? width : height
  const lines = step === 1 ? height : width
  for (let line = 0; line < lines; line++) {
    const start = step === 1 ? line * width : line
    for (let k = 0; k < long; k++) {
      const [from, to] = [Math.max(-reach, -k), Math.min(reach, long - 1 - k)]
      let sum = 0
      for (let d = from; d <= to; d++)
        // Convolution: the kernel is turned round.
        sum += (data[start + (k + d) * step] ?? 0) * (kernel[reach - d] ?? 0)
      out[start + k * step] = sum
    }
  }
  return { width, height, data: out }
}

/** The mean of `field` under a bell, of those cells alone that count. */
export function meanWhere(field: Field, counts: Uint8Array, sigma: number): Float32Array {
  const { width, height, data } = field
  const bell = gauss(sigma)
  const masked = { width, height, data: data.map((value, k) => (counts[k] ? value : 0)) }
  const weight = { width, height, data: Float32Array.from(counts) }
  const [sum, of] = [convolved(masked, bell, bell).data, convolved(weight, bell, bell).data]
  return sum.map((value, k) => value / Math.max(1e-3, of[k] ?? 0))
}

/** Grown by `reach` cells each way (a square); what is not marked shrinks as much. */
export function grown(marks: Uint8Array, width: number, height: number, reach: number): Uint8Array {
  const ones = new Float64Array(2 * reach + 1).fill(1)
  const field = { width, height, data: Float32Array.from(marks) }
  return Uint8Array.from(convolved(field, ones, ones).data, (sum) => (sum > 0.5 ? 1 : 0))
}
export function shrunk(
  marks: Uint8Array,
  width: number,
  height: number,
  reach: number,
): Uint8Array {
  const not = marks.map((mark) => 1 - mark)
  return grown(not, width, height, reach).map((mark) => 1 - mark)
}

/** The largest connected part of what is marked. */
export function largestPart(marks: Uint8Array, width: number): Uint8Array {
  const part = new Int32Array(marks.length)
  let [best, most, next] = [0, 0, 0]
  for (let start = 0; start < marks.length; start++) {
    if (!marks[start] || part[start]) continue
    next += 1
    const open = [start]
    part[start] = next
    let size = 0
    for (let k = open.pop(); k !== undefined; k = open.pop()) {
      size += 1
      for (const to of [k - width, k + width, ...besides(k, width)])
        if (marks[to] && !part[to]) {
          part[to] = next
          open.push(to)
        }
    }
    if (size > most) [best, most] = [next, size]
  }
  return Uint8Array.from(part, (p) => (p > 0 && p === best ? 1 : 0))
}
const besides = (k: number, width: number): number[] => [
  ...(k % width > 0 ? [k - 1] : []),
  ...(k % width < width - 1 ? [k + 1] : []),
]
