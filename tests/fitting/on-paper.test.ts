/**
 * Work on the paper she has: moving the points by the printed amounts on the old drawing gives the
 * points of the new one. Slash, spread and overlap: common practice, no source.
 */
import { describe, expect, test } from 'vitest'
import { standardChoices, type ChoiceId } from '../../src/draft/choices.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { namedPoint } from '../../src/draft/piece.ts'
import { record } from '../../src/draft/record.ts'
import { correctedDraft } from '../../src/fitting/apply.ts'
import type { Because, Correction } from '../../src/fitting/correction.ts'
import { onPaper } from '../../src/fitting/on-paper.ts'
import { operationsAtCap } from '../../src/fitting/ops/at-cap.ts'
import type { Operation } from '../../src/fitting/ops/operation.ts'
import { distance } from '../../src/geometry/point.ts'
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
  const line = lines.find((l) => l.startsWith(`${half}. Move `)) ?? ''
  const list = /Move (.*)\.$/.exec(line)?.[1] ?? ''
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

test('a side dart that moved is drawn anew, and said; one that stayed is not', () => {
  const block = (choice: ChoiceId, by: number): string =>
    onPaper(
      {
        garment: 'block',
        body: body(),
        choices: standardFor('block'),
        corrections: [turn('c1', choice, by)],
      },
      CM,
    )
      .flatMap((work) => work.lines)
      .filter((l) => l.startsWith('Front. '))
      .join(' ')
  expect(block('frontShort', 6)).toMatch(/Draw anew: .*the side bust dart/)
  expect(block('easeHip', 6)).not.toContain('the side bust dart')
})
test('a deeper neck says which strip is cut anew', () => {
  const lines = onPaper(base([turn('c1', 'frontNeckDrop', 40)]), CM)[0]!.lines.join(' ')
  expect(lines).toMatch(/Cut anew: bias strip of the neck, now \d+\.\d cm long/)
})

describe('every operation as work on the paper she has', () => {
  const standing = (garment: 'block' | 'blouse') =>
    ({ garment, body: body(), choices: standardFor(garment), corrections: [] }) as const
  const linesOf = (garment: 'block' | 'blouse', operation: Operation): string | undefined => {
    const made = standing(garment)
    const list = [{ v: 1, id: 'c1', kind: 'operate', operation, because } as const]
    const { refused } = correctedDraft(garment, made.body, made.choices, list)
    if (refused.length > 0) return undefined
    return onPaper({ ...made, corrections: list }, CM)[0]!.lines.join(' ')
  }
  // "cut from … to …, overlap 12 mm, tape, redraw": an amount, and a place measured on the paper.
  test.each(['block', 'blouse'] as const)('%s: an amount and a measured place', (garment) => {
    for (const { name, operation } of operationsAtCap(garment)) {
      const text = linesOf(garment, operation)
      if (text === undefined) continue
      expect((text.match(/\d+\.\d cm/g) ?? []).length, `${name}: ${text}`).toBeGreaterThan(1)
      expect(text, name).toMatch(/[Mm]ark|[Cc]ut/)
    }
  })
  // The points of paper that was cut and taped have gone along; moving them once more would double it.
  test('a place is measured over instead of cutting, never after it', () => {
    const text = linesOf('block', {
      op: 'ROT',
      piece: 'front',
      edge: 'neck',
      along: 0.6,
      width: mm(6),
      into: 'waistDart',
    })
    expect(text).toMatch(
      /Fold out 0\.\d cm there.* loses 0\.6 cm of its length.* Front\. To check it, or instead of cutting/,
    )
    expect(text).not.toMatch(/Front\. Move/)
  })
  // A dart moved as it is: its tip goes as far as it is told, and it is drawn anew.
  test('a side dart that moves is named, with its tip', () => {
    const text = linesOf('block', {
      op: 'GROUP',
      piece: 'front',
      dart: 'bustDart',
      out: mm(0),
      down: mm(12),
    })
    expect(text).toContain('the tip of the side bust dart 1.2 cm down')
    expect(text).toMatch(/Draw anew: [^.]*the side bust dart/)
  })
  test('a shoulder tip is found from the side neck, an armhole from its level across', () => {
    const front = pieceOf(correctedDraft('block', body(), standardFor('block'), []).draft, 'front')
    const cm = (x: number) => `${(Math.round(x) / 10).toFixed(1)} cm`
    const [s, p, z] = ['S', 'P', 'Z'].map((name) => namedPoint(front, name))
    const tip = linesOf('block', {
      op: 'MOVE',
      piece: 'both',
      point: 'shoulderTip',
      out: mm(-9),
      down: mm(0),
    })
    expect(tip).toContain(
      `Front: from the shoulder tip, ${cm(distance(s!, p!))} from the side neck, mark 0.9 cm in along the shoulder seam`,
    )
    const strip = linesOf('block', { op: 'STRIP', piece: 'front', by: mm(-7) })
    expect(strip).toContain(`Rule a level ${cm(z!.y - p!.y)} below the shoulder tip`)
    expect(strip).toContain('Mark 0.7 cm inside it')
  })
})
