/**
 * The figure she points on: four views of the garment on a body, and on each the places that the
 * spoken sentence can name. Front, back and arm lie as in a mirror, the side looks to the right.
 * Spots are set so far apart that each can be touched without its neighbour.
 */
import type { SleeveKind } from '../../fitting/finding/find.ts'
import type { BaseView } from './drawings/views.ts'
import type { SidesId, WhereId } from './spoken.ts'

export const FIGURE_VIEWS = ['front', 'back', 'side', 'arm'] as const
export type FigureView = (typeof FIGURE_VIEWS)[number]

/** The part of the drawn view that is shown: left, top, width, height. */
export const FIGURE_BOX = { left: 14, top: 0, width: 92, height: 120 } as const

export interface Spot {
  /** What fills the sentence's first gap. */
  readonly where: WhereId
  readonly x: number
  readonly y: number
  /** It lies on both halves; this one is at the right. */
  readonly twice: boolean
}
export interface Figure {
  readonly drawn: BaseView
  readonly spots: readonly Spot[]
}
const one = (where: WhereId, x: number, y: number): Spot => ({ where, x, y, twice: false })
const two = (where: WhereId, x: number, y: number): Spot => ({ where, x, y, twice: true })

const SHOULDERS = [
  two('sideOfNeck', 72.6, 12.5),
  two('shoulderSeam', 85.1, 18),
  two('shoulderTip', 97.7, 25),
]
const FRONT: Figure = {
  drawn: 'front',
  spots: [
    ...SHOULDERS,
    one('frontNeckEdge', 60, 29),
    one('upperChest', 60, 42),
    two('frontArmhole', 89, 39),
    two('bust', 75, 54),
    one('frontClosing', 60, 57),
    two('underarm', 93, 54),
    two('underBust', 74, 67),
    two('sideSeam', 90, 68),
    one('waistLine', 60, 81),
    two('waistDart', 74, 82),
    two('hip', 87, 98),
    one('belowWaistInFront', 60, 96),
    one('frontHem', 60, 112),
  ],
}
const BACK: Figure = {
  drawn: 'back',
  spots: [
    ...SHOULDERS,
    one('backNeckEdge', 60, 20),
    one('upperBack', 60, 36),
    two('backArmhole', 89, 38),
    two('shoulderBlade', 74, 45),
    one('middleBack', 60, 60),
    two('sideSeam', 89, 66),
    one('backWaist', 60, 79),
    two('backWaistDart', 74, 82),
    two('seat', 75, 100),
    one('backHem', 60, 112),
  ],
}
const SIDE: Figure = {
  drawn: 'side',
  spots: [
    one('backNeckEdge', 46, 13),
    one('shoulderSeam', 61, 22),
    one('frontNeckEdge', 76, 18),
    one('upperBack', 35, 34),
    one('backArmhole', 50, 42),
    one('frontArmhole', 72, 40),
    one('bust', 88, 52),
    one('underarm', 61, 57),
    one('sideSeam', 61, 72),
    one('backWaist', 42, 80),
    one('waistLine', 80, 80),
    one('hip', 61, 94),
    one('seat', 34, 98),
    one('belowWaistInFront', 86, 96),
    one('backHem', 44, 112),
    one('frontHem', 76, 112),
  ],
}
const SLEEVE: Figure = {
  drawn: 'sleeve',
  spots: [
    one('shoulderSeam', 34, 21),
    one('shoulderTip', 58, 23),
    one('sleeveCap', 74, 34),
    one('frontArmhole', 48, 46),
    one('underarm', 50, 66),
    one('upperArm', 78, 60),
    one('sideSeam', 47, 90),
    one('elbow', 80, 80),
    one('sleeveSeam', 62, 90),
    one('sleeveHem', 78, 110),
  ],
}
const WING: Figure = {
  drawn: 'wing',
  spots: [
    one('sideOfNeck', 26, 13),
    one('shoulderTip', 52, 21),
    one('overarmSeam', 76, 34),
    one('frontSleeveEdge', 97, 73),
    one('underarm', 62, 80),
    one('sleeveOpening', 84, 92),
    one('sideSeam', 56, 104),
  ],
}

/** What the armhole is on a sleeve cut in one with the body. */
const CUT_IN: Readonly<Partial<Record<WhereId, WhereId>>> = {
  frontArmhole: 'frontSleeveEdge',
  backArmhole: 'backSleeveEdge',
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
  where: WhereId | undefined,
  open: FigureView,
  sleeve: SleeveKind,
): FigureView {
  const has = (view: FigureView): boolean =>
    figureOf(view, sleeve)?.spots.some((spot) => spot.where === where) ?? false
  if (where === undefined || has(open)) return open
  return FIGURE_VIEWS.find(has) ?? open
}

/** Both halves, or the one that is spoken of; a place in the middle lies on neither. */
export function halvesOf(sides: SidesId | undefined): readonly ('left' | 'right')[] {
  if (sides === 'leftSide') return ['left']
  return sides === 'rightSide' ? ['right'] : ['left', 'right']
}
