/**
 * Where stripes and checks are matched. A piece is laid with one point on the stripe; its seam
 * meets the partner at other points too, and how far those miss is told. Rule: one named level of
 * the side seam lies on the same stripe on every half; sleeve and skirt follow from the front.
 * Common practice of dressmaking handbooks.
 */
import { isSkirt, pairedId, type LevelName, type Piece } from '../draft/piece.ts'
import { pathEnd, pathStart } from '../geometry/path.ts'
import type { Point } from '../geometry/point.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm } from '../units/length.ts'
import type { MatchAt } from './cloth-wishes.ts'
import { MISSED_WORDS } from './cloth.words.ts'
import type { CutPart } from './cut-part.ts'

export interface Match {
  /** The level; of a sleeve the point at its underarm. */
  readonly at: MatchAt | 'sleeve'
  readonly along: number
  readonly across: number
  /** How far after the stripe the rest of the garment is matched to this point lies. */
  readonly lag: number
}
/** A level of a piece and where it lies along the grain. */
export interface MatchPoint {
  readonly at: MatchAt
  readonly along: number
}

/** The levels of its side seam, from the top down; of a sleeve its underarm. */
export function matchPoints(
  piece: Piece,
  lie: (p: Point) => readonly [number, number],
): readonly MatchPoint[] {
  const id = pairedId(piece.id)
  const level = (name: LevelName) => piece.levels.find((l) => l.name === name)?.from
  if (id === 'sleeve') {
    const width = level('widthOfTheSleeve')
    return width ? [{ at: 'underarm', along: lie({ x: 0, y: width.y })[0] }] : []
  }
  const side = piece.edges.find((e) => e.name === 'side')
  const skirt = isSkirt(piece.id)
  if (!side || !(id === 'back' || id === 'front' || skirt)) return []
  const ends = [pathStart(side.path), pathEnd(side.path)].map((p) => lie(p)[0])
  const [top, foot] = [Math.min(...ends), Math.max(...ends)]
  const waist = level('waistLine')
  const hem = piece.edges.some((e) => e.name === 'hem')
  return [
    { at: skirt ? 'waist' : 'underarm', along: top },
    // A bodice that ends at the waist meets its skirt there.
    ...(skirt || !hem
      ? []
      : waist
        ? [{ at: 'waist' as const, along: lie({ x: 0, y: waist.y })[0] }]
        : []),
    { at: hem ? 'hem' : 'waist', along: foot },
  ]
}

const alongOf = (part: CutPart | undefined, at: MatchAt): number | undefined =>
  part?.levels?.find((l) => l.at === at)?.along

/** Every part with its match point: the level asked for, or the one it has, as far off on the front. */
export function matched(parts: readonly CutPart[], at: MatchAt): readonly CutPart[] {
  const front = parts.find((p) => pairedId(p.id) === 'front')
  return parts.map((p) => {
    const own = p.levels?.find((l) => l.at === at) ?? p.levels?.[0]
    if (!own) return p
    const [here, asked] = [alongOf(front, own.at), alongOf(front, at)]
    const lag = own.at === at || here === undefined || asked === undefined ? 0 : here - asked
    const level = pairedId(p.id) === 'sleeve' ? 'sleeve' : own.at
    return { ...p, match: { at: level, along: own.along, across: 0, lag } }
  })
}

export interface Missed {
  readonly at: MatchAt
  readonly skirt: boolean
  /** How far the stripes of back and front miss each other there, mm; 0 where they meet. */
  readonly off: number
}

/** Back against front at every level both have: matched at one, how far the others miss. */
export function missedAt(parts: readonly CutPart[], repeat: number): readonly Missed[] {
  const of = (id: string) => parts.find((p) => pairedId(p.id) === id)
  return [
    [of('back'), of('front')],
    [of('skirtBack'), of('skirtFront')],
  ].flatMap(([back, front], i): Missed[] => {
    if (!back?.match || !front?.match) return []
    const from = (p: CutPart, along: number) => along - p.match!.along + p.match!.lag
    return (front.levels ?? []).flatMap((l) => {
      const other = alongOf(back, l.at)
      if (other === undefined) return []
      const gap = from(front, l.along) - from(back, other)
      const off = Math.abs(gap - repeat * Math.round(gap / repeat))
      return [{ at: l.at, skirt: i === 1, off }]
    })
  })
}

/** Under half a millimetre two stripes meet. */
const MEET = 0.5

/** "Stripes meet at the waist at the side. They miss by 0.4 cm at the underarm at the side." */
export function missedSentence(missed: readonly Missed[], units: UnitChoice): string {
  const meet = missed.filter(({ off }) => off < MEET)
  const miss = missed
    .filter(({ off }) => off >= MEET)
    .map((m) => ({ ...m, by: formatLength(mm(m.off), units) }))
  return [
    ...(meet.length > 0 ? [MISSED_WORDS.meet(meet)] : []),
    ...(miss.length > 0 ? [MISSED_WORDS.miss(miss), MISSED_WORDS.choose] : []),
  ].join(' ')
}
