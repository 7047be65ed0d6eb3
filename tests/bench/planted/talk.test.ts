/** The talk of the planted bench: what is asked is answered from what is true, and once. */
import { expect, test } from 'vitest'
import type { Answerer } from '../../../scripts/bench/planted-rounds/engine.ts'
import { talk, type Sewn } from '../../../scripts/bench/planted-rounds/talk.ts'
import { intentOf } from '../../../scripts/bench/planted/kinds.ts'
import type { Sign } from '../../../scripts/bench/planted/sign.ts'
import { halvesOf } from '../../../scripts/bench/planted/muslin.ts'
import { lengthOf } from '../../../scripts/bench/planted/lengths.ts'
import { sewn } from '../../../scripts/bench/planted/sewn.ts'
import { CORRECTING } from '../../../scripts/bench/planted-rounds/correcting.ts'
import { NOTHING_TOLD, type Told } from '../../../scripts/bench/planted/telling.ts'
import { complaintOf } from '../../../src/fitting/complaints/catalogue.ts'
import { COMPLAINT_IDS } from '../../../src/fitting/complaints/complaint.ts'
import { KINDS } from '../../../scripts/bench/planted/kinds.ts'
import { misleading, NOTHINGS } from '../../../scripts/bench/planted/beside.ts'
import { MIDDLE } from '../../bodies.ts'

const close = intentOf('block', { close: true })
const short: Sewn = {
  garment: 'block',
  body: { ...MIDDLE, bustGirth: 900 },
  choices: close,
  corrections: [],
}
const tight: Sign = {
  id: 'B1',
  pin: { where: 'side', side: 'both', how: 'slit', value: 20 },
  causes: [2],
  weight: 3,
}
const told = (...signs: Sign[]): Told => ({ ...NOTHING_TOLD, signs })
const answering = (causes: readonly number[] | undefined, heard: string[] = []): Answerer => ({
  holds: (id, of) => {
    heard.push(`${id} ${of.join()}`)
    return causes?.some((n) => of.includes(n))
  },
  tape: () => 940,
})

test('a bust short all round: 20 mm at each side seam is 10 on each edge', () => {
  // 40 mm round the body over four edges.
  const { fitted, asked } = talk(short, told(tight), 1, answering([2]))
  expect(fitted.decision.causes).toContain('B1.2')
  expect(fitted.decision.edits.map((e) => e.applied)).toEqual([10, 10])
  expect(asked).toBeGreaterThan(0)
})

test('what she cannot tell is not asked again', () => {
  const heard: string[] = []
  talk(short, told(tight), 1, answering(undefined, heard))
  expect(new Set(heard).size).toBe(heard.length)
})

test('a number that is doubted is taped again, and the muslin is heard with it', () => {
  // The easy block has 100 mm at the bust by its numbers: that is not tight.
  const easy: Sewn = { ...short, body: MIDDLE, choices: intentOf('block', {}) }
  const { taped } = talk(easy, told(tight), 1, answering([2]))
  expect(taped).toEqual({ bustGirth: 940 })
})

test('the engine of the program rights a bust short by the pin, and sews it so', () => {
  // 10 mm on each of four edges give the 40 back.
  const begun = CORRECTING.begin('block', short.body, close)
  const { state } = CORRECTING.decide(begun, told(tight), 1, answering([2]))
  const bust = (s: Sewn): number => lengthOf(sewn(halvesOf(CORRECTING.draft(s)), 125), 'bust')
  expect(bust(state) - bust(begun)).toBeCloseTo(40, 3)
})

test('every complaint and cause that the bench tells is one of the catalogue', () => {
  const sights = [
    ...KINDS.map((k) => ({ ...tight, id: k.shows, causes: [1] })),
    ...KINDS.flatMap((k) => misleading({ ...tight, id: k.shows })),
    ...Object.values(NOTHINGS).flat(),
  ]
  for (const { id, causes } of sights) {
    const known = COMPLAINT_IDS.find((x) => x === id)
    expect(known, id).toBeDefined()
    if (!known) continue
    const numbers = complaintOf(known).causes.map(({ number }) => number)
    for (const n of causes) expect(numbers, `${id}.${n}`).toContain(n)
  }
})
