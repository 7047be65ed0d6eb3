/** Notes that are being typed while another window keeps other notes of the same round. */
import { tick } from 'svelte'
import { expect, it } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { clothOf, noteOf } from '../../../src/rounds/worn.ts'
import { bookOf, MIDDLE } from '../../bodies.ts'
import { anotherWindow, seeded } from '../draft/seeded.ts'
import NotesInApp from './NotesInApp.svelte'

it('stay in the field, and both are kept when she leaves it', async () => {
  const { session, garment } = await seeded(bookOf(MIDDLE))
  await session.putOnPaper(garment)
  const other = await anotherWindow()
  const screen = await render(NotesInApp, { session, garment })
  const field = screen.getByRole('textbox', { name: /^Notes to round 1/ })
  const area = () => field.element() as HTMLTextAreaElement
  area().value = 'typed here'
  area().dispatchEvent(new InputEvent('input', { bubbles: true }))
  const round = other.latest(garment)
  if (!round) throw new Error('no round')
  await other.writeNotes(round, 'kept over there')
  await expect.poll(() => session.latest(garment)?.notes).toBe('kept over there')
  await expect.element(field).toHaveValue('typed here')
  area().dispatchEvent(new Event('change', { bubbles: true }))
  await expect.poll(() => session.latest(garment)?.notes).toBe('kept over there\ntyped here')
  await expect.element(field).toHaveValue('kept over there\ntyped here')
})

it('of one zone do the same; what was typed and left as it was adds nothing', async () => {
  const { session, garment } = await seeded(bookOf(MIDDLE))
  await session.putOnPaper(garment)
  const other = await anotherWindow()
  const screen = await render(NotesInApp, { session, garment })
  await screen.getByText('Notes by zone').click()
  const field = screen.getByRole('textbox', { name: 'Armhole' })
  const area = () => field.element() as HTMLTextAreaElement
  const type = (text: string) => {
    area().value = text
    area().dispatchEvent(new InputEvent('input', { bubbles: true }))
  }
  const leave = () => area().dispatchEvent(new Event('change', { bubbles: true }))
  const note = () => {
    const round = session.latest(garment)
    return round && noteOf(round, 'armhole')
  }
  type('typed here')
  const round = other.latest(garment)
  if (!round) throw new Error('no round')
  await other.noteZone(round, 'armhole', 'kept over there')
  await expect.poll(() => note()).toBe('kept over there')
  await expect.element(field).toHaveValue('typed here')
  leave()
  await expect.poll(() => note()).toBe('kept over there\ntyped here')
  await expect.element(field).toHaveValue('kept over there\ntyped here')
  await expect.element(screen.getByText('Kept: armhole.')).toBeInTheDocument()
  const before = session.latest(garment)?.zoneNotes.length
  type('kept over there\ntyped here ')
  await tick()
  leave()
  await expect.element(field).toHaveValue('kept over there\ntyped here')
  expect(session.latest(garment)?.zoneNotes.length).toBe(before)
})

it('of the cloth do the same, on one line', async () => {
  const { session, garment } = await seeded(bookOf(MIDDLE))
  await session.putOnPaper(garment)
  const other = await anotherWindow()
  const screen = await render(NotesInApp, { session, garment })
  const field = screen.getByRole('textbox', { name: 'Sewn of' })
  const input = () => field.element() as HTMLInputElement
  input().value = 'calico'
  input().dispatchEvent(new InputEvent('input', { bubbles: true }))
  const round = other.latest(garment)
  if (!round) throw new Error('no round')
  await other.writeNotes(round, 'kept over there')
  await expect.poll(() => session.latest(garment)?.notes).toBe('kept over there')
  await expect.element(field).toHaveValue('calico')
  await other.nameCloth(round, 'lawn, 2 m')
  const cloth = () => {
    const now = session.latest(garment)
    return now && clothOf(now)
  }
  await expect.poll(() => cloth()).toBe('lawn, 2 m')
  await expect.element(field).toHaveValue('calico')
  input().dispatchEvent(new Event('change', { bubbles: true }))
  await expect.poll(() => cloth()).toBe('lawn, 2 m; calico')
  await expect.element(field).toHaveValue('lawn, 2 m; calico')
})
