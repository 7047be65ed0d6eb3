/**
 * What answers and pins may not be made to say: no cause for being the last, the sign of a
 * reading, marks apart from pins, and nothing asked that will wait. Tests and causes: the trade
 * list of complaints (a table after public bulletins and lessons); amounts worked by hand.
 */
import { describe, expect, test } from 'vitest'
import { complaintOf } from '../../../src/fitting/complaints/catalogue.ts'
import { COMPLAINT_IDS } from '../../../src/fitting/complaints/complaint.ts'
import { decideCase, readCase } from '../../../src/fitting/rules/case.ts'
import { decided, expectEdits, pin, said } from './golden.ts'

const asked = (complaints: readonly object[], draft: Readonly<Record<string, number>> = {}) => {
  const read = readCase({ id: 'case', garment: 'block', draft, complaints }, 1)
  if (!read.ok) throw new Error(read.reason)
  return decideCase(read.value).asks.map(({ complaint }) => complaint)
}

describe('a cause is shown, never left over', () => {
  // A3 of the notes: the pin that makes it vanish decides; with none that does nothing is decided.
  test('every test of every complaint answered no changes nothing', () => {
    for (const id of COMPLAINT_IDS) {
      const none = Object.fromEntries(
        complaintOf(id).tests.map(({ number }) => [`test ${number}`, false]),
      )
      const r = decided([said(id, none, pin('side', 'pinch', 20))], {}, 'block')
      expect(r.decision, `${id}: ${r.reasons.join(' ')}`).not.toBe('change')
      expect(r.edits).toEqual([])
    }
  })
  test('square shoulders with no gap and no cutting in: measure again, and say why', () => {
    const none = { 'test 1': false, 'test 2': false, 'test 3': false }
    const r = decided([said('SH2', none, pin('shoulder', 'slit', 12))])
    expect(r.decision).toBe('ask')
    expect(r.reasons.join()).toContain('Every test was answered no')
    // A cause that no test reaches is named, to be looked for under its own name.
    const a1 = decided([said('A1', none, pin('armhole', 'newLine', 8))])
    expect(a1.decision).toBe('ask')
    expect(a1.reasons.join()).toContain('shoulder too short (Shoulder too short)')
  })
  // "Cross arms: fold should almost vanish": it is the room to reach, 6 to 13 mm a half.
  test.each([{ 'test 1': false, 'test 2': false }, { 'test 3': true }])(
    'a fold at the back armhole that goes when the arms cross stays: %j',
    (answers) => {
      const r = decided([said('A4', answers, pin('armhole', 'pinch', 10))])
      expect(r.decision).toBe('nothing')
      expect(r.reasons.join()).toContain('room to reach')
    },
  )
  test('before a fold is left for reach, the shoulder is looked at', () => {
    const r = decided([said('A4', { 'test 1': false }, pin('armhole', 'pinch', 10))])
    expect(r.decision).toBe('ask')
    expect(r.reasons.join()).toContain('past the bone')
  })
  // K2.2 is a tight hip: what was pinned at the back is no amount for it, the hip seam is.
  test('a cause that wants another reading is named, and asked for its amount', () => {
    const r = decided([said('K2', { '2': true }, pin('cb', 'pinch', 10))])
    expect(r.decision).toBe('ask')
    expect(r.causes).toEqual(['K2.2', 'W9.1'])
    expect(r.reasons.join()).toContain('read the gap')
  })
  test('what no one could tell is taken as the likeliest of what she tried, not of what she ruled out', () => {
    const of = (answers: Record<string, boolean>, cannotTell: readonly number[]) => {
      const read = readCase(
        {
          id: 'case',
          garment: 'block',
          complaints: [{ ...said('B8', answers, pin('armhole', 'pinch', 10)) }],
        },
        1,
      )
      if (!read.ok) throw new Error(read.reason)
      const [one] = read.value.complaints
      return decideCase({ ...read.value, complaints: [{ ...one!, cannotTell }] })
    }
    // Tests of B8: wedge, shoulder tip, side raised, edge longer. Wedge no, the others in doubt: A2.
    const doubt = of({ 'test 1': false, 'test 2': false, 'test 4': false }, [3])
    expect(doubt.causes[0]).toBe('B8.3')
    expect(doubt.reasons.join()).toContain('not proved')
    expect(of({}, [1, 2]).decision).toBe('ask')
    expect(of({}, [1, 2, 3, 4]).causes[0]).toBe('B8.1')
  })
})

describe('the sign of a reading', () => {
  const ways = (id: string, where: string, value: number) =>
    decided([said(id, { '1': true }, pin(where, 'level', value))], {}, 'block').edits.map(
      ({ op, target, ...e }) => `${op} ${target} ${(e as unknown as { way: string }).way}`,
    )
  test('a dart too high goes down, one too low goes up', () => {
    expect(ways('B5', 'dart', 12)).toEqual([
      'GROUP front.bustDart down',
      'MOVE front.waistDart down',
    ])
    expect(ways('B5', 'dart', -12)).toEqual(['GROUP front.bustDart up', 'MOVE front.waistDart up'])
  })
  test('bust tips too near each other go out, too far apart in; of lengths alone as well', () => {
    expect(ways('B6', 'dart', 8)[0]).toBe('MOVE front.waistDart out')
    expect(ways('B6', 'dart', -8)[0]).toBe('MOVE front.waistDart in')
    // 170 on the body, 190 on the draft: (170 − 190)/2 = −10, so 10 inwards; 190 and 170: outwards.
    const of = (body: number, draft: number) =>
      decided([said('B6', { '1': true })], { apexSpacing: body, apexSpacingDraft: draft }, 'block')
    const near = of(170, 190)
    expect(near.edits[0]).toMatchObject({ way: 'in', rawHalf_mm: 10, applied_mm: 10 })
    expect(of(190, 170).edits[0]).toMatchObject({ way: 'out', applied_mm: 10 })
  })
  test('one side up and the other down are not one mean of nothing', () => {
    const r = decided(
      [
        said('B5', { '1': true }, pin('dart', 'level', 8, 'left')),
        said('B5', { '1': true }, pin('dart', 'level', -8, 'right')),
      ],
      {},
      'block',
    )
    const way = (side: string) =>
      r.edits.filter((e) => e.side === side).map((e) => (e as unknown as { way: string }).way)
    expect(way('left')).toEqual(['down', 'down'])
    expect(way('right')).toEqual(['up', 'up'])
  })
  test('cloth pinned away is never less than nothing: asked again', () => {
    const r = decided([said('W4', { '1': true }, pin('allRound', 'pinch', -20))])
    expect(r.decision).toBe('ask')
    expect(r.reasons.join()).toContain('less than nothing')
  })
  // L6 is a cap with too much ease; by these lengths it has 10 less than the cloth takes.
  test('a length that speaks the other way is no amount', () => {
    const r = decided([said('L6', { '1': true })], { cap: 440, armhole: 430, capEaseWanted: 20 })
    expect(r.decision).toBe('nothing')
    expect(r.reasons.join()).toContain('no more ease')
  })
})

describe('marks, slits and pins', () => {
  // A bone marked is a place: whole. Cloth folded back over the arm is pinned: × 0.87.
  test('a shoulder marked at the bone is taken whole, a fold by its share', () => {
    const of = (how: string, value: number) =>
      decided([said('SH3', { '1': true }, pin('shoulder', how, value))], {}, 'block')
    expectEdits(of('newLine', 12), [
      { target: 'front.armhole', op: 'EDGE', raw: 12, applied: 12, cap: 15 },
      { target: 'back.armhole', op: 'EDGE', raw: 12, applied: 12, cap: 15 },
    ])
    expect(of('level', 12).edits[0]?.applied_mm).toBe(12)
    expect(of('pinch', 12).edits[0]?.applied_mm).toBeCloseTo(10.44, 6)
  })
  test('a seam that was opened and stays shut: nothing, before anything is asked', () => {
    const r = decided([said('B1', {}, pin('side', 'slit', 0))])
    expect(r.decision).toBe('nothing')
  })
  // 400 mm of cloth at one armhole: no body, a slip of the unit.
  test('an amount past all fitting is read again', () => {
    const r = decided([said('B8', { '1': true }, pin('armhole', 'pinch', 400))])
    expect(r.decision).toBe('ask')
    expect(r.reasons.join()).toContain('Read it again')
  })
})

describe('what the pin and the numbers say is asked first', () => {
  const first = (one: object, draft: Readonly<Record<string, number>> = {}) => {
    const read = readCase({ id: 'case', garment: 'block', draft, complaints: [one] }, 1)
    if (!read.ok) throw new Error(read.reason)
    return decideCase(read.value).asks[0]
  }
  // Both side seams opened speak for girth all round (test 2), a slit in front for the cup (test 1).
  test('the test of the work that is done where the pin sits', () => {
    expect(first(said('B1', {}, pin('side', 'slit', 20)))?.test).toBe(2)
    expect(first(said('B1', {}, pin('cf', 'slit', 20)))?.test).toBe(1)
  })
  // 20 at each side seam: 10 an edge, × 0.87 = 8.7, four edges 34.8; 60 − 34.8 leaves under the least 38.
  test('cloth pinned away that the numbers say is not there: the tape before the tests', () => {
    const loose = said('B3', {}, pin('side', 'pinch', 20))
    expect(first(loose, { bustEase: 60 })).toMatchObject({ tape: ['bustGirth'] })
    expect(first(loose, { bustEase: 90 })?.test).toBe(2)
  })
})

describe('what will wait is not asked', () => {
  test('the gape is not asked about while the tight bust is', () => {
    const list = [
      said('B1', {}, pin('side', 'slit', 20)),
      said('B8', {}, pin('armhole', 'pinch', 10)),
    ]
    expect(new Set(asked(list))).toEqual(new Set(['B1']))
    expect(new Set(asked([...list].reverse()))).toEqual(new Set(['B1']))
  })
  // A waist that is lifted by a tight bust: the bust is asked about first.
  test('what another complaint may explain is asked after it', () => {
    const list = [
      said('W1', {}, pin('allRound', 'level', 10)),
      said('B1', {}, pin('side', 'slit', 20)),
    ]
    expect(new Set(asked(list))).toEqual(new Set(['B1']))
    const bustRight = [
      list[0]!,
      said(
        'B1',
        { 'test 1': false, 'test 2': false, 'test 3': false, 'test 4': false },
        pin('side', 'slit', 20),
      ),
    ]
    expect(asked(bustRight)).toContain('W1')
  })
  test('one change of a kind a round: the second is not asked about', () => {
    const list = [
      said('SH1', { '1': true }, pin('shoulder', 'newLine', 8)),
      said('B5', {}, pin('dart', 'level', 10)),
    ]
    expect(asked(list)).toEqual([])
  })
})
