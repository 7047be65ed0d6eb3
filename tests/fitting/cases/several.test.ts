/**
 * Several complaints of one muslin. Rules: order and interactions as published in the texts named
 * in src/fitting/complaints/sources.ts, the rest common practice; amounts worked by hand.
 */
import { describe, expect, test } from 'vitest'
import fc from 'fast-check'
import { decided, pin, said } from './golden.ts'

const targets = (r: ReturnType<typeof decided>): string[] => r.edits.map((e) => e.target)

describe('one slack is taken once', () => {
  const neck = said('N1', { '1': true }, pin('neck', 'fold', 6, 'one'))
  const chest = said('B9', { '1': true }, pin('cf', 'fold', 5))
  test('54 neck and upper chest: the pin that makes it vanish decides', () => {
    const r = decided([neck, chest], { r: 150, R: 180 })
    expect(targets(r)).toEqual(['front.neck', 'front.waistDart'])
    expect(r.heldBack.map((h) => h.complaint)).toEqual(['B9'])
    const level = decided([said('N1', { '2': true }, pin('neck', 'fold', 6, 'one')), chest])
    expect(targets(level)).toEqual(['front.centre'])
    expect(level.edits[0]?.applied_mm).toBeCloseTo(8.7, 3)
  })
  test('55 gaping armhole and low armhole: the wedge takes both', () => {
    const r = decided([
      said('B8', { '1': true }, pin('armhole', 'pinch', 10, 'one')),
      said('A2', { '1': true }, pin('side', 'level', 8)),
    ])
    expect(targets(r)).toEqual(['front.armhole'])
  })
  test('56 slope behind the gape: the slope once', () => {
    const r = decided([
      said('B8', {}, pin('armhole', 'pinch', 10, 'one')),
      said('SH1', { '1': true }, pin('shoulder', 'newLine', 8)),
      said('A2', { '2': true }),
    ])
    expect(new Set(r.edits.map((e) => e.op))).toEqual(new Set(['MOVE']))
    expect(r.causes).toEqual(['SH1.1'])
  })
  test('57 waist all round and at the back: once', () => {
    const r = decided([
      said('W4', {}, pin('allRound', 'pinch', 40)),
      said('K6', { '1': true }, pin('dart', 'fold', 5)),
    ])
    expect(targets(r).filter((t) => t === 'back.waistDart')).toHaveLength(1)
  })
  test('58 tight bust and gap between the buttons: one full bust', () => {
    const r = decided([
      said('B1', { '1': true }, pin('cf', 'slit', 30)),
      said('B12', { '1': true }, pin('cf', 'slit', 30)),
    ])
    expect(r.edits.filter((e) => e.op === 'FBA' && e.cap_mm !== null)).toHaveLength(1)
  })
})

describe('one cause, and what comes first', () => {
  // Both gape: 10 × 0.87 at each edge, both angles into the darts, no full bust.
  test('59 neck and armhole gape together: one turn each', () => {
    const r = decided([
      said('N1', { '1': true }, pin('neck', 'pinch', 10, 'one')),
      said('B8', { '1': true }, pin('armhole', 'pinch', 10, 'one')),
    ])
    expect(r.edits.map((e) => [e.target, e.op])).toEqual([
      ['front.neck', 'ROT'],
      ['front.armhole', 'ROT'],
    ])
    expect(r.edits.every((e) => Math.abs(e.applied_mm - 8.7) < 1e-3)).toBe(true)
  })
  test('60 tight bust first, the gape is pinned again', () => {
    const r = decided([
      said('N1', { '1': true }, pin('neck', 'pinch', 10, 'one')),
      said('B1', { '1': true }, pin('cf', 'slit', 24)),
    ])
    expect(r.edits[0]?.op).toBe('FBA')
    expect(targets(r)).not.toContain('front.neck')
    expect(r.heldBack).toContainEqual(expect.objectContaining({ complaint: 'N1' }))
  })
  test('61 hip before the sway back', () => {
    const r = decided([
      said('K2', { '1': true }, pin('cb', 'fold', 8)),
      said('W9', { '1': true }, pin('allRound', 'slit', 40)),
    ])
    expect(targets(r)).toEqual(['front.side', 'back.side'])
    expect(r.heldBack.map((h) => h.complaint)).toEqual(['K2'])
  })
  test('62 blades before neck, seam place and sleeve', () => {
    const r = decided([
      said('N3', { '1': true }, pin('cb', 'fold', 5)),
      said('K3', { '1': true }, pin('cb', 'slit', 9)),
      said('SH5', { '1': true }, pin('shoulder', 'level', 8)),
      said('L4', { '1': true }, pin('cap', 'level', 7)),
    ])
    expect(targets(r)).toEqual(['back.centre'])
  })
  // All round 10 × 0.87; at the centre back 16 in all, 6 left: × 0.87 = 5.22.
  test('63 even part first, the wedge is what is left', () => {
    const r = decided([
      said('W2', { '1': true }, pin('allRound', 'pinch', 10)),
      said('K2', { '1': true }, pin('cb', 'pinch', 16)),
    ])
    expect(r.edits.map((e) => [e.target, e.op, e.rawHalf_mm])).toEqual([
      ['front.side', 'PAR-', 10],
      ['back.side', 'PAR-', 10],
      ['back.centre', 'WEDGE-', 6],
    ])
    expect(r.edits[2]?.applied_mm).toBeCloseTo(5.22, 3)
  })
  test('64 at most one group of each kind', () => {
    const r = decided([
      said('W1', { '1': true }, pin('allRound', 'level', 12)),
      said('SH3', { '1': true }, pin('shoulder', 'level', 8)),
      said('N2', { '1': true }, pin('cf', 'newLine', 6)),
      said('W3', { '1': true }, pin('side', 'slit', 12)),
      said('L1', { '1': true }, pin('cap', 'slit', 8)),
    ])
    // Length: W1. Shape: N2, before SH3 in the table. Girth: W3 at the side, 6 an edge, before L1.
    expect(r.edits.map((e) => [e.target, e.op, e.applied_mm])).toEqual([
      ['front.side', 'PAR+', 12],
      ['back.side', 'PAR+', 12],
      ['front.neck', 'MOVE', 6],
      ['front.side', 'EDGE', 6],
      ['back.side', 'EDGE', 6],
    ])
    expect(r.heldBack.map((h) => h.complaint)).toContain('L1')
    expect(r.heldBack.map((h) => h.complaint)).toContain('SH3')
  })
})

describe('opposite work is a choice', () => {
  test.each([
    ['65 lift and hang', 'D1', 'D3', 'overarm', 'blouse'],
    ['66 reach and slack', 'K1', 'A4', 'armhole', 'sleeve'],
    ['67 waist both ways', 'W3', 'W4', 'side', 'sleeve'],
    ['68 shoulder both ways', 'SH1', 'SH2', 'shoulder', 'sleeve'],
  ] as const)('%s: both numbers, nothing changed', (_, a, b, where, garment) => {
    const r = decided(
      [
        said(a, { '1': true }, pin(where, 'newLine', 9)),
        said(b, { '1': true }, pin(where, 'newLine', 8)),
      ],
      { overarm: 330 },
      garment,
    )
    expect(r.decision).toBe('ask')
    expect(r.edits).toEqual([])
    expect(r.choices).toHaveLength(1)
  })
})

describe('left and right', () => {
  test('69 up to 6 mm apart are one amount, their mean', () => {
    const r = decided([
      said('SH1', { '1': true }, pin('shoulder', 'newLine', 6, 'left')),
      said('SH1', { '1': true }, pin('shoulder', 'newLine', 10, 'right')),
    ])
    expect(r.edits[0]?.rawHalf_mm).toBe(8)
    expect(r.edits[0]?.side).toBeUndefined()
  })
  test('70 farther apart they are two pieces', () => {
    const r = decided([
      said('SH1', { '1': true }, pin('shoulder', 'newLine', 4, 'left')),
      said('SH1', { '1': true }, pin('shoulder', 'newLine', 12, 'right')),
    ])
    expect(r.edits.filter((e) => e.side === 'left').every((e) => e.rawHalf_mm === 4)).toBe(true)
    expect(r.edits.filter((e) => e.side === 'right').every((e) => e.rawHalf_mm === 12)).toBe(true)
  })
  test('71 a lower shoulder is never a mean', () => {
    const r = decided([
      said('SH8', { '1': true }, pin('shoulder', 'level', 7, 'left')),
      said('SH8', { '1': true }, pin('shoulder', 'level', 9, 'right')),
    ])
    expect(new Set(r.edits.map((e) => `${e.side} ${e.rawHalf_mm}`))).toEqual(
      new Set(['left 7', 'right 9']),
    )
  })
})

test('72 the order of entry does not matter', () => {
  const list = [
    said('N1', { '1': true }, pin('neck', 'fold', 5, 'one')),
    said('B8', { '1': true }, pin('armhole', 'fold', 5, 'one')),
    said('W2', { '1': true }, pin('allRound', 'fold', 5)),
    said('K2', { '1': true }, pin('cb', 'fold', 8)),
    said('W3', { '1': true }, pin('side', 'slit', 12)),
    said('A2', { '1': true }, pin('side', 'level', 7)),
    said('L2', { '1': true }, pin('cap', 'fold', 4)),
  ]
  const first = JSON.stringify(decided(list, { r: 150, R: 180 }))
  fc.assert(
    fc.property(fc.shuffledSubarray(list, { minLength: list.length }), (other) => {
      expect(JSON.stringify(decided(other, { r: 150, R: 180 }))).toBe(first)
    }),
    { numRuns: 60 },
  )
})
