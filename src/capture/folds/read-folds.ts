/**
 * Where the cloth of a muslin is drawn into lines, and which way: strokes over the photograph.
 * Hints of a picture, never a verdict; she says what she sees. Pure.
 */
import type { Point } from '../../geometry/point.ts'
import type { Card, CardOutcome } from '../card.ts'
import { refused, type Refused } from '../fault.ts'
import type { Person } from '../person.ts'
import { partOf, type Part, type Picture } from '../picture.ts'
import { clothOf } from './cloth.ts'
import { placeOfFold, type FoldPlace } from './fold-places.ts'
import { gridOf } from './grid.ts'
import { strokes, type Stroke } from './strokes.ts'
import { trunkFrame, type TrunkFrame } from './trunk-frame.ts'

export interface Fold {
  /** Picture px, from one end to the other. */
  readonly line: readonly Point[]
  /** Radians counter-clockwise from the right, 0 to pi. */
  readonly angle: number
  readonly lengthMm: number
  /** The likelier place first; at most two. */
  readonly places: readonly FoldPlace[]
}
export type FoldsOutcome =
  | { readonly ok: true; readonly folds: readonly Fold[]; readonly places: readonly FoldPlace[] }
  | Refused

/** Without a card: shoulder joints of women lie about so far apart, mm (bench of 16 bodies: 300 to 360). */
const USUAL_SHOULDERS_MM = 330

export function readFolds(
  view: 'front' | 'back',
  picture: Picture,
  person: Person | undefined,
  card: CardOutcome,
): FoldsOutcome {
  const raw = person && trunkFrame(person, 1)
  if (!person || !raw) return refused('noTrunk')
  const mmPerPx = card.ok ? card.card.mmPerPx : USUAL_SHOULDERS_MM / (2 * raw.half)
  // Of a photo of the whole body only the trunk: the rest costs half a minute and shows no muslin.
  const part = trunkPart(picture, raw)
  const trunk = personIn(part, person)
  const grid = gridOf(partOf(picture, part), trunk.mask, mmPerPx)
  const frame = trunkFrame(trunk, grid.px)
  const cloth = frame && clothOf(grid, frame, card.ok ? cardIn(part, card.card) : undefined)
  if (!frame || !cloth) return refused('noCloth')
  const { width } = grid
  const found = strokes(cloth.relief, cloth.inside)
  const placed = found.map((stroke) => placeOfFold(view, stroke, frame, width))
  const folds = found.map((stroke, k): Fold => ({
    line: lineOf(stroke, width, grid.px).map((p) => moved(p, part.left, part.top)),
    angle: stroke.angle,
    lengthMm: stroke.lengthMm,
    places: (placed[k] ?? []).slice(0, 2).map(({ place }) => place),
  }))
  // The places of the whole photo: every stroke votes, a long one more.
  const votes = new Map<FoldPlace, number>()
  for (const [k, list] of placed.entries())
    for (const { place, fits } of list)
      votes.set(place, (votes.get(place) ?? 0) + fits * (found[k]?.lengthMm ?? 0))
  const places = [...votes].sort(([, a], [, b]) => b - a).map(([place]) => place)
  return { ok: true, folds, places }
}

/** Searched above the shoulder joints, below the hip joints in torsos; aside in half spreads. */
const [ABOVE, BELOW, ASIDE] = [0.5, 0.5, 2.4] as const

function trunkPart(
  { width, height }: Picture,
  { shoulder, torso, half, middle }: TrunkFrame,
): Part {
  const [top, low] = [shoulder.y - ABOVE * torso, shoulder.y + (1 + BELOW) * torso]
  const [a, b] = [middle(shoulder.y), middle(shoulder.y + torso)]
  return {
    left: Math.max(0, Math.floor(Math.min(a, b) - ASIDE * half)),
    right: Math.min(width, Math.ceil(Math.max(a, b) + ASIDE * half)),
    top: Math.max(0, Math.floor(top)),
    bottom: Math.min(height, Math.ceil(low)),
  }
}
const moved = ({ x, y }: Point, dx: number, dy: number): Point => ({ x: x + dx, y: y + dy })

function personIn(part: Part, { mask, joints, ...rest }: Person): Person {
  const [width, height] = [part.right - part.left, part.bottom - part.top]
  const data = new Uint8Array(width * height)
  for (let y = 0; y < height; y++) {
    const from = (part.top + y) * mask.width + part.left
    data.set(mask.data.subarray(from, from + width), y * width)
  }
  const inPart = Object.entries(joints).map(([name, joint]) => [
    name,
    { ...joint, at: moved(joint.at, -part.left, -part.top) },
  ])
  return { ...rest, joints: Object.fromEntries(inPart), mask: { width, height, data } }
}

function cardIn({ left, top }: Part, card: Card): Card {
  const [a, b, c, d] = card.corners
  const at = (p: Point): Point => moved(p, -left, -top)
  return { ...card, corners: [at(a), at(b), at(c), at(d)] }
}

/** Cells side by side are one place: every few cells one point, their mean. */
const STEP = 6
function lineOf({ cells }: Stroke, width: number, px: number): Point[] {
  const points: Point[] = []
  for (let k = 0; k < cells.length; k += STEP) {
    const part = cells.slice(k, k + STEP)
    const mean = (f: (cell: number) => number): number =>
      part.reduce((sum, cell) => sum + f(cell), 0) / part.length
    points.push({
      x: (mean((c) => c % width) + 0.5) * px,
      y: (mean((c) => Math.floor(c / width)) + 0.5) * px,
    })
  }
  return points
}
