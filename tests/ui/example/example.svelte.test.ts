/** The invented example: made by the program's own road, apart from her work, gone without a trace. */
import { afterEach, expect, it } from 'vitest'
import { inForce } from '../../../src/fitting/correction.ts'
import { compare } from '../../../src/rounds/compare.ts'
import { redraft } from '../../../src/rounds/redraft.ts'
import { verdictOf } from '../../../src/rounds/worn.ts'
import { removeDatabase } from '../../../src/storage/db.ts'
import { Desk, EXAMPLE_DATABASE, type Tab } from '../../../src/ui/example/desk.svelte.ts'
import { SEED } from '../../../src/ui/example/seed.ts'
import { bookOf } from '../../bodies.ts'
import { seeded } from '../draft/seeded.ts'

const WORLD = { now: () => new Date('2026-11-25T10:00:00Z'), newId: () => crypto.randomUUID() }
const named = async (): Promise<readonly (string | undefined)[]> =>
  (await indexedDB.databases()).map(({ name }) => name)
afterEach(() => removeDatabase(EXAMPLE_DATABASE))

function tab(): Tab & { readonly kept: Map<string, string> } {
  const kept = new Map<string, string>()
  return {
    kept,
    memory: {
      getItem: (key) => kept.get(key) ?? null,
      setItem: (key, value) => void kept.set(key, value),
      removeItem: (key) => void kept.delete(key),
    },
    locks: navigator.locks,
  }
}

it('two finished muslins and a third that is drawn, every complaint answered by a correction', async () => {
  const { session: own } = await seeded(bookOf({ bustGirth: 940 }))
  const desk = new Desk(own, WORLD, tab())
  await desk.lookAtExample()
  expect(desk.problem).toBeUndefined()
  const { shown } = desk
  const [garment, ...more] = shown.garments
  expect(more).toEqual([])
  expect(garment?.name).toContain('Invented')
  const rounds = shown.roundsOf(garment?.id ?? '')
  expect(rounds.map((r) => [r.number, r.printed !== undefined, verdictOf(r)])).toEqual([
    [1, true, 'anotherMuslin'],
    [2, true, 'wearable'],
    [3, false, undefined],
  ])
  const said = SEED.muslins.map((m) => m.complaints.map(({ id }) => id))
  expect(rounds.map((r) => r.seen.map((s) => s.complaint))).toEqual([...said, []])
  for (const seen of rounds.flatMap((r) => r.seen)) expect(seen.answer).not.toBe('unsettled')
  for (const round of rounds) {
    const { draft, refused } = redraft(round)
    expect(refused).toEqual([])
    // Every number the garment asks for is taped: cloth may be cut.
    expect(draft.findings.filter((f) => f.severity !== 'note')).toEqual([])
  }
  // Every muslin changed numbers, and only decisions after it did.
  const [first, second, third] = rounds
  if (!first || !second || !third) throw new Error('three rounds')
  expect(inForce(first.corrections)).toEqual([])
  for (const [a, b] of [
    [first, second],
    [second, third],
  ] as const)
    expect(compare(redraft(a).draft, redraft(b).draft).changes.length).toBeGreaterThan(0)
  await desk.takeDown()
})

it('hangs apart from her own work and is gone without a trace', async () => {
  const { session: own } = await seeded(bookOf({ bustGirth: 940 }))
  const mine = tab()
  const desk = new Desk(own, WORLD, mine)
  await desk.lookAtExample()
  expect(desk.isExample).toBe(true)
  expect(own.garments.map((g) => g.name)).toEqual(['Invented blouse'])
  expect(Object.keys(own.book)).toEqual(['bustGirth'])
  const backup = await own.backup()
  expect(backup.ok && (await backup.value.text())).not.toContain(SEED.name)

  // A reload goes on looking; nothing is drafted a second time.
  const again = new Desk(own, WORLD, mine)
  await again.begin()
  expect(again.shown.garments.map((g) => g.id)).toEqual(desk.shown.garments.map((g) => g.id))

  await again.takeDown()
  expect(desk.isExample).toBe(false)
  expect(again.shown).toBe(own)
  expect(await named()).not.toContain(EXAMPLE_DATABASE)
  expect(mine.kept.size).toBe(0)
})

it('what a closed tab left hanging is cleared away when the page opens next', async () => {
  const { session: own } = await seeded(bookOf({}))
  const left = await new Promise<IDBDatabase>((done, failed) => {
    const request = indexedDB.open(EXAMPLE_DATABASE)
    request.onsuccess = () => done(request.result)
    request.onerror = () => failed(new Error('the database could not be made'))
  })
  left.close()
  await new Desk(own, WORLD, tab()).begin()
  expect(await named()).not.toContain(EXAMPLE_DATABASE)
})
