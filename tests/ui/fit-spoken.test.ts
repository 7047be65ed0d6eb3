/** The spoken sentence. Ways to say a complaint: common practice, no source. */
import { expect, test } from 'vitest'
import { COMPLAINT_IDS } from '../../src/fitting/complaints.ts'
import {
  dialOf,
  foldsOf,
  GAPS,
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
