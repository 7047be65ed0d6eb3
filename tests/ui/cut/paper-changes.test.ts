/** What was decided since the paper she has, and what that paper cannot hold. */
import { describe, expect, test } from 'vitest'
import { onPaper } from '../../../src/fitting/on-paper.ts'
import { close } from '../../../src/rounds/redraft.ts'
import { nextRound, withChoices, withCorrection } from '../../../src/rounds/round.ts'
import { paperChanges } from '../../../src/ui/cut/paper-changes.ts'
import { mm } from '../../../src/units/length.ts'
import { FIRST, SECOND, WEDGE } from '../../storage/invented.ts'

const CM = { unit: 'cm', inchStep: 8 } as const

describe('changes on paper', () => {
  test('are those that the paper does not hold yet', () => {
    expect(paperChanges(FIRST(), undefined, CM)).toEqual([])
    expect(paperChanges(nextRound(FIRST(), 'r2', '2026-11-23'), FIRST(), CM)).toEqual([])
    const [change, ...more] = paperChanges(SECOND(), FIRST(), CM)
    expect(more).toEqual([])
    expect(change?.head).toContain('a wedge of 0.6 cm at the front sleeve edge')
    expect(change?.lines).toEqual(onPaper(SECOND(), CM)[0]?.lines)
    // Once round 2 is on paper round 3 has nothing to do.
    const printed = close(SECOND(), '2026-11-24')
    expect(paperChanges(nextRound(printed, 'r3', '2026-11-25'), printed, CM)).toEqual([])
  })
  test('name what was taken back and is still on the paper', () => {
    const printed = close(SECOND(), '2026-11-24')
    const third = withCorrection(nextRound(printed, 'r3', '2026-11-25'), {
      v: 1,
      id: 'c2',
      kind: 'withdraw',
      correction: WEDGE.id,
      round: 3,
    })
    const [change] = paperChanges(third, printed, CM)
    expect(change?.head).toMatch(/^Taken back\./)
    expect(change?.lines.join(' ')).toContain('The paper of round 2 still has it.')
  })
  test('say where a choice was turned as well, which old paper does not hold', () => {
    const next = nextRound(FIRST(), 'r2', '2026-11-23')
    const turned = withChoices(next, { ...next.choices, easeBust: mm(30) })
    expect(paperChanges(turned, FIRST(), CM).map(({ head }) => head)).toEqual([
      'Numbers or choices changed as well',
    ])
  })
})
