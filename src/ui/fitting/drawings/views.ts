/**
 * Views of the garment on a body, drawn by ourselves in a box of 120 by 120: parts by name, so
 * that a drawing can leave one out and show it elsewhere. A close-up is a window on a view.
 * Front and back lie as in a mirror; the side looks to the right.
 */
import { INKS, type Ink, type Line, type Pt } from './marks.ts'

/** Width and height of every drawing, px. */
export const SIZE = 120

interface Part {
  readonly ink: Ink
  readonly d: string
  /** Drawn on both halves. */
  readonly both?: true
}
type Parts = Readonly<Record<string, Part>>
const seam = (d: string): Part => ({ ink: 'seam', d })
const seams = (d: string): Part => ({ ink: 'seam', d, both: true })
const body = (d: string): Part => ({ ink: 'body', d, both: true })
const one = (d: string): Part => ({ ink: 'body', d })

const TRUNK = {
  throat: body('M69 3C69 9 70 13 72 17'),
  arm: body('M91 24C98 26 101 33 102 42L106 86M92 52C95 62 97 74 98 86'),
  shoulder: seams('M72 17L91 24'),
  armhole: seams('M91 24C87 32 85 42 91 50'),
  side: seams('M91 50C87 62 85 72 85 80C86 92 91 102 93 112'),
  hem: seam('M27 112L93 112'),
} as const satisfies Parts
const PROFILE = {
  throat: one('M52 2C51 8 50 11 47 16M70 3C70 10 71 14 74 19'),
  back: seam('M47 16C38 24 34 34 35 46C37 60 42 70 42 80C41 90 34 96 33 104L34 112'),
  front: seam('M74 20C78 32 88 42 88 52C88 60 82 66 80 80C81 92 86 98 86 106L85 112'),
  neck: seam('M47 16C54 21 66 23 74 20'),
  hem: seam('M34 112L85 112'),
} as const satisfies Parts
const WING = {
  throat: one('M22 2C22 7 23 10 25 13'),
  arm: one('M107 60L114 74M90 86L100 98'),
  centre: one('M8 30L8 116'),
  neck: seam('M8 30C18 30 25 23 25 13'),
  side: seam('M58 84C55 96 55 106 56 116'),
} as const satisfies Parts

const VIEWS = {
  front: {
    ...TRUNK,
    neck: seam('M48 17C48 26 54 30 60 30C66 30 72 26 72 17'),
    bust: body('M65 58C69 63 77 63 81 58'),
  },
  back: {
    ...TRUNK,
    neck: seam('M48 17C50 21 55 22 60 22C65 22 70 21 72 17'),
    centre: one('M60 22L60 112'),
    blade: body('M66 46C70 49 75 48 78 43'),
  },
  side: {
    ...PROFILE,
    shoulder: seam('M61 21L61 26'),
    armhole: seam('M61 26C67 26 71 33 71 41C71 49 67 56 61 56C55 56 51 49 51 41C51 33 55 26 61 26'),
    sideSeam: seam('M61 56L61 112'),
  },
  sleeve: {
    throat: one('M8 4C8 10 10 14 13 18'),
    hand: one('M68 112L69 118M88 112L87 118'),
    shoulder: seam('M13 18L58 26'),
    armhole: seam('M58 26C50 36 46 52 50 66'),
    side: seam('M50 66C47 84 46 100 46 116'),
    outer: seam('M58 26C74 26 86 38 89 56C91 76 92 94 92 112'),
    inner: seam('M50 66C57 70 61 76 62 86L64 112'),
    hem: seam('M64 112L92 112'),
  },
  /** The right arm up, with a sleeve. */
  lifted: {
    throat: body('M69 3C69 9 70 13 72 17'),
    arm: one('M29 24C22 26 19 33 18 42L14 86M28 52C25 62 23 74 22 86'),
    neck: seam('M48 17C48 26 54 30 60 30C66 30 72 26 72 17'),
    shoulders: seams('M72 17L88 23'),
    left: seam('M32 23C34 32 35 42 29 50C33 62 35 72 35 80C34 92 29 102 27 112'),
    armhole: seam('M88 23C84 32 84 44 88 54'),
    outer: seam('M88 23C97 18 103 12 108 4'),
    inner: seam('M88 54C98 46 108 32 116 16'),
    cuff: seam('M108 4L116 16'),
    side: seam('M88 54C85 64 85 72 85 80C86 92 91 102 93 112'),
    hem: seam('M27 112L93 112'),
  },
  /** One arm, bent. */
  bent: {
    upper: seam('M22 8C20 40 22 66 28 88'),
    inner: seam('M54 8C56 34 56 52 58 66'),
    elbow: seam('M28 88C32 98 44 100 54 96'),
    fore: seam('M54 96L108 62'),
    cradle: seam('M58 66L98 42'),
    hem: seam('M98 42L108 62'),
    hand: one('M102 46L112 40M107 57L116 50'),
  },
  /** The sleeve cut in one with the body: right half, from the front. */
  wing: {
    ...WING,
    overarm: seam('M25 13C50 19 82 36 107 60'),
    edge: seam('M107 60L86 90'),
    under: seam('M86 90C76 83 65 80 58 84'),
  },
  wingLifted: {
    ...WING,
    arm: one('M112 26L118 25M110 46L118 45'),
    overarm: seam('M25 13C40 20 80 20 112 18'),
    edge: seam('M112 18L108 58'),
    under: seam('M108 58C84 54 66 64 58 84'),
  },
  /** The same sleeve from the side: a cone with its seam on top of the arm. */
  wingSide: {
    ...PROFILE,
    arm: one('M53 74L54 100M69 74L68 100'),
    outline: seam('M61 20C48 36 42 54 40 70M61 20C74 36 80 54 82 70'),
    overarm: seam('M61 20L61 75'),
    edge: seam('M40 70C50 76 72 76 82 70'),
  },
  /** Back and front laid together at the shoulder, on paper. */
  joined: {
    seam: seam('M16 60L78 60'),
    neck: seam('M16 60C30 52 34 34 28 12M16 60C26 66 30 84 26 108'),
    armhole: seam('M78 60C70 44 72 24 92 8M78 60C70 76 72 96 92 112'),
  },
  /** From the side, on a chair. */
  seated: {
    back: seam('M40 8C33 24 33 46 38 60C38 74 32 84 32 96'),
    front: seam('M62 10C66 26 72 40 68 52C66 62 68 70 74 76'),
    lap: seam('M74 76L98 78M32 96C52 101 76 101 98 100M98 78L98 100'),
    armhole: seam('M51 16C57 16 60 24 60 31C60 39 56 45 51 45C45 45 42 39 42 31C42 24 45 16 51 16'),
    chair: one('M26 101L82 101M32 101L32 118M76 101L76 118'),
  },
  paper: {},
} as const satisfies Readonly<Record<string, Parts>>

export type BaseView = keyof typeof VIEWS
export type PartOf<V extends BaseView> = keyof (typeof VIEWS)[V] & string

/** The part of a view that is shown: left, top, width. */
export type Window = readonly [left: number, top: number, size: number]
export const WHOLE: Window = [0, 0, SIZE]

/** From the view into the picture. */
export type At = (x: number, y: number) => Pt
export const into =
  ([left, top, size]: Window): At =>
  (x, y) => [((x - left) * SIZE) / size, ((y - top) * SIZE) / size]
export const mirrored =
  (at: At): At =>
  (x, y) =>
    at(SIZE - x, y)

/** Every pair of numbers of a path, moved. */
const moved = (d: string, at: At): string =>
  d.replaceAll(/(-?[\d.]+) (-?[\d.]+)/g, (_, x: string, y: string) =>
    at(Number(x), Number(y))
      .map((n) => Math.round(n * 10) / 10)
      .join(' '),
  )

/** A line of the view's own units, brought into the picture. */
export const drawnBy = (at: At, ink: Ink, d: string): Line => ({ ink, d: moved(d, at) })

/** The lines of a view through a window, without the parts that a drawing shows elsewhere. */
export function linesOf(
  view: BaseView,
  window: Window,
  without: readonly string[] = [],
): readonly Line[] {
  const at = into(window)
  const parts: Parts = VIEWS[view]
  for (const name of without)
    if (!(name in parts)) throw new Error(`drawing: the ${view} has no part ${name}`)
  return Object.entries(parts)
    .filter(([name]) => !without.includes(name))
    .flatMap(([, { ink, d, both }]) =>
      (both ? [at, mirrored(at)] : [at]).map((to) => drawnBy(to, ink, d)),
    )
}

/** Lines in the order in which they cover each other. */
export const inOrder = (lines: readonly Line[]): readonly Line[] =>
  INKS.flatMap((ink) => lines.filter((line) => line.ink === ink))
