/**
 * Level and plumb lines drawn on a muslin, found by their darkness: thin, dark on both sides, almost
 * straight and long against the trunk. Searched within the person's mask, between shoulder and hip
 * joints and a little below, the card left out. Pure; picture px. A fold is shorter and bends, a
 * hem is dark on one side only; what is found is still a proposal, her own tracing stands before it.
 */
import type { Point } from '../geometry/point.ts'
import type { CardOutcome } from './card.ts'
import { trunkFrame, type TrunkFrame } from './folds/trunk-frame.ts'
import { linesOf, type MuslinLine, type MuslinLineName } from './muslin-lines.ts'
import type { Person } from './person.ts'
import { linearGrey, type Picture } from './picture.ts'

/** A line is darker than the cloth this far beside it, px: a pen line is 1 to 3 px wide in a whole-body photo. */
const BESIDE = 4
/** By at least this share of the cloth's light. From trial. */
const DARKER = 0.08
/** Lines lean by no more, degrees, searched in steps of a quarter. */
const [MOST_LEAN, STEP] = [9, 0.25] as const
/** A level crosses at least this share of the breadth searched, a centre this share of its height. From trial. */
const LEAST = { level: 0.6, plumb: 0.5 } as const
/** Breadth searched, in half spreads of the shoulder joints; the arms hang beyond it. */
const WITHIN = 0.72
/** The centre lies this near the middle, in half spreads. */
const CENTRE_WITHIN = 0.22
/** Heights searched, in torsos below the shoulder joints. */
const [FROM, TO] = [0.12, 1.25] as const
/** Which level a line is, by torsos below the shoulder joints; common practice, no source. */
const LEVELS: readonly (readonly [MuslinLineName, number])[] = [
  ['bustLine', 0.55],
  ['waistLine', 0.9],
  ['hipLine', Infinity],
]
/** So far on both sides of a found line no second one is looked for, px. */
const APART = 12

export function findLines(
  picture: Picture,
  person: Person | undefined,
  card: CardOutcome,
): readonly MuslinLine[] {
  const frame = person && trunkFrame(person, 1)
  if (!person || !frame) return []
  const grey = linearGrey(picture).data
  const { width, height } = picture
  const hidden = cardBox(card)
  const light = (x: number, y: number): number => grey[y * width + x] ?? 0
  /** Cloth, not card, with room to both sides. */
  const cloth = (x: number, y: number): boolean =>
    x >= BESIDE &&
    y >= BESIDE &&
    x < width - BESIDE &&
    y < height - BESIDE &&
    (person.mask.data[y * width + x] ?? 0) > 127 &&
    !(hidden && x > hidden.left && x < hidden.right && y > hidden.top && y < hidden.bottom)
  const dark = (x: number, y: number, dx: number, dy: number): boolean => {
    if (!cloth(x, y)) return false
    const beside = Math.min(light(x - dx, y - dy), light(x + dx, y + dy))
    return beside - light(x, y) > DARKER * beside
  }
  const area = searched(frame, width, height)
  const levels = runs(
    { from: area.left, to: area.right, low: area.top, high: area.bottom },
    (along, across) => dark(along, across, 0, BESIDE),
    LEAST.level,
  )
  const reach = CENTRE_WITHIN * frame.half
  const middle = frame.middle(frame.shoulder.y + 0.5 * frame.torso)
  const plumbs = runs(
    {
      from: area.top,
      to: Math.min(area.bottom, Math.round(frame.shoulder.y + frame.torso)),
      low: Math.round(middle - reach),
      high: Math.round(middle + reach),
    },
    (along, across) => dark(across, along, BESIDE, 0),
    LEAST.plumb,
  )
  return linesOf([
    ...levels.map(({ a, b }): MuslinLine => {
      const down = ((a.y + b.y) / 2 - frame.shoulder.y) / frame.torso
      const name = LEVELS.find(([, below]) => down < below)?.[0] ?? 'hipLine'
      return { name, from: a, to: b, by: 'camera' }
    }),
    ...plumbs.map(({ a, b }): MuslinLine => ({
      name: 'centre',
      from: { x: a.y, y: a.x },
      to: { x: b.y, y: b.x },
      by: 'camera',
    })),
  ])
}

interface Area {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

function searched(frame: TrunkFrame, width: number, height: number): Area {
  const { shoulder, torso, half } = frame
  const middle = frame.middle(shoulder.y + torso / 2)
  return {
    left: Math.max(0, Math.round(middle - WITHIN * half)),
    right: Math.min(width, Math.round(middle + WITHIN * half)),
    top: Math.max(0, Math.round(shoulder.y + FROM * torso)),
    bottom: Math.min(height, Math.round(shoulder.y + TO * torso)),
  }
}

function cardBox(card: CardOutcome): Area | undefined {
  if (!card.ok) return undefined
  const [xs, ys] = [card.card.corners.map((p) => p.x), card.card.corners.map((p) => p.y)]
  // The sheet has a margin round its black square: half of the square's side.
  const margin = (Math.max(...xs) - Math.min(...xs)) / 2
  return {
    left: Math.min(...xs) - margin,
    right: Math.max(...xs) + margin,
    top: Math.min(...ys) - margin,
    bottom: Math.max(...ys) + margin,
  }
}

interface Span {
  /** Along the line it runs from `from` to `to`, across it lies between `low` and `high`. */
  readonly from: number
  readonly to: number
  readonly low: number
  readonly high: number
}
interface Run {
  readonly a: Point
  readonly b: Point
  readonly hits: number
}

/** Straight runs of dark places, the fullest first: every lean and every height is counted. x along, y across. */
function runs(
  { from, to, low, high }: Span,
  dark: (along: number, across: number) => boolean,
  least: number,
): readonly Run[] {
  const [long, deep] = [to - from, high - low]
  if (long <= 0 || deep <= 0) return []
  const hit = new Uint8Array(long * deep)
  for (let y = 0; y < deep; y++)
    for (let x = 0; x < long; x++) if (dark(from + x, low + y)) hit[y * long + x] = 1
  const found: Run[] = []
  for (let lean = -MOST_LEAN; lean <= MOST_LEAN; lean += STEP) {
    const slope = Math.tan((lean * Math.PI) / 180)
    for (let start = 0; start < deep; start++) {
      let hits = 0
      for (let x = 0; x < long; x++) {
        const y = Math.round(start + slope * (x - long / 2))
        if (y < 0 || y >= deep) continue
        // The pencil is as thin as a pixel: the rows beside it count as well.
        if (hit[y * long + x] || (y > 0 && hit[(y - 1) * long + x]) || hit[(y + 1) * long + x])
          hits++
      }
      if (hits >= least * long) {
        const at = (x: number): Point => ({ x: from + x, y: low + start + slope * (x - long / 2) })
        found.push({ a: at(0), b: at(long), hits })
      }
    }
  }
  const kept: Run[] = []
  const height = ({ a, b }: Run): number => (a.y + b.y) / 2
  for (const run of found.sort((p, q) => q.hits - p.hits))
    if (!kept.some((other) => Math.abs(height(other) - height(run)) < APART)) kept.push(run)
  return kept.map((run) => fitted(run, hit, { from, to, low, high }))
}

/** Places this near to a run belong to it, px. */
const NEAR = 3

/** The straight line of least squares through the dark places of a run. */
function fitted(run: Run, hit: Uint8Array, { from, to, low, high }: Span): Run {
  const long = to - from
  const lean = (run.b.y - run.a.y) / (run.b.x - run.a.x)
  let [n, sx, sy, sxx, sxy] = [0, 0, 0, 0, 0]
  for (let x = 0; x < long; x++) {
    const middle = run.a.y + lean * x - low
    for (let y = Math.ceil(middle - NEAR); y <= middle + NEAR; y++) {
      if (y < 0 || y >= high - low || !hit[y * long + x]) continue
      n += 1
      sx += x
      sy += y
      sxx += x * x
      sxy += x * y
    }
  }
  const spread = n * sxx - sx * sx
  if (spread === 0) return run
  const slope = (n * sxy - sx * sy) / spread
  // Row y means the row's centre.
  const at = (x: number): Point => ({
    x: from + x,
    y: low + (sy - slope * sx) / n + slope * x + 0.5,
  })
  return { ...run, a: at(0), b: at(long) }
}
