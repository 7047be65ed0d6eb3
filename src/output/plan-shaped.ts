/**
 * What shapes a piece without a dart, and what a side seam leaves open: gathers and style seams
 * while everything lies flat, vents when the sides are sewn.
 */
import { pathLength } from '../geometry/length.ts'
import { mm } from '../units/length.ts'
import { EDGE_WORDS, PIECE_WORDS } from '../draft/piece.words.ts'
import { atEdge } from './by-edge.ts'
import { finishAs } from './finish.ts'
import { bodyOf, edgeLong, type Planned } from './plan-flat.ts'
import { says, type Lit, type PlanStep } from './plan-step.ts'

/**
 * Two rows of the longest stitch on either side of the seam line, drawn up together, the seam sewn
 * between them with the gathers on top: public sewing lessons. Rows 6 mm apart: from memory.
 */
export const gatherSteps = (on: Planned): PlanStep[] =>
  bodyOf(on).flatMap((p) => {
    const marked = p.inner.filter((i) => i.name === 'gathers')
    return (p.gathers ?? []).map(({ edge, takes }, k): PlanStep => {
      const long = mm(marked[k] ? pathLength(marked[k].path) : 0)
      return {
        id: `gathers.${p.id}.${edge}`,
        kind: 'darts',
        title: `Gathers of the ${PIECE_WORDS[p.id]}, ${EDGE_WORDS[edge]}`,
        lit: [{ piece: p.id, line: 'gathers' }],
        long,
        times: 2,
        passes: [
          says`Two rows of the longest stitch between the marks, ${mm(3)} to either side of the seam line.`,
          says`Draw both up to ${mm(long - takes)}, wind the threads round a pin, spread the folds evenly.`,
          says`When the seam is sewn the gathers lie on top; take out the row that shows.`,
        ],
        press: says`From the allowance into the gathers with the point of the iron, never across them.`,
      }
    })
  })

/**
 * A seam over the bust: the middle part is stayed and clipped where it curves in, so that it lies to
 * the curve of the side part. Public sewing lessons on curved seams.
 */
export function styleSteps(on: Planned): PlanStep[] {
  const parts = bodyOf(on).filter((p) => p.edges.some((e) => e.name === 'styleSeam'))
  const [middle] = parts
  if (!middle) return []
  const by = atEdge(on.cutting.allowances, middle.id, 'styleSeam')
  const finish = finishAs(atEdge(on.cutting.finishes, middle.id, 'styleSeam'), by)
  return [
    {
      id: 'seam.styleSeam',
      kind: 'seam',
      title: `Style seams over the bust: ${finish.words}`,
      lit: parts.map((p): Lit => ({ piece: p.id, edge: 'styleSeam' })),
      long: edgeLong(middle, 'styleSeam'),
      times: 2,
      allowance: by,
      passes: [
        says`Stay the curve of the middle part ${mm(3)} outside the seam line and clip to the row.`,
        says`Match the notches at the bust tip first, then both ends; sew with the clipped part on top.`,
        ...finish.passes,
      ],
      press: says`Over a rounded cushion, the curve first, then the rest flat.`,
      mind: [
        'Both lines are equally long: what will not match was cut or stretched, not drafted so.',
      ],
    },
  ]
}

/** The side closed above them, both edges turned in, the end barred: opening vents of a costume manual of 1922. */
export function ventSteps(on: Planned): PlanStep[] {
  const parts = bodyOf(on).flatMap((p) => {
    const line = p.inner.find((i) => i.name === 'vent')
    return line ? [{ piece: p, long: pathLength(line.path) }] : []
  })
  const [first] = parts
  if (!first) return []
  return [
    {
      id: 'opening.vent',
      kind: 'opening',
      title: 'Vents at the sides',
      lit: parts.map(({ piece }): Lit => ({ piece: piece.id, line: 'vent' })),
      long: mm(first.long),
      times: 2 * parts.length,
      allowance: atEdge(on.cutting.allowances, first.piece.id, 'side'),
      passes: [
        says`Press the allowances of the side on down along the vent, on the seam line.`,
        says`Turn their raw edges in and sew them down from the hem up, across above the vent, and down again.`,
        says`Bar the end by hand or with a short dense stitch across it.`,
      ],
      press: says`Both edges meeting, not one over the other.`,
      mind: [
        'Where the seam is shut in a French seam, clip its allowance to the seam just above the vent.',
      ],
    },
  ]
}

/** Length of a vent, so that the side seam can say where it ends; nought without one. */
export const ventLong = (on: Planned): number =>
  Math.max(
    0,
    ...bodyOf(on).flatMap((p) =>
      p.inner.filter((i) => i.name === 'vent').map((i) => pathLength(i.path)),
    ),
  )
