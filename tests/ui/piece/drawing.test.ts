import { describe, expect, test } from 'vitest'
import { standardChoices, type Choices } from '../../../src/draft/choices.ts'
import { draft } from '../../../src/draft/make.ts'
import { pieceOf, type Draft } from '../../../src/draft/draft.ts'
import { outline } from '../../../src/draft/piece.ts'
import { contains } from '../../../src/geometry/contains.ts'
import { pathLength } from '../../../src/geometry/length.ts'
import { flatten, pathEnd } from '../../../src/geometry/path.ts'
import { arc, line } from '../../../src/geometry/segment.ts'
import { distance, point, type Point } from '../../../src/geometry/point.ts'
import { constructionLines } from '../../../src/ui/parts/piece/construction.ts'
import {
  centreWords,
  dartMiddle,
  innerOver,
  innerWords,
  teeth,
} from '../../../src/ui/parts/piece/inner-lines.ts'
import { drawnLines, sampled } from '../../../src/ui/parts/piece/drawn-lines.ts'
import { levelWords } from '../../../src/ui/parts/piece/level-words.ts'
import { carriedLetters, centreWordsAt, placeLetters } from '../../../src/ui/parts/piece/letters.ts'
import { lineLengths, litLength, wordsOver } from '../../../src/ui/parts/piece/line-lengths.ts'
import { namePlace } from '../../../src/ui/parts/piece/name-place.ts'
import { arrowData, pathData } from '../../../src/ui/parts/piece/path-data.ts'
import { mm } from '../../../src/units/length.ts'
import { body, LARGE, MIDDLE, type InventedNumbers } from '../../bodies.ts'

const blouse = draft('blouse', body(), standardChoices())
const back = pieceOf(blouse, 'back')
const words = { gap: 10, room: 60 }

describe('path data', () => {
  // SVG 2, 9.3.8: A rx ry rotation large-arc sweep x y; sweep 1 grows clockwise with y down.
  test('an arc stays one true arc with its radius', () => {
    const quarter = [arc(point(0, 0), 180, 0, Math.PI / 2)]
    expect(pathData(quarter)).toBe('M180 0 A180 180 0 0 1 0 180')
  })
  test('an arrow head has its tip at the end and its feet behind it', () => {
    expect(arrowData(point(0, 0), point(100, 0), 10)).toBe('M90 5L100 0L90 -5')
  })
})

describe('lengths along the lines', () => {
  const lengths = lineLengths(back, blouse.steps, words)
  const of = (id: string) => lengths.find((l) => l.id === id)?.length

  // The body's own tape: side neck to sleeve edge 330 mm is the overarm (tests/bodies.ts).
  test('the overarm says what was taped', () => {
    expect(of('edge overarm')).toBeCloseTo(330, 6)
  })
  // A quarter of the bust and its ease: 940 / 4 + 22 = 257; nape to waist 400.
  test('measured lines say the number that was measured', () => {
    const all = lengths.map((l) => Math.round(l.length))
    expect(all).toContain(257)
    expect(all).toContain(400)
  })
  test('a line lying on a longer one is left out until its step is walked', () => {
    const step = blouse.steps.find((s) => s.verb === 'measure' && s.to === 'D')
    expect(lengths.some((l) => Math.round(l.length) === 165)).toBe(false)
    expect(litLength(step?.lights ?? [], lengths, 10)?.length).toBeCloseTo(165, 9)
  })
  // House drawing: a line within 17.5° of upright is read upwards, so words may lean by that much.
  test('no words stand upside down', () => {
    for (const { angle } of lengths) {
      expect(Math.cos(angle)).toBeGreaterThanOrEqual(-0.3)
      if (Math.cos(angle) < 0) expect(Math.sin(angle)).toBeLessThan(0)
    }
  })
})

describe('letters', () => {
  test('every point has one, and no two lie on each other', () => {
    const size = 12
    const letters = placeLetters(back.points, [], [], size)
    expect(letters.map((l) => l.name).sort()).toEqual(Object.keys(back.points).sort())
    for (const [i, a] of letters.entries())
      for (const b of letters.slice(i + 1))
        expect(distance(a.at, b.at), `${a.name} and ${b.name}`).toBeGreaterThan(size * 0.6)
  })
  test('a letter keeps away from a line where another side is free', () => {
    const along = [line(point(0, 0), point(100, 0))]
    const [letter] = placeLetters({ B: point(50, 0) }, [along], [], 12)
    expect(Math.abs(letter!.at.y)).toBeGreaterThan(6)
  })
  // By hand: with points at 100 and 400 on a fold of 0 to 620 the longest stretch is 100 to 400.
  test('the words of the centre stand in its longest free stretch', () => {
    const fold = {
      ...back,
      edges: back.edges.map((e) =>
        e.name === 'centre' ? { ...e, path: [line(point(0, 620), point(0, 0))] } : e,
      ),
      points: { A: point(0, 0), P: point(0, 100), Q: point(0, 400), U: point(250, 200) },
    }
    expect(centreWordsAt(fold)).toEqual({ x: 0, y: 250 })
  })
})

// House drawing: a ruled line runs 9 mm past both ends, so it is 18 mm longer.
test('construction lines overshoot by 9 mm at each end', () => {
  const step = blouse.steps.find((s) => s.verb === 'measure' && s.to === 'U')
  const [path] = constructionLines(step ? [step] : [])
  const [ruled] = path ?? []
  if (ruled?.kind !== 'line') throw new Error('U is squared out along one line')
  expect(distance(ruled.from, ruled.to)).toBeCloseTo(257 + 18, 6)
})

// Invented bodies: waist 640 under a bust of 940 wants two darts; LARGE has a bust dart of 20 mm.
describe('what a half piece may hold', () => {
  const made = (choices: Partial<Choices>, numbers: InventedNumbers) =>
    draft('blouse', body({}, numbers), { ...standardChoices(), ...choices })
  const narrow = { ...MIDDLE, waistGirth: 640 }
  const front = (d: Draft) => pieceOf(d, 'front')

  test('two darts and a bust dart each have their width, under names of their own', () => {
    const [two, bust] = [made({}, narrow), made({}, LARGE)]
    const of = (d: Draft) => lineLengths(front(d), d.steps, words)
    for (const lengths of [of(two), of(bust)])
      expect(new Set(lengths.map((l) => l.id)).size).toBe(lengths.length)
    expect(
      of(two)
        .filter((l) => l.id.startsWith('dart'))
        .map((l) => l.id),
    ).toEqual(['dart waistDart', 'dart waistDart2'])
    // 486 − 446 = 40 of balance less the raise of 20.
    expect(of(bust).find((l) => l.id === 'dart bustDart')?.length).toBeCloseTo(20, 6)
  })

  test('the middle of a dart that runs out open ends at the hem', () => {
    const short = front(made({ lengthBelowWaist: mm(50) }, narrow))
    const hem = short.points['L']?.y
    for (const d of short.darts) {
      expect(d.open).toBeDefined()
      expect(pathEnd(dartMiddle(d)).y).toBeCloseTo(hem ?? 0, 6)
    }
  })

  test('teeth of a zip and the words of an opening lie inside the piece', () => {
    for (const opening of ['sideZip', 'backZip'] as const) {
      const piece = pieceOf(made({ opening }, MIDDLE), 'back')
      const zip = piece.inner.find((i) => i.name === 'zip')
      if (!zip) throw new Error(`${opening} draws a zip`)
      const inside = (p: Point) => contains(flatten(outline(piece), 0.1), p)
      const marks = teeth(zip, 1)
      expect(marks.length).toBeGreaterThan(10)
      // The first and last tooth stand on the ends of the line.
      for (const tooth of marks.slice(1, -1)) expect(inside(pathEnd(tooth))).toBe(true)
      expect(inside(innerWords(zip, [], 15, 1).at)).toBe(true)
    }
  })

  test('a line shorter than its words has them beside its foot', () => {
    const slit = back.inner.find((i) => i.name === 'slit')
    if (!slit) throw new Error('the usual neck is slit for the head')
    const said = innerWords(slit, [], 15, 1)
    expect([said.angle, said.anchor]).toEqual([0, 'start'])
  })

  test('what the centre is called: the fold, a seam, or nothing where it is faced', () => {
    expect(centreWords(back)).toBe('on the fold')
    expect(centreWords(pieceOf(made({ opening: 'backZip' }, MIDDLE), 'back'))).toBe(
      'centre-back seam',
    )
    expect(centreWords(front(made({ opening: 'buttonedFront' }, MIDDLE)))).toBeUndefined()
  })

  test('letters of a crowded front do not lie on each other', () => {
    const size = 20
    const piece = front(made({}, LARGE))
    const letters = placeLetters(
      piece.points,
      piece.edges.map((e) => e.path),
      [],
      size,
    )
    for (const [i, a] of letters.entries())
      for (const b of letters.slice(i + 1))
        expect(distance(a.at, b.at), `${a.name} and ${b.name}`).toBeGreaterThan(size * 0.6)
  })

  test('a measured line gives way to the name of the piece', () => {
    const lengths = lineLengths(back, blouse.steps, words)
    const line = lengths.find((l) => Math.round(l.length) === 257)
    if (!line) throw new Error('the underarm line has its length')
    const without = lineLengths(back, blouse.steps, { ...words, taken: [line.at] })
    expect(without.some((l) => l.id === line.id && l.length === line.length)).toBe(false)
  })

  test('the name of a level goes under its line where a length stands over it', () => {
    const level = { name: 'bustLine' as const, from: point(0, 100), to: point(300, 100) }
    const over = { id: 'dart', length: mm(20), path: [], at: point(280, 92), angle: 0 }
    expect(levelWords([level], [], [], 1)[0]?.at.y).toBeLessThan(100)
    expect(levelWords([level], [over], [], 1)[0]?.at.y).toBeGreaterThan(100)
    const near = { name: 'waistLine' as const, from: point(0, 112), to: point(300, 112) }
    const [upper, lower] = levelWords([level, near], [], [], 1)
    expect((lower?.at.y ?? 0) - (upper?.at.y ?? 0)).toBeGreaterThan(16)
  })
})

// House drawing: what is turned moves, its words keep their side. The tape says the lengths: 330 mm
// from side neck to sleeve edge whatever the ease; 2 mm less of quarter-bust ease is 2 mm of width.
describe('while a choice is in hand', () => {
  const stood = lineLengths(back, blouse.steps, words)
  const closer = draft('blouse', body(), { ...standardChoices(), easeBust: mm(20) })
  const narrower = pieceOf(closer, 'back')
  const now = lineLengths(narrower, closer.steps, { ...words, stood })
  const of = (lengths: typeof now, id: string) => lengths.find((l) => l.id === id)

  test('the same lengths stand where they stood along their lines', () => {
    expect(now.map((l) => l.id).sort()).toEqual(stood.map((l) => l.id).sort())
    for (const l of now) expect(l.share, l.id).toBe(of(stood, l.id)?.share)
  })
  test('each says what its line measures now', () => {
    for (const l of now.filter(({ id }) => !id.startsWith('dart')))
      expect(l.length, l.id).toBeCloseTo(pathLength(l.path), 9)
    expect(of(now, 'edge overarm')?.length).toBeCloseTo(330, 6)
    const underarm = stood.find((l) => Math.round(l.length) === 257)
    expect(of(now, underarm?.id ?? '')?.length).toBeCloseTo(257 - 2, 6)
  })
  test('letters go with their points on the side where they stood', () => {
    const letters = placeLetters(back.points, [], [], 20)
    for (const { name, point: to, at } of carriedLetters(narrower.points, letters) ?? []) {
      const was = letters.find((l) => l.name === name)
      expect(to).toEqual(narrower.points[name])
      expect(at.x - to.x, name).toBeCloseTo((was?.at.x ?? 0) - (was?.point.x ?? 0), 9)
      expect(at.y - to.y, name).toBeCloseTo((was?.at.y ?? 0) - (was?.point.y ?? 0), 9)
    }
    expect(carriedLetters(narrower.points, letters)).toHaveLength(letters.length)
    expect(carriedLetters({ ...narrower.points, Z9: point(0, 0) }, letters)).toBeUndefined()
  })
  test('the name of a level keeps its side of the line', () => {
    const level = { name: 'bustLine' as const, from: point(0, 100), to: point(300, 100) }
    const over = { id: 'dart', length: mm(20), path: [], at: point(280, 92), angle: 0 }
    const under = levelWords([level], [over], [], 1)
    expect(levelWords([level], [], [], 1, under)[0]?.at.y).toBeGreaterThan(100)
  })
  test('words inside the outline keep their place along the line', () => {
    const path = [line(point(0, 0), point(200, 0))]
    const zip = { name: 'zip' as const, words: 'zip', path }
    const first = innerWords(zip, [point(100, 15)], 15, 1)
    expect(first.at.x).not.toBeCloseTo(100, 6)
    const moved = { ...zip, path: [line(point(0, 50), point(200, 50))] }
    expect(innerWords(moved, [], 15, 1, first).at).toEqual(point(first.at.x, first.at.y + 50))
  })
})

// House drawing: words lie on no other words, the name of a half on none of its lines. 1.4 mm of the
// paper under a pixel is a whole half on a laptop; letters are counted as the drawing counts them.
describe('words on a half as it stands on a laptop', () => {
  const px = 1.4
  const block = draft('block', body(), standardChoices())
  const sleeveless = draft('sleeveless', body(), { ...standardChoices(), opening: 'sideZip' })
  const halves = [block, sleeveless].flatMap((d) =>
    (['back', 'front'] as const).map((id) => ({ steps: d.steps, piece: pieceOf(d, id) })),
  )
  const wordsOf = ({ piece, steps }: (typeof halves)[number]) => {
    const lengths = lineLengths(piece, steps, { gap: 13 * px, room: 74 * px })
    return { lengths, levels: levelWords(piece.levels, lengths, drawnLines(piece), px) }
  }

  test('the name lies in the cloth and over no line', () => {
    for (const { piece } of halves) {
      const [wide, high] = [100 * px, 26 * px]
      const at = namePlace(piece, wide, high)
      if (!at) throw new Error(`${piece.words}: no room for its name`)
      const { x, y } = at
      const cloth = flatten(outline(piece), 0.1)
      for (const side of [-1, 1])
        expect(contains(cloth, point(x + (side * wide) / 2, y)), piece.words).toBe(true)
      const under = drawnLines(piece)
        .flatMap((path) => sampled(path, 1))
        .filter((p) => Math.abs(p.x - x) < wide / 2 && Math.abs(p.y - y) < high / 2)
      expect(under, piece.words).toEqual([])
      expect(namePlace(piece, 400 * px, high), 'wider than the cloth').toBeUndefined()
    }
  })
  test('the width of a shoulder dart stands over its mouth, clear of the length of the shoulder', () => {
    const { lengths } = wordsOf({ steps: block.steps, piece: pieceOf(block, 'back') })
    const [dart, shoulder] = ['dart shoulderDart', 'edge shoulder'].map((id) =>
      lengths.find((l) => l.id === id),
    )
    if (!dart || !shoulder) throw new Error('the back of the block has a shoulder dart')
    expect(distance(dart.at, shoulder.at)).toBeGreaterThan(44 * px)
  })
  test('the name of a level lies on no length and on no name of another', () => {
    for (const half of halves) {
      const { lengths, levels } = wordsOf(half)
      const apart = levels.flatMap((level) =>
        [
          ...lengths.flatMap((l) => wordsOver(l, 66 * px)),
          ...levels.filter((l) => l !== level).flatMap((l) => l.over),
        ].map((p) => Math.min(...level.over.map((q) => distance(p, q)))),
      )
      expect(Math.min(...apart), half.piece.words).toBeGreaterThan(12 * px)
    }
  })
  test('a level whose end the outline crosses has its name inside it', () => {
    const level = { name: 'hipLine' as const, from: point(0, 100), to: point(300, 100) }
    const seam = [line(point(280, 0), point(280, 200))]
    const [said] = levelWords([level], [], [seam], 1)
    expect(said?.at.x).toBeLessThan(280)
    expect(said?.at.x).toBeGreaterThan(260)
  })
  test('letters keep clear of the words of an opening', () => {
    const slit = { name: 'slit' as const, words: 'slit', path: [line(point(0, 0), point(0, 20))] }
    const said = innerWords(slit, [], 15, 1)
    const over = innerOver(said, 1)
    const [letter] = placeLetters({ V: point(said.at.x + 12, said.at.y) }, [], over, 12)
    for (const p of over) expect(distance(letter!.at, p)).toBeGreaterThan(6)
  })
})
