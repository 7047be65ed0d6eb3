/** Acts of every place taken back and done again; what is expected is counted by hand. */
import { expect, it } from 'vitest'
import { agreedValue, keptReadings } from '../../../src/measurements/book.ts'
import { inForce, type Because } from '../../../src/fitting/correction.ts'
import type { NewCorrection } from '../../../src/fitting/preview.ts'
import { undoneWords } from '../../../src/ui/undo/act-words.ts'
import { mm } from '../../../src/units/length.ts'
import { bookOf, MIDDLE } from '../../bodies.ts'
import { seeded } from '../draft/seeded.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const BECAUSE: Because = {
  complaint: 'W1',
  cause: 'W1.1',
  pinned: { how: 'wholeFold', read: mm(10), share: 1 },
  watch: mm(0),
  round: 1,
}
const CHANGE: NewCorrection = {
  kind: 'turn-choice',
  choice: 'lengthAdded',
  by: mm(10),
  because: BECAUSE,
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
  expect(session.undoing.last?.how).toBe('tooLate')
  expect(session.latest(garment)?.choices.lengthAdded).toBe(20)
  expect(session.roundsOf(garment)).toHaveLength(1)
  expect(await session.undo()).toBe(true)
  expect(keptReadings(session.book.bustGirth, 'bustGirth')).toHaveLength(2)
  expect(agreedValue(session.book.bustGirth, 'bustGirth')).toBe(940)
})

// Bust level 20 mm lower than taped: the muslin says so, its dart is moved meanwhile, then the tape
// says the same. The draft follows the number, and 20 mm are not made twice.
it('what stood in for a number is taken back when the tape says the same, and can be undone', async () => {
  const { session, garment } = await seeded(bookOf(MIDDLE))
  expect(await session.putOnPaper(garment)).toBe(true)
  const by = mm(-20)
  await session.doubt([
    { measurement: 'waistToBustLevel', by, complaint: 'B5', on: session.today() },
  ])
  await session.makeChange(garment, {
    kind: 'operate',
    operation: { op: 'GROUP', piece: 'front', dart: 'waistDart', out: mm(0), down: mm(20) },
    because: { ...BECAUSE, complaint: 'B5', cause: 'B5.1' },
  })
  const changes = () => inForce(session.latest(garment)?.corrections ?? []).length
  const taped = mm((session.latest(garment)?.body.values.waistToBustLevel ?? 0) - 20)
  expect(await session.correctReading('waistToBustLevel', 0, taped)).toBe(true)
  expect(changes()).toBe(1)
  expect(session.answered).toBeUndefined()
  expect(await session.correctReading('waistToBustLevel', 1, taped)).toBe(true)
  expect(changes()).toBe(0)
  expect(session.latest(garment)?.body.values.waistToBustLevel).toBe(taped)
  expect(session.answered).toMatch(/^The tape says of .* what muslin 1 said/)
  await session.undo()
  expect(changes()).toBe(1)
  expect(session.latest(garment)?.body.values.waistToBustLevel).toBe(taped)
})
