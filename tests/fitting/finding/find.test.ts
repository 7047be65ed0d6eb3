/** What the finder hears and says back. Right readings: common sense, no source. */
import { expect, test } from 'vitest'
import { find } from '../../../src/fitting/finding/find.ts'
import { readWeights, tenthsOf, toldWeights } from '../../../src/fitting/finding/letters.ts'
import { slipsBetween, mended } from '../../../src/fitting/finding/spelling.ts'
import { stem } from '../../../src/fitting/finding/stem.ts'
import { tokensOf } from '../../../src/fitting/finding/tokens.ts'
import { wordsOfKind } from '../../../src/fitting/finding/understood.ts'

const first = (phrase: string) => find(phrase).ranked[0]?.id
const saidOf = (phrase: string) => find(phrase).understood.map((u) => u.said)

test('forms of one word are one stem', () => {
  expect(new Set(['gape', 'gapes', 'gaping', 'gaped'].map(stem)).size).toBe(1)
  expect(new Set(['wrinkle', 'wrinkles', 'wrinkled', 'wrinkly'].map(stem)).size).toBe(1)
  expect(new Set(['tight', 'tighter', 'tightly'].map(stem)).size).toBe(1)
  expect(stem('hung')).toBe(stem('hanging'))
})
test('slips are counted as in optimal string alignment', () => {
  // Damerau–Levenshtein worked by hand: one change-over, one wrong letter, one missing letter.
  expect(slipsBetween('wasit', 'waist', 2)).toBe(1)
  expect(slipsBetween('sleeve', 'sleave', 2)).toBe(1)
  expect(slipsBetween('armhole', 'armhol', 2)).toBe(1)
  expect(slipsBetween('shoulder', 'sholdre', 2)).toBe(2)
})
test('misspelt trade words are mended, everyday words are left', () => {
  expect(mended('sholder')).toBe('shoulder')
  expect(mended('nekline')).toBe('neckline')
  expect(stem(mended('puckerd'))).toBe(stem('puckered'))
  expect(mended('house')).toBe('house')
  expect(mended('mother')).toBe('mother')
})
test('weights written as letters are read back', () => {
  const tenths = [0, 3, -7, 0, 44, -44]
  expect(readWeights(toldWeights(tenths))).toEqual([
    [1, 3],
    [2, -7],
    [4, 44],
    [5, -44],
  ])
  expect(tenthsOf(-9.9)).toBe(-44)
  expect(() => readWeights('`A')).toThrow('no weight')
})
test('contractions, dialect and American spelling come to one form', () => {
  const words = (typed: string) => tokensOf(typed).map((t) => t.word)
  expect(words("It doesn't")).toEqual(['it', 'does', 'not'])
  expect(words('center')).toEqual(['centre'])
  expect(words('ma airm')).toEqual(['my', 'arm'])
  expect(words('CB')).toEqual(['centre', 'back'])
  expect(words('15 mm')).toEqual(['#'])
})
test('American and British, plain and trade words find the same complaint', () => {
  expect(first('armscye gapes in front')).toBe('B8')
  expect(first('the front of the arm hole is gaping')).toBe('B8')
  expect(first('center front line is not straight, the blouse twists')).toBe('X1')
  expect(first('centre front line is not straight, the blouse twists')).toBe('X1')
})
test('says back the finest place, the sign and the direction', () => {
  expect(saidOf('horizontal folds at the back waist')).toEqual(
    expect.arrayContaining(['back waist', 'folds', 'level, across']),
  )
  expect(saidOf('the back of my neck gapes')).toContain('nape')
})
test('the reason names her own words', () => {
  const [best] = find('The front armhole gapes').ranked
  expect(best?.because).toContain('front armhole')
  expect(best?.because).toContain('gapes')
})
test('one word put right changes the answer', () => {
  const phrase = 'the front armhole gapes'
  const [place] = find(phrase).understood
  expect(place?.kind).toBe('place')
  const right = { from: place?.from ?? 0, to: place?.to ?? 0, concept: 'backArmhole' as const }
  expect(find(phrase, { putRight: [right] }).ranked[0]?.id).toBe('A3')
})
test('pointing alone finds, and completes what she says', () => {
  expect(find('', { pointed: ['lowerBack', 'loose', 'fold', 'across'] }).ranked[0]?.id).toBe('K2')
  expect(find('it gapes', { pointed: ['nape'] }).ranked[0]?.id).toBe('N3')
})
test('two complaints in one sentence are taken apart', () => {
  const { parts, ranked } = find('the dart is too low and the sleeve hem is tight')
  expect(parts.map((p) => p.ranked[0]?.id)).toEqual(['B5', 'D7'])
  expect(new Set(ranked.slice(0, 2).map((a) => a.id))).toEqual(new Set(['B5', 'D7']))
})
test('"and" inside one complaint does not take it apart', () => {
  expect(find('the armhole gapes and stands off in front').parts).toHaveLength(1)
})
test('a place that is only left out is not heard', () => {
  expect(first('why does my blouse go up in the front but not in the back')).toBe('B2')
  expect(saidOf('loose at the front, not at the back')).not.toContain('back')
})
test('a wish means its opposite is seen', () => {
  expect(first('the armhole needs to be raised')).toBe(first('the armhole is too low'))
  expect(first('the waist needs to be lower')).toBe('W1')
})
test('the sleeve of the garment decides between look-alikes', () => {
  expect(find('I cannot lift my arm', { sleeve: 'cutIn' }).ranked[0]?.id).toBe('D3')
  expect(find('I cannot lift my arm', { sleeve: 'setIn' }).ranked[0]?.id).toBe('L5')
})
test('words about nothing here find nothing and are named', () => {
  const { ranked, unknown } = find('xylophone quartz')
  expect(ranked).toEqual([])
  expect(unknown).toEqual(['xylophone', 'quartz'])
})
test('words that name parts of the language itself are plain words', () => {
  // Every property of the plain object of ECMA-262 stands for itself.
  for (const word of Object.getOwnPropertyNames(Object.prototype))
    expect(() => find(`${word} gapes`)).not.toThrow()
})
test('every kind of word has others to choose from', () => {
  for (const kind of ['place', 'sign', 'direction', 'side', 'movement'] as const)
    expect(wordsOfKind(kind).length).toBeGreaterThan(1)
})
