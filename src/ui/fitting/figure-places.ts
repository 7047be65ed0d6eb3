/**
 * The figure she points on: four views of the garment on a body, and on each the places that the
 * spoken sentence can name. Front, back and arm lie as in a mirror, the side looks to the right.
 * Spots are set so far apart that each can be touched without its neighbour.
 */
import type { SleeveKind } from '../../fitting/finding/find.ts'
import type { BaseView } from './drawings/views.ts'

export const FIGURE_VIEWS = ['front', 'back', 'side', 'arm'] as const
export type FigureView = (typeof FIGURE_VIEWS)[number]
export const VIEW_WORDS: Readonly<Record<FigureView, string>> = {
  front: 'Front',
  back: 'Back',
  side: 'Side',
  arm: 'Arm',
}

/** The part of the drawn view that is shown: left, top, width, height. */
export const FIGURE_BOX = { left: 14, top: 0, width: 92, height: 120 } as const

export interface Spot {
  /** The word of the sentence's first gap. */
  readonly where: string
  readonly x: number
  readonly y: number
  /** It lies on both halves; this one is at the right. */
  readonly twice: boolean
}
export interface Figure {
  readonly drawn: BaseView
  readonly spots: readonly Spot[]
}
const one = (where: string, x: number, y: number): Spot => ({ where, x, y, twice: false })
const two = (where: string, x: number, y: number): Spot => ({ where, x, y, twice: true })

const SHOULDERS = [
  two('side of the neck', 72.6, 12.5),
  two('shoulder seam', 85.1, 18),
  two('shoulder tip', 97.7, 25),
]
const FRONT: Figure = {
  drawn: 'front',
  spots: [
    ...SHOULDERS,
    one('front neck edge', 60, 29),
    one('upper chest', 60, 42),
    two('front armhole', 89, 39),
    two('bust', 75, 54),
    one('front closing', 60, 57),
    two('underarm', 93, 54),
    two('under the bust', 74, 67),
    two('side seam', 90, 68),
    one('waist line', 60, 81),
    two('waist dart', 74, 82),
    two('hip', 87, 98),
    one('below the waist in front', 60, 96),
    one('front hem', 60, 112),
  ],
}
const BACK: Figure = {
  drawn: 'back',
  spots: [
    ...SHOULDERS,
    one('back neck edge', 60, 20),
    one('upper back', 60, 36),
    two('back armhole', 89, 38),
    two('shoulder blade', 74, 45),
    one('middle back', 60, 60),
    two('side seam', 89, 66),
    one('back waist', 60, 79),
    two('back waist dart', 74, 82),
    two('seat', 75, 100),
    one('back hem', 60, 112),
  ],
}
const SIDE: Figure = {
  drawn: 'side',
  spots: [
    one('back neck edge', 46, 13),
    one('shoulder seam', 61, 22),
    one('front neck edge', 76, 18),
    one('upper back', 35, 34),
    one('back armhole', 50, 42),
    one('front armhole', 72, 40),
    one('bust', 88, 52),
    one('underarm', 61, 57),
    one('side seam', 61, 72),
    one('back waist', 42, 80),
    one('waist line', 80, 80),
    one('hip', 61, 94),
    one('seat', 34, 98),
    one('below the waist in front', 86, 96),
    one('back hem', 44, 112),
    one('front hem', 76, 112),
  ],
}
const SLEEVE: Figure = {
  drawn: 'sleeve',
  spots: [
    one('shoulder seam', 34, 21),
    one('shoulder tip', 58, 23),
    one('sleeve cap', 74, 34),
    one('front armhole', 48, 46),
    one('underarm', 50, 66),
    one('upper arm', 78, 60),
    one('side seam', 47, 90),
    one('elbow', 80, 80),
    one('sleeve seam', 62, 90),
    one('sleeve hem', 78, 110),
  ],
}
const WING: Figure = {
  drawn: 'wing',
  spots: [
    one('side of the neck', 26, 13),
    one('shoulder tip', 52, 21),
    one('overarm seam', 76, 34),
    one('front sleeve edge', 97, 73),
    one('underarm', 62, 80),
    one('sleeve opening under the arm', 84, 92),
    one('side seam', 56, 104),
  ],
}

/** What the armhole is on a sleeve cut in one with the body. */
const CUT_IN: Readonly<Partial<Record<string, string>>> = {
  'front armhole': 'front sleeve edge',
  'back armhole': 'back sleeve edge',
}
/** The figure of a view; undefined where the garment has nothing to point at there. */
export function figureOf(view: FigureView, sleeve: SleeveKind): Figure | undefined {
  if (view === 'arm') return { cutIn: WING, setIn: SLEEVE, none: undefined }[sleeve]
  const figure = { front: FRONT, back: BACK, side: SIDE }[view]
  if (sleeve !== 'cutIn') return figure
  return {
    ...figure,
    spots: figure.spots.map((spot) => ({ ...spot, where: CUT_IN[spot.where] ?? spot.where })),
  }
}

/** The view to show a place on: the one that is open where it has it, else the first that has. */
export function viewWith(
  where: string | undefined,
  open: FigureView,
  sleeve: SleeveKind,
): FigureView {
  const has = (view: FigureView): boolean =>
    figureOf(view, sleeve)?.spots.some((spot) => spot.where === where) ?? false
  if (where === undefined || has(open)) return open
  return FIGURE_VIEWS.find(has) ?? open
}

/** Both halves, or the one that is spoken of; a place in the middle lies on neither. */
export function halvesOf(sides: string | undefined): readonly ('left' | 'right')[] {
  if (sides === 'left side') return ['left']
  return sides === 'right side' ? ['right'] : ['left', 'right']
}
