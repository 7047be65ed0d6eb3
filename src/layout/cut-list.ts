/**
 * Cut list, marking list and interfacing, from the pieces as they are. What is marked is what is
 * drawn on a piece: nothing here invents a mark.
 */
import { pairedId, type Piece } from '../draft/piece.ts'
import { cuttingSaid } from '../draft/piece.words.ts'
import type { DisplayUnit, UnitChoice } from '../units/format.ts'
import { inches, mm, type Mm } from '../units/length.ts'
import { lengthsIn } from '../units/lengths-in.ts'
import { plainCloth } from './cloth.ts'
import { MARKING_WORDS } from './cloth.words.ts'
import { areaCut, type CutPart } from './cut-part.ts'
import { layOut } from './lay-out.ts'

export interface CutListRow {
  readonly piece: Piece['id']
  readonly words: string
  readonly cut: string
  /** As many of interfacing; 0 where none is wanted. */
  readonly interfacing: number
}

/** Shaped facings and cuffs are interfaced; strips never: common practice, no source. */
const isCuff = (id: Piece['id']): boolean => pairedId(id) === 'cuff'
const interfaced = (id: Piece['id']): boolean => isCuff(id) || /Facing$/.test(pairedId(id))

export const cutList = (
  pieces: readonly Piece[],
  parts: readonly CutPart[],
): readonly CutListRow[] =>
  pieces.map((p) => ({
    piece: p.id,
    words: p.words,
    cut: cuttingSaid(p.cut),
    interfacing: interfaced(p.id) ? (parts.find((q) => q.id === p.id)?.count ?? 0) : 0,
  }))

export interface MarkingRow {
  readonly piece: Piece['id']
  readonly words: string
  readonly marks: readonly string[]
}

/** Notches come with the cutting line; here is what is marked inside it. */
export const markingList = (pieces: readonly Piece[], units: UnitChoice): readonly MarkingRow[] =>
  pieces.flatMap((p) => {
    const marks = [
      ...p.darts.map((d) => MARKING_WORDS.diamond(d.name)),
      ...p.edgeDarts.map((d) => MARKING_WORDS.edgeDart(d.name, d.edge)),
      ...p.inner.map((i) => lengthsIn(i.words, units)),
      ...(p.points['apex'] ? [MARKING_WORDS.apex] : []),
      ...p.edges.flatMap((e) =>
        e.name === 'centre' && e.role === 'fold' ? [MARKING_WORDS.centre] : [],
      ),
    ]
    return marks.length > 0 ? [{ piece: p.id, words: p.words, marks }] : []
  })

/** Interfacing is sold narrow; 90 cm or 36 in are usual. Common practice, no source. */
const INTERFACING_WIDTH: Readonly<Record<DisplayUnit, Mm>> = { cm: mm(900), inch: inches(36) }
const TRIES = 20_000

export interface Interfacing {
  /** Length on a double layer of the usual width, as laid out; 0 where nothing is interfaced. */
  readonly length: Mm
  readonly width: Mm
  /** mm² of the pieces themselves, each as often as it is cut. */
  readonly area: number
  readonly of: 'facings' | 'cuffs' | 'both'
}

export function interfacing(parts: readonly CutPart[], unit: DisplayUnit): Interfacing {
  const width = INTERFACING_WIDTH[unit]
  const facings = parts.filter((p) => interfaced(p.id)).map(({ match: _match, ...p }) => p)
  const area = areaCut(facings)
  const cuffs = facings.filter((p) => isCuff(p.id)).length
  const of = cuffs === 0 ? 'facings' : cuffs === facings.length ? 'cuffs' : 'both'
  if (facings.length === 0) return { length: mm(0), width, area, of }
  const cloth = { ...plainCloth(width), selvedge: mm(0) }
  const lengths = (['lengthwise', 'single'] as const).flatMap((manner) => {
    const out = layOut(facings, cloth, manner, { seed: 1, spent: (done) => done / TRIES })
    return out.ok ? [out.layout.length] : []
  })
  return { length: mm(lengths.length > 0 ? Math.min(...lengths) : area / width), width, area, of }
}
