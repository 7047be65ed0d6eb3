/**
 * What is bought besides cloth: zip, bias strip, buttons, thread, tape. Counted from the garment's
 * own openings, edges and seams.
 */
import type { Draft } from '../draft/draft.ts'
import type { Opening } from '../draft/opening.ts'
import { edge, pairedId, type PairedId, type Piece } from '../draft/piece.ts'
import { pathLength } from '../geometry/length.ts'
import type { PlanStep } from '../output/plan-step.ts'
import { inches, mm, type Mm } from '../units/length.ts'

export type Notion =
  /** `sold` is what to ask for in the shop. */
  | { readonly kind: 'zip'; readonly count: number; readonly length: Mm; readonly sold: Mm }
  /** `square` is the side of a square that gives it in one piece. */
  | { readonly kind: 'biasStrip'; readonly length: Mm; readonly square: Mm }
  | { readonly kind: 'buttons' | 'loopButton' | 'cuffButtons'; readonly count: number }
  /** `count` reels. */
  | { readonly kind: 'thread'; readonly length: Mm; readonly count: number }

/** Lengths zips are sold in: every 50 mm, or 7 to 24 in as on the cards. Common practice, no source. */
const ZIPS = {
  metre: Array.from({ length: 11 }, (_, i) => mm(100 + 50 * i)),
  yard: [7, 9, 12, 14, 16, 18, 20, 22, 24].map(inches),
} as const
export type SoldIn = keyof typeof ZIPS

/** The next longer one: a zip is shortened, never stretched. The longest there is otherwise. */
export const zipSold = (opening: Mm, soldIn: SoldIn): Mm =>
  ZIPS[soldIn].find((z) => z >= opening - 1e-6) ?? ZIPS[soldIn].at(-1)!

/** Buttons of a blouse stand about so far apart, mm. Common practice, no source. */
const BUTTONS_APART = 85
/** The lowest so far above the hem, so that it does not lie in the hem. Common practice, no source. */
const LOWEST_ABOVE_HEM = 90

/** Levels of the buttons below the top of the opening: evenly, the first half a button down. */
export function buttonPlaces(opening: Mm, diameter: Mm): readonly Mm[] {
  const [first, last] = [diameter, opening - LOWEST_ABOVE_HEM]
  const spaces = Math.max(1, Math.round((last - first) / BUTTONS_APART))
  return Array.from({ length: spaces + 1 }, (_, i) => mm(first + (i * (last - first)) / spaces))
}

/** Strips cut and joined: how long in all, and the square that gives them. */
export interface BiasAmount {
  readonly length: Mm
  readonly width: Mm
  /** Side of a square cut into one continuous strip. */
  readonly square: Mm
}
/** Of a join of two bias strips. Public lessons on bias strips: 1/4 in. */
export const BIAS_SEAM = inches(1 / 4)
/** The two seams that make a tube of the square. */
const TUBE_SEAMS = mm(2 * BIAS_SEAM)
/**
 * side = √(length × width) and the seams of the tube. Source: public lessons on continuous bias
 * strip: 250 in of 2 in, 22.4, cut 23 in; 98 in of 1 in with two seams of 1/4 in, 10.4 in.
 */
export const biasSquare = (length: Mm, width: Mm): Mm => mm(Math.sqrt(length * width) + TUBE_SEAMS)

export function biasAmount(pieces: readonly Piece[]): BiasAmount | undefined {
  const strips = pieces.filter(
    (p) => p.edges.some((e) => e.name === 'start') && p.cut.how === 'trueBias',
  )
  if (strips.length === 0) return undefined
  const long = (p: Piece): number => pathLength(edge(p, 'neck').path)
  const width = mm(Math.max(...strips.map((p) => pathLength(edge(p, 'start').path))))
  const length = mm(strips.reduce((sum, p) => sum + p.cut.count * long(p), 0))
  return { length, width, square: biasSquare(length, width) }
}

/**
 * Thread a stitch type takes for each length of seam: lockstitch 2.5 (stitch type 301), zigzag over
 * an edge 7 (304): consumption tables of the trade, from memory. A fifth more for ends and tacking:
 * common practice, no source.
 */
const LOCKSTITCH = 2.5
const OVERCAST = 7
const SPARE = 1.2
/** Sold on reels of 100 m. */
export const REEL = mm(100_000)

/** Of everything that is sewn along a length the plan knows. */
export function threadLength(plan: readonly PlanStep[]): Mm {
  const rows = plan.reduce((sum, { long = 0, times = 1, thread }) => {
    const { rows, overcast } = thread ?? { rows: 0, overcast: 0 }
    return sum + long * times * (rows * LOCKSTITCH + overcast * OVERCAST)
  }, 0)
  return mm(rows * SPARE)
}

export function notions(
  draft: Draft,
  plan: readonly PlanStep[],
  soldIn: SoldIn,
): readonly Notion[] {
  const bias = biasAmount(draft.pieces)
  const thread = threadLength(plan)
  return [
    ...draft.openings.flatMap((o) => ofOpening(o, draft, soldIn)),
    ...ofSleeves(draft.pieces),
    ...(bias ? [{ kind: 'biasStrip', length: bias.length, square: bias.square } as const] : []),
    { kind: 'thread', length: thread, count: Math.ceil(thread / REEL) },
  ]
}

/** A button for each slit: on the cuff where there is one, else with a loop at the hem. */
function ofSleeves(pieces: readonly Piece[]): readonly Notion[] {
  const many = (id: PairedId): number =>
    pieces.reduce((sum, p) => sum + (pairedId(p.id) === id ? p.cut.count : 0), 0)
  const slits = many('sleeveBinding')
  if (slits === 0) return []
  return [{ kind: many('cuff') > 0 ? 'cuffButtons' : 'loopButton', count: slits }]
}

function ofOpening(o: Opening, draft: Draft, soldIn: SoldIn): readonly Notion[] {
  const length = mm(o.to - o.from)
  switch (o.kind) {
    case 'sideZip':
    case 'backZip':
      return [{ kind: 'zip', count: 1, length, sold: zipSold(length, soldIn) }]
    case 'buttonedFront': {
      // A button no wider than the overlap beyond the centre line: common practice, no source.
      const places = buttonPlaces(length, draft.choices.buttonOverlap)
      return [{ kind: 'buttons', count: places.length }]
    }
    case 'keyhole':
    case 'neckSlit':
      return [{ kind: 'loopButton', count: 1 }]
  }
}
