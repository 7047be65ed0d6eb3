/** What can go over, and what becomes of it on the other side. Plain functions on the session. */
import type { Thing } from '../../handover/frame.ts'
import type { Outgoing } from '../../handover/sending.ts'
import type { Taken } from '../../handover/taking.ts'
import { failed, kept, type Kept } from '../../storage/failure.ts'
import { withoutMetadata } from '../../storage/jpeg.ts'
import { photosWith, type WhichPhotos } from '../../storage/load.ts'
import type { Restored } from '../../storage/restore.ts'
import type { Session } from '../session.svelte.ts'
import { DATE_WORDS } from '../../units/dates.words.ts'
import { GOODS_WORDS } from './bring.words.ts'

/** What a session gives and takes here. */
export type Shelf = Pick<
  Session,
  'backup' | 'restore' | 'readPhoto' | 'bringPixels' | 'keptPhotos' | 'rounds'
>
/** A photo that came over and is not kept yet: she reads it in Measure or saves it as a file. */
export interface LoosePhoto {
  readonly name: string
  readonly view: Thing['view']
  readonly file: Blob
}

/** The photos that go with one garment, or with everything. */
export const photosFor = ({ rounds }: Pick<Shelf, 'rounds'>, garment?: string): WhichPhotos =>
  garment === undefined ? 'all' : photosWith(garment, rounds)

/** Everything, or one garment, in the form of a backup, and after it the pixels of its photos. */
export async function workToSend(
  shelf: Shelf,
  what: { readonly name: string; readonly garment: string | undefined; readonly photos: boolean },
): Promise<Kept<readonly Outgoing[]>> {
  const { name, garment, photos } = what
  const file = await shelf.backup(garment === undefined ? {} : { garment })
  if (!file.ok) return file
  const work: Outgoing = { kind: 'work', name, file: () => Promise.resolve(file.value) }
  const own = photos ? await shelf.keptPhotos(photosFor(shelf, garment)) : []
  const pixels = own
    .filter(({ here }) => here)
    .map(({ sha256, view, takenOn }): Outgoing => ({
      kind: 'pixels',
      name: GOODS_WORDS.photo(view, DATE_WORDS.short(takenOn)),
      file: () => shelf.readPhoto(sha256),
    }))
  return kept([work, ...pixels])
}

/** Takes one whole thing in; gives what became of it in a sentence for both screens. */
export async function takeIn(
  shelf: Shelf,
  thing: Thing,
  file: Blob,
  loose: (photo: LoosePhoto) => void,
): Promise<Taken> {
  const taken = await takenIn(shelf, thing, file, loose)
  return taken.ok ? { ok: true, sentence: taken.value } : taken
}

async function takenIn(
  shelf: Shelf,
  { kind, name, view }: Thing,
  file: Blob,
  loose: (photo: LoosePhoto) => void,
): Promise<Kept<string>> {
  if (kind === 'work') {
    const restored = await shelf.restore(await file.text())
    return restored.ok ? kept(restoredWords(restored.value)) : restored
  }
  if (kind === 'pixels') {
    const brought = await shelf.bringPixels(file)
    if (!brought.ok) return brought
    return kept(brought.value.how === 'kept' ? GOODS_WORDS.kept : GOODS_WORDS.letGoThere)
  }
  const bytes = withoutMetadata(new Uint8Array(await file.arrayBuffer()))
  if (!bytes) return failed(GOODS_WORDS.noJpeg)
  loose({ name, view, file: new Blob([bytes], { type: 'image/jpeg' }) })
  return kept(view ? GOODS_WORDS.inMeasure(view) : GOODS_WORDS.asFile)
}

const restoredWords = ({ garments, rounds, copies }: Restored): string =>
  GOODS_WORDS.restored(garments, rounds, copies)
