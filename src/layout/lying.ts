/**
 * A layout as it is drawn and told: every piece with its own lines where it lies on the cloth.
 * x runs along the cloth from where its section begins, y across it from the fold or the selvedge,
 * millimetres.
 */
import type { PieceId } from '../draft/piece.ts'
import { mm, type Mm } from '../units/length.ts'
import type { Cloth } from './cloth.ts'
import type { CutKind, CutPart } from './cut-part.ts'
import { lay, sectionLength, type Section } from './lay.ts'
import type { ClothLayout } from './lay-out.ts'
import { extentOf, movedOutline, type Extent, type Outline } from './outline.ts'

export interface LyingPiece {
  /** Its place in the list, by the order along the cloth. */
  readonly number: number
  readonly id: PieceId
  readonly words: string
  readonly kind: CutKind
  /** A half piece opened out and cut as one. */
  readonly whole: boolean
  readonly cut: Outline
  readonly seam: Outline
  /** Of its cutting line. */
  readonly at: Extent
  readonly onFold: boolean
  /** Its upper end towards the end of the cloth instead of its beginning. */
  readonly round: boolean
  readonly over: boolean
  /** Its grain arrow runs across the cloth: a hem on a border. */
  readonly across: boolean
}
export interface LyingSection {
  readonly layers: Section['layers']
  /** From the cut end of the cloth to where this section begins. */
  readonly start: Mm
  /** Along and across, as it lies: a crosswise fold takes twice this length. */
  readonly length: Mm
  readonly width: Mm
  /** Of a partly folded cloth: as far from the fold as it is double. */
  readonly double?: Mm
  /** What is not used along the edge, which lies beyond `width` where there is a fold. */
  readonly selvedge: Mm
  /** Where a border ends, from the selvedge that measuring begins from. */
  readonly border?: Mm
  readonly pieces: readonly LyingPiece[]
}

export function lying(
  parts: readonly CutPart[],
  cloth: Cloth,
  layout: ClothLayout,
): readonly LyingSection[] {
  const cut = linesOf(parts, cloth, layout, (p) => p.exact)
  const seams = linesOf(parts, cloth, layout, (p) => p.seam)
  let [start, number] = [0, 0]
  return layout.sections.map(({ section, layout: own }, s): LyingSection => {
    const begins = start
    const length = sectionLength(section, own.length)
    start += length * (section.layers === 'foldedAcross' ? 2 : 1)
    const pieces = own.placed.map((placed, i): Omit<LyingPiece, 'number'> => {
      const { part, whole } = section.parts[placed.piece]!
      const pose = section.strip.pieces[placed.piece]!.poses[placed.pose]!
      const line = cut[s]![i]!
      return {
        id: part.id,
        words: part.words,
        kind: part.kind,
        whole,
        cut: line,
        seam: seams[s]![i]!,
        at: extentOf(line),
        onFold: section.layers !== 'single' && pose.low === 0 && pose.high === 0,
        round: pose.round === true,
        over: pose.over === true,
        across: cloth.border !== undefined,
      }
    })
    return {
      layers: section.layers,
      start: mm(begins),
      length,
      width: mm(section.strip.width),
      ...(section.double === undefined ? {} : { double: mm(section.double) }),
      selvedge: cloth.selvedge,
      ...(cloth.border ? { border: mm(cloth.border.depth - cloth.selvedge) } : {}),
      pieces: pieces
        .sort((a, b) => a.at.left - b.at.left || a.at.low - b.at.low)
        .map((p) => ({ ...p, number: (number += 1) })),
    }
  })
}

/** Another line of every part, where the part lies: the lay is made of it and the poses are kept. */
function linesOf(
  parts: readonly CutPart[],
  cloth: Cloth,
  layout: ClothLayout,
  line: (part: CutPart) => Outline,
): readonly (readonly Outline[])[] {
  const how = lay(
    parts.map((p) => ({ ...p, outline: line(p) })),
    cloth,
    layout.manner,
  )
  if (!how.ok) throw new Error(`lying: ${how.reason}`)
  return layout.sections.map(({ layout: own }, s) =>
    own.placed.map(({ piece, pose, x, y }) =>
      movedOutline(how.sections[s]!.strip.pieces[piece]!.poses[pose]!.outline, x, y),
    ),
  )
}
