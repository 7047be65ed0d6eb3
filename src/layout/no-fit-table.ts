/**
 * No-fit regions of every pair of forms, worked out when first asked for. Every form lies with the
 * middle of its extent on the origin.
 */
import { extentOf } from './outline.ts'
import { noFit, type Parted } from './no-fit.ts'
import { depthIn, packedRuns, regionOf, stretchesIn, type Region } from './region.ts'

export class NoFitTable {
  readonly halfLength: Float64Array
  readonly halfWidth: Float64Array
  private readonly forms: readonly Parted[]
  private readonly clear: number
  private readonly runs: (Float64Array | undefined)[]
  private readonly regions: (Region | undefined)[]

  /** @param clear a depth not above this counts as none */
  constructor(forms: readonly Parted[], clear: number) {
    this.forms = forms
    this.clear = clear * clear
    const extents = forms.map((s) => extentOf(s.ring))
    this.halfLength = Float64Array.from(extents, (e) => Math.max(-e.left, e.right))
    this.halfWidth = Float64Array.from(extents, (e) => Math.max(-e.low, e.high))
    this.runs = new Array<Float64Array | undefined>(forms.length * forms.length).fill(undefined)
    this.regions = new Array<Region | undefined>(forms.length * forms.length).fill(undefined)
  }

  /**
   * How far form `b`, lying (dx, dy) from form `a`, would have to move at least to be clear of it;
   * 0 when it is clear.
   */
  depth(a: number, b: number, dx: number, dy: number): number {
    const swapped = a > b
    const at = swapped ? b * this.forms.length + a : a * this.forms.length + b
    const region = this.regions[at] ?? this.region(at)
    return swapped ? depthIn(region, -dx, -dy, this.clear) : depthIn(region, dx, dy, this.clear)
  }

  /** Stretches of the line dy above `a` where `b` overlaps it: pairs of dx, from and to. */
  taken(a: number, b: number, dy: number): readonly (readonly [number, number])[] {
    if (Math.abs(dy) >= this.halfWidth[a]! + this.halfWidth[b]!) return []
    return a > b
      ? stretchesIn(this.boundary(b, a), -dy).map(([from, to]) => [-to, -from] as const)
      : stretchesIn(this.boundary(a, b), dy)
  }

  /** Runs of the region where `b`, moved from `a`, overlaps it; a ≤ b. */
  private boundary(a: number, b: number): Float64Array {
    const at = a * this.forms.length + b
    return (this.runs[at] ??= packedRuns(noFit(this.forms[a]!, this.forms[b]!)))
  }

  private region(at: number): Region {
    const [a, b] = [Math.floor(at / this.forms.length), at % this.forms.length]
    const [halfX, halfY] = [
      this.halfLength[a]! + this.halfLength[b]!,
      this.halfWidth[a]! + this.halfWidth[b]!,
    ]
    return (this.regions[at] = regionOf(this.boundary(a, b), halfX, halfY))
  }
}
