import { describe, expect, test } from 'vitest'
import { CHOICE_IDS, CHOICES, withFit, type Choices } from '../../../src/draft/choices.ts'
import type { GarmentId } from '../../../src/draft/draft.ts'
import { GARMENTS, standardFor } from '../../../src/draft/garments.ts'
import { draft } from '../../../src/draft/make.ts'
import { OPTION_IDS } from '../../../src/draft/options.ts'
import { record } from '../../../src/draft/record.ts'
import { firstRound, withCorrection, type Round } from '../../../src/rounds/round.ts'
import { redraft } from '../../../src/rounds/redraft.ts'
import { mm } from '../../../src/units/length.ts'
import {
  CHOICE_GROUPS,
  groupsFor,
  knobState,
  settingFor,
} from '../../../src/ui/draft/choice-groups.ts'
import { turned } from '../../../src/ui/draft/turned.ts'
import { fitOf, hasFits } from '../../../src/ui/draft/fit.ts'
import { groupFact, groupSays } from '../../../src/ui/draft/group-facts.ts'
import { waistWays } from '../../../src/ui/draft/waist-ways.ts'
import { confirm } from '../../../src/measurements/confirmed.ts'
import { body, bookOf, INVENTED_ON, MIDDLE } from '../../bodies.ts'

const round = firstRound({ id: 'r1', garmentId: 'g1' }, 'blouse', body(), INVENTED_ON)
const lengthened: Round = withCorrection(round, {
  v: 1,
  id: 'c1',
  kind: 'turn-choice',
  choice: 'lengthAdded',
  by: mm(15),
  because: {
    complaint: 'W1',
    cause: 'short',
    pinned: { how: 'levelError', read: mm(15), share: 1 },
    watch: mm(0),
    round: 1,
  },
})

const CM = { unit: 'cm', inchStep: 8 } as const
const garments = Object.keys(GARMENTS) as GarmentId[]
const blouse = (choices: Partial<Choices> = {}, numbers = {}) =>
  draft('blouse', body(numbers), { ...standardFor('blouse'), ...choices })
/** Bust 940 over a waist of 640: one dart would be too wide. */
const NARROW = { waistGirth: 640 }

test('every choice has its knob, once', () => {
  expect(CHOICE_GROUPS.flatMap((g) => g.ids).toSorted()).toEqual([...CHOICE_IDS].sort())
  expect(CHOICE_GROUPS.flatMap((g) => g.options).toSorted()).toEqual([...OPTION_IDS].sort())
})

test('a garment shows only what its construction reads', () => {
  for (const garment of garments) {
    const groups = groupsFor(draft(garment, body(), standardFor(garment)))
    expect(groups.flatMap((g) => g.options).toSorted()).toEqual(
      [...GARMENTS[garment].options].sort(),
    )
    for (const id of groups.flatMap((g) => g.ids)) expect(GARMENTS[garment].choices).toContain(id)
  }
})

// What is hidden must move nothing: every length and point on the paper stays to a hundredth.
describe('a choice that is not shown moves nothing', () => {
  const cases: readonly (readonly [string, Partial<Choices>, object])[] = [
    ['as usual', {}, {}],
    ['straight', { shaping: 'straight' }, {}],
    ['buttoned, faced', { opening: 'buttonedFront', neckFinish: 'facing' }, {}],
    ['one dart too narrow', {}, NARROW],
  ]
  test.each(cases)('%s', (_, choices, numbers) => {
    const before = blouse(choices, numbers)
    const shown = groupsFor(before).flatMap((g) => g.ids)
    const hidden = GARMENTS.blouse.choices.filter((id) => !shown.includes(id))
    expect(hidden.length).toBeGreaterThan(0)
    for (const id of hidden)
      for (const end of [CHOICES[id].min, CHOICES[id].max])
        expect(record(blouse({ ...choices, [id]: end }, numbers)), id).toEqual(record(before))
  })
  test('once turned it stays, so that it can be turned back', () => {
    const ids = (d: typeof before) => groupsFor(d).flatMap((g) => g.ids)
    const before = blouse()
    expect(ids(before)).not.toContain('buttonOverlap')
    expect(ids(blouse({ buttonOverlap: mm(25) }))).toContain('buttonOverlap')
  })
})

describe('fit', () => {
  test('is read from the four eases, and one turned ease is neither', () => {
    const standard = standardFor('blouse')
    expect(fitOf(standard)).toBe('easy')
    expect(fitOf(withFit(standard, 'close'))).toBe('close')
    expect(fitOf({ ...standard, easeHighHip: mm(20) })).toBeUndefined()
    expect(fitOf({ ...standard, lengthAdded: mm(20) })).toBe('easy')
  })
  test('a block has eases of its own', () => {
    expect(hasFits('blouse')).toBe(true)
    expect(hasFits('block')).toBe(false)
  })
})

// By hand: quarters of bust and waist with ease are 257 and 174; 83 mm are to be taken in. The side
// takes 25 first and leaves 58, or 20 and leaves 63; a back dart holds 32.
describe('ways to take the waist in', () => {
  test('one dart holds it: there is nothing to pick', () => {
    expect(waistWays(blouse())).toEqual([])
  })
  test('one dart too narrow: each way adds up to what is to be taken in', () => {
    const ways = waistWays(blouse({}, NARROW))
    expect(ways.map((w) => w.order)).toEqual(['auto', 'twoDarts', 'centreBack'])
    for (const { side, backDarts, centreBack } of ways)
      expect(side + centreBack + backDarts.reduce((a, b) => a + b, 0)).toBeCloseTo(83, 9)
    const [auto, two, centre] = ways
    expect([auto?.side, two?.side]).toEqual([25, 20])
    expect(centre?.centreBack).toBe(15)
  })
  test('the other garments have them too', () => {
    const narrow = (garment: GarmentId) =>
      waistWays(draft(garment, body(NARROW), standardFor(garment)))
    for (const garment of garments) expect(narrow(garment).length, garment).not.toBe(1)
  })
})

describe('what a group says', () => {
  // By hand: neck base 372/6 + 8 = 70, so the neck of 100 lies 30 out and 30·tan(asin(42/125)) =
  // 10.7 down; the overarm falls 25 − 10.7 = 14.3 on 330 mm, 2.5°.
  test('the overarm, its slope, and that folds belong to the style, once', () => {
    const says = groupSays(blouse(), 'arm', CM).join(' ')
    expect(says).toContain('33.0 cm long and lies 2.5° below the level')
    expect(says.match(/Soft folds/g)).toHaveLength(1)
  })
  // 110 down the fold, her front neck point at 400 − 346 = 54.
  test('how far the neck lies below her neck point', () => {
    expect(groupSays(blouse(), 'neck', CM).join(' ')).toContain('lies 5.6 cm below')
  })
  test('what is not taped is asked for', () => {
    const {
      frontNeckToWaist: _,
      shoulderLengthLeft: __,
      shoulderLengthRight: ___,
      ...rest
    } = MIDDLE
    const taped = confirm(bookOf(rest), GARMENTS.blouse.needs, GARMENTS.blouse.uses)
    if (!taped.ok) throw new Error('the blouse does not need these')
    const d = draft('blouse', taped.body, standardFor('blouse'))
    expect(groupSays(d, 'neck', CM).join(' ')).toMatch(/^Tape front neck to waist/)
    expect(groupSays(d, 'arm', CM).join(' ')).toContain('Tape neck base and shoulder length')
  })
  test('a garment without an overarm says none of it', () => {
    const block = draft('block', body(), standardFor('block'))
    for (const { id } of CHOICE_GROUPS) {
      expect(groupSays(block, id, CM)).toEqual([])
      expect(() => groupFact(block, id, CM)).not.toThrow()
    }
  })
})

// By hand: her setting 0 and a correction of 15 give 15; the sum may not pass the end at 60.
test('a knob shows setting and correction together, and gives the setting back', () => {
  const knob = knobState(lengthened.choices, redraft(lengthened).draft, 'lengthAdded')
  expect(knob).toEqual({ value: 15, min: -45, max: 60, corrected: 15 })
  expect(settingFor(mm(25), knob.corrected)).toBe(10)
  expect(settingFor(knob.max, knob.corrected)).toBeLessThanOrEqual(CHOICES.lengthAdded.max)
  expect(settingFor(knob.min, knob.corrected)).toBeGreaterThanOrEqual(CHOICES.lengthAdded.min)
})

// 400 mm nape to waist + 15 corrected + 10 turned: the waist lies 425 mm down the fold.
test('turning draws with the corrections on top and changes nothing kept', () => {
  const outcome = turned(lengthened, 'lengthAdded', mm(10))
  if (!outcome.ok) throw new Error(outcome.sentence)
  expect(outcome.corrected.draft.pieces[0]?.points['C']?.y).toBeCloseTo(425, 9)
  expect(lengthened.choices.lengthAdded).toBe(0)
})

test('every choice can be turned from end to end, or says why not', () => {
  for (const id of CHOICE_IDS)
    for (const end of [CHOICES[id].min, CHOICES[id].max]) {
      const outcome = turned(round, id, end)
      if (!outcome.ok) expect(outcome.sentence).toContain(CHOICES[id].label)
      else expect(outcome.corrected.draft.choices[id]).toBe(end)
    }
})
