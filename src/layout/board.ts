/**
 * The strip while it is being packed, in typed arrays for the hot loops. A form is an outline with
 * its middle on the origin; a stance is a form with the places allowed to it; every piece has its
 * stances, and at any time one of them and a place for its middle.
 */
import { extentOf, grownOutline, movedOutline, outlineArea, type Outline } from './outline.ts'
import { bandOf, hasPlace, nearest, type Band } from './band.ts'
import { NoFitTable } from './no-fit-table.ts'
import { parted, type Parted } from './no-fit.ts'
import type { Layout, Pose, Strip } from './strip.ts'

export interface Board {
  readonly strip: Strip
  readonly count: number
  readonly table: NoFitTable
  /** Length of the cloth at present. */
  length: number
  /** Of each piece: its stance, the form of that, and where its middle lies. */
  readonly stance: Int32Array
  readonly form: Int32Array
  readonly x: Float64Array
  readonly y: Float64Array
  /** Of each piece: left, right, low and high of its form as it lies. */
  readonly box: Float64Array
  readonly area: Float64Array
  /** Of each piece: its stances, different ones only; the first pose that has each. */
  readonly stances: readonly Int32Array[]
  readonly poses: readonly Int32Array[]
  /** Of each stance: its form, and the middle of its extent from the pose's origin. */
  readonly formOf: Int32Array
  readonly middleX: Float64Array
  readonly middleY: Float64Array
  /** Of each stance: half its bare length, and the band its middle may lie in. */
  readonly reach: Float64Array
  readonly low: Float64Array
  readonly high: Float64Array
  /** Of each stance: lattices of its middle; step 0 when it may lie anywhere. */
  readonly stepX: Float64Array
  readonly offX: Float64Array
  readonly stepY: Float64Array
  readonly offY: Float64Array
}

interface Stance extends Band {
  readonly form: number
  readonly mx: number
  readonly my: number
  readonly reach: number
  readonly stepX: number
  readonly offX: number
}

export function boardOf(strip: Strip): Board {
  const forms = new Map<string, number>()
  const shapes: Parted[] = []
  const known = new Map<string, number>()
  const list: Stance[] = []
  const stanceOf = (pose: Pose): number => {
    const e = extentOf(pose.outline)
    const [mx, my] = [(e.left + e.right) / 2, (e.low + e.high) / 2]
    const ring = movedOutline(pose.outline, -mx, -my)
    const name = formKey(ring, strip.width)
    let form = forms.get(name)
    if (form === undefined) {
      form = shapes.length
      forms.set(name, form)
      shapes.push(parted(grownOutline(ring, gapOf(strip) / 2)))
    }
    const stance: Stance = {
      form,
      mx,
      my,
      reach: (e.right - e.left) / 2,
      stepX: pose.along?.step ?? 0,
      offX: pose.along ? pose.along.first + mx : 0,
      ...bandOf(pose, strip.width),
    }
    const key = JSON.stringify(stance)
    const at = known.get(key) ?? list.push(stance) - 1
    known.set(key, at)
    return at
  }
  const all = strip.pieces.map((p) => p.poses.map(stanceOf))
  const fits = (s: number): boolean => hasPlace(list[s]!)
  const poses = all.map((a, i) => {
    const own = a.flatMap((s, k) => (a.indexOf(s) === k && fits(s) ? [k] : []))
    if (own.length === 0) throw new Error(`board: ${strip.pieces[i]!.id} is wider than the cloth`)
    return Int32Array.from(own)
  })
  const number = (f: (s: Stance) => number): Float64Array => Float64Array.from(list, f)
  const stances = all.map((a, i) => Int32Array.from(poses[i]!, (k) => a[k]!))
  const stance = Int32Array.from(stances, (s) => s[0]!)
  const formOf = Int32Array.from(list, (s) => s.form)
  return {
    strip,
    count: all.length,
    table: new NoFitTable(shapes, strip.width * LEAST_GAP * CLEAR),
    length: 0,
    stance,
    form: Int32Array.from(stance, (s) => formOf[s]!),
    x: new Float64Array(all.length),
    y: new Float64Array(all.length),
    box: new Float64Array(4 * all.length),
    area: Float64Array.from(strip.pieces, (p) => outlineArea(p.poses[0]!.outline)),
    stances,
    poses,
    formOf,
    middleX: number((s) => s.mx),
    middleY: number((s) => s.my),
    reach: number((s) => s.reach),
    low: number((s) => s.low),
    high: number((s) => s.high),
    stepX: number((s) => s.stepX),
    offX: number((s) => s.offX),
    stepY: number((s) => s.stepY),
    offY: number((s) => s.offY),
  }
}

/** Neighbours are kept this share of the width apart at least, so that rounding never joins them. */
const LEAST_GAP = 1e-6
/** Shallower than this share of the least gap is clear: the gap itself makes good for it. */
const CLEAR = 0.01
const gapOf = (strip: Strip): number => Math.max(strip.gap, strip.width * LEAST_GAP)

/** One name for the same outline, wherever its list of corners begins. */
function formKey(ring: Outline, size: number): string {
  const corners: string[] = []
  for (let i = 0; i < ring.length; i += 2)
    corners.push(
      `${Math.round((ring[i]! / size) * 1e9)} ${Math.round((ring[i + 1]! / size) * 1e9)}`,
    )
  const first = corners.reduce((least, c, i) => (c < corners[least]! ? i : least), 0)
  return [...corners.slice(first), ...corners.slice(0, first)].join(' ')
}

export function put(b: Board, piece: number, stance: number, x: number, y: number): void {
  b.stance[piece] = stance
  const form = b.formOf[stance]!
  b.form[piece] = form
  b.x[piece] = x
  b.y[piece] = y
  b.box[4 * piece] = x - b.table.halfLength[form]!
  b.box[4 * piece + 1] = x + b.table.halfLength[form]!
  b.box[4 * piece + 2] = y - b.table.halfWidth[form]!
  b.box[4 * piece + 3] = y + b.table.halfWidth[form]!
}

export const allowedX = (b: Board, stance: number, v: number): number =>
  nearest(v, b.reach[stance]!, b.length - b.reach[stance]!, b.stepX[stance]!, b.offX[stance]!)
export const allowedY = (b: Board, stance: number, v: number): number =>
  nearest(v, b.low[stance]!, b.high[stance]!, b.stepY[stance]!, b.offY[stance]!)

/** The layout as it lies, its length measured anew. */
export function layoutOf(b: Board): Layout {
  let length = 0
  for (let i = 0; i < b.count; i++) length = Math.max(length, b.x[i]! + b.reach[b.stance[i]!]!)
  return {
    length,
    placed: Array.from({ length: b.count }, (_, i) => {
      const s = b.stance[i]!
      return {
        piece: i,
        pose: b.poses[i]![b.stances[i]!.indexOf(s)]!,
        x: b.x[i]! - b.middleX[s]!,
        y: b.y[i]! - b.middleY[s]!,
      }
    }),
  }
}
