/** Pixels after their garment: kept for the photo they belong to, byte for byte, and for no other. */
import { createHash } from 'node:crypto'
import { expect, test } from 'vitest'
import { readBackup, writeBackup } from '../../src/storage/backup.ts'
import { bringPixels } from '../../src/storage/bring-pixels.ts'
import { restore } from '../../src/storage/restore.ts'
import type { Store } from '../../src/storage/store.ts'
import { FIRST, GARMENT, phonePhoto, withRef } from './invented.ts'
import { device, loaded, opened, TODAY, value } from './opened.ts'

/** A photo on one device, and another that has its record without the pixels. */
async function twoDevices(): Promise<{ from: Store; to: Store; sha256: string }> {
  const [from, to] = [await opened(device()), await opened(device())]
  value(await from.saveGarment(GARMENT))
  const about = { view: 'front', garmentId: 'g1', roundId: 'r1', takenOn: TODAY } as const
  const { sha256 } = value(await from.savePhoto(phonePhoto(), about))
  value(await from.saveRound(withRef(FIRST(), sha256)))
  const read = await readBackup(
    await value(await writeBackup(from, { on: TODAY, photos: false })).text(),
  )
  if (!read.ok) throw new Error(read.sentence)
  value(await restore(to, read.content))
  return { from, to, sha256 }
}
const pixels = async (store: Store, sha256: string): Promise<Blob> => {
  const photo = value(await store.readPhoto(sha256))
  if (!photo) throw new Error('no pixels')
  return photo
}

test('they come to the photo whose record is there, as they were', async () => {
  const { from, to, sha256 } = await twoDevices()
  expect(value(await to.readPhoto(sha256))).toBeUndefined()
  const sent = await pixels(from, sha256)
  expect(value(await bringPixels(to, sent))).toEqual({ sha256, how: 'kept' })
  const here = Buffer.from(await (await pixels(to, sha256)).arrayBuffer())
  expect(createHash('sha256').update(here).digest('hex')).toBe(sha256)
  expect((await loaded(to)).photos.map((photo) => photo.here)).toEqual([true])
})

test('a photo that was let go there stays let go', async () => {
  const { from, to, sha256 } = await twoDevices()
  value(await to.letPhotoGo(sha256, TODAY))
  expect(value(await bringPixels(to, await pixels(from, sha256)))).toEqual({
    sha256,
    how: 'letGoBefore',
  })
  expect(value(await to.readPhoto(sha256))).toBeUndefined()
})

test('a photo of nothing kept, and what is no JPEG, are refused in words', async () => {
  const { from, sha256 } = await twoDevices()
  const bare = await opened(device())
  const alone = await bringPixels(bare, await pixels(from, sha256))
  expect(alone.ok ? '' : alone.sentence).toContain('Bring its garment over first')
  const page = await bringPixels(bare, new Blob(['<script>alert(1)</script>']))
  expect(page.ok ? '' : page.sentence).toContain('no photo')
})
