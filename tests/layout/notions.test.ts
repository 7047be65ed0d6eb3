import { describe, expect, test } from 'vitest'
import type { Choices } from '../../src/draft/choices.ts'
import type { GarmentId } from '../../src/draft/draft.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { edge } from '../../src/draft/piece.ts'
import { pathLength } from '../../src/geometry/length.ts'
import { cutParts } from '../../src/layout/cut-part.ts'
import { cutList, interfacing, markingList } from '../../src/layout/cut-list.ts'
import { interfacingSentence, notionSentence } from '../../src/layout/list-words.ts'
import {
  biasAmount,
  biasSquare,
  buttonPlaces,
  notions,
  threadLength,
  zipSold,
} from '../../src/layout/notions.ts'
import { cuttingOf, USUAL_CUT } from '../../src/output/cutting.ts'
import { FINISHES } from '../../src/output/finish.ts'
import { sewingPlan } from '../../src/output/sewing-plan.ts'
import { inches, mm } from '../../src/units/length.ts'
import { body, MIDDLE } from '../bodies.ts'

function made(garment: GarmentId, choices: Partial<Choices> = {}) {
  const d = draft(garment, body({}, MIDDLE), { ...standardFor(garment), ...choices })
  const cutting = cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' })
  const cut = cutParts(d.pieces, cutting.allowances, cutting.hemDepth)
  if (!cut.ok) throw new Error(cut.reason)
  return { d, parts: cut.parts, plan: sewingPlan(d, cutting, { kind: 'lightCotton' }) }
}

describe('lists', () => {
  test('cut list: every piece as it says, facings with their interfacing', () => {
    const { d, parts } = made('sleeveless', { neckFinish: 'facing' })
    const rows = cutList(d.pieces, parts)
    expect(rows.map((r) => [r.piece, r.cut, r.interfacing])).toContainEqual([
      'frontNeckFacing',
      'Cut 1 on the fold',
      1,
    ])
    expect(rows.find((r) => r.piece === 'armholeStrip')?.interfacing).toBe(0)
    expect(rows).toHaveLength(d.pieces.length)
  })

  test('marking list: darts, zip line and apex of the pieces that have them', () => {
    const { d } = made('sleeve', { opening: 'sideZip' })
    const marks = markingList(d.pieces, { unit: 'cm', inchStep: 8 })
    const of = (id: string): string => marks.find((m) => m.piece === id)?.marks.join('; ') ?? ''
    expect(of('front')).toMatch(/side bust dart: the tip, and snip its mouth at the side seam/)
    expect(of('back')).toMatch(/zip, left side only/)
    expect(of('front')).toMatch(/waist dart: both tips/)
  })

  test('interfacing: laid out no shorter than its area, none without facings', () => {
    const { parts } = made('sleeveless', { neckFinish: 'facing', opening: 'buttonedFront' })
    const { length, width, area } = interfacing(parts, 'cm')
    expect(length * width).toBeGreaterThan(area)
    expect(length).toBeLessThan(800)
    const none = made('sleeveless', { opening: 'sideZip' }).parts.filter(
      (p) => !/Facing/.test(p.id),
    )
    expect(interfacing(none, 'cm').length).toBe(0)
  })
})

describe('notions', () => {
  test('zip: the next length sold', () => {
    // By hand: 329 mm → 350; 13 in → 14 in; nothing longer than the longest.
    expect(zipSold(mm(329), 'metre')).toBe(350)
    expect(zipSold(inches(13), 'yard')).toBeCloseTo(inches(14), 9)
    expect(zipSold(mm(350), 'metre')).toBe(350)
  })

  test('zip of the blouse: the opening itself beside what is sold', () => {
    const { d, plan } = made('blouse', { opening: 'sideZip' })
    const opening = d.openings.find((o) => o.kind === 'sideZip')!
    const zip = notions(d, plan, 'metre').find((n) => n.kind === 'zip')!
    expect(zip.length).toBe(opening.to - opening.from)
    expect(zip.sold).toBeGreaterThanOrEqual(zip.length!)
  })

  test.each([
    // Length, width, the square that public lessons on continuous bias strip cut for it, in.
    [250, 2, 23],
    [450, 2.25, 32],
    [98, 1, 10.375],
    [100, 3.5, 19],
  ])('bias: %d in of %d in strip from a square of %d in', (length, width, square) => {
    const ours = biasSquare(inches(length), inches(width)) / inches(1)
    // The area is in it, and no more is asked than a whole inch over what the lesson cuts.
    expect(ours ** 2).toBeGreaterThan(length * width)
    expect(Math.abs(ours - square)).toBeLessThanOrEqual(0.375)
  })

  test('bias: the square of the lesson is said in half centimetres upward', () => {
    // By hand: 1276 mm of 32 mm strip: √40832 = 202.07, and 12.7 of seams: 214.8 → 21.5 cm.
    const strip = {
      kind: 'biasStrip',
      length: mm(1276),
      square: biasSquare(mm(1276), mm(32)),
    } as const
    expect(notionSentence(strip, { unit: 'cm', inchStep: 8 })).toBe(
      'Bias strip, bought or cut from the cloth: 127.6 cm, or a square of 21.5 cm cut round as one strip.',
    )
  })

  test('thread of a lockstitch seam of 220 cm, before what is spare', () => {
    // Thread consumption as the trade works it, stitch class 301: 220 × 2.5 = 550 cm; 10 to 15 % is
    // added for waste there, a fifth here.
    const seam = {
      id: 's',
      kind: 'seam',
      title: '',
      lit: [],
      long: mm(2200),
      times: 1,
      passes: [['Sew it.']],
      thread: { rows: 1, overcast: 0 },
    } as const
    const thread = threadLength([seam])
    expect(thread).toBeGreaterThanOrEqual(5500 * 1.15)
    expect(thread).toBeLessThanOrEqual(5500 * 1.25)
  })

  test('bias of the sleeveless blouse: neck once, armholes twice', () => {
    const { d } = made('sleeveless')
    const strip = (id: string): number =>
      pathLength(
        edge(
          d.pieces.find((p) => p.id === id)!,
          'neck',
        ).path,
      )
    expect(biasAmount(d.pieces)?.length).toBeCloseTo(
      strip('neckStrip') + 2 * strip('armholeStrip'),
      9,
    )
  })

  test('buttons of a front of 566 mm, 16 mm wide', () => {
    // By hand: from 16 to 476 are 460; 460 / 85 = 5.4 → 5 spaces of 92, 6 buttons.
    const places = buttonPlaces(mm(566), mm(16))
    expect(places).toHaveLength(6)
    expect([places[0], places[1], places[5]]).toEqual([16, 108, 476])
  })

  // By hand: 104 m are 113.7 yards of 36 in; both are asked for in tens.
  test('thread is asked for by the metre or by the yard', () => {
    const thread = { kind: 'thread', length: mm(104_000), count: 2 } as const
    expect(notionSentence(thread, { unit: 'cm', inchStep: 8 })).toBe(
      'Sewing thread: about 110 m, 2 reels of 100 m.',
    )
    expect(notionSentence(thread, { unit: 'inch', inchStep: 8 })).toBe(
      'Sewing thread: about 120 yd, 2 reels of 110 yd.',
    )
  })

  test('thread of one seam', () => {
    // By hand: plain seam 400 mm twice: (1 × 2.5 + 2 × 7) × 800 × 1.2 = 15,840 mm.
    const seam = {
      id: 's',
      kind: 'seam',
      title: '',
      lit: [],
      long: mm(400),
      times: 2,
      passes: [
        ['Right sides together, sew ', mm(16), ' from the edge.'],
        ['Overcast each edge by itself.'],
      ],
      thread: FINISHES.plainSeam.thread,
    } as const
    expect(threadLength([seam])).toBeCloseTo(15_840, 6)
  })

  test('thread: plain seams overcast take more than French ones', () => {
    // By hand: a French seam is two rows, 5 times its length; a plain one 2.5 + 2 × 7 = 16.5 times.
    const { d, plan } = made('blouse')
    const plain = { finish: 'plainSeam' } as const
    const cutting = cuttingOf(d, {
      ...USUAL_CUT,
      stuff: 'cloth',
      cloth: { overarm: plain, side: plain },
    })
    const long = (id: string): number => {
      const s = plan.find((x) => x.id === id)!
      return s.long! * s.times!
    }
    const more = threadLength(sewingPlan(d, cutting, { kind: 'lightCotton' })) - threadLength(plan)
    // The side has its zip and is plain in both.
    expect(more).toBeCloseTo(1.2 * (16.5 - 5) * long('seam.overarm'), 3)
  })
})

// One button for each cuff and one layer of interfacing for each: common practice, no source.
describe('the end of a sleeve', () => {
  const narrow = { sleeveLength: mm(580), sleeveHem: mm(80), cuffFullness: mm(70) }
  const cm = { unit: 'cm', inchStep: 8 } as const
  const said = (choices: Partial<Choices>): string => {
    const { d, plan } = made('sleeve', { ...narrow, opening: 'backZip', ...choices })
    return notions(d, plan, 'metre')
      .map((n) => notionSentence(n, cm))
      .join(' ')
  }
  test('cuffs are cut twice and interfaced twice, their slits bound with two straight strips', () => {
    const { d, parts } = made('sleeve', { ...narrow, sleeveEnd: 'cuff', opening: 'backZip' })
    const rows = cutList(d.pieces, parts).map((r) => [r.piece, r.cut, r.interfacing])
    expect(rows).toContainEqual(['cuff', 'Cut 2, one turned over', 2])
    expect(rows).toContainEqual(['sleeveBinding', 'Cut 2', 0])
    const stiff = interfacing(parts, 'cm')
    // 215 by 100 mm and 10 mm all round, twice.
    expect(stiff.area).toBeCloseTo(2 * 235 * 120, -1)
    expect(interfacingSentence(stiff, 'metre', cm)).toContain('for the cuffs, which lie on')
    const bias = biasAmount(d.pieces)
    // The neck strip alone is on the bias.
    expect(bias?.length).toBeCloseTo(
      pathLength(
        edge(
          d.pieces.find((p) => p.id === 'neckStrip')!,
          'neck',
        ).path,
      ),
      6,
    )
  })
  test('buttons for the cuffs, or loops and buttons for slits in a hem', () => {
    expect(said({ sleeveEnd: 'cuff' })).toContain('2 buttons for the cuffs')
    expect(said({ sleeveEnd: 'hemSlit' })).toContain('2 small buttons and thread loops.')
    expect(said({})).not.toMatch(/button/)
  })
})
