/**
 * Her work while the page is open: the tape book, the garments on the rail, their rounds. Every
 * method calls a pure function, waits until the store has kept the result, and only then shows
 * it; when keeping fails, nothing changes on the screen but the sentence that says why.
 * Long, because book, rounds and photos must be kept in one order: an edit of the book moves rounds.
 */
import { createContext } from 'svelte'
import type { ViewReading } from '../capture/reading.ts'
import type { ChoiceId, Choices } from '../draft/choices.ts'
import type { Draft, GarmentId } from '../draft/draft.ts'
import { draft, GARMENTS, standardFor } from '../draft/garments.ts'
import type { Corrected } from '../fitting/apply.ts'
import type { NewCorrection } from '../fitting/propose.ts'
import { addTape, emptyBook, proposeAll, withdrawTape, type Book } from '../measurements/book.ts'
import type { MeasurementId } from '../measurements/catalogue.ts'
import { confirm, knows, preview, type Missing } from '../measurements/confirmed.ts'
import type { EstimateOutcomes } from '../measurements/estimate.ts'
import { USUAL_CLOTH, type ClothWishes } from '../layout/cloth-wishes.ts'
import { USUAL_CUT, type CutWishes } from '../output/cutting.ts'
import { ticked } from '../output/sewn.ts'
import {
  branchFrom,
  close,
  firstRound,
  nextRound,
  redraft,
  withBody,
  withChoices,
  withCorrection,
  withNotes,
  withPhoto,
  withSeen,
  withWorn,
  type Round,
  type Seen,
} from '../rounds/round.ts'
import type { Worn } from '../rounds/worn.ts'
import type { Zone } from '../rounds/zones.ts'
import { readBackup, writeBackup } from '../storage/backup.ts'
import type { Kept } from '../storage/failure.ts'
import type { PhotoHere } from '../storage/load.ts'
import { restore, type Restored } from '../storage/restore.ts'
import { sealed } from '../storage/sealed.ts'
import type { AsideRow } from '../storage/rows.ts'
import type { HungGarment } from '../storage/schema/garment.ts'
import type { PhotoView } from '../storage/schema/photo.ts'
import type { Store } from '../storage/store.ts'
import type { Mm } from '../units/length.ts'

/** Clock and names come from outside, so that a test can set them. */
export interface World {
  readonly now: () => Date
  readonly newId: () => string
}

/** What can be drawn for a garment now. */
export type Drawn =
  | { readonly standing: 'confirmed'; readonly round: Round; readonly corrected: Corrected }
  /** From camera numbers and single readings: to look at, never to cut. */
  | { readonly standing: 'preview'; readonly draft: Draft; readonly missing: readonly Missing[] }
  | { readonly standing: 'missing'; readonly missing: readonly Missing[] }

export class Session {
  book = $state.raw<Book>(emptyBook())
  garments = $state.raw<readonly HungGarment[]>([])
  rounds = $state.raw<readonly Round[]>([])
  photos = $state.raw<readonly PhotoHere[]>([])
  /** Rows that could not be read; they stay in the store untouched. */
  aside = $state.raw<readonly AsideRow[]>([])
  /** Why the last thing was not kept, and what to do; undefined when all is kept. */
  problem = $state.raw<string | undefined>()
  opened = $state.raw(false)
  keptAt = $state.raw<Date | undefined>()

  readonly #store: Store
  readonly #world: World

  constructor(store: Store, world: World) {
    this.#store = store
    this.#world = world
  }

  async open(): Promise<void> {
    const loaded = await this.#store.load()
    if (!loaded.ok) {
      this.problem = loaded.sentence
      return
    }
    const { book, garments, rounds, photos, aside } = loaded.value
    this.book = book
    this.garments = garments
    this.rounds = rounds
    this.photos = photos
    this.aside = aside
    this.opened = true
  }

  // The tape book

  typeReading = (id: MeasurementId, value: Mm): Promise<boolean> =>
    this.#keepBook((book) => addTape(book, id, value, this.today()))
  withdrawReading = (id: MeasurementId, index: number): Promise<boolean> =>
    this.#keepBook((book) => withdrawTape(book, id, index))
  propose = (outcomes: EstimateOutcomes): Promise<boolean> =>
    this.#keepBook((book) => proposeAll(book, outcomes, this.today()))

  /**
   * One edit after another, each on the book the one before left: two equal readings typed in
   * quick succession are two readings, and not one that was united with itself.
   */
  #keepBook(change: (book: Book) => Book): Promise<boolean> {
    const turn = this.#lastEdit.then(() => this.#editBook(change(this.book)))
    this.#lastEdit = turn.catch(() => false)
    return turn
  }
  #lastEdit: Promise<boolean> = Promise.resolve(true)

  async #editBook(book: Book): Promise<boolean> {
    const kept = await this.#kept(this.#store.saveBook(book))
    if (!kept) return false
    this.book = kept.value
    // A round that is not printed follows the book; a printed one never changes.
    for (const round of this.rounds.filter((r) => !r.printed)) {
      const again = this.#confirmed(round.garment)
      if (again.ok) await this.#keepRound(withBody(round, again.body))
    }
    return true
  }

  // Photographs

  /** Keeps a photo with what was read from it; gives its name, or undefined when it was not kept. */
  async keepPhoto(
    jpeg: Blob,
    photo: { view: PhotoView; garmentId?: string; roundId?: string; reading?: ViewReading },
  ): Promise<string | undefined> {
    const about = { garmentId: null, roundId: null, takenOn: this.today(), ...photo }
    const kept = await this.#kept(this.#store.savePhoto(jpeg, about))
    if (!kept) return undefined
    const here: PhotoHere = { v: 1, sha256: kept.value, ...about, here: true }
    this.photos = [...this.photos.filter((p) => p.sha256 !== here.sha256), here]
    return here.sha256
  }
  async readPhoto(sha256: string): Promise<Blob | undefined> {
    const read = await this.#store.readPhoto(sha256)
    return read.ok ? read.value : undefined
  }
  /** "Keep the numbers, let the photo go." */
  async letPhotoGo(sha256: string): Promise<boolean> {
    const kept = await this.#kept(this.#store.letPhotoGo(sha256, this.today()))
    if (!kept) return false
    this.photos = this.photos.map((p) =>
      p.sha256 === sha256 ? { ...p, here: false, removedOn: this.today() } : p,
    )
    this.rounds = this.rounds.map((r) => kept.value.find((changed) => changed.id === r.id) ?? r)
    return true
  }

  // The rail

  async hang(
    garment: GarmentId,
    name: string = GARMENTS[garment].name,
  ): Promise<string | undefined> {
    const hung: HungGarment = {
      v: 1,
      id: this.#world.newId(),
      garment,
      name,
      hungOn: this.today(),
      order: Math.max(0, ...this.garments.map((g) => g.order)) + 1,
    }
    if (!(await this.#kept(this.#store.saveGarment(hung)))) return undefined
    this.garments = [...this.garments, hung]
    return hung.id
  }
  async changeGarment(garment: HungGarment): Promise<boolean> {
    if (!(await this.#kept(this.#store.saveGarment(garment)))) return false
    this.garments = this.garments.map((g) => (g.id === garment.id ? garment : g))
    return true
  }
  /** How it is cut: finishes, allowances, paper, printer. */
  cutWishes = (id: string): CutWishes => this.garment(id)?.cutting ?? USUAL_CUT
  changeCut = (id: string, change: (wishes: CutWishes) => CutWishes): Promise<boolean> => {
    const hung = this.garment(id)
    return hung
      ? this.changeGarment({ ...hung, cutting: change(this.cutWishes(id)) })
      : Promise.resolve(false)
  }
  /** Her cloth: widths, folding, print, shrinkage. */
  clothWishes = (id: string): ClothWishes => this.garment(id)?.cloth ?? USUAL_CLOTH
  changeCloth = (id: string, change: (wishes: ClothWishes) => ClothWishes): Promise<boolean> => {
    const hung = this.garment(id)
    return hung
      ? this.changeGarment({ ...hung, cloth: change(this.clothWishes(id)) })
      : Promise.resolve(false)
  }
  /** A step of the sewing plan is done, or not after all. */
  tickSewn = (id: string, step: string, done: boolean): Promise<boolean> => {
    const hung = this.garment(id)
    const sewn = ticked(hung?.sewn ?? {}, step, done ? this.today() : undefined)
    return hung ? this.changeGarment({ ...hung, sewn }) : Promise.resolve(false)
  }
  /** The plan from its beginning: nothing is sewn. */
  sewAnew = (id: string): Promise<boolean> => {
    const hung = this.garment(id)
    return hung ? this.changeGarment({ ...hung, sewn: {} }) : Promise.resolve(false)
  }
  garment = (id: string): HungGarment | undefined => this.garments.find((g) => g.id === id)
  roundsOf = (garmentId: string): readonly Round[] =>
    this.rounds.filter((r) => r.garmentId === garmentId).sort((a, b) => a.number - b.number)
  latest = (garmentId: string): Round | undefined => this.roundsOf(garmentId).at(-1)

  /** What lies on the table for this garment: its latest round, else a preview, else what is missing. */
  drawn(garmentId: string): Drawn | undefined {
    const hung = this.garment(garmentId)
    if (!hung) return undefined
    const round = this.latest(garmentId)
    if (round) return { standing: 'confirmed', round, corrected: redraft(round) }
    const taped = this.#confirmed(hung.garment)
    if (taped.ok) {
      const fresh = firstRound({ id: 'unsaved', garmentId }, hung.garment, taped.body, this.today())
      return { standing: 'confirmed', round: fresh, corrected: redraft(fresh) }
    }
    const guess = preview(this.book)
    const enough = GARMENTS[hung.garment].needs.every((id) => knows(guess, id))
    return enough
      ? {
          standing: 'preview',
          draft: draft(hung.garment, guess, standardFor(hung.garment)),
          missing: taped.missing,
        }
      : { standing: 'missing', missing: taped.missing }
  }

  // Rounds

  /** The round that may still be changed; made from the last one where that is on paper already. */
  async #openRound(garmentId: string): Promise<Round | undefined> {
    const hung = this.garment(garmentId)
    const last = this.latest(garmentId)
    if (last && !last.printed) return last
    if (last) {
      const next = nextRound(last, this.#world.newId(), this.today())
      const again = this.#confirmed(last.garment)
      // What was taped again since the last muslin enters here.
      return again.ok ? withBody(next, again.body) : next
    }
    const taped = hung && this.#confirmed(hung.garment)
    if (!hung || !taped?.ok) return undefined
    return firstRound(
      { id: this.#world.newId(), garmentId },
      hung.garment,
      taped.body,
      this.today(),
    )
  }
  async #change(garmentId: string, change: (open: Round) => Round): Promise<boolean> {
    const open = await this.#openRound(garmentId)
    return open !== undefined && this.#keepRound(change(open))
  }

  /** Begins the round after the one on paper, as it is, so that it can be looked at and changed. */
  startNext = (garmentId: string): Promise<boolean> => this.#change(garmentId, (r) => r)
  /** A further muslin from a round on paper, whatever was made since; what was taped again enters. */
  branch = (round: Round): Promise<boolean> => {
    const last = this.latest(round.garmentId) ?? round
    const next = branchFrom(round, last.number + 1, this.#world.newId(), this.today())
    const again = this.#confirmed(round.garment)
    return this.#keepRound(again.ok ? withBody(next, again.body) : next)
  }
  turnChoice = (garmentId: string, id: ChoiceId, value: Mm): Promise<boolean> =>
    this.changeChoices(garmentId, (c) => ({ ...c, [id]: value }))
  /** Words as well as amounts, and several at once; `change` gets the choices of the open round. */
  changeChoices = (garmentId: string, change: (choices: Choices) => Choices): Promise<boolean> =>
    this.#change(garmentId, (r) => withChoices(r, change(r.choices)))
  makeChange = (garmentId: string, correction: NewCorrection): Promise<boolean> =>
    this.#change(garmentId, (r) =>
      withCorrection(r, { ...correction, v: 1, id: this.#world.newId() }),
    )
  takeBack = (garmentId: string, correction: string): Promise<boolean> =>
    this.#change(garmentId, (r) =>
      withCorrection(r, {
        v: 1,
        id: this.#world.newId(),
        kind: 'withdraw',
        correction,
        round: r.number,
      }),
    )
  /** The round goes on paper, printed or drawn by hand: from here on it is as it is. */
  putOnPaper = (garmentId: string): Promise<boolean> => {
    const last = this.latest(garmentId)
    return last?.printed
      ? Promise.resolve(true)
      : this.#change(garmentId, (r) => close(r, this.today()))
  }
  noteSeen = (round: Round, seen: Omit<Seen, 'on'>): Promise<boolean> =>
    this.#keepRound(withSeen(round, { ...seen, on: this.today() }))
  notePhoto = (round: Round, view: PhotoView, sha256: string, zone?: Zone): Promise<boolean> =>
    this.#keepRound(
      withPhoto(round, { view, sha256, ...(zone && { zone }), addedOn: this.today() }),
    )
  /** What was worn: a movement, a note of a zone, the cloth, the verdict, a page that was printed. */
  noteWorn = <K extends keyof Worn>(
    round: Round,
    what: K,
    entry: Omit<Worn[K][number], 'on'>,
  ): Promise<boolean> =>
    this.#keepRound(withWorn(round, what, { ...entry, on: this.today() } as Worn[K][number]))
  writeNotes = (round: Round, notes: string): Promise<boolean> =>
    this.#keepRound(withNotes(round, notes))

  async #keepRound(round: Round): Promise<boolean> {
    if (!(await this.#kept(this.#store.saveRound(round)))) return false
    this.rounds = this.rounds.some((r) => r.id === round.id)
      ? this.rounds.map((r) => (r.id === round.id ? round : r))
      : [...this.rounds, round]
    return true
  }

  // Safe keeping

  /** Everything, or one garment, as one file she keeps; photos go in only under a passphrase. */
  async backup(wish: { passphrase?: string; garment?: string } = {}): Promise<Kept<Blob>> {
    const { passphrase, garment } = wish
    const photos = passphrase !== undefined
    const written = await writeBackup(this.#store, { on: this.today(), photos, garment })
    return written.ok && photos ? sealed(await written.value.text(), passphrase) : written
  }
  /** Reads a backup into the present work; a file that cannot be used changes nothing. */
  async restore(text: string): Promise<Kept<Restored>> {
    const read = await readBackup(text)
    if (!read.ok) return read
    const restored = await restore(this.#store, read.content)
    if (restored.ok) await this.open()
    return restored
  }
  room = () => this.#store.room()

  today = (): string => this.#world.now().toISOString().slice(0, 10)

  #confirmed(garment: GarmentId) {
    const { needs, uses } = GARMENTS[garment]
    return confirm(this.book, needs, uses)
  }
  async #kept<T>(saving: Promise<Kept<T>>): Promise<{ readonly value: T } | undefined> {
    const outcome = await saving
    if (!outcome.ok) {
      this.problem = outcome.sentence
      return undefined
    }
    this.problem = undefined
    this.keptAt = this.#world.now()
    return { value: outcome.value }
  }
}

export const [useSession, provideSession] = createContext<Session>()
