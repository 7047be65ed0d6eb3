/** The spoken sentence. Ways to say a complaint: common practice, no source. */
import { expect, test } from 'vitest'
import { find } from '../../src/fitting/finding/find.ts'
import {
  dialOf,
  foldsOf,
  GAPS,
  inFull,
  openGap,
  pointedIn,
  type GapId,
  type Spoken,
} from '../../src/ui/fitting/spoken.ts'

const GAPE: Spoken = {
  where: 'frontSleeveEdge',
  sides: 'bothSides',
  cloth: 'loose',
  folds: 'slantwise',
  towards: 'bustTip',
}
const HIGH: Spoken = {
  where: 'waistLine',
  sides: 'allRound',
  cloth: 'tooShort',
  folds: 'none',
  towards: 'waist',
}

test.each([
  ['B8', GAPE],
  ['W1', HIGH],
] as const)(
  '%s can be said with the words of the gaps, and is heard among the first',
  (id, spoken) => {
    for (const gap of Object.keys(GAPS) as GapId[])
      if (gap !== 'towards' || spoken.folds !== 'none')
        expect(GAPS[gap].words.map((w) => w.id)).toContain(spoken[gap])
    expect(openGap(spoken)).toBeUndefined()
    const { ranked } = find('', { sleeve: 'cutIn', putRight: [], pointed: pointedIn(spoken) })
    expect(ranked.slice(0, 3).map((r) => r.id)).toContain(id)
  },
)

test('what is said in part can be noted, and the next gap is the first that is open', () => {
  const spoken: Spoken = { where: 'backNeckEdge', sides: 'bothSides', cloth: 'loose' }
  expect(inFull(spoken)).toBe('At the back neck edge, on both sides, the cloth is loose.')
  expect(openGap(spoken)).toBe('folds')
})

test('said in full it is one sentence; folds that do not show run nowhere', () => {
  expect(inFull(GAPE)).toBe(
    'At the front sleeve edge, on both sides, the cloth is loose and folds run slantwise, towards the bust tip.',
  )
  expect(inFull(HIGH)).toBe(
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
