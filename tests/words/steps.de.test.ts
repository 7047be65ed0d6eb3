/**
 * German steps are enough to draw from. What a hand reads in them, `asHeard` turns into the steps
 * that `by-hand.ts` can follow, number by number; the points it arrives at are held to the draft
 * within half a millimetre (common practice, no source). The wording: from memory of German trade.
 */
import { describe, expect, it, test } from 'vitest'
import { asWorn } from '../../src/draft/as-worn.ts'
import { standardChoices, type Choices } from '../../src/draft/choices.ts'
import { pieceOf, type Draft, type GarmentId } from '../../src/draft/draft.ts'
import { GARMENT_IDS, standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { OPTIONS } from '../../src/draft/options.ts'
import { isHalf, type PieceId } from '../../src/draft/piece.ts'
import { EDGES } from '../../src/draft/piece.words.de.ts'
import { sentence } from '../../src/draft/sentence.words.ts'
import { stepTitle } from '../../src/draft/step-title.ts'
import type { Act } from '../../src/draft/step.ts'
import { toCut } from '../../src/draft/to-cut.ts'
import { found, fixed } from '../../src/units/amount.ts'
import { flatten } from '../../src/geometry/path.ts'
import { mm } from '../../src/units/length.ts'
import { bodyOf, INVENTED_BODIES, MIDDLE, type InventedNumbers } from '../bodies.ts'
import { drawByHand, type Spot } from '../draft/by-hand.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const PENCIL = 0.5
const WAYS: Readonly<Record<string, string>> = {
  'nach unten': 'Down',
  'nach oben': 'Up',
  'im rechten Winkel nach außen': 'Square out',
  'im rechten Winkel nach innen': 'Square in',
}
const THEN: Readonly<Record<string, string>> = {
  unten: 'down',
  oben: 'up',
  außen: 'out',
  innen: 'in',
}
const P = '([\\w′]+)'
const thenWays = (text: string): string =>
  text
    .replace(/nach (unten|oben|außen|innen)/g, (_, w: string) => THEN[w]!)
    .replace(/ und /g, ' and ')

/** What is drawn, in the words of `by-hand.ts`; what places and draws nothing becomes "Rule ". */
const HEARD: readonly (readonly [RegExp, (...m: string[]) => string])[] = [
  [
    new RegExp(`^Von ${P} (.*?) nach (außen|innen) und (.*?) nach (unten|oben): `),
    (_, from, out, aside, up, fall) =>
      `From ${from}, ${out} ${THEN[aside!]} and ${up} ${THEN[fall!]}: `,
  ],
  [
    new RegExp(`^Von ${P} in Richtung ${P}, (.*?):.*`),
    (_, a, b, by) => `From ${a} towards ${b}, ${by}: x`,
  ],
  [
    new RegExp(`^Von ${P} (nach unten|nach oben|im rechten Winkel nach (?:außen|innen)), (.*)$`),
    (_, from, way, rest) => `${WAYS[way!]} from ${from}, ${rest}`,
  ],
  [
    new RegExp(
      `^Zirkel in ${P} einstechen, Öffnung (.*?)\\. Markiere ${P}, wo der Bogen die Höhe von ${P} trifft`,
    ),
    (_, centre, open, to, level) =>
      `Compass in ${centre}, open to ${open}. Mark ${to} where it meets the level of ${level}`,
  ],
  [
    new RegExp(
      `^Zirkel in ${P} einstechen, Öffnung (.*?)\\. Schlag den Bogen von ${P} nach ${P}:.*`,
    ),
    (_, centre, open, from, to) =>
      `Compass in ${centre}, open to ${open}. Swing from ${from} to ${to}`,
  ],
  [
    new RegExp(`^Verlängere die Linie ${P}–${P} über ${P} hinaus um (.*?):.*`),
    (_, along, from, past, by) => `Lengthen the line ${along}–${from} past ${past} by ${by}: x`,
  ],
  [
    new RegExp(
      `^Der Abnäher: bei ${P} (.*?) breit, je zur Hälfte nach beiden Seiten\\. Obere Spitze (.*?) über ${P}\\.`,
    ),
    (_, at, wide, up) =>
      `The dart: ${wide} wide at ${at}, half on either side. Upper tip ${up} above ${at}.`,
  ],
  [
    new RegExp(
      `^Zeichne (?:den|die|das) (.*?) von ${P} nach ${P}, .*Hilfspunkte von ${P} aus: (.*)\\.$`,
    ),
    (_, edge, from, to, base, spots) =>
      `Draw the ${edge} from ${from} to ${to}, x. Guide points from ${base}: ${thenWays(spots!)}.`,
  ],
  [new RegExp(`^Markiere ${P}: .*`), (_, at) => `Mark ${at}: x`],
  [/^(Zieh mit dem Lineal|Markiere (den|die|das)) .*/, () => 'Rule it'],
]
function asHeard(german: string): string {
  const plain = german.replace(/(\d),(\d)/g, '$1.$2').replaceAll('\u00a0', ' ')
  const row = HEARD.find(([pattern]) => pattern.test(plain))
  if (!row) throw new Error(`nobody could follow: ${german}`)
  return plain
    .replace(row[0], row[1])
    .replace(/Untere Spitze (.*?) darunter/, 'Lower tip $1 below')
    .replace(/zu einer Spitze (.*?) tiefer/, 'towards a tip $1 down')
}
const heardOf = (d: Draft, id: PieceId) =>
  d.steps
    .filter((step) => step.piece === id)
    .map((step) => `${stepTitle(step).replace(/\bBP$/, 'apex')}: ${asHeard(sentence(step, CM))}`)

const apart = (p: Spot, q: Spot): number => Math.hypot(p.x - q.x, p.y - q.y)
function far(chain: readonly Spot[], p: Spot): number {
  return Math.min(
    ...chain.slice(1).map((b, i) => {
      const a = chain[i]!
      const [dx, dy] = [b.x - a.x, b.y - a.y]
      const t = Math.max(
        0,
        Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx ** 2 + dy ** 2)),
      )
      return Math.hypot(a.x + t * dx - p.x, a.y + t * dy - p.y)
    }),
  )
}

const CASES: readonly (readonly [string, GarmentId, Partial<InventedNumbers>, Partial<Choices>])[] =
  [
    ...INVENTED_BODIES.map(
      ([name, numbers]) => [`blouse, ${name}`, 'blouse', numbers, {}] as const,
    ),
    ['square neck', 'blouse', MIDDLE, { neckShape: 'square', overarmDrop: mm(40) }],
    ['struck', 'blouse', { ...MIDDLE, sideNeckToSleeveEdge: 300 }, { overarmRule: 'struck' }],
    ['side bust dart', 'blouse', { ...MIDDLE, sideNeckOverApexToWaist: 468 }, {}],
    ['two darts, centre-back seam', 'blouse', { ...MIDDLE, waistGirth: 620 }, {}],
    ['darts cut open', 'blouse', { ...MIDDLE, waistGirth: 700 }, { lengthBelowWaist: mm(60) }],
    ['block', 'block', MIDDLE, { opening: 'none' }],
    ['by shares', 'block', MIDDLE, { construction: 'bustShares', opening: 'none' }],
    ['sleeve', 'sleeve', MIDDLE, { sleevePitch: mm(5) }],
    [
      'cuff',
      'sleeve',
      MIDDLE,
      { sleeveEnd: 'cuff', sleeveLength: mm(580), sleeveHem: mm(85), cuffFullness: mm(73) },
    ],
  ]

describe.each(CASES)('%s, from the German page alone', (_, garment, numbers, choices) => {
  const d = draft(garment, bodyOf(numbers), { ...standardFor(garment), ...choices })
  const ids = d.pieces.flatMap((p) =>
    isHalf(p.id) || p.id === 'sleeve' || p.id === 'cuff' ? [p.id] : [],
  )

  test.each(ids)('the %s comes out as drafted', (id) => {
    const piece = pieceOf(d, id)
    const hand = drawByHand(heardOf(d, id))
    for (const [name, p] of Object.entries(piece.points)) {
      const drawn = hand.points.get(name)
      expect(drawn, name).toBeDefined()
      expect(apart(drawn!, p), name).toBeLessThanOrEqual(PENCIL + 0.01)
    }
    expect(hand.darts).toHaveLength(piece.darts.length)
    for (const [i, dart] of piece.darts.entries()) {
      expect(apart(hand.darts[i]!.up, dart.upperTip)).toBeLessThan(PENCIL + 0.25)
      expect(apart(hand.darts[i]!.down, dart.lowerTip)).toBeLessThan(PENCIL + 0.25)
      expect(apart(hand.darts[i]!.inner, dart.inner)).toBeLessThan(PENCIL + 0.25)
    }
    for (const { centre, to, radius } of hand.arcs)
      expect(Math.abs(apart(centre, to) - radius)).toBeLessThan(PENCIL + 0.1)
    for (const name of ['neck', 'armhole', 'side', 'cap'] as const) {
      const own = piece.edges.find((e) => e.name === name)
      for (const spot of (own && hand.guides.get(EDGES[name].bare)) ?? [])
        expect(far(flatten(own!.path, 0.01), spot), name).toBeLessThan(0.71 + PENCIL)
    }
  })
})

/** Words no German sentence has; "in" and "die" are both. */
const ENGLISH = /\b(the|and|with|from|your|you|of|to|is|are|which|where|wide|long|mark|rule)\b/i

describe('every step speaks German', () => {
  const { shoulderSlopeLeft: _, ...rest } = MIDDLE
  const uneven = { ...rest, shoulderSlopeLeft: 30, shoulderSlopeRight: 55 }
  const drafts: Draft[] = [
    ...GARMENT_IDS.map((id) => draft(id, bodyOf(MIDDLE), standardFor(id))),
    ...Object.keys(OPTIONS.opening.words).map((opening) =>
      draft('dress', bodyOf(MIDDLE), {
        ...standardFor('dress'),
        opening: opening as Choices['opening'],
        ventLength: mm(200),
        neckFinish: 'facing',
        waistFinish: 'facing',
      }),
    ),
    ...Object.keys(OPTIONS.sleeveEnd.words).map((sleeveEnd) =>
      draft('sleeve', bodyOf(MIDDLE), {
        ...standardFor('sleeve'),
        sleeveEnd: sleeveEnd as Choices['sleeveEnd'],
        sleeveHem: mm(140),
      }),
    ),
    ...Object.keys(OPTIONS.dartAt.words).map((dartAt) =>
      draft('block', bodyOf(MIDDLE), {
        ...standardFor('block'),
        dartAt: dartAt as Choices['dartAt'],
      }),
    ),
    toCut(
      draft('block', bodyOf(MIDDLE), {
        ...standardFor('block'),
        dartAt: 'shoulder',
        dartAs: 'seam',
        opening: 'none',
      }),
    ),
    draft('blouse', bodyOf(MIDDLE), { ...standardChoices(), neckShape: 'vee' }),
    draft('blouse', bodyOf(MIDDLE), { ...standardChoices(), neckShape: 'square', opening: 'none' }),
    asWorn(draft('blouse', bodyOf(uneven), standardChoices())),
  ]
  const amount = fixed(mm(12))
  const corrections: readonly Act[] = [
    {
      verb: 'wedge',
      from: 'U',
      at: amount,
      edge: 'sleeveEdge',
      pivot: 'apex',
      width: amount,
      opens: amount,
      shortens: amount,
      why: 'der Ausschnitt steht ab',
    },
    { verb: 'change', words: 'Vorn: Mitte länger', amount, why: 'der Ausschnitt steht ab' },
    { verb: 'asWorn', side: 'left', how: 'first', why: 'links und rechts sind verschieden' },
    { verb: 'asWorn', side: 'right', how: 'other', why: 'links und rechts sind verschieden' },
    { verb: 'asWorn', side: 'right', how: 'over', why: 'links und rechts sind verschieden' },
  ]
  const acts: readonly Act[] = [...drafts.flatMap((d) => d.steps), ...corrections]

  it('meets every verb', () => {
    expect(new Set(acts.map(({ verb }) => verb))).toEqual(
      new Set([
        ...['start', 'measure', 'spot', 'compass', 'slide', 'join', 'arc', 'curve', 'dart'],
        ...['edgeDart', 'trace', 'parallel', 'rectangle', 'mitre', 'open', 'change', 'part'],
        ...['moveDart', 'keyhole', 'asWorn', 'cutOff', 'wedge'],
      ]),
    )
  })
  it('leaves no English and no hole in a sentence', () => {
    const said = [...new Set(acts.map((act) => sentence(act, CM)))]
    expect(
      said.filter((s) => ENGLISH.test(s) || /undefined|\d\.\d+\u00a0cm| {2}|: \.|, \./.test(s)),
    ).toEqual([])
    expect(said.filter((s) => !/^[A-ZÄÖÜ]/.test(s) || !s.endsWith('.'))).toEqual([])
  })
  it('puts the article in its case', () => {
    expect(
      sentence({ verb: 'trace', of: 'back', edges: ['neck', 'shoulder', 'centre'], why: 'x' }, CM),
    ).toBe(
      'Leg Papier über das Rückenteil und zeichne den Halsausschnitt, die Schulternaht und die Mitte durch: x.',
    )
    expect(
      sentence(
        { verb: 'parallel', edge: 'outer', to: 'armhole', by: found('', mm(60)), why: 'x' },
        CM,
      ),
    ).toBe(
      'Miss vom Armloch aus in fingerbreiten Abständen 6,0\u00a0cm im rechten Winkel ab und zeichne durch die Marken: die freie Kante, x.',
    )
    expect(sentence({ verb: 'cutOff', at: 'W', along: 'waistLine', why: 'x' }, CM)).toBe(
      'Schneide das Teil an der Taillenlinie ab, von W bis zur Mitte: x.',
    )
  })
})
