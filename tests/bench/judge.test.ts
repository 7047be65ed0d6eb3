/** Faults planted in a draft: the judge of the bench names each, and nothing that was sound before. */
import { expect, test } from 'vitest'
import { judge } from '../../scripts/bench/bodies/judge.ts'
import { standardChoices } from '../../src/draft/choices.ts'
import { pieceOf, withPiece, type Draft } from '../../src/draft/draft.ts'
import { draft } from '../../src/draft/make.ts'
import { edge, withEdge, type EdgeName, type PieceId } from '../../src/draft/piece.ts'
import { pathEnd, pathStart } from '../../src/geometry/path.ts'
import { point } from '../../src/geometry/point.ts'
import { line } from '../../src/geometry/segment.ts'
import { mm } from '../../src/units/length.ts'
import { body, MIDDLE } from '../bodies.ts'

const SOUND = draft('blouse', body(), standardChoices())
const before = judge(SOUND, MIDDLE)
/** Reasons that the fault brings, beyond those of the draft as it was. */
const added = (d: Draft, numbers = MIDDLE): string[] => {
  const after = judge(d, numbers)
  const had = [...before.unsound, ...before.unwearable]
  return [...after.unsound, ...after.unwearable].filter((reason) => !had.includes(reason))
}
/** An edge of a piece led by way of one point that lies off it. */
function bent(id: PieceId, name: EdgeName, by: number): Draft {
  const piece = pieceOf(SOUND, id)
  const { path } = edge(piece, name)
  const [from, to] = [pathStart(path), pathEnd(path)]
  const off = point((from.x + to.x) / 2 + by, (from.y + to.y) / 2 + by)
  return withPiece(SOUND, withEdge(piece, name, [line(from, off), line(off, to)]))
}
const darted = (id: PieceId, change: object): Draft => {
  const piece = pieceOf(SOUND, id)
  return withPiece(SOUND, { ...piece, darts: piece.darts.map((d) => ({ ...d, ...change })) })
}

test('the draft of the invented middle body is sound', () => {
  expect(before.unsound).toEqual([])
})

test('a seam that is longer than its partner', () => {
  expect(added(bent('front', 'overarm', 40))).toContain('overarm seams are unequal')
  expect(added(bent('back', 'side', 60))).toContain('side seams are unequal')
})

test('an outline that crosses itself, and one that does not close', () => {
  expect(added(bent('front', 'side', -600))).toContain('front outline crosses itself')
  const piece = pieceOf(SOUND, 'back')
  const open = { ...piece, edges: piece.edges.filter(({ name }) => name !== 'hem') }
  expect(added(withPiece(SOUND, { ...open, edges: [...open.edges, ...hemShort()] }))).toContain(
    'back outline is not closed',
  )
})
const hemShort = () => {
  const hem = edge(pieceOf(SOUND, 'back'), 'hem')
  const start = pathStart(hem.path)
  return [{ ...hem, path: [line(start, point(start.x / 2, start.y))] }]
}

test('a dart that is wide, blunt, or unequal in its legs', () => {
  const [dart] = pieceOf(SOUND, 'front').darts
  if (!dart) throw new Error('the middle body has a front dart')
  const wide = {
    inner: point(dart.inner.x - 20, dart.inner.y),
    outer: point(dart.outer.x + 20, dart.outer.y),
  }
  expect(added(darted('front', wide))).toEqual(
    expect.arrayContaining(['front dart is wide', 'front dart is blunt', 'ease at the waist']),
  )
  const aslant = { upperTip: point(dart.upperTip.x + 5, dart.upperTip.y) }
  expect(added(darted('front', aslant))).toContain('front dart legs are unequal')
})

test('a body that the draft was not made for', () => {
  // Each number changed alone, so far that the piece drawn for the old one cannot serve.
  const with_ = (over: Partial<typeof MIDDLE>) => added(SOUND, { ...MIDDLE, ...over })
  expect(with_({ upperArmGirth: 560 })).toContain('arm opening is small')
  expect(with_({ headGirth: 800 })).toContain('neck does not pass')
  expect(with_({ bustGirth: 960 })).toEqual(
    expect.arrayContaining(['underarm is not at the bust width', 'ease at the bust']),
  )
  expect(with_({ waistGirth: 800 })).toContain('ease at the waist')
  expect(with_({ hipGirth: 1030 })).toContain('ease at the hip')
  expect(with_({ napeToArmpitLevel: 205 })).toContain(
    'underarm is not below the armpit as it should be',
  )
  expect(with_({ frontNeckToWaist: 280 })).toContain('front neck is above the neck point')
})

test('a way in that is not there, too short, or in the wrong place', () => {
  const [zip, ...more] = SOUND.openings
  if (!zip || zip.kind !== 'sideZip') throw new Error('the middle body gets in by a side zip')
  expect(added({ ...SOUND, openings: more })).toContain('waist does not pass')
  // A zip that ends above the waist leaves it closed.
  const short = { ...zip, to: mm(zip.from + 20) }
  expect(added({ ...SOUND, openings: [short, ...more] })).toContain('waist does not pass')
  // The neck is 566 round and a head of 680 needs 700: a slit of 10 mm gives 20, one of 150 gives 300.
  const slit = { ...zip, kind: 'neckSlit', edge: 'centre', from: mm(0), to: mm(10) } as const
  const big = { ...MIDDLE, headGirth: 680 }
  expect(added({ ...SOUND, openings: [zip, slit] }, big)).toContain('neck does not pass')
  const longer = { ...slit, to: mm(150) }
  expect(added({ ...SOUND, openings: [zip, longer] }, big)).not.toContain('neck does not pass')
})

test('a finding that stops cutting', () => {
  const findings: Draft['findings'] = [
    { id: 'neckJoin', severity: 'stop', place: 'front.neck', value: mm(0), limit: mm(0) },
  ]
  expect(added({ ...SOUND, findings })).toContain('stop: neckJoin')
})
