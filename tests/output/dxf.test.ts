/**
 * The DXF read back by a reader of another project, every point against the curves of the draft
 * as bezier-js and plain trigonometry draw them.
 */
import DxfParser, { type IDxf, type IEntity } from 'dxf-parser'
import { describe, expect, test } from 'vitest'
import { standardChoices, type Choices } from '../../src/draft/choices.ts'
import { pieceOf } from '../../src/draft/draft.ts'
import { draft } from '../../src/draft/make.ts'
import { namedPoint, type Piece } from '../../src/draft/piece.ts'
import { preview } from '../../src/measurements/confirmed.ts'
import { cuttingLine, MUSLIN_ALLOWANCES } from '../../src/output/allowance.ts'
import { DXF_LAYERS, draftDxf } from '../../src/output/dxf.ts'
import { plain } from '../../src/output/dxf-writer.ts'
import { mm } from '../../src/units/length.ts'
import { body, bookOf, FULL, INVENTED_BODIES, MIDDLE } from '../bodies.ts'
import { chordsOf, nearestOn, type Spot } from './reference-offset.ts'

const words = { allowances: MUSLIN_ALLOWANCES, round: 2, garmentName: 'Draped-sleeve blouse' }
const drafted = (numbers = MIDDLE, more: Partial<Choices> = {}) =>
  draft('blouse', body({}, numbers), { ...standardChoices(), ...more })

function read(text: string): IDxf {
  const parsed = new DxfParser().parseSync(text)
  if (!parsed) throw new Error('the reader gives nothing')
  return parsed
}
function entitiesOf(file: IDxf, piece: string): readonly IEntity[] {
  const block = file.blocks[piece.toUpperCase()]
  if (!block) throw new Error(`no block ${piece}`)
  return block.entities
}
/** Points of lines and polylines on a layer; each entity a list. */
function linesOn(entities: readonly IEntity[], layer: string): Spot[][] {
  return entities
    .filter((e) => e.layer === layer && 'vertices' in e)
    .map((e) => (e as IEntity & { vertices: Spot[] }).vertices.map(({ x, y }) => ({ x, y })))
}
const textsOn = (entities: readonly IEntity[], layer: string): string[] =>
  entities
    .filter((e) => e.layer === layer && e.type === 'TEXT')
    .map((e) => (e as IEntity & { text: string }).text)
/** The drawing has y down, the file y up. */
const down = ({ x, y }: Spot): Spot => ({ x, y: -y })

function cut(piece: Piece) {
  const result = cuttingLine(piece, MUSLIN_ALLOWANCES)
  if (!result.ok) throw new Error(result.reason)
  return result
}

describe('every point', () => {
  test.each(INVENTED_BODIES)('of the %s body is read back to 0.01 mm', (_, numbers) => {
    const d = drafted(numbers)
    const file = read(draftDxf(d, words))
    for (const piece of d.pieces) {
      const entities = entitiesOf(file, piece.id)
      const [boundary] = linesOn(entities, '1')
      const sewn = [...linesOn(entities, '14'), ...linesOn(entities, '6')]
      expect(sewn).toHaveLength(piece.edges.length)
      const wanted = [
        { lines: [boundary ?? []], path: cut(piece).path, closed: true },
        ...piece.edges.map((e) => ({
          lines: sewn.filter((l) => apart(l, chordsOf(e.path, 200)) < 0.02),
          path: e.path,
          closed: false,
        })),
      ]
      for (const { lines, path, closed } of wanted) {
        expect(lines).toHaveLength(1)
        const written = (lines[0] ?? []).map(down)
        const whole = closed ? [...written, written[0] as Spot] : written
        const curve = chordsOf(path, 200)
        // Every point of the file lies on the curve, and the curve nowhere leaves the chords.
        for (const p of written) expect(nearestOn(curve, p).distance).toBeLessThan(0.01)
        for (const p of chordsOf(path, 12)) expect(nearestOn(whole, p).distance).toBeLessThan(0.01)
      }
    }
  })
  const apart = (written: readonly Spot[], curve: readonly Spot[]): number =>
    Math.max(
      ...[0, 0.5, 1].map((share) => {
        const p = written[Math.round(share * (written.length - 1))] as Spot
        return nearestOn(curve, down(p)).distance
      }),
    )

  // By hand: U lies 940/4 + 22 = 257 out and 186 + 25 = 211 down.
  test('lies where it was worked by hand, y up', () => {
    const d = drafted()
    const u = namedPoint(pieceOf(d, 'back'), 'U')
    expect([u.x, u.y]).toEqual([257, 211])
    const sewn = linesOn(entitiesOf(read(draftDxf(d, words)), 'back'), '14').flat()
    expect(sewn.some(({ x, y }) => Math.abs(x - 257) < 1e-4 && Math.abs(y + 211) < 1e-4)).toBe(true)
  })
})

describe('layers', () => {
  // ASTM D6673: 1 boundary, 4 notches, 6 mirror line, 7 grain, 8 internal, 14 sew, 15 annotation.
  test('have the numbers of the standard and stand in the table', () => {
    const names = Object.values(DXF_LAYERS).map((l) => l.name)
    expect(names).toEqual(['1', '4', '6', '7', '8', '14', '15'])
    const { tables } = read(draftDxf(drafted(), words))
    expect(Object.keys(tables.layer.layers)).toEqual(expect.arrayContaining(['0', ...names]))
  })
  test('hold what belongs to them', () => {
    const d = drafted(FULL)
    const file = read(draftDxf(d, words))
    for (const id of ['back', 'front'] as const) {
      const piece = pieceOf(d, id)
      const entities = entitiesOf(file, id)
      const on = (layer: string): IEntity[] => entities.filter((e) => e.layer === layer)
      expect(on('1').map((e) => e.type)).toEqual(['POLYLINE'])
      expect(on('1')[0]).toMatchObject({ shape: true })
      expect(on('4').filter((e) => e.type === 'POINT')).toHaveLength(cut(piece).notches.length)
      expect(linesOn(entities, '6')).toHaveLength(1)
      const [grain, ...more] = linesOn(entities, '7')
      expect(more).toEqual([])
      for (const [i, p] of [piece.grain.from, piece.grain.to].map(down).entries())
        expect(Math.hypot(p.x - (grain?.[i]?.x ?? NaN), p.y - (grain?.[i]?.y ?? NaN))).toBeLessThan(
          1e-3,
        )
      expect(linesOn(entities, '14')).toHaveLength(piece.edges.length - 1)
      expect(textsOn(entities, '15')).toContain(piece.words)
      // Levels run level, and there is one of each name.
      const level = linesOn(entities, '8').filter(
        (l) => l.length === 2 && Math.abs((l[0]?.y ?? 0) - (l[1]?.y ?? 1)) < 1e-9,
      )
      const hem = namedPoint(piece, 'L').y
      for (const y of piece.levels.map((l) => -l.from.y).filter((y) => -y < hem))
        expect(
          level.some((l) => Math.abs((l[0]?.y ?? 0) - y) < 1e-3),
          `level ${y}`,
        ).toBe(true)
    }
    const apex = namedPoint(pieceOf(d, 'front'), 'apex')
    const inside = linesOn(entitiesOf(file, 'front'), '8').flat().map(down)
    const dart = pieceOf(d, 'front').edgeDarts[0]
    for (const p of [dart?.tip, dart?.upper, dart?.lower, { x: apex.x, y: apex.y + 6 }])
      expect(inside.some((q) => Math.hypot(q.x - (p?.x ?? NaN), q.y - (p?.y ?? NaN)) < 1e-3)).toBe(
        true,
      )
  })
  test('notches are points on the cutting line', () => {
    const d = drafted()
    const piece = pieceOf(d, 'back')
    const line = chordsOf(cut(piece).path, 300)
    const spots = entitiesOf(read(draftDxf(d, words)), 'back')
      .filter((e) => e.layer === '4' && e.type === 'POINT')
      .map((e) => down((e as IEntity & { position: Spot }).position))
    expect(spots.length).toBeGreaterThan(2)
    for (const p of spots) expect(nearestOn(line, p).distance).toBeLessThan(0.01)
  })
})

describe('the file', () => {
  test('is of release 12, in millimetres, and says so', () => {
    const text = draftDxf(drafted(), words)
    const file = read(text)
    expect(file.header).toMatchObject({ $ACADVER: 'AC1009', $INSUNITS: 4, $LUNITS: 2 })
    expect(textsOn(file.entities, '1')).toEqual(['UNITS: METRIC'])
    expect(textsOn(file.entities, '15')).toEqual(['Draped-sleeve blouse, round 2, units mm'])
    // Release 12 has no lighter polyline, no handles and no classes.
    expect(text).not.toContain('LWPOLYLINE')
    expect(text.endsWith('0\nEOF\n')).toBe(true)
  })
  test('inserts each piece once, none over another', () => {
    const d = drafted()
    const file = read(draftDxf(d, words))
    const inserts = file.entities.filter((e) => e.type === 'INSERT') as (IEntity & {
      name: string
      position: Spot
    })[]
    expect(inserts.map((i) => i.name)).toEqual(d.pieces.map((p) => p.id.toUpperCase()))
    const spans = inserts.map((i) => {
      const xs = linesOn(entitiesOf(file, i.name), '1')
        .flat()
        .map((p) => p.x + i.position.x)
      return [Math.min(...xs), Math.max(...xs)] as const
    })
    for (const [i, [left]] of spans.entries())
      expect(left).toBeGreaterThan(i === 0 ? -1 : (spans[i - 1]?.[1] ?? 0))
  })
  test('comes out the same every time', () => {
    expect(draftDxf(drafted(), words)).toBe(draftDxf(drafted(), words))
  })
  test('without allowances is bounded by the seam line', () => {
    const d = drafted()
    const [boundary] = linesOn(entitiesOf(read(draftDxf(d, {})), 'back'), '1')
    const seam = chordsOf(
      pieceOf(d, 'back').edges.flatMap((e) => e.path),
      300,
    )
    for (const p of boundary ?? []) expect(nearestOn(seam, down(p)).distance).toBeLessThan(0.01)
  })
  test('of a preview says on every piece that no tape confirmed it', () => {
    const d = draft('blouse', preview(bookOf(MIDDLE)), standardChoices())
    const file = read(draftDxf(d, words))
    for (const { id } of d.pieces)
      expect(textsOn(entitiesOf(file, id), '15').join()).toContain('not confirmed by tape')
    const sure = read(draftDxf(drafted(), words))
    expect(textsOn(entitiesOf(sure, 'back'), '15').join()).not.toContain('not confirmed')
  })
  test('gives no boundary where the cutting line is refused, and says why', () => {
    const d = drafted(MIDDLE, { neckHalfWidth: mm(70) })
    const wide = { ...words, allowances: { ...MUSLIN_ALLOWANCES, neck: mm(100) } }
    const refused = d.pieces.filter((p) => !cuttingLine(p, wide.allowances).ok)
    expect(refused.length).toBeGreaterThan(0)
    const file = read(draftDxf(d, wide))
    for (const { id } of refused) {
      expect(linesOn(entitiesOf(file, id), '1')).toEqual([])
      expect(textsOn(entitiesOf(file, id), '15').join()).toContain('wider than its curve')
    }
  })
  // Release 12 holds printed ASCII only.
  test('writes her words in the characters it has', () => {
    expect(plain('Žofie’s blouse – 45°\n0\nEOF')).toBe("Zofie's blouse - 45%%d0EOF")
    expect(plain('шёлк')).toMatch(/^\?+$/)
    const text = draftDxf(drafted(), { ...words, garmentName: 'Žofie\n0\nEOF\n' })
    expect(read(text).entities.length).toBeGreaterThan(2)
    expect(text.match(/\nEOF\n/g)).toHaveLength(1)
  })
})
