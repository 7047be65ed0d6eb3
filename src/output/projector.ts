/**
 * A piece thrown on cloth or paper by a projector: how many pixels a millimetre is, and, where
 * the light reaches less than the piece, which fields it is shown in. Plain data for a screen;
 * the crosses by which the cloth is moved from field to field are in `projector-crosses.ts`.
 */
import { boxHeight, boxOfPoints, boxWidth, grown, type Box } from '../geometry/box.ts'
import { flatten } from '../geometry/path.ts'
import { point, type Point } from '../geometry/point.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import { inches, mm, type Mm } from '../units/length.ts'
import { LINES, type LineName } from './line-style.ts'
import { placedMark, placedPoint, type Quarter } from './mark.ts'
import type { PieceDrawing, PieceMark } from './piece-drawing.ts'
import { fineLength, LONG_LINE, longLine } from './print-scale.ts'
import { crossesOf, type FieldJoint } from './projector-crosses.ts'
import { PROJECTOR_WORDS } from './projector.words.ts'
import { meetsBox } from './ring.ts'
import { tileName } from './tiles.ts'

/** Two crosses on the screen and what the tape says between them where they fall. */
export interface ThrownPair {
  readonly pixels: number
  readonly measured: Mm
}
export interface PixelsPerMm {
  readonly x: number
  readonly y: number
}
export type ThrowRead =
  | {
      readonly ok: true
      readonly pixelsPerMm: PixelsPerMm
      /** How far a line of 500 mm is off where the tape was read a millimetre wrong. */
      readonly off500: Mm
    }
  | { readonly ok: false; readonly reason: string }

/** Shorter than a hand, a millimetre misread is a percent; longer than a tape nobody measures. */
export const THROWN = { least: mm(100), most: mm(3000) } as const
/** A picture drawn out more than this one way stands askew and no scale can mend it. Judgement. */
const DRAWN_OUT = 0.05

/** Scale from the crosses; `down` is taken to be like `across` where it was not measured. */
export function readThrow(
  across: ThrownPair,
  down: ThrownPair | undefined,
  units: UnitChoice,
): ThrowRead {
  for (const pair of [across, ...(down ? [down] : [])]) {
    if (!(pair.pixels > 0)) throw new Error(`projector: crosses ${pair.pixels} pixels apart`)
    const { measured } = pair
    if (Number.isFinite(measured) && measured >= THROWN.least && measured <= THROWN.most) continue
    const said = Number.isFinite(measured)
      ? formatLength(measured, units)
      : PROJECTOR_WORDS.noNumber
    const [least, most] = [formatLength(THROWN.least, units), formatLength(THROWN.most, units)]
    return {
      ok: false,
      reason: PROJECTOR_WORDS.outside(said, least, most),
    }
  }
  const x = across.pixels / across.measured
  const y = down ? down.pixels / down.measured : x
  if (Math.abs(x / y - 1) > DRAWN_OUT)
    return {
      ok: false,
      reason: PROJECTOR_WORDS.drawnOut(Math.abs((x / y - 1) * 100).toFixed(0)),
    }
  const long = down ? Math.min(across.measured, down.measured) : across.measured
  return { ok: true, pixelsPerMm: { x, y }, off500: mm(500 / long) }
}

/** A length misread by the least mark she would overlook (judgement), and what that makes on a long line. */
export function misread(
  off500: Mm,
  units: UnitChoice,
): { readonly by: string; readonly off: string; readonly line: string } {
  const line = longLine(units)
  const least = units.unit === 'inch' ? inches(1 / 8) : mm(1)
  const off = (least * off500 * line) / LONG_LINE
  return {
    by: fineLength(least, units),
    off: fineLength(off, units),
    line: formatLength(line, units),
  }
}

/** The part of the piece that is thrown at one time. */
export interface ThrowField {
  readonly row: number
  readonly column: number
  /** 'A1': row letter, column number, as on sheets. */
  readonly name: string
  /** In the millimetres of the drawing as it is turned. */
  readonly box: Box
}
export interface ThrowPlan {
  readonly turn: Quarter
  /** The marks as they are turned. */
  readonly marks: readonly PieceMark[]
  /** By rows; one where the light reaches round the whole piece. */
  readonly fields: readonly ThrowField[]
  readonly joints: readonly FieldJoint[]
}

/** White round the piece, so that no line lies on the rim of the light. */
const ROUND = 6
/** Neighbouring fields share so much, mm: room for crosses, and lines that run on. House choice. */
export const OVERLAP = 80
/** No field is smaller than this; a projector so near is of no use. */
const LEAST_FIELD = 2 * OVERLAP

/**
 * Fields of a piece on a screen of so many pixels, turned by a quarter where that takes fewer.
 * Throws where a field would be smaller than two overlaps; `fieldRefusal` says so beforehand.
 */
export function throwPlan(
  drawing: PieceDrawing,
  screen: { readonly width: number; readonly height: number },
  pixelsPerMm: PixelsPerMm,
): ThrowPlan {
  const size = { width: screen.width / pixelsPerMm.x, height: screen.height / pixelsPerMm.y }
  if (Math.min(size.width, size.height) < LEAST_FIELD)
    throw new Error(`projector: a field of ${size.width} × ${size.height} mm`)
  const plans = ([0, 1] as const).map((turn) => laidOut(drawing, turn, size))
  const [straight, turned] = plans
  if (!straight || !turned) throw new Error('projector: no way to lie')
  return turned.fields.length < straight.fields.length ? turned : straight
}

/** Why the light is too narrow to work in, or undefined. */
export function fieldRefusal(
  screen: { readonly width: number; readonly height: number },
  { x, y }: PixelsPerMm,
  units: UnitChoice,
): string | undefined {
  const [width, height] = [mm(screen.width / x), mm(screen.height / y)]
  if (Math.min(width, height) >= LEAST_FIELD) return undefined
  return PROJECTOR_WORDS.narrow(
    formatLength(width, units),
    formatLength(height, units),
    formatLength(mm(LEAST_FIELD), units),
  )
}

type Size = { readonly width: number; readonly height: number }

function laidOut(drawing: PieceDrawing, turn: Quarter, size: Size): ThrowPlan {
  const marks = drawing.marks.map((m) => placedMark(m, { turn, by: NOWHERE }))
  const lines = marks.flatMap((m) =>
    m.kind === 'path' ? m.path.map((s) => flatten([s], LINE_ERROR)) : [],
  )
  const all = grown(boxOfPoints(lines.flat()), ROUND)
  const lefts = starts(all.left, boxWidth(all), size.width)
  const tops = starts(all.top, boxHeight(all), size.height)
  const fields = tops.flatMap((top, row) =>
    lefts.map((left, column): ThrowField => {
      const box = { left, top, right: left + size.width, bottom: top + size.height }
      return { row, column, name: tileName(row, column), box }
    }),
  )
  const shown = fields.filter(({ box }) => lines.some((run) => runMeets(run, box)))
  const ring = flatten(drawing.cut, LINE_ERROR).map((p) => placedPoint(p, { turn, by: NOWHERE }))
  return { turn, marks, fields: shown, joints: crossesOf(shown, ring) }
}
/** For asking where lines lie; what is thrown is exact. */
const LINE_ERROR = 0.5
const NOWHERE = point(0, 0)

/** A field on which nothing is drawn is not thrown; the outline leads round it. */
const runMeets = (run: readonly Point[], box: Box): boolean =>
  run.some((p, i) => meetsBox([p, run[i + 1] ?? p], box))

/** Evenly spread, at least `OVERLAP` in common; a single one is centred. */
function starts(from: number, long: number, field: number): number[] {
  if (long <= field) return [from - (field - long) / 2]
  const count = Math.ceil((long - OVERLAP) / (field - OVERLAP) - 1e-9)
  const step = (long - field) / (count - 1)
  return Array.from({ length: count }, (_, i) => from + i * step)
}

/** How heavy lines are thrown: the thinnest one in pixels. */
export const THROW_WEIGHTS = { fine: 1, middle: 2, heavy: 4 } as const
export type ThrowWeight = keyof typeof THROW_WEIGHTS
/** Light lines on dark for dark cloth, dark lines on light for light cloth. */
export const THROW_GROUNDS = {
  light: { ground: '#ffffff', line: '#000000' },
  dark: { ground: '#000000', line: '#ffffff' },
} as const
export type ThrowGround = keyof typeof THROW_GROUNDS

const CUTTING_WIDTH = LINES.cutting.width

/** Width of a line in pixels: as heavy among the others as on paper, never under the weight. */
export const thrownWidth = (line: LineName, weight: ThrowWeight): number =>
  THROW_WEIGHTS[weight] * Math.max(1, LINES[line].width / CUTTING_WIDTH)
