/**
 * The cutting line against an offset made by another library and by chords: exact along every
 * edge, and nowhere nearer to its seam line than its allowance.
 */
import { describe, expect, test } from 'vitest'
import { standardChoices, type Choices } from '../../src/draft/choices.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { GARMENTS, isGarmentId, standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { closeWedge } from '../../src/fitting/wedge.ts'
import { cuttingLine, type Allowances } from '../../src/output/allowance.ts'
import {
  allowancesFor,
  CLOTH_FINISHES,
  hemTurnedTwice,
  MUSLIN_FINISHES,
  usualFinishes,
} from '../../src/output/finishes.ts'
import { pathStart } from '../../src/geometry/path.ts'
import { mm } from '../../src/units/length.ts'
import { body, INVENTED_BODIES, MIDDLE } from '../bodies.ts'
import { edgeErrors } from './edge-errors.ts'

const drafted = (numbers = MIDDLE, more: Partial<Choices> = {}) =>
  draft('blouse', body({}, numbers), { ...standardChoices(), ...more })

const MUSLIN = allowancesFor(MUSLIN_FINISHES)
const CLOTH = allowancesFor(CLOTH_FINISHES)
const UNLIKE: Allowances = {
  ...MUSLIN,
  neck: mm(6),
  overarm: mm(15),
  sleeveEdge: mm(20),
  side: mm(10),
  hem: mm(30),
}
const WIDE: Allowances = { ...MUSLIN, neck: mm(16), overarm: mm(40), side: mm(38), hem: mm(90) }

describe('the allowance', () => {
  // 0.01 mm is a thirtieth of a pencil line. From memory.
  test.each(INVENTED_BODIES)('is exact on every piece of the %s body', (_, numbers) => {
    for (const allowances of [MUSLIN, CLOTH, UNLIKE, WIDE])
      for (const piece of drafted(numbers).pieces) {
        const { middle, short } = edgeErrors(piece, allowances)
        expect(middle, `${piece.id} middle`).toBeLessThan(0.01)
        expect(short, `${piece.id} short`).toBeLessThan(0.01)
      }
  })
  test.each([
    ['a sharp underarm corner', { cornerRadius: mm(0) }],
    ['a corner rounded less than the allowance', { cornerRadius: mm(8) }],
    ['a corner rounded nearly to the allowance', { cornerRadius: mm(16) }],
    ['a zip at the centre back', { opening: 'backZip' }],
    ['a buttoned front and a V neck', { opening: 'buttonedFront', neckShape: 'vee' }],
    ['a square neck with facings', { neckShape: 'square', neckFinish: 'facing' }],
    ['a scoop neck with facings', { neckShape: 'scoop', neckFinish: 'facing' }],
    ['a hem above the hip, darts running out', { lengthBelowWaist: mm(70) }],
    ['a hem on the slant of the side', { lengthBelowWaist: mm(130) }],
  ] satisfies readonly (readonly [string, Partial<Choices>])[])('is exact with %s', (_, more) => {
    for (const [, numbers] of INVENTED_BODIES.filter(([name]) => name !== 'tall'))
      for (const allowances of [MUSLIN, CLOTH])
        for (const piece of drafted(numbers, more).pieces) {
          const { middle, short } = edgeErrors(piece, allowances)
          expect(middle, `${piece.id} middle`).toBeLessThan(0.01)
          expect(short, `${piece.id} short`).toBeLessThan(0.01)
        }
  })
  test.each(Object.keys(GARMENTS).filter(isGarmentId))(
    'is exact on the pieces of %s',
    (garment) => {
      for (const [, numbers] of INVENTED_BODIES)
        for (const stuff of ['muslin', 'cloth'] as const) {
          const { pieces } = draft(garment, body({}, numbers), standardFor(garment))
          const finishes = usualFinishes(stuff, pieces)
          const allowances = allowancesFor(finishes)
          for (const piece of pieces) {
            const { middle, short } = edgeErrors(piece, allowances, hemTurnedTwice(finishes))
            expect(middle, `${piece.id} middle`).toBeLessThan(0.01)
            expect(short, `${piece.id} short`).toBeLessThan(0.01)
          }
        }
    },
  )
  // Turned twice by half its allowance, a hem ends where it began: as far out as at the hem line.
  test.each(INVENTED_BODIES)('and the hem ends as deep as asked, %s body', (_, numbers) => {
    const { pieces } = draft('sleeve', body({}, numbers), standardFor('sleeve'))
    for (const piece of pieces.filter((p) => p.edges.some((e) => e.role === 'hem'))) {
      const cut = cuttingLine(piece, CLOTH, mm(38))
      if (!cut.ok) throw new Error(cut.reason)
      const hem = cut.edges.find((e) => e.role === 'hem')
      const own = piece.edges.find((e) => e.role === 'hem')
      if (!hem || !own) throw new Error(`${piece.id}: no hem`)
      const [from, to] = [pathStart(own.path), pathStart(hem.path)]
      expect(to.y).toBeCloseTo(from.y + 76, 6)
      expect(Math.abs(to.x - from.x)).toBeLessThan(20)
    }
  })
  test('is exact on a front whose sleeve edge was folded shorter', () => {
    const front = pieceOf(drafted(), 'front')
    const outcome = closeWedge(front, 'sleeveEdge', 0.5, mm(12))
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.why))
    const { middle, short } = edgeErrors(outcome.wedge.piece, MUSLIN)
    expect(middle).toBeLessThan(0.01)
    expect(short).toBeLessThan(0.01)
  })
})
