/**
 * Sewn ease: what the finished garment measures round the body less the body, level by level,
 * beside what published tables and books give for woven cloth.
 */
import { knows, lengthOf, type Body } from '../measurements/confirmed.ts'
import type { MeasurementId } from '../measurements/catalogue.ts'
import { crossings } from '../geometry/intersect.ts'
import { distance, point, type Point } from '../geometry/point.ts'
import { line, type Line } from '../geometry/segment.ts'
import { mm, type Mm } from '../units/length.ts'
import { pieceOf, type Draft } from './draft.ts'
import { EASE_BAND_WORDS } from './ease.words.ts'
import { edge, sewnLength, type Piece } from './piece.ts'
import { dartLegs, edgeDartLegs } from './sheet.ts'

export type EaseLevel = 'bust' | 'waist' | 'highHip' | 'hip'

export interface SewnEase {
  readonly level: EaseLevel
  readonly body: Mm
  /** Round the sewn garment, darts and centre seam taken away. */
  readonly sewn: Mm
  readonly ease: Mm
}

const GIRTH: Readonly<Record<EaseLevel, MeasurementId>> = {
  bust: 'bustGirth',
  waist: 'waistGirth',
  highHip: 'highHipGirth',
  hip: 'hipGirth',
}

/** Ease for woven blouses round the body, mm, from published sources; a span from least to most. */
export interface EaseBand {
  readonly words: string
  readonly source: string
  readonly spans: Readonly<Partial<Record<EaseLevel, readonly [number, number]>>>
}
export const EASE_BANDS: readonly EaseBand[] = [
  {
    ...EASE_BAND_WORDS.fittedBodice,
    spans: { bust: [40, 60], waist: [20, 40], hip: [40, 60] },
  },
  {
    ...EASE_BAND_WORDS.shirt,
    spans: { bust: [60, 100], waist: [40, 80], hip: [60, 100] },
  },
  {
    ...EASE_BAND_WORDS.blouse,
    spans: { bust: [76, 102] },
  },
  {
    ...EASE_BAND_WORDS.costume,
    spans: { bust: [38, 51], waist: [19, 25], hip: [51, 70] },
  },
]

/** Levels the garment reaches and the tape has measured; half from either side where they differ. */
export function sewnEase(d: Draft): SewnEase[] {
  if (!d.sides) return easeOf(d)
  const right = easeOf(d.sides.right)
  return easeOf(d.sides.left).flatMap((l) => {
    const r = right.find(({ level }) => level === l.level)
    if (!r) return []
    const sewn = (l.sewn + r.sewn) / 2
    return [{ ...l, sewn: mm(sewn), ease: mm(sewn - l.body) }]
  })
}

function easeOf(d: Draft): SewnEase[] {
  const part = (level: EaseLevel, half: 'back' | 'front'): Piece => {
    const skirt = d.pieces.find((p) => p.id === (half === 'back' ? 'skirtBack' : 'skirtFront'))
    return skirt && BELOW_WAIST.includes(level) ? skirt : pieceOf(d, half)
  }
  return (['bust', 'waist', 'highHip', 'hip'] as const).flatMap((level) => {
    const id = GIRTH[level]
    if (!knows(d.body, id)) return []
    const [b, f] = [
      widthAt(part(level, 'back'), level, d.body),
      widthAt(part(level, 'front'), level, d.body),
    ]
    if (b === undefined || f === undefined) return []
    const sewn = 2 * (b + f)
    const girth = lengthOf(d.body, id)
    return [{ level, body: girth, sewn: mm(sewn), ease: mm(sewn - girth) }]
  })
}

const BELOW_WAIST: readonly EaseLevel[] = ['highHip', 'hip']

/** Sewn width of a half piece at a level of the body; undefined when the hem lies above it. */
function widthAt(piece: Piece, level: EaseLevel, body: Body): number | undefined {
  if (level === 'waist' && piece.edges.some((e) => e.name === 'waist'))
    return sewnLength(piece, 'waist')
  const y = levelOf(piece, level, body)
  const hem = piece.points['L'] ?? (level === 'bust' ? piece.points['C'] : undefined)
  if (y === undefined || !hem || y > hem.y + HEM_SLACK) return undefined
  // A side turned by a correction leaves the level of the fold: the crossing is taken where it lies.
  const cut = line(point(-REACH, y), point(REACH, y))
  const x = (path: Parameters<typeof crossings>[0]): number[] =>
    crossings(path, cut).map(({ at }) => at.x)
  const outer = Math.max(...x(edge(piece, 'side').path))
  const inner = Math.max(0, ...x(edge(piece, 'centre').path).filter((v) => v < outer / 2))
  if (!Number.isFinite(outer)) return undefined
  const legs = [
    ...piece.darts.map(dartLegs),
    ...piece.edgeDarts.filter((d) => d.edge === 'waist').map(edgeDartLegs),
  ]
  const darts = legs.reduce((sum, l) => sum + openAt(l, cut), 0)
  return outer - inner - darts
}
const REACH = 3000
const HEM_SLACK = 0.01

function levelOf(piece: Piece, level: EaseLevel, body: Body): number | undefined {
  const [u, c, h] = [piece.points['U'], piece.points['C'], piece.points['H']]
  switch (level) {
    case 'bust':
      return u && u.y + 0.01
    case 'waist':
      return c?.y
    case 'highHip':
      return c && knows(body, 'waistToHighHip') ? c.y + lengthOf(body, 'waistToHighHip') : undefined
    case 'hip':
      return h?.y
  }
}

function openAt(legs: readonly Line[], cut: Line): number {
  const hits: Point[] = legs.flatMap((leg) => crossings([leg], cut).map(({ at }) => at))
  const [first, ...rest] = hits.sort((a, b) => a.x - b.x)
  const last = rest.at(-1)
  return first && last ? distance(first, last) : 0
}
