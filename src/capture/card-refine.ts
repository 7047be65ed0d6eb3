/**
 * From four rough corners to the card: its edges are placed on the light of the full-size picture,
 * and the corners are where the edges meet, so rounded corners do no harm. What comes out must
 * look like a flat card of that size seen nearly from the front, or it is refused.
 */
import { distance } from '../geometry/point.ts'
import type { Card, CardOutcome, CardSize } from './card.ts'
import { placeEdge, type EdgeFit } from './card-edge.ts'
import { likeliest, strangeness } from './card-likely.ts'
import type { Corners } from './card-marker.ts'
import { seekEdges, type SoughtEdge } from './card-seek.ts'
import {
  clockwise,
  edges,
  largeEnough,
  lay,
  LEAST_SQUEEZE,
  meeting,
  MOST_TAPER,
  scaleOf,
  taper,
} from './card-shape.ts'
import { refused, type FaultId } from './fault.ts'
import type { Grey } from './picture.ts'

/** An edge whose stations stray further than this is no straight edge. From trial. */
const MOST_RESIDUAL_PX = 0.6
/** Rivals looked at for each edge of a tapped card: a fold, a seam, a shadow may lie beside it. */
const RIVALS = 3
/** Two readings of one card that fit about as well and differ by more than this make it unsure. */
const OTHER_SCALE = 0.01
/** A reading stranger than the best by this (squared spreads, halved) is out of the question. */
const OUT_OF_QUESTION = 2.5

interface Reading {
  readonly card: Card
  readonly strange: number
}

/** @param reach how far an edge may lie from the rough corners, pixels */
export function refineCorners(
  grey: Grey,
  start: Corners,
  size: CardSize,
  reach: number,
  outside: 'lighter' | 'either',
): CardOutcome {
  const most = outside === 'either' ? RIVALS : 1
  const sought = edges(start).map(([a, b]) => seekEdges(grey, a, b, reach, outside, most))
  const readings: Reading[] = []
  let refusal: FaultId = 'edgeUnseen'
  for (const way of likeliest(choices(sought), size)) {
    const read = readWay(grey, start, size, reach, way)
    if (typeof read === 'string') refusal = read
    else readings.push(read)
  }
  readings.sort((p, q) => p.strange - q.strange)
  const [best, ...others] = readings
  if (!best) return refused(refusal)
  const away = others.flatMap(({ card, strange }) => {
    const share = Math.abs(card.mmPerPx / best.card.mmPerPx - 1)
    return strange - best.strange < OUT_OF_QUESTION && share > OTHER_SCALE ? [share] : []
  })
  const doubt = Math.max(0, ...away) / 2
  return { ok: true, card: doubt > 0 ? { ...best.card, doubt } : best.card }
}

/** Every way to take one line for each edge. */
function choices(sought: readonly (readonly SoughtEdge[])[]): (readonly SoughtEdge[])[] {
  return sought.reduce<(readonly SoughtEdge[])[]>(
    (ways, lines) => ways.flatMap((way) => lines.map((line) => [...way, line])),
    [[]],
  )
}

function readWay(
  grey: Grey,
  start: Corners,
  size: CardSize,
  reach: number,
  way: readonly SoughtEdge[],
): Reading | FaultId {
  let corners = meeting(way)
  if (!corners) return 'edgeUnseen'
  let fits: (EdgeFit | null)[] = []
  for (let turn = 0; turn < 2; turn++) {
    fits = edges(corners).map(([a, b]) => placeEdge(grey, a, b))
    corners = meeting(fits)
    if (!corners) return 'edgeUnseen'
  }
  const refined = corners
  const seen = fits.flatMap((fit) => fit ?? [])
  const residualPx = Math.sqrt(
    fits.reduce((sum, fit) => sum + (fit?.residualPx ?? Infinity) ** 2, 0) / fits.length,
  )
  if (!(residualPx < MOST_RESIDUAL_PX)) return 'edgeUnseen'
  // Across by `reach` on both edges moves their corner by that times the square root of 2.
  if (refined.some((p, i) => distance(p, start[i] ?? p) > reach * Math.SQRT2)) return 'cornerTooFar'
  if (!clockwise(refined)) return 'cornerTooFar'
  if (!largeEnough(refined)) return 'cardTooSmall'
  const laid = lay(refined, size)
  if (!laid || laid.squeeze < LEAST_SQUEEZE || taper(refined) > MOST_TAPER) return 'wrongShape'
  const { widthMm, heightMm, homography } = laid
  const mmPerPx = scaleOf(grey, refined, laid, residualPx)
  const kind = size.widthMm === size.heightMm ? 'sheet' : 'id1'
  const made = { corners: refined, widthMm, heightMm, homography, mmPerPx, residualPx } as const
  return { card: { kind, ...made }, strange: strangeness(laid.squeeze, seen, way, refined) }
}
