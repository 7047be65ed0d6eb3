/**
 * A layout as it is kept with the garment: which way the cloth lies and where each piece lies on it,
 * not the pieces. They are cut anew from the draft; where anything that the layout follows from is
 * another now, its mark is another, and it is told as out of date and drawn as it looked.
 */
import { contentId } from '../output/content-id.ts'
import type { Mm } from '../units/length.ts'
import type { Cloth } from './cloth.ts'
import type { CutPart } from './cut-part.ts'
import type { PictureSection } from './kept-picture.ts'
import type { ClothLayout } from './lay-out.ts'
import { lay, MANNERS, type Manner } from './lay.ts'
import type { Match } from './match.ts'
import type { MannerTried } from './search-widths.ts'
import { isSound } from './sound.ts'
import type { Layout } from './strip.ts'

export interface KeptSection {
  readonly length: Mm
  /** Piece of the strip, its pose, along and across, mm. */
  readonly placed: readonly (readonly [piece: number, pose: number, x: number, y: number])[]
}
export interface KeptLayout {
  readonly width: Mm
  readonly mark: string
  readonly on: string
  /** Places tried for it so far; the search goes on where that is less than is asked. */
  readonly tries: number
  readonly manner: Manner
  readonly length: Mm
  readonly sections: readonly KeptSection[]
  /** How long the other ways were; one that is missing could not be laid. */
  readonly tried: Readonly<Partial<Record<Manner, Mm>>>
  /** How it looked, for the day its pieces are others; rows from before have none. */
  readonly drawn?: readonly PictureSection[]
}

/** Marks were first made from these words; they stay, so that what was kept is known again. */
/* eslint-disable words/apart -- hashed, never read */
const KEPT_AS = {
  waist: 'waist at the side',
  underarm: 'underarm at the side',
  hem: 'hem at the side',
  sleeve: 'underarm point',
}
/* eslint-enable words/apart */
const lying = ({ along, across, lag }: Match) => ({ along, across, lag })

/** What a layout follows from, as a mark: the pieces to a hundredth of a millimetre, the cloth, the wish. */
export const layMark = (
  parts: readonly CutPart[],
  cloth: Cloth,
  wanted: Manner | 'shortest',
): string =>
  contentId(
    JSON.stringify([
      parts.map(({ id, kind, count, outline, match, hem }) => [
        id,
        kind,
        count,
        [...outline].map((v) => v.toFixed(2)).join(' '),
        match ? { words: KEPT_AS[match.at], ...lying(match) } : null,
        hem ?? null,
      ]),
      // What it shrinks along the cloth is reckoned with the amount and moves no piece.
      { ...cloth, shrinkAlong: 0 },
      wanted,
    ]),
  )

/** Of these pieces on this cloth, whichever way it was to lie. */
export const isOf = ({ mark }: KeptLayout, parts: readonly CutPart[], cloth: Cloth): boolean =>
  (['shortest', ...MANNERS] as const).some((wanted) => layMark(parts, cloth, wanted) === mark)

export const keptOf = (
  layout: ClothLayout,
  about: Pick<KeptLayout, 'width' | 'mark' | 'on' | 'tries'>,
  manners: readonly MannerTried[],
  drawn?: readonly PictureSection[],
): KeptLayout => ({
  ...about,
  manner: layout.manner,
  length: layout.length as Mm,
  sections: layout.sections.map(({ layout: { length, placed } }) => ({
    length: length as Mm,
    placed: placed.map(({ piece, pose, x, y }) => [piece, pose, x, y] as const),
  })),
  tried: Object.fromEntries(
    manners.flatMap(({ manner, length }) => (length === undefined ? [] : [[manner, length as Mm]])),
  ),
  ...(drawn ? { drawn } : {}),
})

export interface LaidAgain {
  readonly layout: ClothLayout
  readonly manners: readonly MannerTried[]
}

/** The layout again on the same pieces and cloth, proved free of overlap; undefined where it is not. */
export function laidAgain(
  kept: KeptLayout,
  parts: readonly CutPart[],
  cloth: Cloth,
  wanted: Manner | 'shortest',
): LaidAgain | undefined {
  const how = lay(parts, cloth, kept.manner)
  if (!how.ok || how.sections.length !== kept.sections.length) return undefined
  const sections = how.sections.flatMap((section, i) => {
    const own = kept.sections[i]
    const layout = own && layoutOf(own)
    const there = layout?.placed.every((p) => section.strip.pieces[p.piece]?.poses[p.pose])
    return layout && there && isSound(section.strip, layout) ? [{ section, layout }] : []
  })
  if (sections.length !== kept.sections.length) return undefined
  const { manner, length } = kept
  return { layout: { manner, length, sections }, manners: triedAgain(kept, parts, cloth, wanted) }
}

const layoutOf = ({ length, placed }: KeptSection): Layout => ({
  length,
  placed: placed.map(([piece, pose, x, y]) => ({ piece, pose, x, y })),
})

/** Why a manner does not go follows from the pieces and is not kept. */
const triedAgain = (
  { tried }: KeptLayout,
  parts: readonly CutPart[],
  cloth: Cloth,
  wanted: Manner | 'shortest',
): readonly MannerTried[] =>
  (wanted === 'shortest' ? MANNERS : [wanted]).flatMap((manner): MannerTried[] => {
    const length = tried[manner]
    if (length !== undefined) return [{ manner, length }]
    const how = lay(parts, cloth, manner)
    return how.ok ? [] : [{ manner, reason: how.reason }]
  })
