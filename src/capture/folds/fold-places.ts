/**
 * Which place of the muslin a stroke belongs to, by where it lies on the trunk and which way it
 * runs; and the complaints that fit place and direction, by the ids of our table of complaints.
 * Places and directions as the table words them ("horizontal, between the apexes"); the extents
 * are common practice on a trunk counted in shoulder joints and hip joints, no source.
 */
import { apart, type Stroke } from './strokes.ts'
import type { TrunkFrame } from './trunk-frame.ts'

export const FOLD_PLACES = [
  'betweenApexes',
  'apexToSideWaist',
  'neckToArmpit',
  'shoulderTipToCentre',
  'aboveBackWaist',
  'besideArmhole',
] as const
export type FoldPlace = (typeof FOLD_PLACES)[number]

interface PlaceSpec {
  readonly views: readonly ('front' | 'back')[]
  /** Out from the middle line, in half spreads of the shoulder joints, at the stroke's middle. */
  readonly out: readonly [number, number]
  /** Down from the shoulder joints in torsos. */
  readonly down: readonly [number, number]
  /** Degrees: 0 is level, 90 upright, under 90 falls from the middle outwards, over 90 rises outwards. */
  readonly runs: readonly [number, number]
  readonly complaints: readonly string[]
}

export const PLACES: Readonly<Record<FoldPlace, PlaceSpec>> = {
  betweenApexes: {
    views: ['front'],
    out: [0, 0.5],
    down: [0, 0.5],
    runs: [-20, 20],
    complaints: ['B1', 'B9', 'B11'],
  },
  apexToSideWaist: {
    views: ['front'],
    out: [0.45, 1.05],
    down: [0.35, 0.75],
    runs: [25, 90],
    complaints: ['B2', 'W5'],
  },
  neckToArmpit: {
    views: ['front', 'back'],
    out: [0.4, 0.9],
    down: [-0.1, 0.2],
    runs: [10, 65],
    complaints: ['SH1', 'A5'],
  },
  shoulderTipToCentre: {
    views: ['front', 'back'],
    out: [0.4, 1],
    down: [-0.05, 0.35],
    runs: [100, 175],
    complaints: ['SH2', 'SH4'],
  },
  aboveBackWaist: {
    views: ['back'],
    out: [0, 0.5],
    down: [0.4, 0.95],
    runs: [-20, 20],
    complaints: ['K2', 'K5', 'W9'],
  },
  besideArmhole: {
    views: ['front', 'back'],
    out: [0.5, 1.05],
    down: [-0.05, 0.3],
    runs: [75, 105],
    complaints: ['SH3', 'A4', 'B10'],
  },
}

/** A place fits half as well this far beyond its extent: half spreads, torsos, degrees. */
const SOFT = { out: 0.15, down: 0.1, runs: 12 } as const

export interface Fitting {
  readonly place: FoldPlace
  /** 1 inside all extents, towards 0 outside. */
  readonly fits: number
}

/** Places of a stroke, the best fitting first; those that hardly fit are left out. */
export function placeOfFold(
  view: 'front' | 'back',
  stroke: Pick<Stroke, 'cells' | 'angle'>,
  frame: TrunkFrame,
  width: number,
): readonly Fitting[] {
  const mean = (f: (cell: number) => number): number =>
    stroke.cells.reduce((sum, cell) => sum + f(cell), 0) / Math.max(1, stroke.cells.length)
  const [x, y] = [mean((c) => c % width), mean((c) => Math.floor(c / width))]
  const across = (x - frame.middle(y)) / frame.half
  const down = (y - frame.shoulder.y) / frame.torso
  // Right of the middle a line that falls outwards leans over to the left: its angle is past 90.
  const angle = across > 0 ? Math.PI - stroke.angle : stroke.angle
  return FOLD_PLACES.filter((place) => PLACES[place].views.includes(view))
    .map((place): Fitting => {
      const spec = PLACES[place]
      const fits =
        soft(beyond(Math.abs(across), spec.out) / SOFT.out) *
        soft(beyond(down, spec.down) / SOFT.down) *
        soft(turned(angle, spec.runs) / SOFT.runs)
      return { place, fits }
    })
    .filter(({ fits }) => fits > 0.05)
    .sort((a, b) => b.fits - a.fits)
}

const soft = (far: number): number => 0.5 ** (far * far)
const beyond = (value: number, [least, most]: readonly [number, number]): number =>
  Math.max(0, least - value, value - most)

/** Degrees that an undirected line lies outside a range of directions. */
function turned(angle: number, [from, to]: readonly [number, number]): number {
  const middle = (((from + to) / 2) * Math.PI) / 180
  return Math.max(0, (apart(angle, middle) * 180) / Math.PI - (to - from) / 2)
}

/** Complaints that fit the places, likeliest first, each once. */
export const complaintsAt = (places: readonly FoldPlace[]): readonly string[] => [
  ...new Set(places.flatMap((place) => PLACES[place].complaints)),
]
