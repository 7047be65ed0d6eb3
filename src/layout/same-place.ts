/** Points that are one within a tolerance share a number: a grid of cells as wide as that. */
export class Places {
  private readonly cells = new Map<string, number[]>()
  private readonly xs: number[] = []
  private readonly ys: number[] = []
  private readonly tolerance: number

  constructor(tolerance: number) {
    this.tolerance = tolerance
  }

  readonly x = (place: number): number => this.xs[place]!
  readonly y = (place: number): number => this.ys[place]!

  /** The number of the place at (x, y), a new one if there is none yet. */
  at(x: number, y: number): number {
    const cell = this.tolerance * 2
    const [cx, cy] = [Math.round(x / cell), Math.round(y / cell)]
    for (let i = cx - 1; i <= cx + 1; i++)
      for (let j = cy - 1; j <= cy + 1; j++)
        for (const k of this.cells.get(`${i} ${j}`) ?? [])
          if (Math.hypot(this.xs[k]! - x, this.ys[k]! - y) <= this.tolerance) return k
    const key = `${cx} ${cy}`
    this.cells.set(key, [...(this.cells.get(key) ?? []), this.xs.length])
    this.xs.push(x)
    this.ys.push(y)
    return this.xs.length - 1
  }
}
