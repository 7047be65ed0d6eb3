/** Two windows of one browser on the same work: each sees the other's change, none is lost. */
import { expect, it } from 'vitest'
import { mm } from '../../src/units/length.ts'
import { bookOf, MIDDLE } from '../bodies.ts'
import { anotherWindow, seeded } from './draft/seeded.ts'

it('what one window keeps appears in the other', async () => {
  const { session: left, garment } = await seeded(bookOf(MIDDLE))
  const right = await anotherWindow()
  await left.typeReading('bustGirth', mm(941))
  await expect.poll(() => right.book.bustGirth?.tape.map((r) => r.value)).toContain(941)
  expect(right.changedElsewhere).toBeDefined()
  expect(left.changedElsewhere).toBeUndefined()
  await right.turnChoice(garment, 'lengthAdded', mm(15))
  await expect.poll(() => left.latest(garment)?.choices.lengthAdded).toBe(15)
  await left.turnChoice(garment, 'easeBust', mm(30))
  await expect.poll(() => right.latest(garment)?.choices.easeBust).toBe(30)
  expect(right.latest(garment)?.choices.lengthAdded).toBe(15)
})

it('edits of both at the same moment: the later one is told, or both are kept', async () => {
  const { session: left, garment } = await seeded(bookOf(MIDDLE))
  await left.turnChoice(garment, 'lengthAdded', mm(5))
  const right = await anotherWindow()
  const [hung] = right.garments
  if (!hung) throw new Error('nothing hangs')
  // Name and cut of one garment lie in one row: both changes stay.
  const both = await Promise.all([
    left.changeGarment({ ...hung, name: 'Named on the left' }),
    right.changeCut(garment, (wishes) => ({ ...wishes, paper: 'a3' })),
  ])
  expect(both).toEqual([true, true])
  await expect
    .poll(() => [left.garment(garment)?.name, left.garment(garment)?.cutting?.paper])
    .toEqual(['Named on the left', 'a3'])
  // Two names at once, or one choice turned twice: one is kept, the other is told so.
  const names = await Promise.all([
    left.changeGarment({ ...hung, name: 'One' }),
    right.changeGarment({ ...hung, name: 'Two' }),
  ])
  expect(names.filter(Boolean)).toHaveLength(1)
  expect([left.problem, right.problem].filter((p) => p?.includes('another window'))).toHaveLength(1)
  const turned = await Promise.all([
    left.turnChoice(garment, 'lengthAdded', mm(10)),
    right.turnChoice(garment, 'lengthAdded', mm(25)),
  ])
  expect(turned.filter(Boolean)).toHaveLength(1)
  const lengthAdded = (window: typeof left) => window.latest(garment)?.choices.lengthAdded
  await expect.poll(() => lengthAdded(left) === lengthAdded(right)).toBe(true)
})

it('a round begun in both windows is begun once', async () => {
  const { session: left, garment } = await seeded(bookOf(MIDDLE))
  await left.putOnPaper(garment)
  const right = await anotherWindow()
  const begun = await Promise.all([left.startNext(garment), right.startNext(garment)])
  expect(begun.filter(Boolean)).toHaveLength(1)
  await expect.poll(() => right.roundsOf(garment).map((r) => r.number)).toEqual([1, 2])
  await expect.poll(() => left.roundsOf(garment).map((r) => r.number)).toEqual([1, 2])
})
