/**
 * A facing for the inside of a waist seam, traced from the top of a skirt half with its darts
 * folded: it covers the seam and keeps the waist to its length. Source: shaped facings 50 to 64 mm
 * wide (public dressmaking lessons); folding the darts before tracing is common practice.
 */
import {
  endTangent,
  pathEnd,
  pathStart,
  reversedPath,
  splitPath,
  turnedPath,
  type Path,
} from '../geometry/path.ts'
import { project } from '../geometry/project.ts'
import {
  add,
  heading,
  point,
  rotate,
  scale,
  subtract,
  unit,
  type Point,
} from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import { choice, type Choices } from './choices.ts'
import { cutBetween, made, parallel, type Finishing } from './facing.ts'
import { edge, type Edge, type EdgeDart, type Piece } from './piece.ts'
import { FINISHING_WORDS as W } from './finishing.words.ts'

/** How far a line is carried on to find its crossing, mm. */
const REACH = 400

export function waistFacing(skirt: Piece, choices: Choices): Finishing {
  const { waist, foot } = closedTop(skirt)
  const width = choice(choices, 'facingWidth')
  const [start, end] = [pathStart(waist), pathEnd(waist)]
  const centre = line(point(start.x, start.y - REACH), point(start.x, start.y + REACH))
  const side = line(end, add(end, scale(unit(subtract(foot, end)), REACH)))
  const far = cutBetween(parallel(waist, width.mm), centre, side)
  if (!far) throw new Error('waist facing: its free edge misses the centre or the side')
  const edges: Edge[] = [
    { name: 'waist', role: 'seam', path: waist },
    { name: 'side', role: 'seam', path: [line(end, pathEnd(far))] },
    { name: 'outer', role: 'edge', path: reversedPath(far) },
    { name: 'centre', role: edge(skirt, 'centre').role, path: [line(pathStart(far), start)] },
  ]
  const id = skirt.id === 'skirtBack' ? 'backWaistFacing' : 'frontWaistFacing'
  return made(id, edges, skirt.cut, [
    {
      verb: 'trace',
      of: skirt.id,
      edges: ['waist', 'side', 'centre'],
      why: W.takesTheWaist,
    },
    {
      verb: 'parallel',
      edge: 'outer',
      to: 'waist',
      by: width,
      why: W.neatenedFirst,
    },
  ])
}

/** The waist with its darts folded, and a point of the side below it, turned along. */
function closedTop(skirt: Piece): { waist: Path; foot: Point } {
  const { path } = edge(skirt, 'waist')
  const along = (p: Point): number => {
    const { index, t } = project(path, p).place
    return index + t
  }
  const darts = skirt.edgeDarts
    .filter((d) => d.edge === 'waist')
    .map((d) => (along(d.upper) < along(d.lower) ? d : { ...d, upper: d.lower, lower: d.upper }))
    .sort((a, b) => along(a.upper) - along(b.upper))
  const below = add(pathEnd(path), endOfSide(skirt))
  return darts.reduceRight(({ waist, foot }, d) => folded(waist, foot, d), {
    waist: path,
    foot: below,
  })
}
const endOfSide = (skirt: Piece): Point => {
  const side = edge(skirt, 'side').path
  const way = endTangent(splitPath(side, { index: 0, t: 0.2 })[0])
  return scale(way, REACH / 2)
}

/** All beyond the dart turned about its tip until the two ends of its mouth lie together. */
function folded(waist: Path, foot: Point, d: EdgeDart): { waist: Path; foot: Point } {
  const turn = heading(d.tip, d.upper) - heading(d.tip, d.lower)
  const [before] = splitPath(waist, project(waist, d.upper).place)
  const [, after] = splitPath(waist, project(waist, d.lower).place)
  return { waist: [...before, ...turnedPath(after, d.tip, turn)], foot: rotate(foot, d.tip, turn) }
}
