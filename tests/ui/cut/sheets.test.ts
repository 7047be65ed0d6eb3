import { describe, expect, test } from 'vitest'
import { standardChoices } from '../../../src/draft/choices.ts'
import { draft } from '../../../src/draft/make.ts'
import { parseConfirmed, preview } from '../../../src/measurements/confirmed.ts'
import { MUSLIN_ALLOWANCES } from '../../../src/output/allowance.ts'
import type { TilePlan } from '../../../src/output/tiles.ts'
import { firstRound } from '../../../src/rounds/round.ts'
import { fileName } from '../../../src/ui/cut/file-name.ts'
import { Making } from '../../../src/ui/cut/making.svelte.ts'
import { offerOf } from '../../../src/ui/cut/offer.ts'
import { orderFor, type SheetsAnswer, type SheetsOrder } from '../../../src/ui/cut/sheets.ts'
import { body, bookOf, INVENTED_ON, MIDDLE } from '../../bodies.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const round = firstRound({ id: 'r1', garmentId: 'g1' }, 'blouse', body(), INVENTED_ON)
const order = orderFor(round, {
  paper: 'a4',
  allowances: MUSLIN_ALLOWANCES,
  units: CM,
  garmentName: 'Linen blouse',
  date: INVENTED_ON,
})

describe('an order', () => {
  // What postMessage does to it: HTML, 2.7 structured cloning.
  test('survives being sent, and gives the same confirmed numbers back', () => {
    const sent = structuredClone(order)
    const parsed = parseConfirmed(sent.body)
    if (!parsed.ok) throw new Error(parsed.reason)
    expect(parsed.body.values).toEqual(round.body.values)
  })
  test('of a preview is refused on the other side', () => {
    expect(parseConfirmed({ ...preview(bookOf(MIDDLE)) }).ok).toBe(false)
  })
})

describe('what may be cut', () => {
  // Without an opening, which is otherwise added.
  const blouse = draft('blouse', body(), { ...standardChoices(), opening: 'none' })
  // Invented: sewn waist 83.6 cm, slip-through girth 101.0 cm (tests/bodies.ts).
  test('a finding that stops cutting is said, and cloth is not offered', () => {
    const offer = offerOf(blouse, CM)
    expect(offer.cloth).toBe(false)
    expect(offer.stops.join(' ')).toContain('101.0 cm must pass through')
  })
  test('nothing found: cloth as well', () => {
    expect(offerOf({ ...blouse, findings: [] }, CM)).toEqual({ cloth: true, stops: [], asks: [] })
  })
})

describe('a file name', () => {
  test('holds letters, figures and hyphens only, in any script', () => {
    expect(fileName('Linen blouse', 2, 'steps.txt')).toBe('linen-blouse-round-2-steps.txt')
    expect(fileName('  Blúza / zelená: ', 1, 'back.svg')).toBe('blúza-zelená-round-1-back.svg')
    expect(fileName('../..', undefined, 'back.svg')).toBe('garment-back.svg')
  })
})

describe('making sheets', () => {
  const plan = (count: number) => ({ tiles: Array.from({ length: count }) }) as unknown as TilePlan
  /** A maker whose answers the test gives, in any order. */
  function maker() {
    const asked: { order: SheetsOrder; settle: (a: SheetsAnswer) => void }[] = []
    const making = new Making(() => ({
      make: (o) => new Promise((settle) => asked.push({ order: o, settle })),
      close: () => asked.forEach(({ settle }) => settle({ ok: false, reason: 'stopped' })),
    }))
    return { making, asked }
  }
  const settled = () => new Promise((done) => setTimeout(done, 0))

  test('an older plan that comes late does not replace the newer one', async () => {
    const { making, asked } = maker()
    making.plan(order)
    making.plan({ ...order, paper: 'letter' })
    asked[1]?.settle({ ok: true, plan: plan(15) })
    asked[0]?.settle({ ok: true, plan: plan(13) })
    await settled()
    expect(making.planned?.tiles).toHaveLength(15)
  })
  test('a refusal keeps its reason beside the key', async () => {
    const { making, asked } = maker()
    making.plan(order)
    expect(making.why).toBeUndefined()
    asked[0]?.settle({ ok: false, reason: 'Give less there.' })
    await settled()
    expect(making.why).toBe('Give less there.')
  })
  test('while a PDF is made the key waits; stopped, it gives nothing', async () => {
    const { making } = maker()
    const made = making.pdf(order)
    expect(making.why).toBe('The sheets are being drawn.')
    making.stop()
    expect(await made).toBeUndefined()
    expect(making.saving).toBe(false)
  })
})
