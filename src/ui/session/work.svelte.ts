/** Her work as it is shown: the tape book, the garments on the rail, their rounds. */
import { emptyBook, type Book } from '../../measurements/book.ts'
import type { View } from '../../capture/reading.ts'
import type { Round } from '../../rounds/round.ts'
import type { PhotosAre } from '../../storage/photo-safe.ts'
import type { AsideRow } from '../../storage/rows.ts'
import type { HungGarment } from '../../storage/schema/garment.ts'
import type { Store } from '../../storage/store.ts'
import { Undoing } from '../undo/undoing.svelte.ts'

/** Clock and names come from outside, so that a test can set them. */
export interface World {
  readonly now: () => Date
  readonly newId: () => string
}

export class Work {
  book = $state.raw<Book>(emptyBook())
  garments = $state.raw<readonly HungGarment[]>([])
  rounds = $state.raw<readonly Round[]>([])
  /** Whether the photos can be looked at: in the open, unlocked in this window, or locked. */
  photosAre = $state.raw<PhotosAre>('open')
  /** Rows that could not be read; they stay in the store untouched. */
  aside = $state.raw<readonly AsideRow[]>([])
  /** Why the last thing was not kept, and what to do; undefined when all is kept. */
  problem = $state.raw<string | undefined>()
  /** What the tape has settled since a muslin doubted it; undefined when that is read. */
  answered = $state.raw<string | undefined>()
  opened = $state.raw(false)
  keptAt = $state.raw<Date | undefined>()
  /** When another window of this browser last changed what is shown here. */
  changedElsewhere = $state.raw<Date | undefined>()
  /** Whether the browser has promised not to clear the work when the device gets full. */
  promised = $state.raw<boolean | undefined>()
  /** Photos from another device that wait for the table in Measure; not kept before they are accepted. */
  forMeasure = $state.raw<Readonly<Partial<Record<View, File>>>>({})
  readonly undoing = new Undoing()
  /** How each screen reads the photos it shows once more. */
  photosShown: readonly (() => Promise<void>)[] = []

  protected readonly store: Store
  protected readonly world: World

  constructor(store: Store, world: World) {
    this.store = store
    this.world = world
  }

  now = (): Date => this.world.now()
  today = (): string => this.now().toISOString().slice(0, 10)
  garment = (id: string): HungGarment | undefined => this.garments.find((g) => g.id === id)
  roundsOf = (garmentId: string): readonly Round[] =>
    this.rounds.filter((r) => r.garmentId === garmentId).sort((a, b) => a.number - b.number)
  latest = (garmentId: string): Round | undefined => this.roundsOf(garmentId).at(-1)
  /** Photos may have changed: resolved once every screen shows them as they are. */
  showPhotosAnew = async (): Promise<void> => {
    await Promise.all(this.photosShown.map((read) => read()))
  }
}
