/** Lines inside the outline as they are drawn: the teeth of a zip, the foot of a slit, their words. */
import { pathLength } from '../../../geometry/length.ts'
import {
  endTangent,
  pathEnd,
  placeAt,
  pointAtPlace,
  tangentAtPlace,
  type Path,
} from '../../../geometry/path.ts'
import { add, between, distance, quarterTurn, scale, type Point } from '../../../geometry/point.ts'
import { line } from '../../../geometry/segment.ts'
import { pairedId, type Dart, type InnerLine, type Piece } from '../../../draft/piece.ts'
import { DRAWN_WORDS } from './piece.words.ts'

/** Teeth this far apart and this wide, pixels: told from the seam they lie on, never a thick line. */
const TOOTH = { apart: 7, wide: 7 } as const

/** Short strokes across the line, towards the inside of the piece. @param px mm under one pixel */
export function teeth({ path }: InnerLine, px: number): readonly Path[] {
  const long = pathLength(path)
  const count = Math.max(2, Math.round(long / (TOOTH.apart * px)))
  return Array.from({ length: count + 1 }, (_, i) => {
    const place = placeAt(path, (long * i) / count)
    const [at, way] = [pointAtPlace(path, place), tangentAtPlace(path, place)]
    return [line(at, add(at, scale(quarterTurn(way), TOOTH.wide * px)))]
  })
}

/** A slit ends in a short cross stroke, so that it is not cut further. */
export function slitFoot({ path }: InnerLine, px: number): Path {
  const [foot, across] = [pathEnd(path), scale(quarterTurn(endTangent(path)), 5 * px)]
  return [line(add(foot, across), add(foot, scale(across, -1)))]
}

export interface InnerWords {
  readonly words: string
  readonly at: Point
  /** Radians; never upside down. */
  readonly angle: number
  readonly anchor: 'middle' | 'start'
  /** Which of the places for such words it is. */
  readonly place: number
}

/** Along the line, the middle first. */
const PLACES = [0.5, 0.35, 0.65, 0.22, 0.78]
/** Beside the foot of a short line, or so many rows above or below it; a row in pixels. */
const ROWS = [0, -1, 1, -2, 2, -3, 3]
const ROW = 26
/** A letter of the words is so wide, pixels. */
const LETTER = 6

/**
 * The words of an inner line: along it and inside the piece where they find room, `gap` mm off;
 * a line shorter than its words has them beside its foot. @param clear what they must not lie on;
 * @param stood where they stood, while a choice is in hand
 */
export function innerWords(
  { words, path }: InnerLine,
  clear: readonly Point[],
  gap: number,
  px: number,
  stood?: InnerWords,
): InnerWords {
  const [long, wide] = [pathLength(path), words.length * LETTER * px]
  const short = long < wide
  const places = stood && (stood.anchor === 'start') === short ? [stood.place] : undefined
  if (short) {
    const foot = add(pathEnd(path), { x: gap, y: 0 })
    const row = (place: number) => add(foot, { x: 0, y: (ROWS[place] ?? 0) * ROW * px })
    const over = (at: Point): number =>
      clear.filter(
        (p) => p.x > at.x - gap && p.x < at.x + wide + gap && Math.abs(p.y - at.y) < (ROW / 2) * px,
      ).length
    const place = least(places ?? ROWS.keys(), (one) => over(row(one)))
    return { words, at: row(place), angle: 0, anchor: 'start', place }
  }
  const along = (place: number) => alongLine(path, PLACES[place] ?? 0.5, gap)
  const covers = (place: number): number => {
    const { at } = along(place)
    return clear.filter((p) => distance(p, at) < wide / 2).length
  }
  const place = least(places ?? PLACES.keys(), covers)
  return { words, ...along(place), anchor: 'middle', place }
}

/** Points the words of an inner line lie over, from end to end. */
export function innerOver({ words, at, angle, anchor }: InnerWords, px: number): Point[] {
  const way = scale({ x: Math.cos(angle), y: Math.sin(angle) }, words.length * LETTER * px)
  const from = anchor === 'start' ? at : add(at, scale(way, -0.5))
  return [0.05, 0.2, 0.35, 0.5, 0.65, 0.8, 0.95].map((share) => add(from, scale(way, share)))
}

/** The first of the places that covers least. */
function least(places: Iterable<number>, covers: (place: number) => number): number {
  let best: { readonly place: number; readonly covered: number } | undefined
  for (const place of places) {
    if (best?.covered === 0) break
    const covered = covers(place)
    if (!best || covered < best.covered) best = { place, covered }
  }
  return best?.place ?? 0
}

function alongLine(path: Path, share: number, gap: number): Pick<InnerWords, 'at' | 'angle'> {
  const place = placeAt(path, pathLength(path) * share)
  const [on, way] = [pointAtPlace(path, place), tangentAtPlace(path, place)]
  const upright = Math.abs(way.x) < UPRIGHT
  const read = (upright ? way.y > 0 : way.x < 0) ? scale(way, -1) : way
  // Inside: right of the centre, else on the right of the clockwise outline.
  const inside = Math.abs(on.x) < ON_CENTRE ? { x: 1, y: 0 } : quarterTurn(way)
  return { at: add(on, scale(inside, gap)), angle: Math.atan2(read.y, read.x) }
}
/** A line this near to upright is read from its foot upwards. */
const UPRIGHT = 0.3
/** Nearer to x = 0 than this a line lies on the centre, mm. */
const ON_CENTRE = 1

/** The middle line of a dart, to where its lower legs end. */
export const dartMiddle = (d: Dart): Path => {
  const mouth = between(d.inner, d.outer, 0.5)
  const foot = d.open ? between(d.open.inner, d.open.outer, 0.5) : d.lowerTip
  return [line(d.upperTip, mouth), line(mouth, foot)]
}

/** What a centre that is not on the fold is called along its line; undefined on a faced edge. */
export function centreWords({ id, edges }: Piece): string | undefined {
  const centre = edges.find((e) => e.name === 'centre')
  if (!centre) return undefined
  if (centre.role === 'fold') return DRAWN_WORDS.onFold
  return pairedId(id) === 'back' && centre.role === 'seam' ? DRAWN_WORDS.centreBackSeam : undefined
}
