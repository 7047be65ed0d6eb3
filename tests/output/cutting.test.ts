/** Finishes and allowances as she chose them, on the edges of every garment. */
import { describe, expect, test } from 'vitest'
import { standardChoices, type Choices } from '../../src/draft/choices.ts'
import { GARMENTS, isGarmentId, standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import type { Draft } from '../../src/draft/draft.ts'
import { arc, line } from '../../src/geometry/segment.ts'
import { point } from '../../src/geometry/point.ts'
import { cuttingLine } from '../../src/output/allowance.ts'
import {
  cutRows,
  cuttingOf,
  USUAL_CUT,
  withWish,
  type CutRow,
  type CutWishes,
  type EdgeWish,
} from '../../src/output/cutting.ts'
import { refusedFinishes } from '../../src/output/finish-fit.ts'
import { finishAs } from '../../src/output/finish.ts'
import { mm } from '../../src/units/length.ts'
import { body, INVENTED_BODIES, LARGE } from '../bodies.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const CLOTH: CutWishes = { ...USUAL_CUT, stuff: 'cloth' }
const blouse = (more: Partial<Choices> = {}): Draft =>
  draft('blouse', body(), { ...standardChoices(), ...more })
const rowAt = (d: Draft, wishes: CutWishes, name: string): CutRow => {
  const row = cutRows(d, wishes).find((r) => r.name === name)
  if (!row) throw new Error(`no row ${name}`)
  return row
}

const wishing = (
  d: Draft,
  wishes: CutWishes,
  name: string,
  wish: EdgeWish | undefined,
): CutWishes => withWish(wishes, rowAt(d, wishes, name), wish)

describe('a muslin', () => {
  // 1 in at side and overarm (Clothing for Women, 1916), 40 mm hem and an uncut neck: common practice.
  test('is left 25 at side and overarm and 40 at the hem, its neck is cut on the line', () => {
    const { allowances, hemDepth, stuff } = cuttingOf(blouse(), USUAL_CUT)
    expect(allowances).toMatchObject({ side: 25, overarm: 25, hem: 40, neck: 0 })
    expect([hemDepth, stuff]).toEqual([undefined, 'muslin'])
  })
})

describe('the edges', () => {
  test('are told once each, by name and role, without the fold and without strips', () => {
    const rows = cutRows(blouse(), USUAL_CUT)
    expect(rows.map((r) => [r.name, r.role, r.pieces])).toEqual([
      ['neck', 'edge', ['back', 'front']],
      ['overarm', 'seam', ['back', 'front']],
      ['sleeveEdge', 'edge', ['back', 'front']],
      ['side', 'seam', ['back', 'front']],
      ['hem', 'hem', ['back', 'front']],
    ])
  })
  test('have the centre among them where it is sewn, and where it is faced', () => {
    expect(rowAt(blouse({ opening: 'backZip' }), CLOTH, 'centre')).toMatchObject({
      role: 'seam',
      pieces: ['back'],
      finish: 'zip',
      allowance: 20,
    })
    expect(rowAt(blouse({ opening: 'buttonedFront' }), CLOTH, 'centre')).toMatchObject({
      role: 'edge',
      finish: 'facing',
    })
  })
  test.each(Object.keys(GARMENTS).filter(isGarmentId))(
    'of %s start with finishes that go on them, for muslin and for cloth',
    (garment) => {
      for (const [, numbers] of INVENTED_BODIES)
        for (const wishes of [USUAL_CUT, CLOTH]) {
          const d = draft(garment, body({}, numbers), standardFor(garment))
          const { finishes, allowances, hemDepth } = cuttingOf(d, wishes)
          for (const piece of d.pieces) {
            expect(refusedFinishes(piece, finishes, CM)).toEqual([])
            expect(cuttingLine(piece, allowances, hemDepth).ok).toBe(true)
          }
        }
    },
  )
  test('follow what is drawn: a facing is sewn on as one, a side zip has its room', () => {
    expect(rowAt(blouse({ neckFinish: 'facing' }), CLOTH, 'neck').finish).toBe('facing')
    expect(rowAt(blouse({ neckFinish: 'facing' }), USUAL_CUT, 'neck').finish).toBe('cutOnLine')
    expect(rowAt(blouse({ opening: 'sideZip' }), CLOTH, 'side').finish).toBe('zip')
  })
})

describe('her choice', () => {
  test('changes that edge only, and taking it back puts it as it was', () => {
    const d = blouse({ neckFinish: 'facing' })
    const plain = wishing(blouse(), CLOTH, 'overarm', { finish: 'plainSeam', allowance: mm(12) })
    const [was, now] = [cuttingOf(d, CLOTH), cuttingOf(d, plain)]
    expect(now.allowances).toEqual({ ...was.allowances, overarm: 12 })
    expect(now.finishes).toEqual({ ...was.finishes, overarm: 'plainSeam' })
    expect(cuttingOf(d, wishing(d, plain, 'overarm', undefined))).toEqual(was)
  })
  test('for cloth leaves the muslin as it is', () => {
    const plain = wishing(blouse(), CLOTH, 'overarm', { finish: 'plainSeam', allowance: mm(12) })
    expect(cuttingOf(blouse(), { ...plain, stuff: 'muslin' })).toEqual(
      cuttingOf(blouse(), USUAL_CUT),
    )
  })
  test('of a hem folded twice goes to every writer as its finished depth', () => {
    const d = blouse()
    const deep = wishing(d, CLOTH, 'hem', { finish: 'doubleFoldHem', allowance: mm(50) })
    expect(cuttingOf(d, deep)).toMatchObject({ allowances: { hem: 50 }, hemDepth: 25 })
    const rolled = wishing(d, CLOTH, 'hem', { finish: 'rolledEdge' })
    expect(cuttingOf(d, rolled).hemDepth).toBeUndefined()
  })
  // Its sleeve edge is an arc of 336 mm: 76 mm turned up are 23 % too long, 16 mm 4.8 %.
  test('that the curve does not take is named, and the offered one stands', () => {
    const large = draft('blouse', body({}, LARGE), standardChoices())
    const at = (allowance?: number): CutRow =>
      rowAt(
        large,
        wishing(large, CLOTH, 'sleeveEdge', {
          finish: 'doubleFoldHem',
          ...(allowance === undefined ? {} : { allowance: mm(allowance) }),
        }),
        'sleeveEdge',
      )
    expect(at()).toMatchObject({ finish: 'rolledEdge', given: 'doubleFoldHem', allowance: 16 })
    expect(at(16)).toMatchObject({ finish: 'doubleFoldHem', allowance: 16 })
    expect(at(16).given).toBeUndefined()
  })
  test('without meaning for the role of the edge is passed over', () => {
    const odd = wishing(blouse(), CLOTH, 'neck', { finish: 'frenchSeam' })
    expect(cuttingOf(blouse(), odd)).toEqual(cuttingOf(blouse(), CLOTH))
  })
})

describe('a centre sewn at the back and faced at the front', () => {
  // Buttons in front open the blouse, and a back shaped in its middle has a seam there.
  const both = (): Draft => {
    const d = blouse({ opening: 'buttonedFront' })
    const seamed = d.pieces.map((p) =>
      p.id === 'back'
        ? {
            ...p,
            edges: p.edges.map((e) => (e.name === 'centre' ? { ...e, role: 'seam' as const } : e)),
          }
        : p,
    )
    return { ...d, pieces: seamed }
  }
  const centres = (wishes: CutWishes): CutRow[] =>
    cutRows(both(), wishes).filter((r) => r.name === 'centre')

  test('is told as two edges, each with the finish of its role', () => {
    expect(centres(CLOTH).map((r) => [r.words, r.role, r.finish, r.allowance])).toEqual([
      ['centre of the back', 'seam', 'plainSeam', 16],
      ['centre of the front and front facing', 'edge', 'facing', 10],
    ])
  })
  test('is cut with each its own allowance', () => {
    const { allowances, hemDepth } = cuttingOf(both(), CLOTH)
    const beyond = (id: string): number => {
      const piece = both().pieces.find((p) => p.id === id)!
      const cut = cuttingLine(piece, allowances, hemDepth)
      const own = cut.ok ? cut.edges.find((e) => e.name === 'centre')?.path : undefined
      const seam = piece.edges.find((e) => e.name === 'centre')!.path
      return own?.[0]?.kind === 'line' && seam[0]?.kind === 'line'
        ? Math.abs(own[0].from.x - seam[0].from.x)
        : NaN
    }
    expect([beyond('back'), beyond('front')]).toEqual([
      expect.closeTo(16, 6),
      expect.closeTo(10, 6),
    ])
  })
  test('is chosen apart, and put back apart', () => {
    const [back, front] = centres(CLOTH)
    const wide = withWish(CLOTH, back!, { finish: 'plainSeam', allowance: mm(25) })
    expect(wide.cloth).toEqual({ 'back.centre': { finish: 'plainSeam', allowance: 25 } })
    expect(centres(wide).map((r) => r.allowance)).toEqual([25, 10])
    const rolled = withWish(wide, front!, { finish: 'rolledEdge' })
    expect(centres(rolled).map((r) => r.finish)).toEqual(['plainSeam', 'rolledEdge'])
    expect(withWish(rolled, back!, undefined).cloth).toEqual({
      'front.centre': { finish: 'rolledEdge' },
      'buttonFacing.centre': { finish: 'rolledEdge' },
    })
  })
  test('takes what was kept for the name where it is meant', () => {
    const old: CutWishes = {
      ...CLOTH,
      cloth: { centre: { finish: 'plainSeam', allowance: mm(20) } },
    }
    expect(centres(old).map((r) => [r.finish, r.allowance])).toEqual([
      ['plainSeam', 20],
      ['facing', 10],
    ])
    expect(withWish(old, centres(old)[0]!, undefined).cloth).toEqual({})
  })
  test('keeps its choice when it is one edge again', () => {
    const kept: CutWishes = {
      ...CLOTH,
      cloth: { 'back.centre': { finish: 'plainSeam', allowance: mm(12) } },
    }
    const zipped = blouse({ opening: 'backZip' })
    const row = rowAt(zipped, kept, 'centre')
    expect([row.keys, row.finish, row.allowance]).toEqual([['centre'], 'plainSeam', 12])
    expect(withWish(kept, row, { finish: 'zip' }).cloth).toEqual({ centre: { finish: 'zip' } })
  })
})

describe('a width', () => {
  test('is taken where the finish leaves it free, and kept to what can be sewn', () => {
    expect(finishAs('plainSeam', mm(12)).allowance).toBe(12)
    expect(finishAs('plainSeam', mm(2)).allowance).toBe(6)
    // 16 to 25 mm (4-H sewing helper 11.135).
    expect(finishAs('zip', mm(40)).allowance).toBe(25)
    // 10 + 6: the two rows of a French seam leave nothing to choose. Oklahoma State card 810.
    expect(finishAs('frenchSeam', mm(25)).allowance).toBe(16)
  })
  test('stands in the words of its passes', () => {
    expect(finishAs('plainSeam', mm(12)).passes[0]).toContain(mm(12))
    expect(finishAs('doubleFoldHem', mm(30)).passes[0]).toContain(mm(15))
  })
  // Worked out: an arc of 300 bulging; folded twice 8 deep it is 16/300 = 5.3 % longer, 7 deep 4.7 %.
  test('of a hem too deep for its curve is refused for the deepest that goes', () => {
    const hollow = blouse()
    const round = hollow.pieces.map((p) => ({
      ...p,
      edges: p.edges.map((e) =>
        e.role === 'hem'
          ? {
              ...e,
              path: [arc(point(0, 0), 300, 0, Math.PI / 2), line(point(0, 300), point(0, 301))],
            }
          : e,
      ),
    }))
    const d = { ...hollow, pieces: round }
    const at = (allowance: number): CutRow =>
      rowAt(
        d,
        wishing(d, CLOTH, 'hem', { finish: 'doubleFoldHem', allowance: mm(allowance) }),
        'hem',
      )
    expect(at(14)).toMatchObject({ finish: 'doubleFoldHem', allowance: 14 })
    expect(at(16)).toMatchObject({ finish: 'rolledEdge', given: 'doubleFoldHem', allowance: 16 })
  })
})
