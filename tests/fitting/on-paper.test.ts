/**
 * Work on the paper she has: moving the points by the printed amounts on the old drawing gives the
 * points of the new one. Slash, spread and overlap: common practice, no source.
 */
import { describe, expect, test } from 'vitest'
import { standardChoices, type ChoiceId } from '../../src/draft/choices.ts'
import { record } from '../../src/draft/record.ts'
import { correctedDraft } from '../../src/fitting/apply.ts'
import type { Because, Correction } from '../../src/fitting/correction.ts'
import { onPaper } from '../../src/fitting/on-paper.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const because: Because = {
  complaint: 'W1',
  cause: 'length',
  pinned: { how: 'levelError', read: mm(12), share: 1 },
  watch: mm(0),
  round: 1,
}
const turn = (id: string, choice: ChoiceId, by: number): Correction => ({
  v: 1,
  id,
  kind: 'turn-choice',
  choice,
  by: mm(by),
  because,
})
const base = (corrections: readonly Correction[]) =>
  ({ garment: 'blouse', body: body(), choices: standardChoices(), corrections }) as const
const draftOf = (corrections: readonly Correction[]) =>
  correctedDraft('blouse', body(), standardChoices(), corrections).draft

/** "Move U 0.5 cm out and 1.2 cm down; W …" read back as letters and millimetres. */
function read(lines: readonly string[], half: string): Map<string, readonly [number, number]> {
  const line = lines.find((l) => l.startsWith(`${half}. `)) ?? ''
  const list = /Move (.*?)\.(?= Draw anew|$)/.exec(line)?.[1] ?? ''
  return new Map(
    list.split('; ').flatMap((spot) => {
      const letter = /^(\w+) /.exec(spot)?.[1]
      if (!letter) return []
      const by = (word: string): number =>
        Number(new RegExp(`(\\d+\\.\\d) cm ${word}`).exec(spot)?.[1] ?? 0) * 10
      return [[letter, [by('out') - by('in'), by('down') - by('up')]] as const]
    }),
  )
}

describe('points moved on the old paper', () => {
  test.each([
    ['underarmDrop', 8],
    ['easeBust', 6],
    ['overarmDrop', 30],
    ['frontNeckDrop', 20],
    ['neckHalfWidth', -7],
    ['easeHip', 9],
  ] as const)('%s by %i lie where the new drawing has them', (choice, by) => {
    const c = turn('c1', choice, by)
    const [work] = onPaper(base([c]), CM)
    const [before, after] = [record(draftOf([])).points, record(draftOf([c])).points]
    let told = 0
    for (const half of ['back', 'front']) {
      const moves = read(work!.lines, half === 'back' ? 'Back' : 'Front')
      for (const [name, [x, y]] of Object.entries(after)) {
        if (!name.startsWith(`${half}.`)) continue
        const [dx, dy] = moves.get(name.slice(half.length + 1)) ?? [0, 0]
        const old = before[name]
        if (!old) continue
        const [px, py] = old
        // Half a printed step each way.
        expect(Math.abs(px + dx - x), name).toBeLessThanOrEqual(0.51)
        expect(Math.abs(py + dy - y), name).toBeLessThanOrEqual(0.51)
        if (dx !== 0 || dy !== 0) told += 1
      }
    }
    expect(told).toBeGreaterThan(0)
  })
})

test('length between bust and waist is a cut across, spread or overlapped by the printed amount', () => {
  const longer = onPaper(base([turn('c1', 'lengthAdded', 12)]), CM)[0]!.lines.join(' ')
  expect(longer).toContain('spread it by 1.2 cm')
  const shorter = onPaper(base([turn('c1', 'lengthAdded', -12)]), CM)[0]!.lines.join(' ')
  expect(shorter).toContain('Overlap the cut by 1.2 cm')
  // Everything below the cut moves by that much and nothing above it: what a cut across does.
  const [a, b] = [
    record(draftOf([])).points,
    record(draftOf([turn('c1', 'lengthAdded', 12)])).points,
  ]
  for (const name of ['C', 'H', 'W', 'X', 'L', 'Y', 'M'])
    expect(b[`back.${name}`]![1] - a[`back.${name}`]![1]).toBeCloseTo(12, 6)
  for (const name of ['D', 'E', 'U', 'S', 'T']) expect(b[`back.${name}`]).toEqual(a[`back.${name}`])
})

test('a wedge is told as folded out on the paper, each correction on the paper of the one before', () => {
  const wedge = (id: string, width: number): Correction => ({
    v: 1,
    id,
    kind: 'close-wedge',
    piece: 'front',
    edge: 'sleeveEdge',
    along: 0.5,
    width: mm(width),
    because: { ...because, complaint: 'B8' },
  })
  const work = onPaper(base([turn('c1', 'lengthAdded', 12), wedge('c2', 6), wedge('c3', 3)]), CM)
  expect(work.map(({ correction }) => correction)).toEqual(['c1', 'c2', 'c3'])
  expect(work[1]!.lines).toHaveLength(1)
  expect(work[1]!.lines[0]).toContain('Fold the wedge shut')
  // 6 mm is marked half on either side, and so is 3 mm.
  expect(work[1]!.lines[0]).toContain('Mark 0.3 cm either side of P')
  expect(work[2]!.lines[0]).toContain('Mark 0.2 cm either side of P')
})

test('a deeper neck says which strip is cut anew', () => {
  const lines = onPaper(base([turn('c1', 'frontNeckDrop', 40)]), CM)[0]!.lines.join(' ')
  expect(lines).toMatch(/Cut anew: bias strip of the neck, now \d+\.\d cm long/)
})
