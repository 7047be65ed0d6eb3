/** A torso cut off at the waist: the bodice of a dress, its waist darts open at the seam. */
import { pathLength } from '../geometry/length.ts'
import { lengthTo, splitPath, type Path } from '../geometry/path.ts'
import { project } from '../geometry/project.ts'
import { between, distance, point, type Point } from '../geometry/point.ts'
import { cubic, line, type Segment } from '../geometry/segment.ts'
import { edge, namedPoint, type Edge, type EdgeDart, type Piece } from './piece.ts'

/** Points of the torso that lie below its waist. */
const BELOW: readonly string[] = ['H', 'X', 'L', 'Y', 'M', 'O']

export function bodiceOf(torso: Piece): Piece {
  const w = namedPoint(torso, 'W')
  const centre = torso.points['C1'] ?? namedPoint(torso, 'C')
  const [side] = splitPath(edge(torso, 'side').path, project(edge(torso, 'side').path, w).place)
  const [, above] = splitPath(
    edge(torso, 'centre').path,
    project(edge(torso, 'centre').path, centre).place,
  )
  const waist: Edge = { name: 'waist', role: 'seam', path: waistPath(torso, w, centre) }
  const edges = torso.edges.flatMap((e): Edge[] => {
    if (e.name === 'side') return [{ ...e, path: side }]
    if (e.name === 'hem') return [waist]
    return e.name === 'centre' ? [{ ...e, path: above }] : [e]
  })
  return {
    ...torso,
    edges,
    darts: [],
    edgeDarts: [
      ...torso.edgeDarts,
      ...torso.darts.map((d): EdgeDart => ({
        name: d.name,
        edge: 'waist',
        tip: d.upperTip,
        upper: d.outer,
        lower: d.inner,
      })),
    ],
    points: Object.fromEntries(
      Object.entries(torso.points).filter(([name]) => !BELOW.includes(name)),
    ),
    levels: torso.levels.filter((l) => l.from.y <= centre.y + 1e-6),
    grain: {
      from: { ...torso.grain.from, y: centre.y * GRAIN.from },
      to: { ...torso.grain.to, y: centre.y * GRAIN.to },
    },
  }
}

/** The grain line ends above the waist, as shares of the length down to it. */
const GRAIN = { from: 0.45, to: 0.88 } as const

/** From the side to the centre, by way of both ends of every dart. */
function waistPath(torso: Piece, side: Point, centre: Point): Path {
  const mouths = [...torso.darts]
    .sort((a, b) => b.inner.x - a.inner.x)
    .flatMap((d) => [d.outer, d.inner])
  const points = [side, ...mouths]
  const inmost = points[points.length - 1]!
  return [...points.slice(1).map((p, i) => line(points[i]!, p)), toCentre(inmost, centre)]
}

/** A waist that a correction tilted bends into the fold square, or the unfolded seam has a peak. */
function toCentre(from: Point, centre: Point): Segment {
  const straight = line(from, centre)
  if (Math.abs(from.y - centre.y) < LEVEL) return straight
  const third = (from.x - centre.x) / 3
  return cubic(from, between(from, centre, 1 / 3), point(centre.x + third, centre.y), centre)
}
/** A waist as drafted is level; half a millimetre of tilt is not seen. Judgement. */
const LEVEL = 0.5

export interface WaistSeam {
  /** As sewn, darts folded. */
  readonly sewn: number
  /** Sewn distance from the centre to each dart, the nearest first. */
  readonly dartsAt: readonly number[]
}

/** The waist seam of a bodice or a skirt half as it is sewn. */
export function waistSeam(piece: Piece): WaistSeam {
  const { path } = edge(piece, 'waist')
  const darts = piece.edgeDarts.filter((d) => d.edge === 'waist')
  const along = (p: Point): number => lengthTo(path, project(path, p).place)
  const total = pathLength(path)
  const fromCentre = piece.id === 'skirtBack' || piece.id === 'skirtFront'
  const ends = darts
    .map((d) => {
      const [a, b] = [along(d.upper), along(d.lower)]
      return fromCentre ? Math.min(a, b) : total - Math.max(a, b)
    })
    .map((at, i) => ({ at, mouth: mouthOf(darts[i]!) }))
    .sort((a, b) => a.at - b.at)
  let folded = 0
  const dartsAt = ends.map(({ at, mouth }) => {
    const sewn = at - folded
    folded += mouth
    return sewn
  })
  return { sewn: total - folded, dartsAt }
}
const mouthOf = (d: EdgeDart): number => distance(d.upper, d.lower)
