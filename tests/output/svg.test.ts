import { expect, test } from 'vitest'
import { draft } from '../../src/draft/make.ts'
import { standardChoices } from '../../src/draft/choices.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { record } from '../../src/draft/record.ts'
import { MUSLIN_ALLOWANCES } from '../../src/output/allowance.ts'
import { pieceSvg } from '../../src/output/svg.ts'
import { body, FULL, INVENTED_BODIES, MIDDLE } from '../bodies.ts'
import { curvesOf, lengthOf } from './path-length.ts'

const words = { allowances: MUSLIN_ALLOWANCES, round: 2, standing: 'confirmed' } as const
const drafted = (numbers = MIDDLE) => draft('blouse', body({}, numbers), standardChoices())

function dataOf(svg: string, id: string): string {
  const found = svg.match(new RegExp(`<path id="${id.replace('.', '\\.')}"[^>]* d="([^"]*)"`))?.[1]
  if (found === undefined) throw new Error(`no path ${id}`)
  return found
}

// Golden files: looked at before they were committed; they hold the look, the tests below the size.
test.each([
  ['middle', MIDDLE],
  ['full', FULL],
] as const)('both pieces of the invented %s body are drawn as before', async (name, numbers) => {
  for (const piece of drafted(numbers).pieces)
    await expect(pieceSvg(piece, words)).toMatchFileSnapshot(`../golden/${name}-${piece.id}.svg`)
})

// By hand from the invented numbers and the standard choices: overarm 330 as taped; fold
// 400 + 220 = 620, in front 110 less for the neck; hem 1000/4 + 19 = 269.
test('the lengths in the file are the lengths worked by hand', () => {
  const d = drafted()
  const [back, front] = (['back', 'front'] as const).map((id) => pieceSvg(pieceOf(d, id), words))
  const hand = [
    [back, 'back.overarm', 330],
    [front, 'front.overarm', 330],
    [back, 'back.centre', 620],
    [front, 'front.centre', 510],
    [back, 'back.hem', 269],
  ] as const
  for (const [svg, id, length] of hand)
    expect(Math.abs(lengthOf(dataOf(svg ?? '', id)) - length), id).toBeLessThan(0.01)
})

test.each(INVENTED_BODIES)('every edge of the %s body reads back within 0.01 mm', (_, numbers) => {
  const d = drafted(numbers)
  const { lengths } = record(d)
  for (const piece of d.pieces) {
    const svg = pieceSvg(piece, words)
    for (const { name } of piece.edges) {
      const id = `${piece.id}.${name}`
      // The record is rounded to a hundredth, so half of one is allowed on top.
      expect(Math.abs(lengthOf(dataOf(svg, id)) - (lengths[id] ?? 0)), id).toBeLessThan(0.015)
    }
  }
})

// By hand: U lies 940/4 + 22 = 257 out and 186 + 25 = 211 down.
test('a point is a crossing whose middle is the point', () => {
  const svg = pieceSvg(pieceOf(drafted(), 'back'), words)
  const [across, down] = curvesOf(dataOf(svg, 'back.U'))
  expect(across?.(0.5)).toEqual({ x: 257, y: 211 })
  expect(down?.(0.5)).toEqual({ x: 257, y: 211 })
})

// A compass in K strikes the sleeve edge, so every spot of it is equally far from K's crossing.
test('the sleeve edge is struck from K, on the outer side', () => {
  const svg = pieceSvg(pieceOf(drafted(), 'back'), words)
  const k = curvesOf(dataOf(svg, 'back.K'))[0]?.(0.5)
  const [arc] = curvesOf(dataOf(svg, 'back.sleeveEdge'))
  if (!k || !arc) throw new Error('no compass point or no arc')
  const radius = Math.hypot(arc(0).x - k.x, arc(0).y - k.y)
  for (const t of [0.25, 0.5, 0.75, 1])
    expect(Math.abs(Math.hypot(arc(t).x - k.x, arc(t).y - k.y) - radius)).toBeLessThan(0.001)
})

// SVG 1.1, 7.10: a viewBox of as many units as width and height have mm makes a unit one mm.
test('a unit of the drawing is a millimetre of the paper', () => {
  for (const piece of drafted().pieces) {
    const head = pieceSvg(piece, words).match(
      /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="[-\d.]+ [-\d.]+ ([\d.]+) ([\d.]+)"/,
    )
    expect(head).not.toBeNull()
    expect([head?.[3], head?.[4]]).toEqual([head?.[1], head?.[2]])
  }
})

test('everything named lies inside the picture', () => {
  const svg = pieceSvg(pieceOf(drafted(), 'front'), words)
  const [left = 0, top = 0, width = 0, height = 0] = (svg.match(/viewBox="([^"]*)"/)?.[1] ?? '')
    .split(' ')
    .map(Number)
  for (const data of [...svg.matchAll(/ d="([^"]*)"/g)].map((m) => m[1] ?? ''))
    for (const curve of curvesOf(data))
      for (const { x, y } of [curve(0), curve(0.5), curve(1)]) {
        expect(x > left && x < left + width, data).toBe(true)
        expect(y > top && y < top + height, data).toBe(true)
      }
})

test('a preview says across the piece that no tape confirmed it; a confirmed piece does not', () => {
  const piece = pieceOf(drafted(), 'back')
  const said = (standing: 'confirmed' | 'preview'): number =>
    pieceSvg(piece, { ...words, standing }).split('>not confirmed by tape<').length - 1
  expect(said('preview')).toBeGreaterThanOrEqual(3)
  expect(said('confirmed')).toBe(0)
})

test('without allowances there is a seam line and no cutting line', () => {
  const svg = pieceSvg(pieceOf(drafted(), 'back'), { standing: 'confirmed' })
  expect(svg).toContain('id="back.side"')
  expect(svg).not.toContain('back.cutting')
})

// XML 1.0, 2.4: < and & never stand in text as themselves.
test('her words cannot become marks of the file', () => {
  const svg = pieceSvg(pieceOf(drafted(), 'back'), {
    ...words,
    garmentName: `<b>"Anna's" & co</b>\u0007`,
  })
  expect(svg).toContain('&lt;b&gt;&quot;Anna&#39;s&quot; &amp; co&lt;/b&gt;')
  expect(svg).not.toContain('<b>')
  expect(svg).not.toContain('\u0007')
})

// What a muslin is marked with, so that it can be read on the body: common practice, no source.
test.each(INVENTED_BODIES)('levels run to the cut edge of the %s body', (_, numbers) => {
  for (const piece of drafted(numbers).pieces.filter((p) => p.levels.length > 0)) {
    const svg = pieceSvg(piece, words)
    const cutEdge = curvesOf(dataOf(svg, `${piece.id}.cutting`))
    const chain = cutEdge.flatMap((c) => Array.from({ length: 201 }, (_, i) => c(i / 200)))
    for (const name of ['bustLine', 'waistLine', 'hipLine']) {
      const [level] = curvesOf(dataOf(svg, `${piece.id}.${name}`))
      if (!level) throw new Error(`no ${name}`)
      const [left, right] = [level(0), level(1)]
      expect(left.x).toBeCloseTo(0, 4)
      expect(right.y).toBe(left.y)
      const near = Math.min(...chain.map((p) => Math.hypot(p.x - right.x, p.y - right.y)))
      expect(near, `${piece.id} ${name}`).toBeLessThan(1)
      // Past the seam line by the allowance of the side, 25, or more where the side slants.
      expect(right.x).toBeGreaterThan((piece.points['W']?.x ?? 0) + 20)
    }
  }
})
test('a plumb line hangs through the dart, upright, from cut edge to cut edge', () => {
  const front = pieceOf(drafted(), 'front')
  const [upper, lower] = curvesOf(dataOf(pieceSvg(front, words), 'front.plumbLine'))
  const dart = front.darts[0]
  if (!upper || !lower || !dart) throw new Error('no plumb line')
  for (const end of [upper(0), upper(1), lower(0), lower(1)])
    expect(end.x).toBeCloseTo(dart.upperTip.x, 4)
  expect(upper(1).y).toBeCloseTo(dart.upperTip.y, 4)
  expect(lower(0).y).toBeCloseTo(dart.lowerTip.y, 4)
  // 40 of allowance under the hem.
  expect(lower(1).y).toBeCloseTo((front.points['L']?.y ?? 0) + 40, 4)
})
test('a neck cut on its line has its seam line all the same', () => {
  const svg = pieceSvg(pieceOf(drafted(), 'front'), words)
  expect(lengthOf(dataOf(svg, 'front.neck'))).toBeGreaterThan(100)
  expect(svg).toContain('neck edge, cut on this line')
})
test('the apex is a ringed cross; clips and stay stitches have names', () => {
  const front = pieceOf(drafted(), 'front')
  const svg = pieceSvg(front, words)
  const apex = front.points['apex']
  const [across, , ring] = curvesOf(dataOf(svg, 'front.apex'))
  expect(across?.(0.5)).toEqual({ x: apex?.x, y: apex?.y })
  for (const t of [0, 0.3, 1]) {
    const p = ring?.(t) ?? { x: NaN, y: NaN }
    expect(Math.hypot(p.x - (apex?.x ?? 0), p.y - (apex?.y ?? 0))).toBeCloseTo(4, 3)
  }
  expect(svg).toContain('id="front.sleeveEdge.clip1"')
  expect(svg).toContain('id="front.sleeveEdge.stayStitch1"')
})
