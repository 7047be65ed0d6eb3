/**
 * Pointing instead of words: place, what the cloth does and how its folds lie, told to the finder.
 * Right answers: read off the signs of our table of complaints, which name place and fold
 * themselves. Touch: 44 px a side (WCAG 2.2, target size enhanced).
 */
import { expect, test } from 'vitest'
import { find, type SleeveKind } from '../../src/fitting/finding/find.ts'
import {
  FIGURE_BOX,
  FIGURE_VIEWS,
  figureOf,
  halvesOf,
  viewWith,
} from '../../src/ui/fitting/figure-places.ts'
import { POINTED_AT } from '../../src/ui/fitting/pointed-at.ts'
import { GAPS, pointedIn, type Spoken } from '../../src/ui/fitting/spoken.ts'

const SLEEVES: readonly SleeveKind[] = ['cutIn', 'setIn', 'none']
const spotsOf = (sleeve: SleeveKind) =>
  FIGURE_VIEWS.flatMap((view) =>
    (figureOf(view, sleeve)?.spots ?? []).map((spot) => ({ view, ...spot })),
  )

test('every spot can be named in the sentence, and naming it turns the figure to it', () => {
  const words = GAPS.where.words.map((w) => w.id)
  for (const sleeve of SLEEVES)
    for (const { view, where } of spotsOf(sleeve)) {
      expect(words).toContain(where)
      expect(viewWith(where, view, sleeve)).toBe(view)
      const turned = viewWith(where, 'arm', sleeve)
      expect(figureOf(turned, sleeve)?.spots.some((s) => s.where === where)).toBe(true)
    }
  expect(halvesOf('allRound')).toEqual(['left', 'right'])
  expect(halvesOf('leftSide')).toEqual(['left'])
})
test('every word of the sentence is something to the finder, but that no folds show', () => {
  for (const gap of Object.values(POINTED_AT))
    for (const [id, heard] of Object.entries<readonly string[]>(gap))
      expect(heard.length, id).toBeGreaterThan(id === 'none' ? -1 : 0)
})
test('on a phone every spot is 44 px wide and high and covers no other', () => {
  // A phone of 390 px: less 16 px at either side of the page and of the sheet.
  const px = (390 - 4 * 16) / FIGURE_BOX.width
  for (const sleeve of SLEEVES)
    for (const view of FIGURE_VIEWS) {
      const spots = (figureOf(view, sleeve)?.spots ?? []).flatMap((s) =>
        s.twice ? [s, { ...s, x: 120 - s.x }] : [s],
      )
      for (const [i, a] of spots.entries())
        for (const b of spots.slice(i + 1)) {
          const apart = Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y)) * px
          expect(apart, `${view}: ${a.where} and ${b.where}`).toBeGreaterThanOrEqual(43.9)
        }
    }
})

const POINTED: readonly (readonly [Spoken, SleeveKind, readonly string[]])[] = [
  [{ where: 'frontNeckEdge', cloth: 'off' }, 'none', ['N1']],
  [{ where: 'frontNeckEdge', cloth: 'tight' }, 'none', ['N2']],
  [{ where: 'backNeckEdge', cloth: 'off' }, 'none', ['N3']],
  [{ where: 'backNeckEdge', cloth: 'loose', folds: 'level' }, 'none', ['N4']],
  [
    { where: 'shoulderTip', cloth: 'loose', folds: 'slantwise', towards: 'underarm' },
    'none',
    ['SH1'],
  ],
  [{ where: 'bust', cloth: 'tight', folds: 'level' }, 'none', ['B1']],
  [{ where: 'bust', cloth: 'loose', folds: 'upright' }, 'none', ['B3']],
  [{ where: 'frontArmhole', cloth: 'off' }, 'none', ['B8']],
  [
    { where: 'frontArmhole', cloth: 'loose', folds: 'slantwise', towards: 'bustTip' },
    'none',
    ['B8'],
  ],
  [{ where: 'upperChest', cloth: 'loose', folds: 'level' }, 'none', ['B9']],
  [{ where: 'upperChest', cloth: 'tight', folds: 'level' }, 'none', ['B11']],
  [{ where: 'frontArmhole', cloth: 'loose', folds: 'upright' }, 'none', ['B10']],
  [{ where: 'frontClosing', cloth: 'off' }, 'none', ['B12']],
  [{ where: 'underBust', cloth: 'loose', folds: 'upright' }, 'none', ['B13']],
  [{ where: 'underarm', cloth: 'tight' }, 'none', ['A1']],
  [{ where: 'underarm', cloth: 'tooLow' }, 'none', ['A2']],
  [{ where: 'backArmhole', cloth: 'off' }, 'none', ['A3']],
  [{ where: 'backArmhole', cloth: 'loose', folds: 'upright' }, 'none', ['A4']],
  [{ where: 'shoulderBlade', cloth: 'tight', folds: 'level' }, 'none', ['K1']],
  [{ where: 'backWaist', cloth: 'loose', folds: 'level' }, 'none', ['K2']],
  [{ where: 'backHem', cloth: 'up' }, 'none', ['K3']],
  [{ where: 'upperBack', cloth: 'loose', folds: 'level' }, 'none', ['K5']],
  [{ where: 'backWaist', cloth: 'loose', folds: 'upright' }, 'none', ['K6']],
  [{ where: 'waistLine', cloth: 'tooHigh' }, 'none', ['W1']],
  [{ where: 'waistLine', sides: 'allRound', cloth: 'loose', folds: 'level' }, 'none', ['W2']],
  [{ where: 'waistLine', cloth: 'tight' }, 'none', ['W3']],
  [{ where: 'waistLine', cloth: 'loose', folds: 'upright' }, 'none', ['W4']],
  [{ where: 'hip', cloth: 'tight', folds: 'level' }, 'none', ['W9']],
  [{ where: 'frontHem', cloth: 'up' }, 'none', ['B2', 'W10']],
  [{ where: 'sleeveCap', cloth: 'loose', folds: 'level' }, 'setIn', ['L2']],
  [{ where: 'upperArm', cloth: 'tight' }, 'setIn', ['L3']],
  [{ where: 'sleeveCap', cloth: 'puckered' }, 'setIn', ['L6']],
  [{ where: 'elbow', cloth: 'tight' }, 'setIn', ['L8']],
  [{ where: 'sleeveHem', cloth: 'crooked' }, 'setIn', ['L9']],
  [{ where: 'underarm', cloth: 'loose', folds: 'upright' }, 'cutIn', ['D4']],
  [{ where: 'wholeGarment', cloth: 'tight' }, 'none', ['X2']],
  [{ where: 'wholeGarment', cloth: 'loose' }, 'none', ['X3']],
]
test('pointing alone finds the complaint among the first three, and first in four of five', () => {
  let first = 0
  const missed = POINTED.flatMap(([spoken, sleeve, right]) => {
    const three = find('', { pointed: pointedIn(spoken), sleeve })
      .ranked.slice(0, 3)
      .map((a) => a.id)
    if (right.includes(three[0] ?? '')) first += 1
    return three.some((id) => right.includes(id))
      ? []
      : [`${right.join()} for ${JSON.stringify(spoken)}: ${three.join()}`]
  })
  expect(missed).toEqual([])
  expect(first / POINTED.length).toBeGreaterThanOrEqual(0.8)
})
test('what she points at completes what she types', () => {
  const pointed = pointedIn({ where: 'backNeckEdge', cloth: 'off' })
  expect(find('it bothers me', { pointed }).ranked[0]?.id).toBe('N3')
  expect(pointedIn({ where: 'hip' })).toEqual([])
})
