import { expect, test } from 'vitest'
import { CHOICE_IDS, CHOICES } from '../../../src/draft/choices.ts'
import { firstRound, redraft, withCorrection, type Round } from '../../../src/rounds/round.ts'
import { mm } from '../../../src/units/length.ts'
import {
  CHOICE_GROUPS,
  knobState,
  settingFor,
  turned,
} from '../../../src/ui/draft/choice-groups.ts'
import { body, INVENTED_ON } from '../../bodies.ts'

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

test('every choice has its knob, once', () => {
  expect(CHOICE_GROUPS.flatMap((g) => g.ids).toSorted()).toEqual([...CHOICE_IDS].sort())
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
