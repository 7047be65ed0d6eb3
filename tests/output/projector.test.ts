import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { standardChoices } from '../../src/draft/choices.ts'
import { draft } from '../../src/draft/make.ts'
import { MUSLIN_ALLOWANCES } from '../../src/output/allowance.ts'
import { pieceDrawing } from '../../src/output/piece-drawing.ts'
import { fieldCrosses, fieldWords, neighbour } from '../../src/output/projector-words.ts'
import {
  fieldRefusal,
  misread,
  readThrow,
  throwPlan,
  thrownWidth,
} from '../../src/output/projector.ts'
import { mm } from '../../src/units/length.ts'
import { body, INVENTED_BODIES } from '../bodies.ts'
import { curvesOf } from './path-length.ts'
import { pathData } from '../../src/output/svg.ts'

const CM = { unit: 'cm', inchStep: 8 } as const

describe('the scale of the light', () => {
  // By hand: 1,600 pixels that fall 800 mm apart are two pixels a millimetre.
  test('is pixels over millimetres, each way by itself', () => {
    const one = readThrow({ pixels: 1600, measured: mm(800) }, undefined, CM)
    expect(one).toMatchObject({ ok: true, pixelsPerMm: { x: 2, y: 2 } })
    const two = readThrow(
      { pixels: 1600, measured: mm(800) },
      { pixels: 900, measured: mm(440) },
      CM,
    )
    if (!two.ok) throw new Error(two.reason)
    expect(two.pixelsPerMm.y).toBeCloseTo(900 / 440, 12)
  })
  // By hand: a millimetre on 800 is 0.625 on 500.
  test('says what a misread millimetre does', () => {
    const read = readThrow({ pixels: 1600, measured: mm(800) }, undefined, CM)
    expect(read).toMatchObject({ off500: 0.625 })
  })
  test.each([
    [mm(40), undefined, 'between 10.0 cm and 300.0 cm'],
    [mm(4000), undefined, 'between 10.0 cm and 300.0 cm'],
    [mm(NaN), undefined, 'no number'],
    [mm(800), mm(500), 'drawn out'],
  ])('%d and %s are refused with what to do', (across, down, words) => {
    const read = readThrow(
      { pixels: 1600, measured: across },
      down === undefined ? undefined : { pixels: 900, measured: down },
      CM,
    )
    expect(read.ok).toBe(false)
    if (!read.ok) expect(read.reason).toContain(words)
  })
  // By hand: on crosses 800 mm apart 1 mm is 500/800 of one on 500 mm; 1/8 in on 31.5 in is 0.079 in on 20 in.
  test('what is misread is told in the unit of the tape', () => {
    expect(misread(mm(0.625), CM)).toEqual({ by: '1.0 mm', off: '0.6 mm', line: '50.0 cm' })
    expect(misread(mm(0.625), { unit: 'inch', inchStep: 8 })).toEqual({
      by: '1/8 in',
      off: '1/16 in',
      line: '20 in',
    })
  })
})

const drawings = INVENTED_BODIES.flatMap(([name, numbers]) =>
  draft('blouse', body({}, numbers), standardChoices())
    .pieces.filter((p) => p.id === 'back' || p.id === 'front')
    .map((piece) => ({
      name: `${name} ${piece.id}`,
      drawing: pieceDrawing(piece, { allowances: MUSLIN_ALLOWANCES }),
    })),
)

describe('fields', () => {
  const screen = { width: 1920, height: 1080 }
  test('one, in the middle of the light, where it reaches round the piece', () => {
    const drawing = drawings[0]?.drawing
    if (!drawing) throw new Error('no drawing')
    const plan = throwPlan(drawing, screen, { x: 1.2, y: 1.2 })
    expect(plan.fields.map((f) => f.name)).toEqual(['A1'])
    expect(plan.joints).toEqual([])
  })
  test.each(drawings)(
    '$name: every line is thrown, whole, in fields as large as the light',
    ({ drawing }) => {
      const ppm = { x: 3.1, y: 3.05 }
      const { fields, marks } = throwPlan(drawing, screen, ppm)
      for (const { box } of fields) {
        expect((box.right - box.left) * ppm.x).toBeCloseTo(screen.width, 6)
        expect((box.bottom - box.top) * ppm.y).toBeCloseTo(screen.height, 6)
      }
      // Spots by the tests' own reader of path data, against the fields.
      for (const mark of marks) {
        if (mark.kind !== 'path') continue
        for (const curve of curvesOf(pathData(mark.path)))
          for (let t = 0; t <= 1; t += 1 / 16) {
            const { x, y } = curve(t)
            expect(
              fields.some(
                ({ box }) => x >= box.left && x <= box.right && y >= box.top && y <= box.bottom,
              ),
            ).toBe(true)
          }
      }
    },
  )
  test.each(drawings)(
    '$name: crosses lie in both fields, far apart, and outside where they say so',
    ({ drawing }) => {
      const { fields, joints, turn } = throwPlan(drawing, screen, { x: 3.1, y: 3.1 })
      expect(fields.length).toBeGreaterThan(1)
      const by = new Map(fields.map((f) => [f.name, f]))
      // Every field is reached from the first by crosses.
      const reached = new Set([fields[0]?.name])
      for (let i = 0; i < fields.length; i++)
        for (const j of joints)
          if (reached.has(j.first) || reached.has(j.second))
            [j.first, j.second].forEach((n) => reached.add(n))
      expect(reached.size).toBe(fields.length)
      const outline = curvesOf(pathData(drawing.cut)).flatMap((curve) =>
        Array.from({ length: 200 }, (_, i) => {
          const { x, y } = curve(i / 200)
          return turn === 1 ? { x: -y, y: x } : { x, y }
        }),
      )
      for (const { first, second, crosses } of joints) {
        for (const { at } of crosses)
          for (const name of [first, second]) {
            const box = by.get(name)?.box
            if (!box) throw new Error(`no field ${name}`)
            expect(at.x > box.left + 5 && at.x < box.right - 5).toBe(true)
            expect(at.y > box.top + 5 && at.y < box.bottom - 5).toBe(true)
          }
        const [a, b] = crosses
        expect(Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y)).toBeGreaterThan(100)
        for (const { at, onPiece } of crosses) {
          const [inside, near] = seen(at, outline)
          if (!onPiece) expect(inside || near < 5).toBe(false)
          if (inside) expect(onPiece).toBe(true)
        }
      }
    },
  )

  /** Winding by summed angles, a way of its own; and the distance to the nearest spot. */
  function seen(p: { x: number; y: number }, ring: readonly { x: number; y: number }[]) {
    let [turned, near] = [0, Infinity]
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length] ?? a
      const [from, to] = [Math.atan2(a.y - p.y, a.x - p.x), Math.atan2(b.y - p.y, b.x - p.x)]
      turned += ((to - from + 3 * Math.PI) % (2 * Math.PI)) - Math.PI
      near = Math.min(near, Math.hypot(a.x - p.x, a.y - p.y))
    })
    return [Math.abs(turned) > Math.PI, near] as const
  }

  test('a light that is too narrow is refused with its size', () => {
    expect(fieldRefusal({ width: 390, height: 600 }, { x: 3, y: 3 }, CM)).toContain(
      '13.0 cm by 20.0 cm',
    )
    expect(fieldRefusal(screen, { x: 3, y: 3 }, CM)).toBeUndefined()
  })
  test('any light wide enough gives fields that share the room for crosses', () => {
    const side = fc.integer({ min: 170, max: 900 })
    const drawing = drawings[3]?.drawing
    if (!drawing) throw new Error('no drawing')
    fc.assert(
      fc.property(side, side, (width, height) => {
        const { fields, joints } = throwPlan(drawing, { width, height }, { x: 1, y: 1 })
        for (const { first, second } of joints) {
          const [a, b] = [first, second].map((n) => fields.find((f) => f.name === n)?.box)
          if (!a || !b) throw new Error('a joint without its fields')
          const shared = [
            Math.min(a.right, b.right) - Math.max(a.left, b.left),
            Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top),
          ]
          expect(Math.min(...shared)).toBeGreaterThanOrEqual(80 - 1e-6)
        }
      }),
      { numRuns: 12 },
    )
  })
})

test('a heavier weight throws every line wider, the cutting line by the weight itself', () => {
  expect([thrownWidth('cutting', 'fine'), thrownWidth('cutting', 'heavy')]).toEqual([1, 4])
  expect(thrownWidth('seam', 'middle')).toBeGreaterThan(2)
  expect(thrownWidth('trim', 'middle')).toBe(2)
})

describe('what is done at a field', () => {
  const drawing = drawings[2]?.drawing
  if (!drawing) throw new Error('no drawing')
  const plan = throwPlan(drawing, { width: 1920, height: 1080 }, { x: 3.1, y: 3.1 })

  test('crosses are chalked once and laid under once', () => {
    const acts = plan.fields.flatMap((f) => fieldCrosses(plan, f))
    for (const { label } of acts) {
      const same = acts.filter((c) => c.label === label)
      expect(same.map((c) => c.act).sort()).toEqual(['chalk', 'lay'])
      expect(same[0]?.at).toEqual(same[1]?.at)
    }
  })
  test('is said in order: lay under, then chalk', () => {
    const second = plan.fields.find((f) => plan.joints.some((j) => j.second === f.name))
    if (!second) throw new Error('one field only')
    const words = fieldWords(plan, second)
    expect(words[0]).toBe(
      `Field ${second.name}, ${plan.fields.indexOf(second) + 1} of ${plan.fields.length}.`,
    )
    expect(words[1]).toMatch(/^Move the cloth until the chalk of A\d lies under \d+a and \d+b\.$/)
  })
  test('arrows lead to the neighbour and stop at the rim', () => {
    const [first] = plan.fields
    if (!first) throw new Error('no field')
    expect(neighbour(plan, first, 'up')).toBeUndefined()
    for (const way of ['right', 'down'] as const) {
      const next = neighbour(plan, first, way)
      const back = next && neighbour(plan, next, way === 'right' ? 'left' : 'up')
      if (next) expect(back).toBe(first)
    }
  })
})
