/** How the planted bench tells a muslin: scatter, misleading sights, sights without a fault. */
import { describe, expect, test } from 'vitest'
import { normal } from '../../../scripts/bench/bodies/chance.ts'
import { misleading, NOTHINGS } from '../../../scripts/bench/planted/beside.ts'
import { intentOf, KINDS } from '../../../scripts/bench/planted/kinds.ts'
import { draftOf, halvesOf, wearer, worn } from '../../../scripts/bench/planted/muslin.ts'
import type { Sign } from '../../../scripts/bench/planted/sign.ts'
import { signs } from '../../../scripts/bench/planted/signs.ts'
import { pick, read, SCATTER, tell } from '../../../scripts/bench/planted/telling.ts'
import { MIDDLE } from '../../bodies.ts'

const slit: Sign = {
  id: 'B1',
  pin: { where: 'side', side: 'both', how: 'slit', value: 40 },
  causes: [2],
  weight: 1,
}

describe('a reading', () => {
  test('lies within 3 mm of a pin and 5 of a level line nine times in ten', () => {
    // ± holds nine in ten; four standard errors of a share of 10,000 are 0.012.
    const chance = normal(5)
    const within = (sign: Sign, bound: number): number => {
      const near = Array.from({ length: 10_000 }, () => read(sign, SCATTER, chance)).filter(
        (s) => Math.abs(s.pin.value - 40) <= bound,
      )
      return near.length / 10_000
    }
    expect(Math.abs(within(slit, 3) - 0.9)).toBeLessThan(0.012)
    const level: Sign = { ...slit, pin: { ...slit.pin, how: 'level' } }
    expect(Math.abs(within(level, 5) - 0.9)).toBeLessThan(0.012)
  })

  test('of a gap that is shut is never under nought', () => {
    const chance = normal(9)
    const shut: Sign = { ...slit, pin: { ...slit.pin, value: 0 } }
    for (let i = 0; i < 200; i++)
      expect(read(shut, SCATTER, chance).pin.value).toBeGreaterThanOrEqual(0)
  })
})

test('places of a list are met about evenly', () => {
  // 40,000 draws into five places: 8,000 each, four standard errors are 320.
  const chance = normal(17)
  const met = [0, 0, 0, 0, 0]
  for (let i = 0; i < 40_000; i++) {
    const at = pick(5, chance)
    met[at] = (met[at] ?? 0) + 1
  }
  for (const n of met) expect(Math.abs(n - 8000)).toBeLessThan(320)
})

test('every planted error has a misleading sight beside it, with another id', () => {
  for (const kind of KINDS)
    for (const garment of kind.garments) {
      const intent = intentOf(garment, kind)
      const d = draftOf(kind.plant(MIDDLE), garment, kind.plantChoice?.(intent) ?? intent)
      const { misfit, ...rest } = worn(halvesOf(d), wearer(MIDDLE, garment, intent))
      const [fault] = signs({ misfit, ...rest })
      expect(fault, kind.id).toBeDefined()
      if (!fault) continue
      const beside = misleading(fault)
      expect(beside.length, kind.id).toBeGreaterThan(0)
      expect(beside.map((s) => s.id)).not.toContain(fault.id)
      const told = tell(signs({ misfit, ...rest }), misfit, 'misled', SCATTER, normal(3))
      expect(told.signs.map((s) => s.id)[0]).toBe(fault.id)
      expect(told.signs).toHaveLength(2)
    }
})

test('the same seed tells the same', () => {
  const once = (): unknown => tell([slit], {}, 'misled', SCATTER, normal(21))
  expect(once()).toEqual(once())
})

test('a sight without a fault never names a cause that changes the draft of a good muslin', () => {
  // Causes of the trade list that are sewing, cloth, style or the day.
  const harmless = ['N1.4', 'B8.5', 'X1.1', 'W11.3', 'B7.2', 'D4.1', 'B1.', 'W1.', 'A4.']
  for (const sights of Object.values(NOTHINGS))
    for (const s of sights) expect(harmless).toContain(`${s.id}.${s.causes.join()}`)
})
