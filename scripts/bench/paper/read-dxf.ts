/**
 * The DXF read back by a reader of another project (dxf-parser), every boundary and sewn line
 * against the curves of the draft as bezier-js and plain trigonometry draw them.
 */
import DxfParser, { type IEntity } from 'dxf-parser'
import { cuttingLine, MUSLIN_ALLOWANCES } from '../../../src/output/allowance.ts'
import { allowancesFor, hemTurnedTwice, usualFinishes } from '../../../src/output/finishes.ts'
import { DXF_LAYERS, draftDxf } from '../../../src/output/dxf.ts'
import { GARMENTS, isGarmentId, standardFor } from '../../../src/draft/garments.ts'
import { draft } from '../../../src/draft/make.ts'
import type { Draft } from '../../../src/draft/draft.ts'
import type { Path } from '../../../src/geometry/path.ts'
import type { Mm } from '../../../src/units/length.ts'
import type { Allowances } from '../../../src/output/allowance.ts'
import { body, INVENTED_BODIES } from '../../../tests/bodies.ts'
import { edgeErrors } from '../../../tests/output/edge-errors.ts'
import { chordsOf, nearestOn, type Spot } from '../../../tests/output/reference-offset.ts'

export interface DxfFigures {
  readonly pieces: number
  /** Points of the file that were compared. */
  readonly points: number
  readonly bytes: number
  /** Farthest a written point lies from its curve, and the curve from the written chords, mm. */
  readonly worstPointMm: number
  readonly worstCurveMm: number
}
export interface AllowanceFigures {
  readonly edges: number
  /** Error in the middle of an edge, and how much too near to its seam line anywhere on it, mm. */
  readonly middleMm: number
  readonly shortMm: number
}

/** Chords of the reference; none is farther from its curve than about a micrometre. */
const FINE = 400
const CHECKED = 24

/** Every garment on every invented body, with the usual finishes of muslin and of cloth. */
export function dxfFigures(): { readonly dxf: DxfFigures; readonly allowance: AllowanceFigures } {
  let [pieces, points, bytes, worstPointMm, worstCurveMm] = [0, 0, 0, 0, 0]
  let [edges, middleMm, shortMm] = [0, 0, 0]
  for (const { made, allowances, hemDepth } of cases()) {
    const text = draftDxf(made, { allowances, hemDepth })
    bytes = Math.max(bytes, text.length)
    const file = new DxfParser().parseSync(text)
    for (const piece of made.pieces) {
      const entities = file?.blocks[piece.id.toUpperCase()]?.entities
      const cut = cuttingLine(piece, allowances, hemDepth)
      if (!entities || !cut.ok) throw new Error(`bench: no ${piece.id} in the file`)
      pieces += 1
      const [boundary] = linesOn(entities, DXF_LAYERS.boundary.name)
      const sewn = [
        ...linesOn(entities, DXF_LAYERS.sew.name),
        ...linesOn(entities, DXF_LAYERS.mirror.name),
      ]
      if (!boundary) throw new Error(`bench: ${piece.id} has no boundary`)
      const pairs: readonly (readonly [Spot[], Path])[] = [
        [[...boundary, boundary[0] ?? { x: NaN, y: NaN }], cut.path],
        ...piece.edges.map((e) => [nearestLine(sewn, e.path), e.path] as const),
      ]
      for (const [written, path] of pairs) {
        const curve = chordsOf(path, FINE)
        points += written.length
        for (const p of written) worstPointMm = Math.max(worstPointMm, nearestOn(curve, p).distance)
        for (const p of chordsOf(path, CHECKED))
          worstCurveMm = Math.max(worstCurveMm, nearestOn(written, p).distance)
      }
      const errors = edgeErrors(piece, allowances, hemDepth)
      edges += piece.edges.length
      middleMm = Math.max(middleMm, errors.middle)
      shortMm = Math.max(shortMm, errors.short)
    }
  }
  return {
    dxf: { pieces, points, bytes, worstPointMm, worstCurveMm },
    allowance: { edges, middleMm, shortMm },
  }
}

interface Case {
  readonly made: Draft
  readonly allowances: Allowances
  readonly hemDepth: Mm | undefined
}
function* cases(): Generator<Case> {
  for (const garment of Object.keys(GARMENTS).filter(isGarmentId))
    for (const [, numbers] of INVENTED_BODIES) {
      const made = draft(garment, body({}, numbers), standardFor(garment))
      yield { made, allowances: MUSLIN_ALLOWANCES, hemDepth: undefined }
      const finishes = usualFinishes('cloth', made.pieces)
      yield { made, allowances: allowancesFor(finishes), hemDepth: hemTurnedTwice(finishes) }
    }
}

/** Lines and polylines of a layer, y down as it is drawn. */
const linesOn = (entities: readonly IEntity[], layer: string): Spot[][] =>
  entities
    .filter((e): e is IEntity & { vertices: Spot[] } => e.layer === layer && 'vertices' in e)
    .map((e) => e.vertices.map(({ x, y }) => ({ x, y: -y })))

/** The one of the written lines that lies on this edge. */
function nearestLine(lines: readonly Spot[][], path: Path): Spot[] {
  const curve = chordsOf(path, CHECKED)
  const far = (written: readonly Spot[]): number =>
    Math.max(
      ...[0, 0.5, 1].map((share) => {
        const p = written[Math.round(share * (written.length - 1))]
        return p ? nearestOn(curve, p).distance : Infinity
      }),
    )
  const [best] = [...lines].sort((a, b) => far(a) - far(b))
  if (!best) throw new Error('bench: no sewn lines')
  return best
}
