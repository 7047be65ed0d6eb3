import { describe, expect, it } from 'vitest'
import { withoutArms } from '../../src/capture/arms.ts'
import { bodyOutline, rowAt, runsOf } from '../../src/capture/outline.ts'
import type { Joint, Mask } from '../../src/capture/person.ts'

/** A mask from rows of grey values. */
const maskOf = (rows: readonly (readonly number[])[]): Mask => ({
  width: rows[0]?.length ?? 0,
  height: rows.length,
  data: Uint8Array.from(rows.flat()),
})
const joint = (x: number, y: number): Joint => ({ at: { x, y }, score: 1 })

describe('runs of a mask row', () => {
  it('puts the edge where straight interpolation between pixel centres crosses one half', () => {
    // By hand: 0 at centre 1.5, 255 at centre 2.5 -> half way at 2.0; 255 at 3.5, 51 at 4.5 ->
    // (255 - 127.5) / (255 - 51) = 0.625 behind 3.5.
    const [run, ...more] = runsOf(maskOf([[0, 0, 255, 255, 51, 0]]), 0)
    expect(more).toEqual([])
    expect(run?.left).toBeCloseTo(2, 9)
    expect(run?.right).toBeCloseTo(4.125, 9)
  })

  it('keeps two runs apart and closes one at the picture edge', () => {
    const runs = runsOf(maskOf([[255, 0, 0, 255]]), 0)
    expect(runs).toHaveLength(2)
    expect(runs[0]?.right).toBeCloseTo(1, 9)
    // Beyond the picture nothing is known; the run ends at its border.
    expect(runs[1]?.right).toBeCloseTo(4, 9)
  })
})

describe('outline of a body with hanging arms', () => {
  // A trunk 40 px wide about x = 60 with arms 8 px wide; down to row 30 arm and trunk are one.
  const height = 200
  const rows = Array.from({ length: height }, (_, y) =>
    Array.from({ length: 120 }, (_, x) => {
      const trunk = x >= 40 && x < 80 && y < 160
      const arm = y >= 10 && y < 120 && ((x >= 28 && x < 36) || (x >= 84 && x < 92))
      const armpit = y >= 10 && y < 30 && x >= 28 && x < 92
      return trunk || arm || armpit ? 255 : 0
    }),
  )
  const joints = {
    left_ear: joint(60, 2),
    right_ear: joint(60, 2),
    left_shoulder: joint(78, 12),
    right_shoulder: joint(42, 12),
    left_hip: joint(70, 140),
    right_hip: joint(50, 140),
  }
  const outline = bodyOutline(maskOf(rows), joints)

  it('takes the run that holds the axis, not the arms beside it', () => {
    const row = rowAt(outline, 90)
    expect(row?.left).toBeCloseTo(40, 6)
    expect(row?.right).toBeCloseTo(80, 6)
  })

  it('carries the trunk on where an arm is joined to it', () => {
    expect(rowAt(outline, 20)?.left).toBeCloseTo(28, 6)
    const trunk = withoutArms(outline, 90)
    expect(rowAt(trunk.rows, 20)?.left).toBeCloseTo(40, 6)
    expect(rowAt(trunk.rows, 20)?.right).toBeCloseTo(80, 6)
    expect(trunk.seenFrom.left).toBeGreaterThanOrEqual(30)
  })

  it('gives nothing when the joints that make the axis are missing', () => {
    expect(bodyOutline(maskOf(rows), {})).toEqual([])
  })
})
