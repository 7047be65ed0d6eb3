/** The order of a table of changes: what moved most stands first, what stayed stands last. */
import { printedMm, type UnitChoice } from '../../units/format.ts'
import type { Mm } from '../../units/length.ts'

export interface ChangeRow {
  readonly id: string
  readonly name: string
  readonly before: Mm
  readonly after: Mm
}

/** Sorted by the printed change; rows that print the same change keep their order. */
export function largestFirst(rows: readonly ChangeRow[], choice: UnitChoice): readonly ChangeRow[] {
  const size = ({ before, after }: ChangeRow) =>
    Math.abs(printedMm(after, choice) - printedMm(before, choice))
  return rows.toSorted((a, b) => size(b) - size(a))
}
