/**
 * A reader of SVG path data of the tests' own: absolute M, L, C and A (SVG 1.1, 8.3), with the
 * arc turned from its ends to its centre as SVG 1.1, appendix F.6.5, lays down.
 */
export interface Spot {
  readonly x: number
  readonly y: number
}
type Curve = (t: number) => Spot

/** The runs of the path data, each as a chain of curves over t from 0 to 1. */
export function curvesOf(data: string): Curve[] {
  const tokens = data.match(/[MLCA]|-?\d+(?:\.\d+)?(?:e-?\d+)?/g) ?? []
  const curves: Curve[] = []
  let pen: Spot = { x: NaN, y: NaN }
  let i = 0
  const number = (): number => Number(tokens[i++])
  const spot = (): Spot => ({ x: number(), y: number() })
  while (i < tokens.length) {
    const command = tokens[i++]
    const from = pen
    switch (command) {
      case 'M':
        pen = spot()
        break
      case 'L': {
        const to = spot()
        curves.push((t) => ({ x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t }))
        pen = to
        break
      }
      case 'C': {
        const [a, b, to] = [spot(), spot(), spot()]
        curves.push((t) => {
          const mix = (p: Spot, q: Spot): Spot => ({
            x: p.x + (q.x - p.x) * t,
            y: p.y + (q.y - p.y) * t,
          })
          const [ab, bc, cd] = [mix(from, a), mix(a, b), mix(b, to)]
          return mix(mix(ab, bc), mix(bc, cd))
        })
        pen = to
        break
      }
      case 'A': {
        const [r, , , large, sweep] = [number(), number(), number(), number(), number()]
        const to = spot()
        curves.push(arcOf(from, to, r, large, sweep))
        pen = to
        break
      }
      default:
        throw new Error(`path data: ${command} in ${data}`)
    }
  }
  return curves
}

function arcOf(a: Spot, b: Spot, r: number, large: number, sweep: number): Curve {
  const [hx, hy] = [(a.x - b.x) / 2, (a.y - b.y) / 2]
  const square = hx * hx + hy * hy
  const factor = Math.sqrt(Math.max(0, (r * r - square) / square)) * (large === sweep ? -1 : 1)
  const [cx, cy] = [factor * hy + (a.x + b.x) / 2, -factor * hx + (a.y + b.y) / 2]
  const start = Math.atan2(a.y - cy, a.x - cx)
  let turn = Math.atan2(b.y - cy, b.x - cx) - start
  if (sweep === 1 && turn < 0) turn += 2 * Math.PI
  if (sweep === 0 && turn > 0) turn -= 2 * Math.PI
  return (t) => ({ x: cx + r * Math.cos(start + turn * t), y: cy + r * Math.sin(start + turn * t) })
}

/** Length by many short chords; at 4000 a curve of 500 mm is short by under 0.0001 mm. */
export function lengthOf(data: string, chords = 4000): number {
  return curvesOf(data).reduce((sum, curve) => {
    let [length, before] = [0, curve(0)]
    for (let i = 1; i <= chords; i++) {
      const now = curve(i / chords)
      length += Math.hypot(now.x - before.x, now.y - before.y)
      before = now
    }
    return sum + length
  }, 0)
}
