/** What she says about the sheets of a draft: the order that every maker of sheets reads. */
import type { UnitChoice } from '../units/format.ts'
import type { Mm } from '../units/length.ts'
import type { Allowances } from './allowance.ts'
import type { Stuff } from './finish.ts'
import type { Finishes } from './finishes.ts'
import type { PaperChange } from './instruction-page.ts'
import type { Purpose, Stretch } from './page.ts'
import type { PaperChoice } from './paper.ts'
import type { DrawingScale } from './scaled-drawing.ts'

export interface SheetWords {
  readonly paper: PaperChoice
  readonly allowances?: Allowances
  /** Finished depth of a hem that is turned twice. */
  readonly hemDepth?: Mm
  /** Named on page one and told with the steps. */
  readonly finishes?: Finishes
  /** What is cut from the sheets; cloth is refused while a finding stands against it. */
  readonly stuff?: Stuff
  /** Corrections as work on the paper she has already, printed with the steps. */
  readonly changes?: readonly PaperChange[]
  readonly units: UnitChoice
  readonly round?: number
  /** Her own name for it; else the garment's. */
  readonly garmentName?: string
  /** Printed on page one, as she writes it; never taken from a clock. */
  readonly date?: string
  /** `cutting` is refused for a preview body. Without it: what the body allows. */
  readonly kind?: Purpose
  /** White the printer leaves, mm. */
  readonly margin?: number
  /** For demonstrations: says that nobody was measured. */
  readonly invented?: boolean
  /** What one printer needs to print true, from `readPrint`; across and down page one. */
  readonly scale?: Stretch
  /**
   * full: page one and the sheets. half: the same pieces at a half, to try a change on little
   * cloth. quarter: a small drawing with its letters beside the steps, for drawing by hand.
   * Without it: full and quarter.
   */
  readonly drawings?: readonly DrawingScale[]
}
