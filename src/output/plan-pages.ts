/** The sewing plan as lines for a page, each step with the pieces small and what is sewn strong. */
import { outline, type Piece } from '../draft/piece.ts'
import { boxHeight, boxOf, boxWidth } from '../geometry/box.ts'
import { point, type Point } from '../geometry/point.ts'
import { flatten, type Path } from '../geometry/path.ts'
import { line } from '../geometry/segment.ts'
import type { UnitChoice } from '../units/format.ts'
import type { InstructionLine } from './instruction-page.ts'
import { litPaths, litPieces } from './lit-lines.ts'
import { pathMark } from './mark.ts'
import { planNumbers, planSentences } from './plan-words.ts'
import type { PlanStep } from './plan-step.ts'
import type { Figure } from './scaled-drawing.ts'
import { PLAN_WORDS } from './sewing-plan.words.ts'

/** A box to tick, then the number: "☐ 3. Stay the edges that stretch". */
export function planLines(steps: readonly PlanStep[], units: UnitChoice): InstructionLine[] {
  return [
    { kind: 'title', text: PLAN_WORDS.title },
    { kind: 'text', text: PLAN_WORDS.lengths },
    ...steps.flatMap((step, i): InstructionLine[] => {
      const numbers = planNumbers(step, units)
      return [
        { kind: 'head', text: `☐ ${i + 1}. ${step.title}`, figure: step.id },
        ...(numbers ? [{ kind: 'text', text: `${numbers}.` } as const] : []),
        ...planSentences(step, units).map((text): InstructionLine => ({ kind: 'text', text })),
        ...(step.mind ?? []).map((text): InstructionLine => ({ kind: 'step', mark: '!', text })),
      ]
    }),
  ]
}

/** Height of the drawing of a step, the room between two pieces and under them, mm. */
const TALL = 26
const BETWEEN = 8
const UNDER = 2
/** A facing is not drawn larger beside a back than so many times its size. */
const LARGEST = 0.08
/** Chords of a small drawing. */
const CHORDS = 0.5

export function planFigures(
  steps: readonly PlanStep[],
  pieces: readonly Piece[],
): Readonly<Record<string, Figure>> {
  return Object.fromEntries(
    steps.flatMap((step): [string, Figure][] => {
      const shown = litPieces(step, pieces)
      return shown.length > 0 ? [[step.id, figureOf(step, shown)]] : []
    }),
  )
}

/** Two sides of one garment to one scale; the third piece is named by the words. */
const MOST = 2

function figureOf(step: PlanStep, all: readonly Piece[]): Figure {
  const shown = all.slice(0, MOST)
  const boxes = shown.map((p) => boxOf([outline(p)]))
  const tallest = Math.max(...boxes.map(boxHeight))
  const small = Math.min(LARGEST, TALL / tallest)
  let left = 0
  const marks = shown.flatMap((piece, i) => {
    const box = boxes[i]!
    const from = left
    left += boxWidth(box) * small + BETWEEN
    const at = (p: Point): Point => point(from + (p.x - box.left) * small, (p.y - box.top) * small)
    const drawn = (path: Path): Path => {
      const points = flatten(path, CHORDS).map(at)
      return points.slice(1).map((p, k) => line(points[k]!, p))
    }
    return [
      ...piece.edges.map((e) => pathMark(e.role === 'fold' ? 'dartMiddle' : 'hair', drawn(e.path))),
      ...litPaths(step, piece).map((path) => pathMark('seam', drawn(path))),
    ]
  })
  return { width: left - BETWEEN, height: tallest * small + UNDER, marks }
}
