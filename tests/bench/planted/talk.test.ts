/** The talk of the planted bench: what is asked is answered from what is true, and once. */
import { expect, test } from 'vitest'
import type { Answerer } from '../../../scripts/bench/planted-rounds/engine.ts'
import { talk } from '../../../scripts/bench/planted-rounds/talk.ts'
import { intentOf } from '../../../scripts/bench/planted/kinds.ts'
import { draftOf } from '../../../scripts/bench/planted/muslin.ts'
import type { Sign } from '../../../scripts/bench/planted/sign.ts'
import { NOTHING_TOLD, type Told } from '../../../scripts/bench/planted/telling.ts'
import { complaintOf } from '../../../src/fitting/complaints/catalogue.ts'
import { COMPLAINT_IDS } from '../../../src/fitting/complaints/complaint.ts'
import { KINDS } from '../../../scripts/bench/planted/kinds.ts'
import { misleading, NOTHINGS } from '../../../scripts/bench/planted/beside.ts'
import { MIDDLE } from '../../bodies.ts'

const close = intentOf('block', { close: true })
const short = draftOf({ ...MIDDLE, bustGirth: 900 }, 'block', close)
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
  const { decision, asked } = talk(short, told(tight), answering([2]), () => short)
  expect(decision.causes).toContain('B1.2')
  expect(decision.edits.map((e) => e.applied)).toEqual([10, 10])
  expect(asked).toBeGreaterThan(0)
})

test('what she cannot tell is not asked again', () => {
  const heard: string[] = []
  talk(short, told(tight), answering(undefined, heard), () => short)
  expect(new Set(heard).size).toBe(heard.length)
})

test('a number that is doubted is taped again, and the draft is made from it', () => {
  // The easy block has 100 mm at the bust by its numbers: that is not tight.
  const easy = draftOf(MIDDLE, 'block', intentOf('block', {}))
  const seen: object[] = []
  const { taped } = talk(easy, told(tight), answering([2]), (numbers) => {
    seen.push(numbers)
    return easy
  })
  expect(taped).toEqual(['bustGirth'])
  expect(seen).toEqual([{ bustGirth: 940 }])
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
