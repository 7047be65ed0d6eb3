import { describe, expect, it } from 'vitest'
import { cm, inches, mm } from '../../../src/units/length.ts'
import type { UnitChoice } from '../../../src/units/format.ts'
import {
  along,
  lengthAt,
  printedStep,
  spanRound,
  stepped,
  ticks,
} from '../../../src/ui/parts/ruler.ts'

const CM: UnitChoice = { unit: 'cm', inchStep: 8 }
const INCH: UnitChoice = { unit: 'inch', inchStep: 8 }

describe('ticks', () => {
  // A centimetre ruler marks every millimetre, longer at 5 and longest at 10. Common practice.
  it('marks 2 cm with 21 ticks, longest at the whole centimetres', () => {
    const found = ticks({ from: cm(0), to: cm(2) }, CM)
    expect(found).toHaveLength(21)
    expect(found.filter((t) => t.size === 'long').map((t) => t.at)).toEqual([0, 0.5, 1])
    expect(found.filter((t) => t.size === 'middle').map((t) => t.at)).toEqual([0.25, 0.75])
  })

  // An inch ruler marks sixteenths; 25.4 mm to the inch exactly (ISO 80000-3).
  it('marks 2 in with sixteenths, longest at the whole inches', () => {
    const found = ticks({ from: inches(0), to: inches(2) }, INCH)
    expect(found).toHaveLength(33)
    expect(found.filter((t) => t.size === 'long').map((t) => t.at)).toEqual([0, 0.5, 1])
  })

  it('starts on the first round number inside the ends, not on the end', () => {
    const [first] = ticks({ from: mm(12.5), to: mm(22.5) }, CM)
    expect(first?.at).toBeCloseTo(0.05, 10) // 13 mm lies 0.5 mm into 10 mm
  })

  it('takes coarser marks before they run into each other', () => {
    expect(ticks({ from: cm(0), to: cm(50) }, CM, 60).length).toBeLessThanOrEqual(61)
    expect(ticks({ from: inches(0), to: inches(40) }, INCH, 30).length).toBeLessThanOrEqual(31)
  })
})

describe('stepping', () => {
  it('counts steps on the ruler, so a length between two marks lands on one', () => {
    // 12 mm is between 3/8 in (9.525) and 1/2 in (12.7); one eighth on from the nearer is 5/8 in.
    expect(stepped(mm(12), 1, printedStep(INCH), { from: mm(0), to: mm(40) })).toBeCloseTo(15.875)
    expect(stepped(mm(12), -1, printedStep(CM), { from: mm(0), to: mm(40) })).toBe(11)
  })

  it('stops at the ends', () => {
    expect(stepped(mm(39), 5, mm(1), { from: mm(0), to: mm(40) })).toBe(40)
    expect(stepped(mm(2), -5, mm(1), { from: mm(0), to: mm(40) })).toBe(0)
  })

  it('reads the length under a place on the ruler, and finds the place again', () => {
    const span = { from: mm(60), to: mm(130) }
    expect(lengthAt(0.5, span, mm(1))).toBe(95)
    expect(lengthAt(7, span, mm(1))).toBe(130)
    expect(along(mm(95), span)).toBe(0.5)
  })
})

describe('spanRound', () => {
  it('keeps everything inside and never shrinks below the least span', () => {
    const near = spanRound([mm(411), mm(413)], mm(20))
    expect(near).toEqual({ from: 402, to: 422 })
    const wide = spanRound([mm(900), mm(1000)], mm(20))
    expect(wide.from).toBeLessThan(900)
    expect(wide.to).toBeGreaterThan(1000)
  })

  it('throws when there is nothing to show', () => {
    expect(() => spanRound([], mm(20))).toThrow('no lengths')
  })
})
