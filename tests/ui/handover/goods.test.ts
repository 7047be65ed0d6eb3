/** What goes over and what becomes of it. JPEG by its own marks (ITU-T T.81, annex B). */
import { expect, test } from 'vitest'
import type { Thing } from '../../../src/handover/frame.ts'
import { failed, kept } from '../../../src/storage/failure.ts'
import type { PhotoHere } from '../../../src/storage/load.ts'
import { takeIn, workToSend, type LoosePhoto, type Shelf } from '../../../src/ui/handover/goods.ts'
import { phonePhoto } from '../../storage/invented.ts'

const SHA = 'cd'.repeat(32)
const row = (sha256: string, garmentId: string | null, here: boolean): PhotoHere => ({
  v: 1,
  sha256,
  view: 'front',
  garmentId,
  roundId: null,
  takenOn: '2026-11-20',
  here,
})
const KEPT = [row('a1', 'g1', true), row('a2', 'g1', false), row('b1', null, true)]
const belongs =
  (garment: string | null | undefined) =>
  ({ garmentId }: PhotoHere) =>
    garmentId === garment
function shelf(change: Partial<Shelf> = {}): Shelf {
  return {
    rounds: [],
    keptPhotos: async (which) => (which === 'all' ? KEPT : KEPT.filter(belongs(which.garment))),
    backup: async ({ garment } = {}) => kept(new Blob([`backup of ${garment ?? 'all'}`])),
    restore: async () => kept({ garments: 1, rounds: 2, photos: 0, copies: [], aside: 0 }),
    readPhoto: async (sha256) => new Blob([sha256]),
    bringPixels: async () => kept({ sha256: SHA, how: 'kept' }),
    ...change,
  }
}
const thing = (kind: Thing['kind'], view?: Thing['view']): Thing => ({
  kind,
  name: 'sent.jpg',
  ...(view && { view }),
  bytes: 1,
  sha256: SHA,
})
async function taken(what: Thing, file: Blob, on: Shelf = shelf()) {
  const loose: LoosePhoto[] = []
  return { ...(await takeIn(on, what, file, (photo) => loose.push(photo))), loose }
}

test('one garment goes with its own photos, everything with all that are here', async () => {
  const wish = { name: 'Blouse', garment: 'g1', photos: true }
  const one = await workToSend(shelf(), wish)
  const files = one.ok ? await Promise.all(one.value.map(({ file }) => file())) : []
  expect(await Promise.all(files.map((file) => file?.text()))).toEqual(['backup of g1', 'a1'])
  const all = await workToSend(shelf(), { ...wish, garment: undefined })
  expect(all.ok && all.value.map(({ kind }) => kind)).toEqual(['work', 'pixels', 'pixels'])
  const bare = await workToSend(shelf(), { ...wish, photos: false })
  expect(bare.ok && bare.value.map(({ kind }) => kind)).toEqual(['work'])
})

test('a backup that cannot be written is said and nothing goes', async () => {
  const full = shelf({ backup: async () => failed('No room.') })
  expect(await workToSend(full, { name: 'x', garment: undefined, photos: true })).toEqual({
    ok: false,
    sentence: 'No room.',
  })
})

test('work is united with what is there, and copies are named', async () => {
  expect((await taken(thing('work'), new Blob(['{}']))).sentence).toContain('garments 1, rounds 2')
  const beside = shelf({
    restore: async () => kept({ garments: 1, rounds: 0, photos: 0, copies: ['Blue'], aside: 0 }),
  })
  expect((await taken(thing('work'), new Blob(['{}']), beside)).sentence).toContain('copies: Blue.')
})

test('a photo is held ready without its metadata; what is none is refused', async () => {
  const photo = phonePhoto()
  const front = await taken(thing('photo', 'front'), photo)
  expect(front).toMatchObject({ ok: true, loose: [{ name: 'sent.jpg', view: 'front' }] })
  const bytes = new Uint8Array((await front.loose[0]?.file.arrayBuffer()) ?? new ArrayBuffer(0))
  const text = Buffer.from(bytes).toString('latin1')
  expect(text.startsWith('\xff\xd8')).toBe(true)
  expect(text).not.toContain('Exif')
  expect((await taken(thing('photo'), photo)).sentence).toContain('saved as a file')
  const page = await taken(thing('photo', 'side'), new Blob(['<svg onload="alert(1)">']))
  expect(page).toMatchObject({ ok: false, loose: [] })
})

test('pixels that were let go there stay so, and it is said', async () => {
  const gone = shelf({ bringPixels: async () => kept({ sha256: SHA, how: 'letGoBefore' }) })
  expect((await taken(thing('pixels'), new Blob(['x']), gone)).sentence).toContain('let go there')
})
