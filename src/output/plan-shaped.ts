/**
 * What shapes a piece without a dart, and what a side seam leaves open: gathers and style seams
 * while everything lies flat, vents when the sides are sewn.
 */
import { pathLength } from '../geometry/length.ts'
import { mm } from '../units/length.ts'
import { atEdge } from './by-edge.ts'
import { finishAs } from './finish.ts'
import { bodyOf, edgeLong, type Planned } from './plan-flat.ts'
import { sewnRows, type Lit, type PlanStep } from './plan-step.ts'
import { SHAPED_WORDS as W } from './sewing-plan.words.ts'

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
        title: W.gathers(p.id, edge),
        lit: [{ piece: p.id, line: 'gathers' }],
        long,
        times: 2,
        passes: [W.gatherRows(mm(3)), W.drawUp(mm(long - takes)), W.gathersOnTop],
        thread: sewnRows(2),
        press: W.pressGathers,
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
      title: W.style(finish.words),
      lit: parts.map((p): Lit => ({ piece: p.id, edge: 'styleSeam' })),
      long: edgeLong(middle, 'styleSeam'),
      times: 2,
      allowance: by,
      passes: [W.stayStyle(mm(3)), W.matchStyle, ...finish.passes],
      thread: finish.thread,
      press: W.pressStyle,
      mind: [W.styleEqual],
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
      title: W.vents,
      lit: parts.map(({ piece }): Lit => ({ piece: piece.id, line: 'vent' })),
      long: mm(first.long),
      times: 2 * parts.length,
      allowance: atEdge(on.cutting.allowances, first.piece.id, 'side'),
      passes: [W.ventPress, W.ventSew, W.ventBar],
      thread: sewnRows(1),
      press: W.pressVent,
      mind: [W.ventClip],
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
