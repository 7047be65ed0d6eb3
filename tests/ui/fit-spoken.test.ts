/** The spoken sentence. Ways to say a complaint: common practice, no source. */
import { expect, test } from 'vitest'
import { COMPLAINT_IDS, COMPLAINTS } from '../../src/fitting/complaints.ts'
import {
  dialOf,
  foldsOf,
  GAPS,
  heardIn,
  inFull,
  openGap,
  readsAs,
  sentenceOf,
  type GapId,
} from '../../src/ui/fitting/spoken.ts'

test('every complaint can be said with the words of the gaps, and reads back as itself', () => {
  for (const id of COMPLAINT_IDS) {
    const spoken = sentenceOf(id)
    for (const gap of Object.keys(GAPS) as GapId[])
      if (gap !== 'towards' || spoken.folds !== 'none')
        expect(GAPS[gap].words.map((w) => w.word)).toContain(spoken[gap])
    expect(readsAs(spoken)).toBe(id)
    expect(openGap(spoken)).toBeUndefined()
  }
})

test('a place or a cloth of another kind reads as no complaint, and the sentence can still be noted', () => {
  const spoken = { where: 'back neck edge', sides: 'both sides', cloth: 'loose' }
  expect(readsAs(spoken)).toBeUndefined()
  expect(inFull(spoken)).toBe('At the back neck edge, on both sides, the cloth is loose.')
  expect(openGap(spoken)).toBe('folds')
  expect(readsAs({ ...sentenceOf('B8'), cloth: 'tight' })).toBeUndefined()
})

test('said in full it is one sentence; folds that do not show run nowhere', () => {
  expect(inFull(sentenceOf('B8'))).toBe(
    'At the front sleeve edge, on both sides, the cloth is loose and folds run slantwise, towards the bust tip.',
  )
  expect(inFull(sentenceOf('W1'))).toBe(
    'At the waist line, all round, the cloth is too short and no folds show.',
  )
  expect(inFull({ where: 'hem' })).toBeUndefined()
})

// Plain ways a dressmaker says it; from memory.
test.each([
  ['my armholes gape', 'B8'],
  ['The sleeve edge is gaping at the front', 'B8'],
  ['the waist is too high', 'W1'],
  ['it is too short in the body', 'W1'],
  ['waistline rides up', 'W1'],
])('"%s" is heard as %s', (typed, id) => {
  expect(heardIn(typed)).toBe(id)
})
test.each(['the neck is tight', 'hem dips at the back', '', 'I like the colour', 'waist'])(
  '"%s" is heard as nothing',
  (typed) => {
    expect(heardIn(typed)).toBeUndefined()
  },
)

test('every way to say a complaint is heard as that complaint', () => {
  for (const id of COMPLAINT_IDS)
    for (const way of COMPLAINTS[id].said) expect([way, heardIn(way)]).toEqual([way, id])
})

test('the dial and the sentence say the same of the folds', () => {
  expect(dialOf({ folds: 'slantwise' }, 'falling')).toBe('falling')
  expect(dialOf({ folds: 'level' }, 'falling')).toBe('level')
  expect(dialOf({ folds: 'none' }, 'rising')).toBeUndefined()
  expect(['level', 'rising', 'upright', 'falling'].map((f) => foldsOf(f as 'level'))).toEqual([
    'level',
    'slantwise',
    'upright',
    'slantwise',
  ])
})
