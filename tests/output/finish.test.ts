/** Finishes against published figures, and the arithmetic of a hem on a curve. */
import { describe, expect, test } from 'vitest'
import { standardChoices } from '../../src/draft/choices.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { edge, type Edge, type EdgeName } from '../../src/draft/piece.ts'
import { EDGE_WORDS } from '../../src/draft/piece.words.ts'
import { point } from '../../src/geometry/point.ts'
import { arc, cubic, line, type Segment } from '../../src/geometry/segment.ts'
import { allowanceOf, cuttingLine } from '../../src/output/allowance.ts'
import { finishesThatSuit, finishRefusal, refusedFinishes } from '../../src/output/finish-fit.ts'
import { FINISHES, FINISH_IDS, finishOf } from '../../src/output/finish.ts'
import { passSentence } from '../../src/output/pass.ts'
import {
  allowancesFor,
  CLOTH_FINISHES,
  hemTurnedTwice,
  MUSLIN_FINISHES,
  usualFinishes,
} from '../../src/output/finishes.ts'
import { tightest } from '../../src/output/tightest.ts'
import { mm } from '../../src/units/length.ts'
import { body, INVENTED_BODIES } from '../bodies.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const INCH = { unit: 'inch', inchStep: 8 } as const
const edgeOf = (role: Edge['role'], path: Segment, name: EdgeName = 'sleeveEdge'): Edge => ({
  name,
  role,
  path: [path],
})
/** A quarter circle that bulges out of its piece, or is hollow. */
const bulging = (radius: number): Segment => arc(point(0, 0), radius, 0, Math.PI / 2)
const hollow = (radius: number): Segment => arc(point(0, 0), radius, Math.PI / 2, -Math.PI / 2)

describe('allowances', () => {
  // 5/8 in = 15.9 mm for home sewing (Univ. of Kentucky FCS2-304; Oklahoma State 4-H card 810;
  // a magazine's baby hem of 2020), 1/4 in = 6.4 mm, 3/8 in = 9.5 mm, 1 in = 25.4 mm (1916).
  test.each([
    ['plainSeam', 5 / 8],
    ['frenchSeam', 5 / 8],
    ['flatFelled', 5 / 8],
    ['rolledEdge', 5 / 8],
    ['biasStrip', 1 / 4],
    ['facing', 3 / 8],
    ['muslinSeam', 1],
  ] as const)('%s is the published %f in to half a millimetre', (id, inch) => {
    expect(Math.abs(FINISHES[id].allowance - inch * 25.4)).toBeLessThan(0.55)
  })
  // Between 16 and 25 mm (4-H sewing helper 11.135).
  test('a zip lies in the published range', () => {
    expect(FINISHES.zip.allowance).toBeGreaterThanOrEqual(16)
    expect(FINISHES.zip.allowance).toBeLessThanOrEqual(25)
  })
  // 3/8 + 1/4 = 5/8: what is sewn in two passes is what there is. Oklahoma State card 810.
  test('the passes of a French seam use up its allowance', () => {
    const sewn = FINISHES.frenchSeam.passes.flatMap((p) => p.filter((x) => typeof x === 'number'))
    expect(sewn).toEqual([10, 3, 6])
    expect(10 + 6).toBe(FINISHES.frenchSeam.allowance)
    // Trimmed, it hides in the second pass with 2 mm to spare (common practice, no source).
    expect(3).toBeLessThanOrEqual(6 - 2)
  })
  test('a double-fold hem takes twice its depth, as deep as she wants it', () => {
    expect(finishOf('doubleFoldHem').allowance).toBe(76)
    expect(finishOf('doubleFoldHem', mm(13)).allowance).toBe(26)
    expect(allowancesFor(CLOTH_FINISHES, mm(20)).hem).toBe(40)
    expect(hemTurnedTwice(CLOTH_FINISHES, mm(20))).toBe(20)
    expect(hemTurnedTwice(MUSLIN_FINISHES)).toBeUndefined()
  })
  test('every edge has one, edges of finishing pieces none', () => {
    const muslin = allowancesFor(MUSLIN_FINISHES)
    expect(Object.keys(muslin)).toEqual(Object.keys(EDGE_WORDS))
    expect(muslin).toMatchObject({ side: 25, overarm: 25, hem: 40, sleeveEdge: 10, neck: 0 })
    expect(allowancesFor(CLOTH_FINISHES)).toMatchObject({
      side: 16,
      overarm: 16,
      sleeveEdge: 16,
      neck: 6,
      hem: 76,
      outer: 0,
      start: 0,
      end: 0,
    })
  })
})

describe('sentences', () => {
  test('say their lengths in her units', () => {
    const [first = []] = FINISHES.frenchSeam.passes
    expect(passSentence(first, CM)).toBe('Wrong sides together, sew 1.0 cm from the edge.')
    expect(passSentence(first, INCH)).toBe('Wrong sides together, sew 3/8 in from the edge.')
  })
  test('are short, end with a full stop and hold no bare number', () => {
    for (const id of FINISH_IDS)
      for (const one of FINISHES[id].passes) {
        const words = one.filter((x) => typeof x === 'string').join('')
        expect(words).not.toMatch(/\d/)
        expect(passSentence(one, CM)).toMatch(/^[A-Z].*\.$/)
        expect(passSentence(one, CM).length).toBeLessThan(110)
      }
  })
})

describe('a hem on a curve', () => {
  // Worked out: an arc of 200 moved out by h is (200 + h)/200 as long: 8 mm 4 %, 13 mm 6.5 %.
  test('goes up to five in a hundred and is refused past it, with its numbers', () => {
    const sleeve = edgeOf('edge', bulging(200))
    expect(finishRefusal(sleeve, 'doubleFoldHem', CM, mm(4))).toBeUndefined()
    expect(finishRefusal(sleeve, 'doubleFoldHem', CM, mm(6.5))).toEqual({
      edge: 'sleeveEdge',
      reason:
        'The double-fold hem turns up 1.3 cm at the sleeve edge, whose tightest curve has a radius of 20.0 cm: its raw edge is 6.5 % longer than the line it is turned to, and more than 5 % does not lie flat. Folded twice, at most 0.5 cm deep would lie flat. What goes there: narrow rolled edge.',
      offer: 'rolledEdge',
      // 5 % of 200 mm, turned twice.
      depth: 5,
    })
  })
  test('is said in inches to her who reads inches', () => {
    const refusal = finishRefusal(edgeOf('edge', bulging(200)), 'doubleFoldHem', INCH, mm(25.4))
    expect(refusal?.reason).toContain('turns up 2 in at the sleeve edge')
    expect(refusal?.reason).toContain('a radius of 7 7/8 in')
    expect(refusal?.reason).toContain('25.4 %')
  })
  test('of 400 mm takes twice as much, and a straight one anything', () => {
    expect(finishRefusal(edgeOf('hem', bulging(400)), 'doubleFoldHem', CM, mm(10))).toBeUndefined()
    expect(finishRefusal(edgeOf('hem', bulging(400)), 'doubleFoldHem', CM, mm(11))).toBeDefined()
    const straight = line(point(100, 0), point(0, 0))
    expect(finishRefusal(edgeOf('hem', straight), 'doubleFoldHem', CM, mm(50))).toBeUndefined()
  })
  test('offers a strip or facing where not even a rolled edge goes', () => {
    expect(finishRefusal(edgeOf('edge', bulging(60)), 'rolledEdge', CM)?.offer).toBe('facing')
  })
})

// Worked out: a hollow arc of 20 mm moved out by 20 mm is a point.
describe('a hem on a hollow curve', () => {
  test.each([
    [21, true],
    [20, false],
  ])('of %i mm', (radius, goes) => {
    const refusal = finishRefusal(edgeOf('edge', hollow(radius)), 'doubleFoldHem', CM, mm(10))
    expect(refusal === undefined).toBe(goes)
    if (!goes) expect(refusal).toMatchObject({ offer: 'rolledEdge' })
    if (!goes) expect(refusal?.reason).toContain('hollow with a radius of 2.0 cm')
  })
})

describe('a French seam', () => {
  // Only where the radius is more than 60 mm: common practice, no source.
  test.each([
    [61, true],
    [60, false],
    [30, false],
  ])('on a curve of %i mm', (radius, goes) => {
    for (const path of [bulging(radius), hollow(radius)]) {
      const refusal = finishRefusal(edgeOf('seam', path, 'side'), 'frenchSeam', CM)
      expect(refusal === undefined).toBe(goes)
      if (!goes) {
        expect(refusal?.offer).toBe('plainSeam')
        expect(refusal?.reason).toContain(`a radius of ${(radius / 10).toFixed(1)} cm`)
        expect(refusal?.reason).toContain('more than 6.0 cm')
      }
    }
  })
})

describe('the tightest curve', () => {
  test('of an arc is its radius, told by the way it bends', () => {
    expect(tightest([bulging(37)])).toEqual({ bulging: 37, hollow: Infinity })
    expect(tightest([hollow(37)])).toEqual({ bulging: Infinity, hollow: 37 })
  })
  // The usual cubic for a quarter circle of radius 100 strays by a few hundredths of it; its
  // radius lies within one in a hundred. From memory.
  test('of the cubic that stands for a quarter circle is that circle', () => {
    const k = 55.228
    const quarter = cubic(point(100, 0), point(100, k), point(k, 100), point(0, 100))
    expect(Math.abs(tightest([quarter]).bulging - 100)).toBeLessThan(2)
    expect(tightest([quarter]).hollow).toBe(Infinity)
  })
  test('of a straight edge is none', () => {
    expect(tightest([line(point(0, 0), point(9, 9))])).toEqual({
      bulging: Infinity,
      hollow: Infinity,
    })
  })
})

describe('what suits', () => {
  const back = pieceOf(draft('blouse', body(), standardChoices()), 'back')
  test('follows the role of the edge', () => {
    const seams = ['plainSeam', 'frenchSeam', 'flatFelled']
    expect(finishesThatSuit(edge(back, 'overarm'))).toEqual(seams)
    expect(finishesThatSuit(edge(back, 'side'))).toEqual([...seams, 'zip'])
    expect(finishesThatSuit(edge(back, 'hem'))).toEqual(['rolledEdge', 'doubleFoldHem'])
    expect(finishesThatSuit(edge(back, 'centre'))).toEqual(['cutOnLine'])
    expect(finishesThatSuit(edge(back, 'hem'), 'muslin')).toEqual(['muslinHem'])
  })
  // A set-in sleeve makes a seam of the armhole; buttons make an edge of the centre.
  test('the usual ones follow the role an edge has in these pieces', () => {
    const { pieces } = draft('sleeve', body(), standardFor('sleeve'))
    expect(usualFinishes('cloth', pieces)).toMatchObject({
      armhole: 'armholeSeam',
      side: 'frenchSeam',
    })
    const bare = draft('sleeveless', body(), standardFor('sleeveless')).pieces
    expect(usualFinishes('cloth', bare).armhole).toBe('biasStrip')
    const buttoned = draft('blouse', body(), { ...standardChoices(), opening: 'buttonedFront' })
    expect(usualFinishes('cloth', buttoned.pieces).centre).toBe('facing')
    expect(usualFinishes('muslin', bare)).toEqual(MUSLIN_FINISHES)
  })
  test('and its curve: no deep hem on a sleeve edge', () => {
    const names = finishesThatSuit(edge(back, 'sleeveEdge'))
    expect(names).toContain('rolledEdge')
    expect(names).not.toContain('doubleFoldHem')
  })
  test.each(INVENTED_BODIES)(
    'the usual finishes go on the %s body and can be cut',
    (_, numbers) => {
      for (const finishes of [MUSLIN_FINISHES, CLOTH_FINISHES])
        for (const piece of draft('blouse', body({}, numbers), standardChoices()).pieces) {
          expect(refusedFinishes(piece, finishes, CM)).toEqual([])
          expect(cuttingLine(piece, allowancesFor(finishes))).toMatchObject({ ok: true })
          for (const e of piece.edges)
            if (e.role === 'fold') expect(allowanceOf(piece, e, allowancesFor(finishes))).toBe(0)
        }
    },
  )
})
