import { describe, expect, it } from 'vitest'
import { drawnTowards } from '../../src/capture/estimates/expected.ts'
import { basisSaid, wayBasis } from '../../src/capture/seen.ts'
import { mm } from '../../src/units/length.ts'

const FRONT = wayBasis('front', 'sheetHung', 'at', 'light')
const seen = (value: number, pm90: number) =>
  ({ ok: true, estimate: { value: mm(value), pm90: mm(pm90), basis: FRONT } }) as const

describe('a length drawn towards what surveys lead one to expect', () => {
  // Two measurements of known variance, weighted by its inverse (any textbook): with a ± of 1.5
  // standard deviations, 15 is one of 10.
  it('goes a tenth of the way to one three times as unsure', () => {
    const outcome = drawnTowards(seen(200, 15), { mean: 180, sd: 30 })
    expect(outcome.ok && outcome.estimate.value).toBeCloseTo(198, 9)
    expect(outcome.ok && outcome.estimate.pm90).toBeCloseTo(1.5 / Math.sqrt(0.01 + 1 / 900), 6)
    expect(outcome.ok && outcome.estimate.basis).toBe(FRONT)
  })

  it('says so when the surveys are as sure as the photo', () => {
    const outcome = drawnTowards(seen(200, 30), { mean: 180, sd: 15 })
    expect(outcome.ok && basisSaid(outcome.estimate.basis)).toMatch(/two surveys of women alone/)
  })

  it('leaves a refusal as it is', () => {
    const refusal = { ok: false, reason: 'There is no front photo.' } as const
    expect(drawnTowards(refusal, { mean: 180, sd: 15 })).toBe(refusal)
  })
})
