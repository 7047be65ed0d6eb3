import { expect, test } from 'vitest'
import type { GarmentId } from '../../../src/draft/draft.ts'
import { USUAL_CUT } from '../../../src/output/cutting.ts'
import { firstRound } from '../../../src/rounds/round.ts'
import { shorter } from '../../../src/ui/cut/cloth/shorter.ts'
import { extentOf } from '../../../src/layout/outline.ts'
import { body, INVENTED_ON, MIDDLE } from '../../bodies.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const less = (garment: GarmentId) =>
  shorter(
    firstRound({ id: 'r1', garmentId: 'g1' }, garment, body({}, MIDDLE), INVENTED_ON),
    USUAL_CUT,
    'waist',
    CM,
  )

test('a blouse with set-in sleeves gives sleeve, body, and both by as much', () => {
  const { others, othersTogether } = less('sleeve')
  const [sleeve, trunk] = others
  expect(sleeve?.[0]?.words).toBe('Make the sleeve shorter by 2.0 cm.')
  expect(trunk?.at(-1)?.clause).toBe('make the body shorter by 10.0 cm')
  expect(othersTogether[0]?.words).toBe('Make the sleeve and the body shorter by 2.0 cm each.')
  // Both is both: each piece is as long as in the draft where it alone was made shorter.
  const long = (of: (typeof othersTogether)[number] | undefined, id: string) => {
    const { left, right } = extentOf(of!.parts.find((p) => p.id === id)!.exact)
    return right - left
  }
  expect(long(othersTogether[0], 'sleeve')).toBeCloseTo(long(sleeve?.[0], 'sleeve'), 6)
  expect(long(othersTogether[0], 'back')).toBeCloseTo(long(trunk?.[0], 'back'), 6)
  expect(long(trunk?.[1], 'back')).toBeCloseTo(long(trunk?.[0], 'back') - 20, 6)
})

test('a dress gives its length, and there is nothing to give with it', () => {
  const { others, othersTogether } = less('dress')
  expect(others.map((list) => list.map((g) => g.words))).toEqual([
    ['2.0', '4.0', '6.0', '8.0', '10.0'].map((by) => `Make the body shorter by ${by} cm.`),
  ])
  expect(othersTogether).toEqual([])
})
