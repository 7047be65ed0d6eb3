/**
 * How a layout looked when it was kept: the cutting lines where they lay, to the millimetre. Once the
 * draft is another one its pieces are gone, and this is all there is to look back at; nothing is cut by it.
 */
import type { PieceId } from '../draft/piece.ts'
import { PIECE_WORDS } from '../draft/piece.words.ts'
import { capital } from '../units/capital.ts'
import type { LyingPiece, LyingSection } from './lying.ts'
import { extentOf, outlineOf, type Outline } from './outline.ts'
import { thinned } from './thinned.ts'

export interface PicturePiece extends Pick<LyingPiece, 'kind' | 'whole' | 'onFold' | 'across'> {
  readonly id: PieceId
  /** Its cutting line: along and across, corner by corner, whole mm. */
  readonly cut: readonly number[]
}
/** A section as it was drawn, its pieces in the order of their numbers. */
export interface PictureSection extends Omit<LyingSection, 'pieces'> {
  readonly pieces: readonly PicturePiece[]
}

/** So far a line may leave the cutting line it stands for, mm: a third of a pixel on a screen. */
const COARSE = 1.5

export const pictureOf = (sections: readonly LyingSection[]): readonly PictureSection[] =>
  sections.map(({ pieces, ...section }) => ({
    ...section,
    pieces: pieces.map(({ id, kind, whole, onFold, across, cut }) => ({
      ...{ id, kind, whole, onFold, across },
      cut: [...thinned(cut, COARSE)].map(Math.round),
    })),
  }))

export function picturedSections(picture: readonly PictureSection[]): readonly LyingSection[] {
  let number = 0
  return picture.map((section) => ({
    ...section,
    pieces: section.pieces.map((p): LyingPiece => {
      const cut = ringOf(p.cut)
      return {
        ...p,
        number: (number += 1),
        words: capital(PIECE_WORDS[p.id]),
        cut,
        seam: new Float64Array(),
        at: extentOf(cut),
        round: false,
        over: false,
      }
    }),
  }))
}

const ringOf = (flat: readonly number[]): Outline =>
  outlineOf(
    Array.from({ length: flat.length / 2 }, (_, i): [number, number] => [
      flat[2 * i]!,
      flat[2 * i + 1]!,
    ]),
  )
