/**
 * Every operation on real drafts. Figures beside each are worked out by the formulas of plane
 * geometry (pivot, slash, hinge); what must stay true of a pattern after it is common practice.
 */
import { describe, expect, test } from 'vitest'
import fc from 'fast-check'
import { correctedDraft } from '../../../src/fitting/apply.ts'
import type { Because, Correction } from '../../../src/fitting/correction.ts'
import { operationsAtCap } from '../../../src/fitting/ops/at-cap.ts'
import type { Operation } from '../../../src/fitting/ops/operation.ts'
import { hingeOf, onArmEdge, onNeck, pivotOf, sideMouth } from '../../../src/fitting/landmarks.ts'
import { fullBust } from '../../../src/fitting/rotation.ts'
import { standardFor } from '../../../src/draft/garments.ts'
import { pieceOf, type Draft, type GarmentId } from '../../../src/draft/draft.ts'
import {
  edge,
  namedPoint,
  sewnLength,
  type EdgeName,
  type HalfId,
} from '../../../src/draft/piece.ts'
import { record } from '../../../src/draft/record.ts'
import { checkJoined } from '../../../src/geometry/path.ts'
import { pathLength } from '../../../src/geometry/length.ts'
import { distance } from '../../../src/geometry/point.ts'
import { mm } from '../../../src/units/length.ts'
import { body, MIDDLE, SMALL, TALL } from '../../bodies.ts'

const because: Because = {
  complaint: 'B8',
  cause: 'test',
  pinned: { how: 'wholeFold', read: mm(10), share: 1 },
  watch: mm(0),
  round: 1,
}
const operate = (operation: Operation, id = 'c1', side?: 'left' | 'right'): Correction => ({
  v: 1,
  id,
  kind: 'operate',
  operation,
  ...(side ? { side } : {}),
  because,
})
const made = (garment: GarmentId, list: readonly Correction[], numbers = MIDDLE) =>
  correctedDraft(garment, body({}, numbers), standardFor(garment), list)
const plain = (garment: GarmentId, numbers = MIDDLE): Draft => made(garment, [], numbers).draft
const done = (garment: GarmentId, operation: Operation): { before: Draft; after: Draft } => {
  const out = made(garment, [operate(operation)])
  expect(out.refused).toEqual([])
  return { before: plain(garment), after: out.draft }
}
const long = (d: Draft, id: HalfId, name: EdgeName): number =>
  pathLength(edge(pieceOf(d, id), name).path)
const sewn = (d: Draft, id: HalfId, name: EdgeName): number => sewnLength(pieceOf(d, id), name)
const mouth = (d: Draft, id: HalfId, name: string): number =>
  record(d).lengths[`${id}.${name}`] ?? 0

describe('a wedge turned into a dart', () => {
  // 2R·sin(θ/2) with sin(θ/2) = w/2r is w·R/r; vector: w 12, r 150, R 180 gives 14.40.
  test('neck into the waist dart: it opens by w·R/r, shoulder, armhole and side keep their lengths', () => {
    const { before, after } = done('block', {
      op: 'ROT',
      piece: 'front',
      edge: 'neck',
      along: 0.2,
      width: mm(8),
      into: 'waistDart',
    })
    const front = pieceOf(before, 'front')
    const r = distance(pivotOf(front), onNeck(front, 0.2))
    const R = distance(pivotOf(front), front.darts[0]!.outer)
    const opened = distance(pieceOf(after, 'front').darts[0]!.outer, front.darts[0]!.outer)
    expect(opened).toBeCloseTo((8 * R) / r, 6)
    for (const name of ['shoulder', 'armhole', 'side', 'centre'] as const)
      expect(long(after, 'front', name)).toBeCloseTo(long(before, 'front', name), 2)
    expect(long(before, 'front', 'neck') - long(after, 'front', 'neck')).toBeCloseTo(8, 2)
    expect(long(after, 'back', 'neck')).toBeCloseTo(long(before, 'back', 'neck'), 2)
  })
  test('armhole into the side dart: its mouth grows by w·R/r, the sewn side stays', () => {
    const { before, after } = done('block', {
      op: 'ROT',
      piece: 'front',
      edge: 'armhole',
      along: 0.4,
      width: mm(6),
      into: 'bustDart',
    })
    const front = pieceOf(before, 'front')
    const dart = front.edgeDarts[0]!
    const r = distance(pivotOf(front), onArmEdge(front, 0.4))
    const moved = distance(pieceOf(after, 'front').edgeDarts[0]!.upper, dart.upper)
    expect(moved).toBeCloseTo((6 * distance(pivotOf(front), dart.upper)) / r, 6)
    expect(sewn(after, 'front', 'side')).toBeCloseTo(sewn(before, 'front', 'side'), 2)
    expect(long(after, 'front', 'neck')).toBe(long(before, 'front', 'neck'))
  })
  // An edge at a slant to the pivot is shortened by the turn times how far its line runs past the
  // pivot: half the pin on the sleeve edge of the blouse, so that the turn is larger than square.
  test.each([
    ['block', 'front', 'neck', 0.5, 8, 'waistDart'],
    ['blouse', 'front', 'sleeveEdge', 0.5, 8, 'bustDart'],
    ['blouse', 'front', 'neck', 0.4, 8, 'bustDart'],
    ['blouse', 'back', 'neck', 0.5, 8, 'shoulderDart'],
  ] as const)(
    '%s, %s %s at %f loses just what was pinned by a larger turn',
    (garment, piece, name, along, w, into) => {
      const { before, after } = done(garment, {
        op: 'ROT',
        piece,
        edge: name,
        along,
        width: mm(w),
        into,
      })
      expect(long(before, piece, name) - long(after, piece, name)).toBeCloseTo(w, 2)
    },
  )
  test('near the shoulder the neck of the blouse runs along the line to the bust tip: refused', () => {
    const out = made('blouse', [
      operate({
        op: 'ROT',
        piece: 'front',
        edge: 'neck',
        along: 0.75,
        width: mm(6),
        into: 'bustDart',
      }),
    ])
    const why = out.refused[0]?.why
    expect(why?.id).toBe('edgeSlants')
    if (why?.id === 'edgeSlants') expect(why.most).toBeLessThan(6)
    expect(record(out.draft)).toEqual(record(plain('blouse')))
  })
  // "The edge is shorter by w": what is pinned out of an armhole is what it loses, however it bends.
  test.each([
    [0.3, 4],
    [0.4, 8],
    [0.4, 12],
    [0.5, 8],
  ])('an armhole pinned at %f of its length loses just the %d mm pinned', (along, w) => {
    for (const numbers of [MIDDLE, SMALL, TALL]) {
      const out = made(
        'block',
        [
          operate({
            op: 'ROT',
            piece: 'front',
            edge: 'armhole',
            along,
            width: mm(w),
            into: 'bustDart',
          }),
        ],
        numbers,
      )
      expect(out.refused).toEqual([])
      const lost =
        long(plain('block', numbers), 'front', 'armhole') - long(out.draft, 'front', 'armhole')
      expect(lost).toBeCloseTo(w, 1)
    }
  })
  test('back neck into the shoulder dart: the sewn shoulder stays', () => {
    const { before, after } = done('block', {
      op: 'ROT',
      piece: 'back',
      edge: 'neck',
      along: 0.5,
      width: mm(5),
      into: 'shoulderDart',
    })
    expect(sewn(after, 'back', 'shoulder')).toBeCloseTo(sewn(before, 'back', 'shoulder'), 1)
    expect(mouth(after, 'back', 'shoulderDart')).toBeGreaterThan(
      mouth(before, 'back', 'shoulderDart'),
    )
    expect(namedPoint(pieceOf(after, 'back'), 'A')).toEqual(
      namedPoint(pieceOf(before, 'back'), 'A'),
    )
  })
  test('a dart that the draft lacks is drawn, and said', () => {
    const out = made('blouse', [
      operate({
        op: 'ROT',
        piece: 'back',
        edge: 'neck',
        along: 0.5,
        width: mm(5),
        into: 'shoulderDart',
      }),
    ])
    expect(out.refused).toEqual([])
    expect(out.notes['c1']).toEqual(['createdShoulderDart'])
    expect(pieceOf(out.draft, 'back').edgeDarts.map((d) => d.name)).toEqual(['shoulderDart'])
    expect(out.draft.findings.filter((f) => f.severity === 'stop')).toEqual([])
    const drop = made('blouse', [operate({ op: 'DROP', by: mm(12) })])
    expect(drop.notes['c1']).toEqual(['createdSideDart'])
    expect(mouth(drop.draft, 'front', 'bustDart')).toBeCloseTo(12, 2)
  })
})

describe('lengths', () => {
  test('a wedge at the centre back takes its length there and none at the side', () => {
    const { before, after } = done('block', {
      op: 'WEDGE',
      piece: 'back',
      level: 'waist',
      by: mm(-14),
    })
    expect(long(before, 'back', 'centre') - long(after, 'back', 'centre')).toBeCloseTo(14, 6)
    expect(long(after, 'back', 'side')).toBeCloseTo(long(before, 'back', 'side'), 2)
    expect(mouth(after, 'back', 'waistDart')).toBeCloseTo(mouth(before, 'back', 'waistDart'), 1)
  })
  test('length over the blades, over the chest', () => {
    const back = done('block', { op: 'WEDGE', piece: 'back', level: 'blade', by: mm(11) })
    expect(long(back.after, 'back', 'centre') - long(back.before, 'back', 'centre')).toBeCloseTo(
      11,
      6,
    )
    expect(long(back.after, 'back', 'shoulder')).toBeCloseTo(
      long(back.before, 'back', 'shoulder'),
      2,
    )
    const front = done('blouse', { op: 'WEDGE', piece: 'front', level: 'chest', by: mm(-9) })
    expect(
      long(front.before, 'front', 'centre') - long(front.after, 'front', 'centre'),
    ).toBeCloseTo(9, 6)
  })
  test('drop: centre and side dart gain the same, waist and sewn side stay', () => {
    const { before, after } = done('block', { op: 'DROP', by: mm(14) })
    expect(long(after, 'front', 'centre') - long(before, 'front', 'centre')).toBeCloseTo(14, 6)
    expect(mouth(after, 'front', 'bustDart') - mouth(before, 'front', 'bustDart')).toBeCloseTo(
      14,
      2,
    )
    expect(mouth(after, 'front', 'waistDart')).toBeCloseTo(mouth(before, 'front', 'waistDart'), 2)
    expect(sewn(after, 'front', 'side')).toBeCloseTo(sewn(before, 'front', 'side'), 2)
  })
})

describe('a fuller bust', () => {
  test('three outputs as the formula has them: waist width, centre length, dart', () => {
    const { before, after } = done('sleeveless', { op: 'BUST', by: mm(8) })
    const front = pieceOf(before, 'front')
    const [apex, hinge, at] = [pivotOf(front), hingeOf(front), sideMouth(front)!]
    const out = fullBust(8, hinge.x - apex.x, apex.y - hinge.y, distance(apex, at))!
    expect(long(after, 'front', 'centre') - long(before, 'front', 'centre')).toBeCloseTo(
      out.length,
      6,
    )
    expect(mouth(after, 'front', 'waistDart') - mouth(before, 'front', 'waistDart')).toBeCloseTo(
      8,
      1,
    )
    // The dart's legs are turned about a point off the bust tip's level, so it gains that and a little.
    const gain = mouth(after, 'front', 'bustDart') - mouth(before, 'front', 'bustDart')
    expect(Math.abs(gain - out.dart)).toBeLessThan(1.5)
    expect(sewn(after, 'front', 'side')).toBeCloseTo(sewn(before, 'front', 'side'), 2)
  })
  test('a smaller bust without a side dart is refused with what to do', () => {
    const out = made('blouse', [operate({ op: 'BUST', by: mm(-10) })])
    expect(out.refused.map((r) => r.why.id)).toEqual(['noSideDart'])
  })
})

describe('points, widths and seams', () => {
  test('slope: both tips go down as told, the armhole keeps its length, the sides shorten alike', () => {
    const { before, after } = done('block', {
      op: 'MOVE',
      piece: 'both',
      point: 'shoulderTip',
      out: mm(0),
      down: mm(8),
      carries: true,
    })
    for (const id of ['back', 'front'] as const) {
      const [a, b] = [namedPoint(pieceOf(before, id), 'P'), namedPoint(pieceOf(after, id), 'P')]
      expect(distance(a, b)).toBeCloseTo(8, 1)
      expect(Math.abs(long(after, id, 'armhole') - long(before, id, 'armhole'))).toBeLessThan(2.5)
      expect(long(before, id, 'side') - long(after, id, 'side')).toBeCloseTo(8, 1)
    }
    expect(sewn(after, 'back', 'shoulder')).toBeCloseTo(sewn(after, 'front', 'shoulder'), 1)
  })
  test('shoulder shorter along its line; neck and notch stay', () => {
    const { before, after } = done('block', {
      op: 'MOVE',
      piece: 'both',
      point: 'shoulderTip',
      out: mm(-8),
      down: mm(0),
    })
    for (const id of ['back', 'front'] as const) {
      expect(sewn(before, id, 'shoulder') - sewn(after, id, 'shoulder')).toBeCloseTo(8, 1)
      expect(namedPoint(pieceOf(after, id), 'Z')).toEqual(namedPoint(pieceOf(before, id), 'Z'))
    }
  })
  test('seam forward: front armhole shorter, back longer, shoulders as long as before', () => {
    const { before, after } = done('block', { op: 'SWAP', by: mm(10) })
    expect(long(before, 'front', 'armhole') - long(after, 'front', 'armhole')).toBeGreaterThan(7)
    expect(long(after, 'back', 'armhole') - long(before, 'back', 'armhole')).toBeGreaterThan(7)
    for (const id of ['back', 'front'] as const)
      expect(sewn(after, id, 'shoulder')).toBeCloseTo(sewn(before, id, 'shoulder'), 1)
  })
  test('width across at its level only', () => {
    const { before, after } = done('block', { op: 'STRIP', piece: 'back', by: mm(9) })
    const [a, b] = [
      namedPoint(pieceOf(before, 'back'), 'Z'),
      namedPoint(pieceOf(after, 'back'), 'Z'),
    ]
    expect(b.x - a.x).toBeCloseTo(9, 6)
    expect(long(after, 'back', 'side')).toBe(long(before, 'back', 'side'))
    expect(long(after, 'back', 'shoulder')).toBeCloseTo(long(before, 'back', 'shoulder'), 6)
  })
  test('a dart moved keeps its intake; a longer one its mouth; a wider one gains what is told', () => {
    const down = done('block', {
      op: 'GROUP',
      piece: 'front',
      dart: 'bustDart',
      out: mm(0),
      down: mm(12),
    })
    expect(mouth(down.after, 'front', 'bustDart')).toBeCloseTo(
      mouth(down.before, 'front', 'bustDart'),
      6,
    )
    expect(
      namedPoint(pieceOf(down.after, 'front'), 'J1').y -
        namedPoint(pieceOf(down.before, 'front'), 'J1').y,
    ).toBeCloseTo(12, 6)
    expect(sewn(down.after, 'front', 'side')).toBeCloseTo(sewn(down.before, 'front', 'side'), 2)
    const tip = done('block', { op: 'DARTLEN', piece: 'front', dart: 'waistDart', by: mm(10) })
    expect(mouth(tip.after, 'front', 'waistDart')).toBe(mouth(tip.before, 'front', 'waistDart'))
    const wide = done('block', { op: 'DARTSHAPE', piece: 'front', dart: 'waistDart', by: mm(5) })
    expect(
      mouth(wide.after, 'front', 'waistDart') - mouth(wide.before, 'front', 'waistDart'),
    ).toBeCloseTo(5, 2)
  })
  // The waist dart loses 2R·sin(θ/2) at the outer leg, and the side dart opens by the same angle.
  test('a dart split: what one loses the other gains by the same angle', () => {
    const { before, after } = done('block', { op: 'SPLIT', width: mm(8) })
    const lost = distance(
      pieceOf(after, 'front').darts[0]!.outer,
      pieceOf(before, 'front').darts[0]!.outer,
    )
    expect(lost).toBeCloseTo(8, 6)
    expect(mouth(after, 'front', 'bustDart')).toBeGreaterThan(
      mouth(before, 'front', 'bustDart') + 3,
    )
    expect(sewn(after, 'front', 'side')).toBeCloseTo(sewn(before, 'front', 'side'), 2)
  })
})

const GARMENTS = ['blouse', 'block', 'sleeveless', 'sleeve', 'dress'] as const
const SEAMS = /Pair$|Join$|outlineCrosses|dartLegs|notSquare/

describe.each(GARMENTS)('every operation at its cap: %s', (garment) => {
  test.each([
    ['middle', MIDDLE],
    ['small', SMALL],
    ['tall', TALL],
  ] as const)('%s body: true seams and whole outlines, or a refusal by name', (_, numbers) => {
    const before = plain(garment, numbers)
    const known = new Set(before.findings.map((f) => `${f.id} ${f.place}`))
    let drawn = 0
    for (const { name, operation } of operationsAtCap(garment)) {
      const out = made(garment, [operate(operation)], numbers)
      if (out.refused.length > 0) {
        expect(out.refused[0]!.why.id.length).toBeGreaterThan(0)
        expect(record(out.draft)).toEqual(record(before))
        continue
      }
      drawn += 1
      const fresh = out.draft.findings.filter(
        (f) => SEAMS.test(f.id) && !known.has(`${f.id} ${f.place}`),
      )
      expect(fresh.map((f) => `${name}: ${f.id} ${f.place} ${f.value}`)).toEqual([])
      for (const p of out.draft.pieces)
        checkJoined(
          p.edges.flatMap((e) => e.path),
          `${name} ${p.id}`,
        )
    }
    expect(drawn).toBeGreaterThan(20)
  })
  test('an amount of nothing changes nothing', () => {
    const before = record(plain(garment))
    for (const { operation } of operationsAtCap(garment)) {
      const none = Object.fromEntries(
        Object.entries(operation).map(([k, x]) => [
          k,
          k === 'along' || typeof x !== 'number' ? x : 0,
        ]),
      ) as Operation
      expect(record(made(garment, [operate(none)]).draft)).toEqual(before)
    }
  })
  test('applied and withdrawn, every number is back', () => {
    const before = record(plain(garment))
    for (const { operation } of operationsAtCap(garment)) {
      const out = made(garment, [
        operate(operation),
        { v: 1, id: 'c2', kind: 'withdraw', correction: 'c1', round: 2 },
      ])
      expect(record(out.draft)).toEqual(before)
    }
  })
  test('the order of entry does not matter', () => {
    const list = operationsAtCap(garment)
      .filter(({ name }) =>
        /WEDGE (blade|waist)\+|DROP\+|STRIP|MOVE underarm-|GROUP waist dart across\+|DARTLEN waist dart\+/.test(
          name,
        ),
      )
      .map(({ operation }, i) => operate(half(operation), `c${i + 1}`))
    const first = record(made(garment, list).draft)
    fc.assert(
      fc.property(fc.shuffledSubarray(list, { minLength: list.length }), (other) => {
        expect(record(made(garment, other).draft)).toEqual(first)
      }),
      { numRuns: 8 },
    )
  })
})
/** Half of an amount, so that several fit together. */
const half = (op: Operation): Operation =>
  Object.fromEntries(
    Object.entries(op).map(([k, x]) => [k, k === 'along' || typeof x !== 'number' ? x : x / 2]),
  ) as Operation

/** Edges that an operation names; all others keep their length to a hundredth of a millimetre. */
test('edges that an operation does not touch keep their length', () => {
  const untouched: readonly (readonly [Operation, readonly string[]])[] = [
    [
      { op: 'WEDGE', piece: 'back', level: 'waist', by: mm(-14) },
      [
        'front.neck',
        'front.armhole',
        'front.side',
        'front.hem',
        'front.centre',
        'back.neck',
        'back.shoulder',
        'back.armhole',
        'back.side',
      ],
    ],
    [
      { op: 'DROP', by: mm(14) },
      [
        'front.neck',
        'front.shoulder',
        'front.armhole',
        'front.hem',
        'back.neck',
        'back.shoulder',
        'back.armhole',
        'back.side',
        'back.hem',
        'back.centre',
      ],
    ],
    [
      { op: 'STRIP', piece: 'front', by: mm(6) },
      [
        'front.neck',
        'front.shoulder',
        'front.side',
        'front.hem',
        'front.centre',
        'back.neck',
        'back.shoulder',
        'back.side',
        'back.hem',
        'back.centre',
      ],
    ],
    [
      { op: 'ROT', piece: 'front', edge: 'armhole', along: 0.4, width: mm(6), into: 'bustDart' },
      [
        'front.neck',
        'front.shoulder',
        'front.hem',
        'front.centre',
        'back.neck',
        'back.shoulder',
        'back.side',
        'back.hem',
      ],
    ],
    [
      { op: 'GROUP', piece: 'front', dart: 'waistDart', out: mm(8), down: mm(0) },
      [
        'front.neck',
        'front.shoulder',
        'front.armhole',
        'front.side',
        'front.hem',
        'front.centre',
        'back.side',
      ],
    ],
    [
      { op: 'MOVE', piece: 'both', point: 'underarm', out: mm(0), down: mm(8) },
      [
        'front.neck',
        'front.shoulder',
        'front.hem',
        'front.centre',
        'back.neck',
        'back.shoulder',
        'back.hem',
        'back.centre',
      ],
    ],
  ]
  const before = record(plain('block')).lengths
  for (const [operation, names] of untouched) {
    const after = record(made('block', [operate(operation)]).draft).lengths
    for (const name of names)
      expect(
        Math.abs((after[name] ?? NaN) - (before[name] ?? NaN)),
        `${operation.op} ${name}`,
      ).toBeLessThanOrEqual(0.01)
  }
})

test('one side alone makes a left and a right piece; without one there is one piece', () => {
  const list = [
    operate(
      { op: 'MOVE', piece: 'both', point: 'shoulderTip', out: mm(0), down: mm(9), carries: true },
      'c1',
      'left',
    ),
  ]
  const sidesWith = (of: typeof list) =>
    correctedDraft('block', body(), standardFor('block'), of).draft.sides
  const sides = sidesWith(list)
  const at = (d: Draft) => namedPoint(pieceOf(d, 'front'), 'P').y
  expect(at(sides!.left) - at(sides!.right)).toBeGreaterThan(7)
  expect(record(sides!.right)).toEqual(record(plain('block')))
  expect(sidesWith([])).toBeUndefined()
})
