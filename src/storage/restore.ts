/**
 * A backup brought into the store. It adds, it never writes over: what is the same is skipped,
 * what goes on from the stored work is taken, and a garment that differs is hung beside the
 * present one as a copy with a name that says so. All in one transaction, or nothing.
 */
import type { Round } from '../rounds/round.ts'
import type { BackupContent } from './backup.ts'
import type { Tables } from './db.ts'
import { failed, kept, type Kept } from './failure.ts'
import { continues } from './keep-rounds.ts'
import { loadAll, loadPhotos, type Loaded, type PhotoHere } from './load.ts'
import { packedPhoto } from './packed-photo.ts'
import { BOOK_KEY } from './rows.ts'
import { sameData } from './same.ts'
import { garmentName } from './garment-name.ts'
import type { HungGarment } from './schema/garment.ts'
import type { Store } from './store.ts'
import { uniteBooks } from './unite.ts'
import { DATE_WORDS } from '../units/dates.words.ts'
import { BACKUP_WORDS } from './storage.words.ts'

export interface Restored {
  readonly garments: number
  readonly rounds: number
  readonly photos: number
  /** Names of garments that were hung as copies, because the present ones differ. */
  readonly copies: readonly string[]
  /** Records of the file that could not be read; they are kept aside. */
  readonly aside: number
}

/** Load again afterwards: what a window shows is older than the store then. */
export async function restore(store: Store, content: BackupContent): Promise<Kept<Restored>> {
  // In the open beside locked ones they would lie unguarded until the passphrase is typed.
  if (content.photos.length > 0 && (await store.safe.locked()))
    return failed(BACKUP_WORDS.lockedHere)
  const restored = await store.keep((db) => brought(db, content))
  if (!restored.ok) return restored
  const settled = await store.safe.settle()
  return settled.ok ? restored : settled
}

async function brought(db: Tables, content: BackupContent): Promise<Kept<Restored>> {
  const now = await loadAll(db, content.on)
  const named = content.photos.map(({ photo }) => photo.sha256)
  const here = await loadPhotos(db, { named }, content.on)
  const plan = planned(now, content)
  await db.book.put({ v: 1, id: BOOK_KEY, book: uniteBooks(now.book, content.book) })
  await db.garments.bulkPut([...plan.garments, ...cutAsBefore(now, content)])
  await db.rounds.bulkPut(
    plan.rounds.map((round) => ({
      v: 1,
      id: round.id,
      garmentId: round.garmentId,
      savedTimes: (now.savedTimes[round.id] ?? 0) + 1,
      round,
    })),
  )
  const photos = await restorePhotos(db, here.photos, content, plan.renamed)
  for (const [key, value] of Object.entries(content.settings))
    if (!Object.hasOwn(now.settings, key)) await db.settings.put({ v: 1, key, value })
  const known = here.aside.map(({ table, key, row }) => ({ table, key, row }))
  const aside = content.aside
    .map(({ id: _id, ...row }) => row)
    .filter(({ table, key, row }) => !known.some((k) => sameData(k, { table, key, row })))
  await db.aside.bulkAdd(aside)
  return kept({
    garments: plan.garments.length,
    rounds: plan.rounds.length,
    photos,
    copies: plan.copies,
    aside: aside.length,
  })
}

/** Garments that hang here without having been cut: the file may say how they are. */
const cutAsBefore = (now: Loaded, content: BackupContent): HungGarment[] =>
  now.garments.flatMap((mine) => {
    const { cutting } = content.garments.find(({ id }) => id === mine.id) ?? {}
    return cutting && !mine.cutting ? [{ ...mine, cutting }] : []
  })

interface Plan {
  readonly garments: readonly HungGarment[]
  readonly rounds: readonly Round[]
  readonly copies: readonly string[]
  /** Ids of copied garments and rounds, from old to new. */
  readonly renamed: ReadonlyMap<string, string>
}

/** One garment with its rounds is taken whole or copied whole: a history is never mixed. */
function planned(now: Loaded, content: BackupContent): Plan {
  const garments: HungGarment[] = []
  const rounds: Round[] = []
  const copies: string[] = []
  const renamed = new Map<string, string>()
  const ids = new Set([
    ...content.garments.map(({ id }) => id),
    ...content.rounds.map(({ garmentId }) => garmentId),
  ])
  let order = Math.max(0, ...now.garments.map((g) => g.order))
  for (const id of ids) {
    let hung = content.garments.find((g) => g.id === id)
    let own = content.rounds.filter((r) => r.garmentId === id)
    if (!fits(now, hung, own)) {
      const copy = copied(hung ?? now.garments.find((g) => g.id === id), own, content)
      for (const [i, r] of own.entries()) renamed.set(r.id, copy.rounds[i]?.id ?? r.id)
      renamed.set(id, copy.id)
      hung = copy.hung && { ...copy.hung, order: (order += 1) }
      own = copy.rounds
      // The same backup restored a second time finds its copy already hanging.
      if (hung && !now.garments.some((g) => g.id === copy.id)) copies.push(garmentName(hung))
    }
    const known = hung && now.garments.some((g) => g.id === hung.id)
    if (hung && !known) garments.push(hung)
    rounds.push(...own.filter((r) => adds(now, r)))
  }
  return { garments, rounds, copies, renamed }
}

function fits(now: Loaded, hung: HungGarment | undefined, rounds: readonly Round[]): boolean {
  const mine = hung && now.garments.find((g) => g.id === hung.id)
  if (mine && (mine.garment !== hung.garment || mine.name !== hung.name)) return false
  return rounds.every((r) => {
    const stored = now.rounds.find((s) => s.id === r.id)
    if (stored) return continues(stored, r) || continues(r, stored)
    return !now.rounds.some((s) => s.garmentId === r.garmentId && s.number === r.number)
  })
}

/** A round is written when it is not there, or when it goes on from the one that is. */
function adds(now: Loaded, round: Round): boolean {
  const stored = now.rounds.find((s) => s.id === round.id)
  return !stored || (continues(round, stored) && !continues(stored, round))
}

/** The copy is named after the file, so that restoring it twice gives one copy. */
function copied(
  hung: HungGarment | undefined,
  rounds: readonly Round[],
  { on, sha256 }: BackupContent,
): { id: string; hung: HungGarment | undefined; rounds: Round[] } {
  const named = (id: string): string => `${id}-${sha256.slice(0, 12)}`
  const id = named(hung?.id ?? rounds[0]?.garmentId ?? '')
  return {
    id,
    hung: hung && {
      ...hung,
      id,
      name: BACKUP_WORDS.copyOf(garmentName(hung), DATE_WORDS.short(on.slice(0, 10))),
    },
    rounds: rounds.map((r) => ({
      ...r,
      id: named(r.id),
      garmentId: id,
      ...(r.from === undefined ? {} : { from: named(r.from) }),
    })),
  }
}

/** A photo that was let go here stays let go: its pixels do not come back by the back door. */
async function restorePhotos(
  db: Tables,
  here: readonly PhotoHere[],
  content: BackupContent,
  renamed: ReadonlyMap<string, string>,
): Promise<number> {
  const moved = (id: string | null): string | null => (id === null ? null : (renamed.get(id) ?? id))
  let count = 0
  for (const { photo, pixels } of content.photos) {
    const mine = here.find((p) => p.sha256 === photo.sha256)
    if (!mine) {
      const { garmentId, roundId } = photo
      const row = { ...photo, garmentId: moved(garmentId), roundId: moved(roundId) }
      await db.photos.put(packedPhoto(row))
    }
    if (mine?.here || mine?.removedOn !== undefined || photo.removedOn !== undefined || !pixels)
      continue
    const { sha256 } = photo
    await db.pixels.put({ v: 1, sha256, type: 'image/jpeg', bytes: pixels.buffer })
    count += 1
  }
  return count
}
