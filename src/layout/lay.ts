/**
 * How the cloth lies when it is cut, and what of the garment is cut where: each manner gives one
 * or two strips to be packed, with a pose for every way a part may lie there.
 * Folded cloth lies right sides together with the fold on across = 0; half pieces are put on it.
 * The rules are common practice in dressmaking handbooks.
 */
import { wholeRepeats } from './amount.ts'
import { bandOf, hasPlace, isWideEnough, type Band } from './band.ts'
import { extentOf, turnedOutline, turnedOver, type Outline } from './outline.ts'
import { usableWidth, type Border, type Cloth } from './cloth.ts'
import { LAY_WORDS } from './cloth.words.ts'
import type { CutPart } from './cut-part.ts'
import { mm, type Mm } from '../units/length.ts'
import type { Lattice, Pose, Strip, StripPiece } from './strip.ts'

export type Manner = 'lengthwise' | 'single' | 'crosswise' | 'partly'
/** The easiest to lay first: of equally short layouts the first is taken. */
export const MANNERS: readonly Manner[] = ['lengthwise', 'single', 'crosswise', 'partly']

/** A stretch of cloth lying in one way, packed by itself. */
export interface Section {
  readonly strip: Strip
  /** Layers count twice in the length to buy when the fold runs across. */
  readonly layers: 'single' | 'foldedAlong' | 'foldedAcross' | 'partlyFolded'
  /** Of a partly folded cloth: as far from the fold as it is double. */
  readonly double?: number
  /** A crosswise fold lies so far from the cut end or a whole number of times as far. */
  readonly foldStep?: number
  /** For every piece of the strip the part it is, and whether it is the whole of a half piece. */
  readonly parts: readonly { readonly part: CutPart; readonly whole: boolean }[]
}

/** How far along the cloth a section goes, one of its layers. */
export const sectionLength = ({ foldStep }: Section, laid: number): Mm =>
  foldStep === undefined ? mm(laid) : wholeRepeats(mm(laid), mm(foldStep))

export type Lay =
  | { readonly ok: true; readonly manner: Manner; readonly sections: readonly Section[] }
  | { readonly ok: false; readonly manner: Manner; readonly reason: string }

/** Scissors need no room: cutting lines of neighbours may be one line. */
const GAP = 0

interface Wanted {
  readonly part: CutPart
  readonly whole: boolean
  readonly outline: Outline
  readonly low?: number
  readonly high?: number
  /** Turned over as well as turned round: both layers are cut, or the print does not care. */
  readonly over: boolean
}

export function lay(parts: readonly CutPart[], cloth: Cloth, manner: Manner): Lay {
  const width = usableWidth(cloth)
  const section = (
    wanted: readonly Wanted[],
    wide: number,
    layers: Section['layers'],
    double?: number,
  ): Section => ({
    strip: { width: wide, gap: GAP, pieces: wanted.map((w) => stripPiece(w, cloth)) },
    layers,
    ...(double === undefined ? {} : { double }),
    parts: wanted.map(({ part, whole }) => ({ part, whole })),
  })
  const sections = ((): readonly Section[] | string => {
    if (cloth.border)
      return manner === 'single'
        ? bordered(parts, cloth, cloth.border, width, section)
        : LAY_WORDS.bordered
    switch (manner) {
      case 'lengthwise':
        return [section(parts.flatMap(onDouble), width / 2, 'foldedAlong')]
      case 'single':
        return [section(parts.flatMap(onSingle), width, 'single')]
      case 'crosswise':
        return crosswise(parts, cloth, width, section)
      case 'partly':
        return partly(parts, width, section)
    }
  })()
  if (typeof sections === 'string') return { ok: false, manner, reason: sections }
  const wide = sections.flatMap((s) => without(isWideEnough, s))[0]
  if (wide) return { ok: false, manner, reason: wideReason(wide, manner, cloth) }
  const unmatched = sections.flatMap((s) => without(hasPlace, s))[0]
  return unmatched
    ? { ok: false, manner, reason: LAY_WORDS.repeat(unmatched) }
    : { ok: true, manner, sections }
}

const wideReason = (part: CutPart, manner: Manner, cloth: Cloth): string =>
  cloth.border
    ? LAY_WORDS.aboveBorder(part)
    : manner === 'single'
      ? LAY_WORDS.wider(part)
      : LAY_WORDS.widerSo(part, manner)

/** Both layers cut at once: pairs once, halves on the fold, single ones with one to spare. */
function onDouble(part: CutPart): readonly Wanted[] {
  const { outline } = part
  switch (part.kind) {
    case 'onFold':
      return times(part.count, { part, whole: false, outline, low: 0, high: 0, over: false })
    case 'pair':
    case 'single':
    case 'bias':
      return times(Math.ceil(part.count / 2), { part, whole: false, outline, over: true })
  }
}

function onSingle(part: CutPart): readonly Wanted[] {
  const { outline } = part
  switch (part.kind) {
    case 'onFold':
      return times(part.count, { part, whole: true, outline: unfolded(outline), over: true })
    case 'pair':
      return [
        ...times(part.count / 2, { part, whole: false, outline, over: false }),
        ...times(part.count / 2, { part, whole: false, outline: turnedOver(outline), over: false }),
      ]
    case 'single':
    case 'bias':
      return times(part.count, { part, whole: false, outline, over: part.kind === 'bias' })
  }
}

const times = (count: number, one: Wanted): readonly Wanted[] =>
  Array.from({ length: Math.ceil(count) }, () => one)

type Make = (
  wanted: readonly Wanted[],
  wide: number,
  layers: Section['layers'],
  double?: number,
) => Section

/** Pairs on the doubled part; what must be whole on a single stretch after it. */
function crosswise(
  parts: readonly CutPart[],
  cloth: Cloth,
  width: number,
  make: Make,
): readonly Section[] | string {
  if (cloth.oneWay) return LAY_WORDS.crosswiseOneWay
  const paired = parts.filter((p) => p.kind === 'pair' || (p.kind === 'bias' && p.count % 2 === 0))
  if (paired.length === 0) return LAY_WORDS.nothingTwice
  const rest = parts.filter((p) => !paired.includes(p))
  // On the middle of a stripe or of its ground: else the stripes of both layers would not meet.
  const along = cloth.repeat?.along
  return [
    {
      ...make(paired.flatMap(onDouble), width, 'foldedAcross'),
      ...(along === undefined ? {} : { foldStep: along / 2 }),
    },
    ...(rest.length > 0 ? [make(rest.flatMap(onSingle), width, 'single')] : []),
  ]
}

/** Folded just so far that the half pieces lie on the fold; all else on the single part. */
function partly(parts: readonly CutPart[], width: number, make: Make): readonly Section[] | string {
  const halves = parts.filter((p) => p.kind === 'onFold')
  const rest = parts.filter((p) => p.kind !== 'onFold')
  if (halves.length === 0) return LAY_WORDS.nothingOnFold
  if (rest.length === 0) return LAY_WORDS.allOnFold
  const double = Math.ceil(Math.max(...halves.map((p) => extentOf(p.outline).high)))
  const most = width - double
  if (double >= most) return LAY_WORDS.foldTakesAll
  const wanted = [
    ...halves.flatMap(onDouble),
    ...rest.flatMap(onSingle).map((w): Wanted => ({ ...w, low: double })),
  ]
  return [make(wanted, most, 'partlyFolded', double)]
}

/** Common practice of dressmaking handbooks: hems on the border, the grain across the cloth. */
function bordered(
  parts: readonly CutPart[],
  cloth: Cloth,
  { depth, hemAt }: Border,
  width: number,
  make: Make,
): readonly Section[] | string {
  if (!parts.some((p) => p.hem !== undefined)) return LAY_WORDS.noHem
  const foot = (part: CutPart): number | undefined =>
    part.hem === undefined ? undefined : hemAt - part.hem - cloth.selvedge
  if (parts.some((p) => (foot(p) ?? 0) < 0)) return LAY_WORDS.hemOverSelvedge
  const wanted = parts.flatMap(onSingle).map((w): Wanted => {
    const low = foot(w.part)
    return {
      ...w,
      // The lower end towards the selvedge that measuring begins from.
      outline: turnedOutline(w.outline, -90),
      over: false,
      ...(low === undefined ? { low: Math.max(0, depth - cloth.selvedge) } : { low, high: low }),
    }
  })
  return [make(wanted, width, 'single')]
}

/** A half piece and its mirror image as one outline. */
export function unfolded(half: Outline): Outline {
  const points = Array.from({ length: half.length / 2 }, (_, i): [number, number] => [
    half[2 * i]!,
    half[2 * i + 1]!,
  ])
  // From the end of the fold edge round to its beginning, then back on the other side.
  const start = points.findIndex((p, i) => {
    const before = points.at(i - 1)!
    return p[1] === 0 && before[1] === 0
  })
  if (start < 0) throw new Error('unfolded: no edge on the fold')
  const open = [...points.slice(start), ...points.slice(0, start)]
  const other = open.slice(1, -1).reverse()
  return outlineOfPoints([...open, ...other.map(([x, y]): [number, number] => [x, -y])])
}

function outlineOfPoints(points: readonly [number, number][]): Outline {
  return Float64Array.from(points.flat())
}

function stripPiece(w: Wanted, cloth: Cloth): StripPiece {
  const round = turnedOutline(w.outline, 180)
  const over = turnedOver(w.outline)
  const ways: readonly Way[] = [
    { outline: w.outline },
    ...(w.over ? [{ outline: over, over: true } as const] : []),
    ...(cloth.oneWay || cloth.border
      ? []
      : [
          // End for end: a half on the fold keeps its fold by being turned over as well.
          ...(w.low === 0 && w.high === 0
            ? [{ outline: turnedOver(round), round: true, over: true } as const]
            : [{ outline: round, round: true } as const]),
          ...(w.over ? [{ outline: turnedOver(round), round: true, over: true } as const] : []),
        ]),
  ]
  return { id: w.part.id, poses: ways.map((way) => pose(w, cloth, way)) }
}

type Way = Pick<Pose, 'outline' | 'round' | 'over'>

function pose(w: Wanted, cloth: Cloth, way: Way): Pose {
  const { match } = w.part
  const sign = way.round ? -1 : 1
  const alongStep = cloth.repeat?.along
  // End for end the piece counts its stripes the other way.
  const along: Lattice | undefined =
    alongStep !== undefined && match
      ? // On a border the piece lies across: its centre comes to the middle of a motif.
        {
          first: cloth.border
            ? modulo(-match.across, alongStep)
            : modulo(sign * (match.lag - match.along), alongStep),
          step: alongStep,
        }
      : undefined
  // Centres lie on the middle of a stripe, and a stripe on the fold.
  const acrossStep = cloth.repeat?.across
  const across =
    acrossStep !== undefined && match && !cloth.border && !(w.low === 0 && w.high === 0)
      ? { first: modulo(-match.across, acrossStep), step: acrossStep }
      : undefined
  return {
    ...way,
    ...(w.low === undefined ? {} : { low: w.low }),
    ...(w.high === undefined ? {} : { high: w.high }),
    ...(along ? { along } : {}),
    ...(across ? { across } : {}),
  }
}

const modulo = (v: number, step: number): number => ((v % step) + step) % step

function without(place: (b: Band) => boolean, { strip, parts }: Section): readonly CutPart[] {
  return strip.pieces.flatMap((p, i) =>
    p.poses.some((q) => place(bandOf(q, strip.width))) ? [] : [parts[i]!.part],
  )
}
