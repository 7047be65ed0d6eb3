/**
 * What must not compile. `npx tsc --noEmit` fails when one of these lines does compile, because
 * the directive above it would then be unused.
 */
import { expect, it } from 'vitest'
import type { MeasurementId } from '../../src/measurements/catalogue.ts'
import { preview, type Body, type Confirmed } from '../../src/measurements/confirmed.ts'
import { mm, type Mm } from '../../src/units/length.ts'
import { body, bookOf, MIDDLE } from '../bodies.ts'

const cut = (made: Confirmed): string => made.standing

it('only the tape makes a body that can be cut from', () => {
  expect(cut(body())).toBe('confirmed')
  const shown = preview(bookOf(MIDDLE))
  // @ts-expect-error a preview is no confirmation
  cut(shown)
  const bust: Mm = mm(940)
  const plain = {
    v: 1 as const,
    standing: 'confirmed' as const,
    values: { bustGirth: bust },
    readings: {},
    on: '2026-11-25',
  }
  // @ts-expect-error a plain object of the same shape is no confirmation
  cut(plain)
  // @ts-expect-error neither is a copy with other numbers
  cut({ ...body(), values: { bustGirth: bust } })
  // @ts-expect-error nor the tape book itself
  cut(bookOf(MIDDLE))
  const either: Body = shown
  // @ts-expect-error a body of either standing has to be looked at first
  cut(either)
  if (either.standing !== 'preview') cut(either)
})

it('lengths and ids carry their kind', () => {
  // @ts-expect-error a bare number has no unit
  const bare: Mm = 940
  // @ts-expect-error not in the catalogue
  const unknown: MeasurementId = 'shoeSize'
  expect([bare, unknown]).toHaveLength(2)
})
