/** A golden case: what a file would give, and what must come out. Lengths in mm. */
import { expect } from 'vitest'
import { decideCase, readCase, resultOf } from '../../../src/fitting/rules/case.ts'

export interface GoldenEdit {
  readonly target: string
  readonly op: string
  readonly raw: number
  readonly applied: number
  readonly cap?: number | null
  readonly theta?: number
  readonly side?: string
}
interface Result {
  readonly decision: string
  readonly causes: readonly string[]
  readonly edits: readonly {
    readonly target: string
    readonly op: string
    readonly rawHalf_mm: number
    readonly applied_mm: number
    readonly cap_mm: number | null
    readonly theta_deg: number | null
    readonly side?: string
  }[]
  readonly heldBack: readonly {
    readonly target: string
    readonly mm: number
    readonly complaint: string
  }[]
  readonly reasons: readonly string[]
  readonly choices: readonly object[]
}

export const pin = (where: string, how: string, value_mm: number, side = 'both') => ({
  where,
  how,
  side,
  value_mm,
})
export const said = (id: string, answers: Record<string, boolean>, p?: object) => ({
  id,
  answers,
  ...(p ? { pin: p } : {}),
})

export function decided(
  complaints: readonly object[],
  draft: Readonly<Record<string, number>> = {},
  garment = 'sleeve',
): Result {
  const read = readCase({ id: 'case', garment, draft, complaints }, 1)
  if (!read.ok) throw new Error(read.reason)
  return resultOf(decideCase(read.value)) as Result
}

/** Exactly these edits, in any order. */
export function expectEdits(result: Result, edits: readonly GoldenEdit[]): void {
  const key = (e: { target: string; op: string; side?: string | undefined }): string =>
    `${e.target} ${e.op} ${e.side ?? ''}`
  expect(result.decision, result.reasons.join('\n')).toBe('change')
  expect(result.edits.map(key).sort()).toEqual(edits.map(key).sort())
  const left = [...result.edits]
  for (const e of edits) {
    const at = left.findIndex((x) => key(x) === key(e) && Math.abs(x.applied_mm - e.applied) < 0.06)
    expect(at, `${key(e)} ${e.applied}: ${JSON.stringify(result.edits)}`).toBeGreaterThanOrEqual(0)
    const [found] = left.splice(at, 1)
    expect(found?.rawHalf_mm).toBeCloseTo(e.raw, 1)
    if (e.cap !== undefined) expect(found?.cap_mm).toBe(e.cap)
    if (e.theta !== undefined) expect(found?.theta_deg).toBeCloseTo(e.theta, 2)
  }
}
