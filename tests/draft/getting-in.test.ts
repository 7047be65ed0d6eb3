/**
 * Openings and the pieces that finish an edge, against sums worked out by hand and distances
 * measured on flattened outlines. Rules: common practice, no source, but for the facing's width
 * and the strip's spare length (public dressmaking lessons).
 */
import { describe, expect, test } from 'vitest'
import { standardChoices, type Choices } from '../../src/draft/choices.ts'
import { pieceOf, type Draft } from '../../src/draft/draft.ts'
import { draft } from '../../src/draft/make.ts'
import { passes, sewnWaist, through } from '../../src/draft/opening.ts'
import { edge, namedPoint, outline, type FinishingId, type Piece } from '../../src/draft/piece.ts'
import { cuttingSaid } from '../../src/draft/piece.words.ts'
import { sentence } from '../../src/draft/sentence.words.ts'
import { distance, heading, type Point } from '../../src/geometry/point.ts'
import { pathLength } from '../../src/geometry/length.ts'
import { checkJoined, flatten, pathEnd, pathStart } from '../../src/geometry/path.ts'
import { selfIntersections } from '../../src/geometry/self-intersection.ts'
import { mm } from '../../src/units/length.ts'
import { body, bodyOf, INVENTED_BODIES, MIDDLE, type InventedNumbers } from '../bodies.ts'

const made = (over: Partial<InventedNumbers> = {}, choices: Partial<Choices> = {}): Draft =>
  draft('blouse', body(over), { ...standardChoices(), ...choices })
const kinds = (d: Draft): string[] => d.openings.map(({ kind }) => kind)
const CM = { unit: 'cm', inchStep: 8 } as const
const ids = (d: Draft): string[] => d.findings.map(({ id }) => id)

describe('what the draft adds', () => {
  // Sewn waist: 4 × (780/4 + 14) = 836. Neck: about 566.
  test('nothing where head and shoulders pass', () => {
    const d = made({ headGirth: 540, slipThroughGirth: 830 })
    expect(through(pieceOf(d, 'back'), pieceOf(d, 'front'), d.body).waist).toBeCloseTo(836, 6)
    expect(kinds(d)).toEqual([])
    expect(ids(d)).not.toContain('openingAdded')
  })
  test('a zip in the side for the waist alone, 40 below the underarm', () => {
    const d = made({ headGirth: 540 })
    expect(kinds(d)).toEqual(['sideZip'])
    // Underarm 186 + 25, zip from 251; to 180 below the waist, 40 above a hem at 620: 580.
    expect(d.openings[0]).toMatchObject({ from: 251, to: 580, added: true })
  })
  test('the zip runs out of a hem that would not pass over the shoulders', () => {
    // Hem 4 × (880/4 + 19) = 956, less than the 1010 that must pass.
    const d = made({ headGirth: 540, hipGirth: 880, highHipGirth: 830 })
    expect(d.openings[0]).toMatchObject({ kind: 'sideZip', to: 620 })
  })
  test('a slit for the neck alone, long enough for its two edges to make up what lacks', () => {
    const d = made({ headGirth: 700, slipThroughGirth: 830 })
    const [slit] = d.openings
    const t = through(pieceOf(d, 'back'), pieceOf(d, 'front'), d.body)
    expect(slit?.kind).toBe('neckSlit')
    expect(t.neck + 2 * (slit!.to - slit!.from)).toBeGreaterThanOrEqual(720)
    expect((slit!.to - slit!.from) % 5).toBe(0)
  })
  test('both where both fail, and nothing stops the cutting', () => {
    const d = made()
    expect(kinds(d)).toEqual(['sideZip', 'neckSlit'])
    expect(d.findings.filter(({ severity }) => severity === 'stop')).toEqual([])
  })
  test('each opening is marked in the steps with its own length', () => {
    const d = made()
    const lengths = d.steps.flatMap((s) =>
      s.verb === 'open' && s.piece === 'back' ? [Math.round(s.long.mm)] : [],
    )
    // The zip runs along the side from 251 to 580 down, a little more than that; the slit is 60.
    expect(lengths[0]).toBeGreaterThanOrEqual(329)
    expect(lengths[0]).toBeLessThan(340)
    expect(lengths[1]).toBe(60)
  })
  // Sewn together, the halves open along the same stretch; a folded bust dart takes none of it.
  test.each(INVENTED_BODIES)('a side zip is marked on both halves of the %s body', (_, numbers) => {
    const d = draft('blouse', body({}, numbers), { ...standardChoices(), opening: 'sideZip' })
    const [back, front] = (['back', 'front'] as const).map((id) => {
      const piece = pieceOf(d, id)
      const zip = piece.inner.find((i) => i.name === 'zip')
      if (!zip) throw new Error(`no zip on the ${id}`)
      expect(zip.words).toBe('zip, left side only')
      expect(d.steps.some((s) => s.verb === 'open' && s.piece === id)).toBe(true)
      return { long: pathLength(zip.path), below: sewnTo(piece, pathStart(zip.path)) }
    })
    expect(front?.long).toBeCloseTo(back?.long ?? NaN, 3)
    expect(front?.below).toBeCloseTo(back?.below ?? NaN, 2)
  })
  test('a zip at the centre back or a buttoned front serves neck and waist', () => {
    for (const opening of ['backZip', 'buttonedFront'] as const)
      expect(kinds(made({}, { opening }))).toEqual([opening])
  })
  test('what she chose is kept, and what it leaves open is added', () => {
    expect(kinds(made({}, { opening: 'neckSlit' }))).toEqual(['neckSlit', 'sideZip'])
  })
  test('none yet: not for cutting, both reasons said', () => {
    const d = made({}, { opening: 'none' })
    const stops = d.findings.filter(({ severity }) => severity === 'stop').map(({ id }) => id)
    expect(stops).toEqual(['headOpening', 'gettingIn'])
  })
  test('an untaped head or slip-through is for a muslin only', () => {
    const { headGirth: _h, slipThroughGirth: _s, ...rest } = MIDDLE
    const d = draft('blouse', bodyOf(rest), standardChoices())
    expect(passes(through(pieceOf(d, 'back'), pieceOf(d, 'front'), d.body), [])).toEqual({
      neck: true,
      waist: true,
    })
    expect(ids(d)).toEqual(expect.arrayContaining(['headUnknown', 'gettingInUnknown']))
  })
})

describe('halves opened', () => {
  test('a centre-back zip makes the fold a seam and the back is cut twice', () => {
    const back = pieceOf(made({}, { opening: 'backZip' }), 'back')
    expect(edge(back, 'centre').role).toBe('seam')
    expect(cuttingSaid(back.cut)).toBe('Cut 2, one turned over')
  })
  test('a buttoned front runs 20 past the centre, its neck and hem straight on', () => {
    const plain = pieceOf(made(), 'front')
    const front = pieceOf(made({}, { opening: 'buttonedFront' }), 'front')
    const centre = edge(front, 'centre').path
    expect([pathStart(centre).x, pathEnd(centre).x]).toEqual([-20, -20])
    const longer = (name: 'neck' | 'hem'): number =>
      pathLength(edge(front, name).path) - pathLength(edge(plain, name).path)
    expect(longer('neck')).toBeCloseTo(20, 9)
    expect(longer('hem')).toBeCloseTo(20, 9)
    checkJoined([...outline(front), outline(front)[0]!], 'front')
    // The sewn waist is counted from the centre, not from the edge of the overlap.
    expect(sewnWaist(front)).toBeCloseTo(sewnWaist(plain), 9)
  })
})

/** Least distance from a spot to a chain of chords. */
function away(chain: readonly { x: number; y: number }[], p: { x: number; y: number }): number {
  return Math.min(
    ...chain.slice(1).map((b, i) => {
      const a = chain[i]!
      const [dx, dy] = [b.x - a.x, b.y - a.y]
      const t = ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy)
      const k = Math.max(0, Math.min(1, t))
      return Math.hypot(a.x + k * dx - p.x, a.y + k * dy - p.y)
    }),
  )
}

describe('finishing pieces', () => {
  test.each(['round', 'square', 'vee', 'boat', 'scoop'] as const)(
    'facings of a %s neck follow it at 60 mm, closed and clean',
    (neckShape) => {
      for (const [, numbers] of INVENTED_BODIES) {
        const d = draft('blouse', body({}, numbers), {
          ...standardChoices(),
          neckShape,
          neckFinish: 'facing',
        })
        for (const [id, half] of [
          ['backNeckFacing', 'back'],
          ['frontNeckFacing', 'front'],
        ] as const) {
          const facing = pieceOf(d, id)
          const whole = outline(facing)
          checkJoined([...whole, whole[0]!], id)
          expect(selfIntersections(whole)).toEqual([])
          const neck = flatten(edge(pieceOf(d, half), 'neck').path, 0.005)
          expect(pathLength(edge(facing, 'neck').path)).toBeCloseTo(
            pathLength(edge(pieceOf(d, half), 'neck').path),
            9,
          )
          const outer = flatten(edge(facing, 'outer').path, 0.005)
          // Nowhere nearer than its width; farther only at a corner, by the mitre of a right angle.
          for (const p of outer.slice(1, -1)) {
            expect(away(neck, p)).toBeGreaterThan(60 - 0.05)
            expect(away(neck, p)).toBeLessThan(60 * Math.SQRT2 + 0.05)
          }
        }
      }
    },
  )
  test('the strip is the whole neck and 50 mm, 30 wide, on the true bias', () => {
    const d = made()
    const strip = pieceOf(d, 'neckStrip')
    const t = through(pieceOf(d, 'back'), pieceOf(d, 'front'), d.body)
    expect(pathLength(edge(strip, 'neck').path)).toBeCloseTo(t.neck + 50, 6)
    expect(pathLength(edge(strip, 'end').path)).toBe(30)
    const { from, to } = strip.grain
    expect(Math.abs(to.x - from.x)).toBeCloseTo(Math.abs(to.y - from.y), 9)
  })
  // Worked out: the strip lies on the wrong side, outside the V. Sewn together, the two lines of the
  // mitre leave its two halves at the angle the neck edges make round the point, and what is left of
  // the seam line is the neck and its spare.
  test('the strip of a V is mitred at its point: sewn so it lies flat along both edges', () => {
    for (const drop of [110, 160, 220]) {
      const d = made({}, { neckShape: 'vee', frontNeckDrop: mm(drop) })
      const [front, strip] = [pieceOf(d, 'front'), pieceOf(d, 'neckStrip')]
      const [l, r] = strip.inner.find((i) => i.name === 'mitre')?.path ?? []
      if (l?.kind !== 'line' || r?.kind !== 'line') throw new Error('no mitre')
      const along = (from: Point, to: Point, y: number): number =>
        from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y)
      const mouth = along(r.from, r.to, 6) - along(l.from, l.to, 6)
      const t = through(pieceOf(d, 'back'), front, d.body)
      const whole = pathLength(edge(strip, 'neck').path)
      expect(whole - mouth).toBeCloseTo(t.neck + 50, 6)
      const open = Math.abs(heading(l.to, l.from) - heading(r.from, r.to))
      const vee = edge(front, 'neck').path[0]
      if (vee?.kind !== 'line') throw new Error('no V')
      const opening = 2 * Math.atan2(vee.to.x - vee.from.x, vee.from.y - vee.to.y)
      expect(Math.PI + open).toBeCloseTo(2 * Math.PI - opening, 9)
      const said = d.steps.flatMap((s) => (s.verb === 'mitre' ? [sentence(s, CM)] : []))
      expect(said).toEqual([
        expect.stringContaining(`${Math.round((opening * 90) / Math.PI)}° off`),
      ])
    }
  })
  // The same at the corners of a square: on the seam line the strip is twice the way from the centre
  // to a corner between its mitres, and the rest of the neck with its spare beyond them. From an
  // open front the ends are that way and half the spare, 25 mm.
  test.each(['none', 'buttonedFront'] as const)(
    'the strip of a square neck is mitred at both corners, opening: %s',
    (opening) => {
      const d = made({}, { neckShape: 'square', frontNeckDrop: mm(130), opening })
      const strip = pieceOf(d, 'neckStrip')
      const neck = edge(pieceOf(d, 'front'), 'neck').path
      // What a buttoned front laps over begins the edge; the corner is where it turns up.
      const corner = namedPoint(pieceOf(d, 'front'), 'B')
      const up = neck.find((s) => distance(pathStart([s]), corner) < 1e-6)
      if (up?.kind !== 'line') throw new Error('no corner')
      const opens = Math.PI - Math.abs(heading(corner, up.to))
      const [a, b] = strip.inner.map(({ path: [l, r] }) => {
        if (l?.kind !== 'line' || r?.kind !== 'line') throw new Error('no mitre')
        const at = (p: Point, q: Point): number => p.x + ((q.x - p.x) * (6 - p.y)) / (q.y - p.y)
        // Sewn together the two halves of the strip stand as the two edges of the neck do.
        const turned = Math.abs(heading(l.to, l.from) - heading(r.from, r.to))
        expect(Math.PI + turned).toBeCloseTo(2 * Math.PI - opens, 6)
        return [at(l.from, l.to), at(r.from, r.to)] as const
      })
      const whole = pathLength(edge(strip, 'neck').path)
      const front = corner.x
      const t = neckRound(opening)
      expect(a![0]).toBeCloseTo(whole - b![1], 6)
      const [ends, between] = [a![0], b![0] - a![1]]
      expect(ends).toBeCloseTo(opening === 'none' ? t / 2 + 25 - front : 25 + front, 6)
      expect(between).toBeCloseTo(opening === 'none' ? 2 * front : t - 2 * front, 6)
      const [said] = d.steps.flatMap((s) => (s.verb === 'mitre' ? [sentence(s, CM)] : []))
      expect(said).toContain('there the corners come')
    },
  )
  function neckRound(opening: 'none' | 'buttonedFront'): number {
    const d = made({}, { neckShape: 'square', frontNeckDrop: mm(130), opening })
    const laps = opening === 'none' ? 0 : 2 * d.choices.buttonOverlap
    return through(pieceOf(d, 'back'), pieceOf(d, 'front'), d.body).neck - laps
  }
  test('no mitre where the neck is round, or the front is open at the point', () => {
    const mitres = (choices: Partial<Choices>): number =>
      pieceOf(made({}, choices), 'neckStrip').inner.length
    expect(mitres({ neckShape: 'round' })).toBe(0)
    expect(mitres({ neckShape: 'vee', opening: 'buttonedFront' })).toBe(0)
    expect(mitres({ neckShape: 'vee', opening: 'none' })).toBe(1)
  })
  test('they follow the choices: a deeper neck makes a longer strip', () => {
    const long = (d: Draft, id: FinishingId): number =>
      pathLength(edge(pieceOf(d, id), 'neck').path)
    const [a, b] = [made(), made({}, { frontNeckDrop: mm(150) })]
    const necks = (d: Draft): number =>
      2 * pathLength(edge(pieceOf(d, 'front'), 'neck').path) +
      2 * pathLength(edge(pieceOf(d, 'back'), 'neck').path)
    expect(long(b, 'neckStrip') - long(a, 'neckStrip')).toBeCloseTo(necks(b) - necks(a), 6)
  })
  // Centre to centre: the two overlaps of 20 mm are finished by the front facing.
  test('the strip of a buttoned front is as long as that of a closed one', () => {
    const long = (opening: 'buttonedFront' | 'none'): number =>
      pathLength(edge(pieceOf(made({}, { opening }), 'neckStrip'), 'neck').path)
    expect(long('buttonedFront')).toBeCloseTo(long('none'), 9)
  })
  // Counted anew: a point is inside where a level line from it crosses the outline an odd number
  // of times.
  test.each(['round', 'square', 'vee', 'boat', 'scoop'] as const)(
    'the grain of every facing lies on its cloth, with a %s neck',
    (neckShape) => {
      for (const [, numbers] of INVENTED_BODIES)
        for (const opening of ['auto', 'buttonedFront', 'backZip'] as const) {
          const choices = {
            ...standardChoices(),
            neckShape,
            neckFinish: 'facing',
            opening,
          } as const
          for (const piece of draft('blouse', body({}, numbers), choices).pieces.slice(2)) {
            const ring = flatten(outline(piece), 0.01)
            const { from, to } = piece.grain
            for (const t of [0, 0.25, 0.5, 0.75, 1]) {
              const [x, y] = [from.x + (to.x - from.x) * t, from.y + (to.y - from.y) * t]
              const crossed = ring.filter((a, i) => {
                const b = ring[(i + 1) % ring.length]!
                return a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)
              }).length
              expect(crossed % 2, `${piece.id} at ${t}`).toBe(1)
            }
            expect(Math.hypot(to.x - from.x, to.y - from.y), piece.id).toBeGreaterThan(15)
          }
        }
    },
  )
  test('a buttoned front gets a facing as wide as the overlap and 60', () => {
    const d = made({}, { opening: 'buttonedFront' })
    const facing = pieceOf(d, 'buttonFacing')
    const whole = outline(facing)
    checkJoined([...whole, whole[0]!], 'buttonFacing')
    expect(pathStart(edge(facing, 'outer').path).x).toBeCloseTo(60, 6)
    expect(pathStart(edge(facing, 'centre').path).x).toBeCloseTo(-20, 9)
  })
})

/** Along the side seam as it is sewn, by chords: from the underarm to a point, without a dart. */
function sewnTo(piece: Piece, to: Point): number {
  const chain = flatten(edge(piece, 'side').path, 0.001)
  const near = (p: Point): number =>
    chain.reduce((best, q, i) => (gap(q, p) < gap(chain[best]!, p) ? i : best), 0)
  const long = (from: number, end: number): number =>
    chain.slice(from, end).reduce((sum, p, i) => sum + gap(p, chain[from + i + 1]!), 0)
  const end = near(to)
  const folded = piece.edgeDarts
    .map((d) => [near(d.upper), near(d.lower)].sort((a, b) => a - b))
    .reduce((sum, [a = 0, b = 0]) => sum + (b <= end ? long(a, b) : 0), 0)
  return long(0, end) + gap(chain[end]!, to) - folded
}
const gap = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y)
