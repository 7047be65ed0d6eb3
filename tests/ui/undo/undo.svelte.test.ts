/** Acts of every place taken back and done again; what is expected is counted by hand. */
import { expect, it } from 'vitest'
import { agreedValue, keptReadings } from '../../../src/measurements/book.ts'
import { inForce } from '../../../src/fitting/correction.ts'
import type { NewCorrection } from '../../../src/fitting/preview.ts'
import { undoneWords } from '../../../src/ui/undo/act-words.ts'
import { mm } from '../../../src/units/length.ts'
import { bookOf, MIDDLE } from '../../bodies.ts'
import { seeded } from '../draft/seeded.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const CHANGE: NewCorrection = {
  kind: 'turn-choice',
  choice: 'lengthAdded',
  by: mm(10),
  because: {
    complaint: 'W1',
    cause: 'short all round',
    pinned: { how: 'wholeFold', read: mm(10), share: 1 },
    watch: mm(0),
    round: 1,
  },
}

it('a reading typed over another is one act; the book keeps all of it, marked', async () => {
  const { session } = await seeded(bookOf({ bustGirth: 940 }))
  expect(await session.correctReading('bustGirth', 1, mm(944))).toBe(true)
  const values = () =>
    keptReadings(session.book.bustGirth, 'bustGirth').map(({ reading }) => reading.value)
  expect(values()).toEqual([940, 944])
  expect(await session.undo()).toBe(true)
  expect(values()).toEqual([940, 940])
  expect(session.undoing.last && undoneWords(session.undoing.last, CM)).toBe(
    'Taken back: Bust girth, 94.0 cm made 94.4 cm.',
  )
  expect(await session.redo()).toBe(true)
  expect(values()).toEqual([940, 944])
  expect(session.book.bustGirth?.tape.filter((r) => r.withdrawn)).toHaveLength(3)
})

it('walks back through places in the order of the acts, and forth again', async () => {
  const { session, garment } = await seeded(bookOf(MIDDLE))
  const lengthAdded = () => session.latest(garment)?.choices.lengthAdded
  const changes = () => inForce(session.latest(garment)?.corrections ?? []).length
  const name = () => session.garment(garment)?.name
  const hung = session.garment(garment)
  if (!hung) throw new Error('nothing hangs')

  await session.turnChoice(garment, 'lengthAdded', mm(20))
  await session.makeChange(garment, CHANGE)
  await session.changeGarment({ ...hung, name: 'Another name' })
  expect([lengthAdded(), changes(), name()]).toEqual([20, 1, 'Another name'])

  await session.undo()
  expect([lengthAdded(), changes(), name()]).toEqual([20, 1, 'Invented blouse'])
  await session.undo()
  expect([lengthAdded(), changes()]).toEqual([20, 0])
  await session.undo()
  expect(lengthAdded()).toBe(0)
  expect(await session.redo()).toBe(true)
  expect(await session.redo()).toBe(true)
  expect([lengthAdded(), changes()]).toEqual([20, 1])
  // Decisions are added, never taken out: made, taken back, made anew.
  expect(session.latest(garment)?.corrections.map((c) => c.kind)).toEqual([
    'turn-choice',
    'withdraw',
    'turn-choice',
  ])

  const [, , made] = session.latest(garment)?.corrections ?? []
  await session.takeBack(garment, made?.id ?? '')
  expect(changes()).toBe(0)
  await session.undo()
  expect(changes()).toBe(1)
})

it('what went on paper stays; the reading before it can still be taken back', async () => {
  const { session, garment } = await seeded(bookOf(MIDDLE))
  await session.typeReading('bustGirth', mm(940))
  await session.turnChoice(garment, 'lengthAdded', mm(20))
  await session.putOnPaper(garment)
  expect(await session.undo()).toBe(false)
  expect(session.undoing.last?.how).toBe('too late')
  expect(session.latest(garment)?.choices.lengthAdded).toBe(20)
  expect(session.roundsOf(garment)).toHaveLength(1)
  expect(await session.undo()).toBe(true)
  expect(keptReadings(session.book.bustGirth, 'bustGirth')).toHaveLength(2)
  expect(agreedValue(session.book.bustGirth, 'bustGirth')).toBe(940)
})
