/** All garments by their ids, and the two halves of making a draft: drawn, then whole and proved. */
import type { Body } from '../measurements/confirmed.ts'
import { boxOf } from '../geometry/box.ts'
import { point } from '../geometry/point.ts'
import { standardChoices, type Choices } from './choices.ts'
import type { Draft, GarmentId } from './draft.ts'
import type { DrawnPiece, Garment } from './garment.ts'
import { BLOUSE } from './garments/blouse.ts'
import type { EdgeName, Piece } from './piece.ts'
import type { Sheet } from './sheet.ts'

export const GARMENTS: Readonly<Record<GarmentId, Garment>> = { blouse: BLOUSE }
export const isGarmentId = (name: string): name is GarmentId => Object.hasOwn(GARMENTS, name)

/** The standard of every choice for one garment. */
export const standardFor = (garment: GarmentId): Choices => ({
  ...standardChoices(),
  ...GARMENTS[garment].standard,
})

export const draft = (garment: GarmentId, body: Body, choices: Choices): Draft =>
  proved(drawn(garment, body, choices))

/** The pieces as constructed, not yet proved: for corrections, which prove once at the end. */
export function drawn(garment: GarmentId, body: Body, choices: Choices): Draft {
  const list = GARMENTS[garment].draw(body, choices)
  return {
    garment,
    body,
    choices,
    pieces: list.map(finished),
    openings: [],
    steps: list.flatMap(({ sheet }) => sheet.steps),
    restsOn: Object.fromEntries(list.flatMap(({ sheet }) => provenance(sheet))),
    findings: [],
  }
}

/**
 * The same draft made whole and proved: openings, finishing pieces and findings, all from the
 * halves as they stand. Once, after the last correction.
 */
export function proved(d: Draft): Draft {
  const { complete, prove } = GARMENTS[d.garment]
  const whole = complete(d)
  return { ...whole, findings: prove(whole) }
}

/** The outline is closed clockwise in this order, whatever the order of the steps. */
const ORDER: readonly EdgeName[] = ['neck', 'overarm', 'sleeveEdge', 'side', 'hem', 'centre']

function finished({ sheet, words, cutting }: DrawnPiece): Piece {
  const edges = [...sheet.edges].sort((a, b) => ORDER.indexOf(a.name) - ORDER.indexOf(b.name))
  const box = boxOf(edges.map((e) => e.path))
  const x = box.right * GRAIN_ACROSS
  return {
    id: sheet.piece,
    words,
    cutting,
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

const provenance = (sheet: Sheet): [string, readonly string[]][] =>
  Object.entries(sheet.provenance).map(([name, list]) => [`${sheet.piece}.${name}`, list])
