/**
 * The written steps are enough: `by-hand.ts` draws the pieces from the printed page with ruler,
 * square and compass and arrives at the points of the draft. The bound is half a millimetre, the
 * width of a pencil line (common practice, no source).
 */
import { describe, expect, test } from 'vitest'
import { standardChoices, type Choices } from '../../src/draft/choices.ts'
import { pieceOf, type GarmentId } from '../../src/draft/draft.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { edge, isHalf, type HalfId } from '../../src/draft/piece.ts'
import { EDGE_WORDS } from '../../src/draft/piece.words.ts'
import { record } from '../../src/draft/record.ts'
import { flatten } from '../../src/geometry/path.ts'
import { stepsText } from '../../src/output/instruction-page.ts'
import { mm } from '../../src/units/length.ts'
import { bodyOf, FULL, INVENTED_BODIES, MIDDLE, SMALL, type InventedNumbers } from '../bodies.ts'
import { drawByHand, stepsUnder, type Spot } from './by-hand.ts'

const PENCIL = 0.5
const HEADINGS: Readonly<Record<HalfId, string>> = { back: 'Back, half', front: 'Front, half' }
const apart = (p: Spot, q: Spot): number => Math.hypot(p.x - q.x, p.y - q.y)

const { napeToArmpitLevel: _armpit, ...withoutArmpit } = MIDDLE
const CASES: readonly (readonly [string, Partial<InventedNumbers>, Partial<Choices>])[] = [
  ...INVENTED_BODIES.map(([name, numbers]) => [`${name} body`, numbers, {}] as const),
  ['corner left sharp', MIDDLE, { cornerRadius: mm(0), overarmRule: 'found' }],
  ['struck with one compass', { ...MIDDLE, sideNeckToSleeveEdge: 300 }, { overarmRule: 'struck' }],
  ['square neck, lower overarm', MIDDLE, { neckShape: 'square', overarmDrop: mm(40) }],
  ['side bust dart', { ...MIDDLE, sideNeckOverApexToWaist: 468 }, {}],
  ['two darts and a centre-back seam', { ...MIDDLE, waistGirth: 620 }, {}],
  ['a hem that cuts the darts open', { ...MIDDLE, waistGirth: 700 }, { lengthBelowWaist: mm(60) }],
  ['a front wider than the back', MIDDLE, { frontShare: mm(13) }],
  ['no armpit taped', withoutArmpit, {}],
]

describe.each(CASES)('%s', (_, numbers, choices) => {
  const d = draft('blouse', bodyOf(numbers), {
    ...standardChoices(),
    ...choices,
  })
  const text = stepsText(d, { unit: 'cm', inchStep: 8 })
  const { points } = record(d)

  test.each(['back', 'front'] as const)('the %s comes out as drafted', (half) => {
    const hand = drawByHand(stepsUnder(text, HEADINGS[half]))
    const names = Object.keys(points).filter((name) => name.startsWith(`${half}.`))
    for (const name of names) {
      const [x, y] = points[name]!
      const drawn = hand.points.get(name.slice(half.length + 1))
      expect(drawn, name).toBeDefined()
      expect(apart(drawn!, { x, y }), name).toBeLessThanOrEqual(PENCIL + 0.01)
    }
    expect(hand.points.size).toBe(names.length)
  })

  test.each(['back', 'front'] as const)(
    'compass, darts and guide points of the %s close',
    (half) => {
      const hand = drawByHand(stepsUnder(text, HEADINGS[half]))
      const piece = pieceOf(d, half)
      expect(hand.arcs.length).toBeGreaterThan(0)
      for (const { centre, from, to, radius } of hand.arcs) {
        expect(Math.abs(apart(centre, from) - radius)).toBeLessThan(PENCIL + 0.1)
        expect(Math.abs(apart(centre, to) - radius)).toBeLessThan(PENCIL + 0.1)
      }
      expect(hand.darts).toHaveLength(piece.darts.length)
      for (const [i, dart] of piece.darts.entries()) {
        const drawn = hand.darts[i]!
        expect(apart(drawn.up, dart.upperTip)).toBeLessThan(PENCIL + 0.25)
        expect(apart(drawn.down, dart.lowerTip)).toBeLessThan(PENCIL + 0.25)
        expect(apart(drawn.inner, dart.inner)).toBeLessThan(PENCIL + 0.25)
        expect(apart(drawn.outer, dart.outer)).toBeLessThan(PENCIL + 0.25)
      }
      // Guides are printed to a millimetre each way: half a diagonal of that, and the base's own error.
      for (const name of ['neck', 'side'] as const) {
        const chain = flatten(edge(piece, name).path, 0.01)
        for (const spot of hand.guides.get(EDGE_WORDS[name]) ?? [])
          expect(Math.min(...segments(chain, spot)), name).toBeLessThan(0.71 + PENCIL)
      }
    },
  )
})

/** The other garments: every construction, and what a body leaves to the rule. */
const OTHERS: readonly (readonly [
  string,
  GarmentId,
  Partial<InventedNumbers>,
  Partial<Choices>,
])[] = [
  ...(['block', 'sleeveless', 'sleeve'] as const).flatMap((garment) =>
    INVENTED_BODIES.map(
      ([name, numbers]) => [`${garment}, ${name} body`, garment, numbers, {}] as const,
    ),
  ),
  ['by fifths of the neck', 'block', MIDDLE, { construction: 'neckFifths' }],
  ['by shares of the bust', 'block', MIDDLE, { construction: 'bustShares' }],
  ['no shoulder dart', 'block', MIDDLE, { shoulderDart: mm(0) }],
  ['no armpit taped', 'block', withoutArmpit, {}],
  [
    'a flared sleeve to the wrist',
    'sleeve',
    MIDDLE,
    { sleeveLength: mm(560), sleeveHem: mm(-100) },
  ],
  [
    'a cuff at the wrist with its slit',
    'sleeve',
    MIDDLE,
    { sleeveEnd: 'cuff', sleeveLength: mm(580), sleeveHem: mm(85), cuffFullness: mm(73) },
  ],
  ['a cuff no hand is stopped by', 'sleeve', FULL, { sleeveEnd: 'cuff' }],
  [
    'a hem with a slit',
    'sleeve',
    SMALL,
    { sleeveEnd: 'hemSlit', sleeveLength: mm(540), sleeveHem: mm(120) },
  ],
]

describe.each(OTHERS)('%s', (_, garment, numbers, choices) => {
  const d = draft(garment, bodyOf(numbers), { ...standardFor(garment), ...choices })
  const text = stepsText(d, { unit: 'cm', inchStep: 8 })
  const pieces = d.pieces.filter((p) => isHalf(p.id) || p.id === 'sleeve' || p.id === 'cuff')

  test.each(pieces.map((p) => p.id))('the %s comes out as drafted', (id) => {
    const piece = pieceOf(d, id)
    const hand = drawByHand(stepsUnder(text, piece.words))
    for (const [name, p] of Object.entries(piece.points)) {
      const drawn = hand.points.get(name)
      expect(drawn, name).toBeDefined()
      expect(apart(drawn!, p), name).toBeLessThanOrEqual(PENCIL + 0.01)
    }
    for (const name of ['neck', 'armhole', 'side', 'cap'] as const) {
      const own = piece.edges.find((e) => e.name === name)
      if (!own) continue
      const chain = flatten(own.path, 0.01)
      const spots = hand.guides.get(EDGE_WORDS[name]) ?? []
      for (const spot of spots)
        expect(Math.min(...segments(chain, spot)), name).toBeLessThan(0.71 + PENCIL)
      if (name !== 'side') expect(spots.length, name).toBeGreaterThan(1)
    }
  })
})

function segments(chain: readonly Spot[], p: Spot): number[] {
  return chain.slice(1).map((b, i) => {
    const a = chain[i]!
    const [dx, dy] = [b.x - a.x, b.y - a.y]
    const t = Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy)))
    return Math.hypot(a.x + t * dx - p.x, a.y + t * dy - p.y)
  })
}
