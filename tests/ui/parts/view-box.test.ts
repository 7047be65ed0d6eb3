import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxHeight, boxWidth, type Box } from '../../../src/geometry/box.ts'
import { closeOn, closer, fitted, pushed } from '../../../src/ui/parts/view-box.ts'

const PIECE: Box = { left: -30, top: -30, right: 360, bottom: 630 }

describe('fitted', () => {
  it('fills a wide frame by its height and a narrow one by its width', () => {
    expect(boxHeight(fitted(PIECE, 2))).toBe(660)
    expect(boxWidth(fitted(PIECE, 2))).toBe(1320)
    expect(boxWidth(fitted(PIECE, 0.5))).toBe(390)
  })

  it('throws for a frame without a shape', () => {
    expect(() => fitted(PIECE, 0)).toThrow('shape 0')
  })
})

describe('closer', () => {
  const whole = fitted(PIECE, 1)

  // What a map or any paper under a lens does: the place under the finger does not move.
  it('keeps the place in the frame where it was', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (factor, across, down) => {
          const at = {
            x: whole.left + across * boxWidth(whole),
            y: whole.top + down * boxHeight(whole),
          }
          const view = closer(whole, factor, at, whole)
          expect((at.x - view.left) / boxWidth(view)).toBeCloseTo(across, 9)
          expect((at.y - view.top) / boxHeight(view)).toBeCloseTo(down, 9)
        },
      ),
    )
  })

  it('shows half as much at twice as close, and comes back to the whole', () => {
    const near = closer(whole, 2, { x: 100, y: 100 }, whole)
    expect(boxWidth(near)).toBeCloseTo(boxWidth(whole) / 2, 9)
    const back = closer(near, 0.1, { x: 100, y: 100 }, whole)
    expect(back.left).toBeCloseTo(whole.left, 9)
    expect(boxWidth(back)).toBeCloseTo(boxWidth(whole), 9)
  })
})

describe('pushed', () => {
  it('never leaves the whole', () => {
    const whole = fitted(PIECE, 1)
    const near = closer(whole, 4, { x: 100, y: 100 }, whole)
    const far = pushed(near, 1e6, -1e6, whole)
    expect(far.right).toBeCloseTo(whole.right, 6)
    expect(far.top).toBeCloseTo(whole.top, 6)
    expect(boxWidth(far)).toBeCloseTo(boxWidth(near), 6)
  })
})

describe('closeOn', () => {
  it('shows the whole of the lit place and as little else as the frame allows', () => {
    const whole = fitted(PIECE, 1)
    const view = closeOn({ left: 200, top: 100, right: 300, bottom: 150 }, whole)
    expect([view.left, view.right]).toEqual([200, 300])
    expect([view.top, view.bottom]).toEqual([75, 175])
  })
})
