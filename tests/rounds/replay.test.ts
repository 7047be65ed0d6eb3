/** Every golden round, read as stored data and drawn anew, gives its numbers to 0.001 mm. */
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import * as v from 'valibot'
import { record } from '../../src/draft/record.ts'
import { between, drifted, driftedWords } from '../../src/rounds/drift.ts'
import { isAside, lineOf, sewnIn } from '../../src/rounds/line.ts'
import { close, redraft } from '../../src/rounds/redraft.ts'
import { branchFrom, photoOf, withPhoto, type Round } from '../../src/rounds/round.ts'
import { NumberRecordSchema, RoundSchema } from '../../src/storage/schema/round.ts'
import { mm } from '../../src/units/length.ts'
import { GOLDEN, GOLDEN_STEP } from './golden-rounds.ts'

const FOLDER = new URL('./golden/', import.meta.url)
const GoldenSchema = v.object({ round: RoundSchema, exact: NumberRecordSchema })
const golden = (file: string) =>
  v.parse(GoldenSchema, JSON.parse(readFileSync(new URL(file, FOLDER), 'utf8')))
const files = readdirSync(FOLDER)

describe('golden rounds', () => {
  test('every one of them lies in the folder', () => {
    expect(files.sort()).toEqual(
      Object.keys(GOLDEN)
        .map((name) => `${name}.json`)
        .sort(),
    )
  })
  test.each(files)('%s replays to a thousandth of a millimetre', (file) => {
    const { round, exact } = golden(file)
    const { draft, refused } = redraft(round)
    expect(refused).toEqual([])
    expect(between(exact, record(draft, GOLDEN_STEP))).toEqual([])
    expect(drifted(round)).toEqual([])
    expect(driftedWords(round)).toEqual([])
  })
})

const some = (): Round => golden('blouse-second.json').round

test('a number 0.002 mm off is told with both its values, one 0.0005 off is not', () => {
  const { round, exact } = golden('blouse.json')
  const now = record(redraft(round).draft, GOLDEN_STEP)
  const side = exact.lengths['front.side'] ?? mm(0)
  const off = (by: number) => ({
    ...exact,
    lengths: { ...exact.lengths, 'front.side': mm(side + by) },
  })
  expect(between(off(0.0005), now)).toEqual([])
  expect(between(off(0.002), now)).toEqual([
    { name: 'front.side', kind: 'length', was: side + 0.002, now: side },
  ])
})

test('a program that draws a point fewer says which', () => {
  const { exact } = golden('blouse.json')
  const { 'front.U': gone, ...points } = exact.points
  expect(gone).toBeDefined()
  expect(between(exact, { ...exact, points })).toMatchObject([{ name: 'front.U', kind: 'point' }])
})

test('a tip of a dart that lies elsewhere is told; a record that has no tips misses none', () => {
  const { exact } = golden('block-second.json')
  const name = 'front.bustDart'
  const [across, down] = exact.tips![name]!
  const moved = { ...exact, tips: { ...exact.tips, [name]: [across, mm(down + 2)] as const } }
  expect(between(exact, moved)).toEqual([{ name, kind: 'tip', was: 0, now: expect.closeTo(2, 6) }])
  const { tips: _none, ...before } = exact
  expect(between(before, exact)).toEqual([])
})

test('words that would be printed otherwise are told', () => {
  const round = some()
  const words = ['A–Z Measure to the moon.', ...(round.printed?.words ?? [])]
  const altered = { ...round, printed: { ...round.printed!, words } }
  expect(driftedWords(altered)).toEqual(['A–Z Measure to the moon.'])
})

test('a photo that was let go leaves its day, and the round replays all the same', () => {
  const sha256 = 'a'.repeat(64)
  const round = withPhoto(some(), { view: 'front', sha256, removedOn: '2026-11-25' })
  expect(photoOf(round, 'front')?.removedOn).toBe('2026-11-25')
  expect(drifted(round)).toEqual([])
})

test('a second photo of a view is shown, the first stays in the record', () => {
  const [a, b] = ['a'.repeat(64), 'b'.repeat(64)]
  const round = withPhoto(withPhoto(some(), { view: 'front', sha256: a }), {
    view: 'front',
    sha256: b,
  })
  expect(photoOf(round, 'front')?.sha256).toBe(b)
  expect(round.photos.map((p) => p.sha256)).toEqual([a, b])
})

test('a branch goes on from its round alone and says so', () => {
  const [second, third] = [some(), golden('blouse-third.json').round]
  const branch = branchFrom(second, third.number + 1, 'b', '2026-11-25')
  expect(branch).toMatchObject({ number: 4, from: second.id, seen: [], movements: [] })
  expect(branch.corrections).toEqual(second.corrections)
  expect(branch.printed).toBeUndefined()
  expect(
    between(second.printed!.record, record(redraft(close(branch, '2026-11-25')).draft)),
  ).toEqual([])
  expect(() => branchFrom(second, 2, 'b', '2026-11-25')).toThrow('not after it')
  // Left for another branch before it was on paper, it is set aside, and can be gone on from later.
  const other = branchFrom(third, 5, 'c', '2026-11-26')
  const all = [second, third, branch, other]
  expect(all.map((r) => isAside(all, r))).toEqual([false, false, true, false])
  const again = branchFrom(branch, 6, 'd', '2026-11-27')
  expect(again.corrections).toEqual(branch.corrections)
  expect(lineOf([...all, again], again).map((r) => r.number)).toEqual([2, 4, 6])
  // The muslin it rests on is the one it came from, not the newest.
  expect(sewnIn([...all, again], again)?.number).toBe(2)
  expect(sewnIn(all, other)?.number).toBe(3)
})
