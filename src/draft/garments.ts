/** Each garment: what it needs to be taped, and the construction that draws it. */
import type { MeasurementId } from '../measurements/catalogue.ts'
import type { Body } from '../measurements/confirmed.ts'
import { boxOf } from '../geometry/box.ts'
import { point } from '../geometry/point.ts'
import { BLOUSE_NEEDS, BLOUSE_USES, drawBlouse } from './blocks/draped-blouse.ts'
import type { Choices } from './choices.ts'
import { completed } from './completed.ts'
import type { Draft, GarmentId } from './draft.ts'
import type { Piece, PieceId } from './piece.ts'
import { prove } from './proof.ts'
import type { Sheet } from './sheet.ts'

export interface Garment {
  readonly id: GarmentId
  readonly name: string
  /** Without these nothing is drawn. */
  readonly needs: readonly MeasurementId[]
  /** Used when taped; what happens otherwise is a finding. */
  readonly uses: readonly MeasurementId[]
}

export const GARMENTS: Readonly<Record<GarmentId, Garment>> = {
  blouse: { id: 'blouse', name: 'Draped-sleeve blouse', needs: BLOUSE_NEEDS, uses: BLOUSE_USES },
}
export const isGarmentId = (name: string): name is GarmentId => Object.hasOwn(GARMENTS, name)

export const draft = (garment: GarmentId, body: Body, choices: Choices): Draft =>
  proved(drawn(garment, body, choices))

/** The pieces as constructed, not yet proved: for corrections, which prove once at the end. */
export function drawn(garment: GarmentId, body: Body, choices: Choices): Draft {
  switch (garment) {
    case 'blouse': {
      const { back, front } = drawBlouse(body, choices)
      return {
        garment,
        body,
        choices,
        pieces: [finished(back, 'Back, half'), finished(front, 'Front, half')],
        openings: [],
        steps: [...back.steps, ...front.steps],
        restsOn: { ...provenance(back), ...provenance(front) },
        findings: [],
      }
    }
  }
}

/**
 * The same draft made whole and proved: openings, finishing pieces and findings, all from the
 * halves as they stand. Once, after the last correction.
 */
export function proved(d: Draft): Draft {
  const whole = completed(d)
  return { ...whole, findings: prove(whole) }
}

function finished(sheet: Sheet, words: string): Piece {
  // The outline is closed clockwise in this order, whatever the order of the steps.
  const order = ['neck', 'overarm', 'sleeveEdge', 'side', 'hem', 'centre']
  const edges = [...sheet.edges].sort((a, b) => order.indexOf(a.name) - order.indexOf(b.name))
  const box = boxOf(edges.map((e) => e.path))
  const x = box.right * GRAIN_ACROSS
  return {
    id: sheet.piece,
    words,
    cutting: 'Cut 1 on the fold',
    edges,
    darts: sheet.darts,
    edgeDarts: sheet.edgeDarts,
    inner: [],
    points: sheet.points,
    levels: sheet.levels(box.right),
    grain: { from: point(x, box.bottom * 0.35), to: point(x, box.bottom * 0.75) },
  }
}
/** The grain line stands between the fold and the dart, where nothing else is drawn. */
const GRAIN_ACROSS = 0.12

const provenance = (sheet: Sheet): Record<string, readonly string[]> =>
  Object.fromEntries(
    Object.entries(sheet.provenance).map(([name, list]) => [placeName(sheet.piece, name), list]),
  )
const placeName = (piece: PieceId, name: string): string => `${piece}.${name}`
