/** How every test of every complaint may come out, drawn. */
import type { ComplaintId } from '../../../fitting/complaints/complaint.ts'
import type { Asked } from './asked.ts'
import { TESTS_ABOVE } from './tests-above.ts'
import { TESTS_BELOW } from './tests-below.ts'

/** By complaint, in the order of its tests. */
export const TEST_DRAWINGS: Readonly<Record<ComplaintId, readonly Asked[]>> = {
  ...TESTS_ABOVE,
  ...TESTS_BELOW,
}

export const testDrawing = (id: ComplaintId, test: number): Asked | undefined =>
  TEST_DRAWINGS[id][test - 1]
