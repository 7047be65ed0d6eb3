/**
 * A piece turned over on x = 0, for the other side of the body: every line mirrored, the outline
 * clockwise again. Letters of a half that is drawn beside its other half carry a stroke.
 */
import { mirroredPath, reversedPath, type Path } from '../geometry/path.ts'
import { point, type Point } from '../geometry/point.ts'
import type { Dart, Edge, Piece } from './piece.ts'
import type { Step } from './step.ts'

const STROKE = '′'
export const stroked = (letter: string): string => `${letter}${STROKE}`

const over = (p: Point): Point => point(0 - p.x, p.y)
const overPath = (path: Path): Path => reversedPath(mirroredPath(path))

const overEdge = ({ turned, ...e }: Edge): Edge => ({
  ...e,
  path: overPath(e.path),
  ...(turned ? {} : { turned: true }),
})

const overDart = (d: Dart): Dart => ({
  ...d,
  upperTip: over(d.upperTip),
  inner: over(d.inner),
  outer: over(d.outer),
  lowerTip: over(d.lowerTip),
  ...(d.open ? { open: { inner: over(d.open.inner), outer: over(d.open.outer) } } : {}),
})

export const turnedOver = (piece: Piece): Piece => ({
  ...piece,
  edges: piece.edges.map(overEdge).reverse(),
  darts: piece.darts.map(overDart),
  edgeDarts: piece.edgeDarts.map((d) => ({
    ...d,
    tip: over(d.tip),
    upper: over(d.upper),
    lower: over(d.lower),
  })),
  inner: piece.inner.map((i) => ({ ...i, path: overPath(i.path) })),
  points: Object.fromEntries(Object.entries(piece.points).map(([name, p]) => [name, over(p)])),
  levels: piece.levels.map((l) => ({ ...l, from: over(l.from), to: over(l.to) })),
  grain: { from: over(piece.grain.from), to: over(piece.grain.to) },
})

export const turnedStep = (step: Step): Step => ({
  ...step,
  lights: step.lights.map(overPath),
  turned: true,
})

/** The letters of a step with a stroke each; `level` of a measure is a word, of a compass a letter. */
export function strokedStep(step: Step): Step {
  const s = stroked
  switch (step.verb) {
    case 'start':
    case 'dart':
    case 'cutOff':
      return { ...step, at: s(step.at) }
    case 'measure':
    case 'spot':
    case 'join':
      return { ...step, from: s(step.from), to: s(step.to) }
    case 'slide':
      return { ...step, from: s(step.from), to: s(step.to), along: s(step.along) }
    case 'compass':
      return { ...step, to: s(step.to), centre: s(step.centre), level: s(step.level) }
    case 'arc':
      return { ...step, centre: s(step.centre), from: s(step.from), to: s(step.to) }
    case 'curve':
      return { ...step, from: s(step.from), to: s(step.to), base: s(step.base) }
    case 'edgeDart':
      return { ...step, upper: s(step.upper), lower: s(step.lower), tip: s(step.tip) }
    case 'moveDart':
      return { ...step, at: s(step.at), end: s(step.end), pivot: s(step.pivot) }
    case 'keyhole':
      return { ...step, from: s(step.from) }
    case 'part':
      return { ...step, over: s(step.over) }
    case 'wedge':
      return { ...step, from: s(step.from), pivot: s(step.pivot) }
    case 'trace':
    case 'parallel':
    case 'rectangle':
    case 'mitre':
    case 'open':
    case 'change':
    case 'asWorn':
      return step
  }
}
