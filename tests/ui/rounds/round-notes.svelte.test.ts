/** Notes that are being typed while another window keeps other notes of the same round. */
import { expect, it, vi } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { openStore } from '../../../src/storage/store.ts'
import { Session } from '../../../src/ui/session.svelte.ts'
import { bookOf, INVENTED_ON, MIDDLE } from '../../bodies.ts'
import { seeded } from '../draft/seeded.ts'
import NotesInApp from './NotesInApp.svelte'

it('stay in the field, and both are kept when she leaves it', async () => {
  const { session, garment } = await seeded(bookOf(MIDDLE))
  await session.putOnPaper(garment)
  const store = await openStore()
  if (!store.ok) throw new Error(store.sentence)
  const other = new Session(store.store, {
    now: () => new Date(`${INVENTED_ON}T11:00:00Z`),
    newId: () => crypto.randomUUID(),
  })
  await other.open()
  const screen = await render(NotesInApp, { session, garment })
  const field = screen.getByRole('textbox', { name: /^Notes to round 1/ })
  const area = () => field.element() as HTMLTextAreaElement
  area().value = 'typed here'
  area().dispatchEvent(new InputEvent('input', { bubbles: true }))
  const round = other.latest(garment)
  if (!round) throw new Error('no round')
  await other.writeNotes(round, 'kept over there')
  await vi.waitFor(() => expect(session.latest(garment)?.notes).toBe('kept over there'))
  await expect.element(field).toHaveValue('typed here')
  area().dispatchEvent(new Event('change', { bubbles: true }))
  await vi.waitFor(() => expect(session.latest(garment)?.notes).toBe('kept over there\ntyped here'))
  await expect.element(field).toHaveValue('kept over there\ntyped here')
  store.store.close()
})
