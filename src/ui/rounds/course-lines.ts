/** The course of a garment as lines of a drawing: one a zone, and where its name stands at the end. */
import type { CourseStep } from '../../rounds/course.ts'
import { ZONES, type Zone } from '../../rounds/zones.ts'
import { mm, type Mm } from '../../units/length.ts'

export interface CourseLine {
  readonly zone: Zone
  /** By round, oldest first: what was corrected for it; 0 where nothing was. */
  readonly amounts: readonly Mm[]
}

/** Zones that were ever corrected, the most corrected first. The first round of all has nothing to correct. */
export function courseLines(steps: readonly CourseStep[]): readonly CourseLine[] {
  const sum = ({ amounts }: CourseLine): number => amounts.reduce((all, a) => all + Math.abs(a), 0)
  return ZONES.map((zone) => ({
    zone,
    amounts: steps.slice(1).map(({ corrected }) => corrected[zone] ?? mm(0)),
  }))
    .filter((line) => sum(line) > 0)
    .sort((a, b) => sum(b) - sum(a))
}

/** Heights moved apart so that no two lie closer than `least`, in their order and near their own. */
export function spread(heights: readonly number[], least: number): readonly number[] {
  const order = heights.map((y, k) => ({ y, k })).sort((a, b) => a.y - b.y)
  for (let i = 1; i < order.length; i++) {
    const [above, here] = [order[i - 1], order[i]]
    if (above && here) here.y = Math.max(here.y, above.y + least)
  }
  return heights.map((own, k) => order.find((o) => o.k === k)?.y ?? own)
}
