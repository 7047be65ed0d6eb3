/**
 * Her work while the page is open: the tape book, the garments on the rail, their rounds. Every
 * method calls a pure function, waits until the store has kept the result, and only then shows
 * it; when keeping fails, nothing changes on the screen but the sentence that says why. Edits wait
 * for one another, and what another window kept is read in between them, so each is made on the
 * work as it is. Long, because book, rounds and photos must be kept in one order: an edit of the book moves rounds.
 */
import { createContext } from 'svelte'
import type { MuslinSight } from '../capture/muslin-sight.ts'
import type { ViewReading } from '../capture/reading.ts'
import type { ChoiceId, Choices } from '../draft/choices.ts'
import type { Draft, GarmentId } from '../draft/draft.ts'
import { draft, GARMENTS, standardFor } from '../draft/garments.ts'
import { NO_OWN_WORK, type OwnWork } from '../draft/own-work.ts'
import type { Corrected } from '../fitting/apply.ts'
import type { Correction } from '../fitting/correction.ts'
import type { NewCorrection } from '../fitting/propose.ts'
import {
  addTape,
  doubtAll,
  emptyBook,
  keptReadings,
  propose,
  proposeAll,
  tapeAnew,
  tapeStands,
  withdrawTape,
  type Book,
  type NewDoubt,
} from '../measurements/book.ts'
import type { MeasurementId } from '../measurements/catalogue.ts'
import { confirm, knows, preview, type Confirmed, type Missing } from '../measurements/confirmed.ts'
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
import { withCarried } from '../rounds/lasting.ts'
import type { PaperWork, Worn } from '../rounds/worn.ts'
import type { Zone } from '../rounds/zones.ts'
import { readBackup, writeBackup } from '../storage/backup.ts'
import { CHANGED_ELSEWHERE, type Kept } from '../storage/failure.ts'
import type { PhotoHere } from '../storage/load.ts'
import { mergedGarment } from '../storage/merge-garment.ts'
import { restore, type Restored } from '../storage/restore.ts'
import { sameData } from '../storage/same.ts'
import { sealed } from '../storage/sealed.ts'
import type { AsideRow } from '../storage/rows.ts'
import type { HungGarment } from '../storage/schema/garment.ts'
import type { PhotoView } from '../storage/schema/photo.ts'
import type { Store } from '../storage/store.ts'
import type { Mm } from '../units/length.ts'
import {
  changeMade,
  changeTakenBack,
  choicesChanged,
  garmentChanged,
  hung as wasHung,
  notesWritten,
  readingCorrected,
  readingTyped,
  readingWithdrawn,
  saidTapeStands,
  tapedAnew,
} from './undo/act-words.ts'
import { Undoing, type Act } from './undo/undoing.svelte.ts'

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
  /** When another window of this browser last changed what is shown here. */
  changedElsewhere = $state.raw<Date | undefined>()
  /** Whether the browser has promised not to clear the work when the device gets full. */
  promised = $state.raw<boolean | undefined>()
  readonly undoing = new Undoing()

  readonly #store: Store
  readonly #world: World

  constructor(store: Store, world: World) {
    this.#store = store
    this.#world = world
  }

  async open(): Promise<void> {
    await this.#inTurn(() => this.#load())
    this.promised = await this.#store.promised()
    this.#store.watch(() => void this.#readElsewhere())
  }
  async #load(): Promise<void> {
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

  /** Several calls of another window while one edit is under way are answered by one reading. */
  #readElsewhere(): Promise<void> {
    this.#waiting ??= this.#inTurn(async () => {
      this.#waiting = undefined
      await this.#load()
      this.changedElsewhere = this.#world.now()
    })
    return this.#waiting
  }
  #waiting: Promise<void> | undefined

  /**
   * One edit after another, each on what the one before left: two equal readings typed in quick
   * succession are two readings, and not one that was united with itself.
   */
  #inTurn<T>(edit: () => Promise<T>): Promise<T> {
    const turn = this.#lastEdit.then(edit)
    this.#lastEdit = turn.catch(() => undefined)
    return turn
  }
  #lastEdit: Promise<unknown> = Promise.resolve()

  /** Does an act in turn; once it is kept it can be taken back. */
  #act(act: Act): Promise<boolean> {
    return this.#inTurn(async () => {
      const done = await act.again()
      if (done) this.undoing.did(act)
      return done
    })
  }
  undo = (): Promise<boolean> => this.#inTurn(() => this.undoing.back())
  redo = (): Promise<boolean> => this.#inTurn(() => this.undoing.again())

  // The tape book

  typeReading = (id: MeasurementId, value: Mm): Promise<boolean> =>
    this.#act({
      what: readingTyped(id, value),
      again: () => this.#editBook((book) => addTape(book, id, value, this.today())),
      back: () => this.#withdraw(id, value),
    }).then((done) => {
      // Asked with the first number: before it there is nothing to keep.
      if (done && !this.#asked && this.promised === false) void this.askToKeep()
      return done
    })
  withdrawReading = (id: MeasurementId, index: number): Promise<boolean> => {
    const { value } = this.#reading(id, index)
    return this.#act({
      what: readingWithdrawn(id, value),
      again: () => this.#withdraw(id, value, index),
      back: () => this.#editBook((book) => addTape(book, id, value, this.today())),
    })
  }
  /** One reading typed over another: the old one is withdrawn and stays in the book, marked. */
  correctReading = (id: MeasurementId, index: number, value: Mm): Promise<boolean> => {
    const old = this.#reading(id, index).value
    const exchange = (from: Mm, to: Mm, at?: number) =>
      this.#withdraw(id, from, at, (book) => addTape(book, id, to, this.today()))
    return this.#act({
      what: readingCorrected(id, old, value),
      again: () => exchange(old, value, index),
      back: () => exchange(value, old),
    })
  }
  propose = (outcomes: EstimateOutcomes): Promise<boolean> =>
    this.#inTurn(() => this.#editBook((book) => proposeAll(book, outcomes, this.today())))

  /** Numbers that a muslin speaks against: they wait in the book to be taped again. */
  doubt = (list: readonly NewDoubt[]): Promise<boolean> =>
    list.length === 0
      ? Promise.resolve(true)
      : this.#inTurn(() => this.#editBook((book) => doubtAll(book, list)))

  /** Asked which is right, tape or photo: the tape. */
  tapeStands = (id: MeasurementId): Promise<boolean> => {
    const asked = this.book[id]?.proposal
    if (!asked) return Promise.resolve(false)
    return this.#act({
      what: saidTapeStands(id),
      again: () => this.#editBook((book) => tapeStands(book, id, this.today())),
      back: () => this.#editBook((book) => propose(book, id, asked.estimate, asked.on)),
    })
  }
  /** Neither: all readings are withdrawn, and it is taped anew. */
  tapeAnew = (id: MeasurementId): Promise<boolean> => {
    const values = keptReadings(this.book[id], id).map(({ reading }) => reading.value)
    return this.#act({
      what: tapedAnew(id),
      again: () => this.#editBook((book) => tapeAnew(book, id)),
      back: () =>
        this.#editBook((book) =>
          values.reduce((b, value) => addTape(b, id, value, this.today()), book),
        ),
    })
  }

  #reading(id: MeasurementId, index: number) {
    const reading = this.book[id]?.tape[index]
    if (!reading) throw new Error(`session: ${id} has no reading ${index}`)
    return reading
  }
  /** By its value: another window may have brought its own readings into the list meanwhile. */
  #withdraw(
    id: MeasurementId,
    value: Mm,
    index?: number,
    then: (book: Book) => Book = (book) => book,
  ): Promise<boolean> {
    const tape = this.book[id]?.tape ?? []
    const meant = tape[index ?? -1]
    const at =
      index !== undefined && meant?.value === value && !meant.withdrawn
        ? index
        : tape.findLastIndex((r) => r.value === value && !r.withdrawn)
    return at < 0
      ? Promise.resolve(false)
      : this.#editBook((book) => then(withdrawTape(book, id, at)))
  }

  async #editBook(change: (book: Book) => Book): Promise<boolean> {
    const kept = await this.#kept(this.#store.saveBook(change(this.book)))
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
  keepPhoto(
    jpeg: Blob,
    photo: { view: PhotoView; garmentId?: string; roundId?: string; reading?: ViewReading },
  ): Promise<string | undefined> {
    return this.#inTurn(async () => {
      const about = { garmentId: null, roundId: null, takenOn: this.today(), ...photo }
      const kept = await this.#kept(this.#store.savePhoto(jpeg, about))
      if (!kept) return undefined
      const here: PhotoHere = { v: 1, sha256: kept.value, ...about, here: true }
      this.photos = [...this.photos.filter((p) => p.sha256 !== here.sha256), here]
      return here.sha256
    })
  }
  /** What was read from a photo of a muslin, or traced on it, is kept with the photo. */
  async noteRead(
    sha256: string,
    read: { readonly reading?: ViewReading; readonly muslin?: MuslinSight },
  ): Promise<boolean> {
    const kept = await this.#kept(this.#store.noteRead(sha256, read))
    if (!kept) return false
    this.photos = this.photos.map((p) => (p.sha256 === sha256 ? { ...p, ...read } : p))
    return true
  }
  photo = (sha256: string | undefined): PhotoHere | undefined =>
    this.photos.find((p) => p.sha256 === sha256)
  async readPhoto(sha256: string): Promise<Blob | undefined> {
    const read = await this.#store.readPhoto(sha256)
    return read.ok ? read.value : undefined
  }
  /** "Keep the numbers, let the photo go." */
  letPhotoGo(sha256: string): Promise<boolean> {
    return this.#inTurn(async () => {
      const kept = await this.#kept(this.#store.letPhotoGo(sha256, this.today()))
      if (!kept) return false
      this.photos = this.photos.map((p) =>
        p.sha256 === sha256 ? { ...p, here: false, removedOn: this.today() } : p,
      )
      this.rounds = this.rounds.map((r) => kept.value.find((changed) => changed.id === r.id) ?? r)
      return true
    })
  }

  // The rail

  async hang(
    garment: GarmentId,
    name: string = GARMENTS[garment].name,
    carried: readonly Correction[] = [],
  ): Promise<string | undefined> {
    const hung: HungGarment = {
      v: 1,
      id: this.#world.newId(),
      garment,
      name,
      hungOn: this.today(),
      order: Math.max(0, ...this.garments.map((g) => g.order)) + 1,
      ...(carried.length > 0 ? { carried } : {}),
    }
    const done = await this.#act({
      what: wasHung(hung),
      again: () => {
        const { takenOffOn: _off, ...again } = this.garment(hung.id) ?? hung
        return this.#keepGarment(again)
      },
      back: () => {
        const now = this.garment(hung.id)
        return now && !now.takenOffOn
          ? this.#keepGarment({ ...now, takenOffOn: this.today() })
          : Promise.resolve(false)
      },
    })
    return done ? hung.id : undefined
  }
  /** `seen`: the garment as it was shown when she began to change it. */
  changeGarment(garment: HungGarment, seen = this.garment(garment.id)): Promise<boolean> {
    return seen ? this.#exchange(seen, garment) : Promise.resolve(false)
  }
  /** What was changed between `before` and `after` is changed of the garment as it is now. */
  #exchange(before: HungGarment, after: HungGarment): Promise<boolean> {
    const make = (from: HungGarment, to: HungGarment) => {
      const now = this.garment(from.id)
      const next = now && mergedGarment(from, to, now)
      if (next) return this.#keepGarment(next)
      this.problem = CHANGED_ELSEWHERE
      return Promise.resolve(false)
    }
    return this.#act({
      what: garmentChanged(before, after),
      again: () => make(before, after),
      back: () => make(after, before),
    })
  }
  async #keepGarment(garment: HungGarment): Promise<boolean> {
    const kept = await this.#kept(this.#store.saveGarment(garment))
    if (!kept) return false
    this.garments = this.garments.some(({ id }) => id === garment.id)
      ? this.garments.map((g) => (g.id === garment.id ? kept.value : g))
      : [...this.garments, kept.value]
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
  /** Lengths of a piece she drew by hand, and of a garment she likes. */
  ownWork = (id: string): OwnWork => this.garment(id)?.own ?? NO_OWN_WORK
  changeOwn = (id: string, change: (own: OwnWork) => OwnWork): Promise<boolean> => {
    const hung = this.garment(id)
    return hung
      ? this.changeGarment({ ...hung, own: change(this.ownWork(id)) })
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
      const fresh = this.#firstRound('unsaved', hung, taped.body)
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
    return this.#firstRound(this.#world.newId(), hung, taped.body)
  }
  #firstRound(
    id: string,
    { id: garmentId, garment, carried }: HungGarment,
    body: Confirmed,
  ): Round {
    const first = firstRound({ id, garmentId }, garment, body, this.today())
    return carried ? withCarried(first, carried) : first
  }
  async #changeOpen(garmentId: string, change: (open: Round) => Round): Promise<Round | undefined> {
    const open = await this.#openRound(garmentId)
    if (!open) return undefined
    const changed = change(open)
    return (await this.#keepRound(changed)) ? changed : undefined
  }
  #change(garmentId: string, change: (open: Round) => Round): Promise<boolean> {
    return this.#inTurn(async () => (await this.#changeOpen(garmentId, change)) !== undefined)
  }
  /** A change of one round, made on it as it is when its turn comes. */
  #changeRound(round: Round, change: (now: Round) => Round): Promise<boolean> {
    return this.#inTurn(() => this.#keepRound(change(this.#asItIs(round))))
  }
  #asItIs = (round: Round): Round => this.rounds.find(({ id }) => id === round.id) ?? round
  /** The round an act went into, while it is still the one that may be changed. */
  #stillOpen(done: Round | undefined): Round | undefined {
    const last = done && this.latest(done.garmentId)
    return last?.id === done?.id && !last?.printed ? last : undefined
  }

  /** Begins the round after the one on paper, as it is, so that it can be looked at and changed. */
  startNext = (garmentId: string): Promise<boolean> => this.#change(garmentId, (r) => r)
  /** A further muslin from a round on paper, whatever was made since; what was taped again enters. */
  branch = (round: Round): Promise<boolean> =>
    this.#inTurn(() => {
      const last = this.latest(round.garmentId) ?? round
      const from = this.#asItIs(round)
      const next = branchFrom(from, last.number + 1, this.#world.newId(), this.today())
      const again = this.#confirmed(round.garment)
      return this.#keepRound(again.ok ? withBody(next, again.body) : next)
    })
  turnChoice = (garmentId: string, id: ChoiceId, value: Mm): Promise<boolean> =>
    this.changeChoices(garmentId, (c) => ({ ...c, [id]: value }))
  /** Words as well as amounts, and several at once; `change` gets the choices of the open round. */
  changeChoices(garmentId: string, change: (choices: Choices) => Choices): Promise<boolean> {
    let [before, after] = [standardFor('blouse'), standardFor('blouse')]
    let done: Round | undefined
    let changed: readonly (keyof Choices)[] = []
    return this.#act({
      what: (units) => choicesChanged(before, after, changed)(units),
      again: async () => {
        const kept = await this.#changeOpen(garmentId, (open) => {
          before = open.choices
          after = change(before)
          return withChoices(open, after)
        })
        if (!kept) return false
        done = kept
        changed = choiceKeys(after).filter((id) => !sameData(before[id], after[id]))
        return true
      },
      back: () => {
        const open = this.#stillOpen(done)
        const mine = open && changed.every((id) => sameData(open.choices[id], after[id]))
        if (!open || !mine) return Promise.resolve(false)
        const former = Object.fromEntries(changed.map((id) => [id, before[id]]))
        return this.#keepRound(withChoices(open, { ...open.choices, ...former }))
      },
    })
  }
  makeChange(garmentId: string, correction: NewCorrection): Promise<boolean> {
    if (correction.kind === 'withdraw') return this.takeBack(garmentId, correction.correction)
    return this.#act({
      what: changeMade(correction.because),
      ...this.#decides(garmentId, correction),
    })
  }
  takeBack(garmentId: string, id: string): Promise<boolean> {
    const made = this.latest(garmentId)?.corrections.find((c) => c.id === id)
    if (!made || made.kind === 'withdraw') return Promise.resolve(false)
    const { id: _id, v: _v, ...correction } = made
    const decision = this.#decides(garmentId, correction, id)
    return this.#act({
      what: changeTakenBack(made.because),
      again: decision.back,
      back: decision.again,
    })
  }
  /** A change and the decision that takes it back; made again it is a new decision of its own. */
  #decides(garmentId: string, correction: NewCorrection, kept?: string) {
    let id = kept
    let done: Round | undefined
    const decide = async (next: NewCorrection, named: string): Promise<boolean> => {
      if (done && !this.#stillOpen(done)) return false
      const made = await this.#changeOpen(garmentId, (r) =>
        withCorrection(r, { ...next, v: 1, id: named }),
      )
      done = made ?? done
      return made !== undefined
    }
    return {
      again: () => {
        id = this.#world.newId()
        return decide(correction, id)
      },
      back: async () => {
        const round = (await this.#openRound(garmentId))?.number
        if (id === undefined || round === undefined) return false
        return decide({ kind: 'withdraw', correction: id, round }, this.#world.newId())
      },
    }
  }
  /** The round goes on paper, printed or drawn by hand: from here on it is as it is. */
  putOnPaper = (garmentId: string, work?: Omit<PaperWork, 'on'>): Promise<boolean> =>
    this.#inTurn(async () => {
      const on = this.today()
      if (!this.latest(garmentId)?.printed)
        if ((await this.#changeOpen(garmentId, (r) => close(r, on))) === undefined) return false
      const round = this.latest(garmentId)
      const same = (w: PaperWork) => w.how === work?.how && w.about === work.about && w.on === on
      // Saved twice on one day it is one sheet on her table.
      if (!round || !work || round.paperWork.some(same)) return true
      return this.#keepRound(withWorn(round, 'paperWork', { ...work, on }))
    })
  noteSeen = (round: Round, seen: Omit<Seen, 'on'>): Promise<boolean> =>
    this.#changeRound(round, (now) => withSeen(now, { ...seen, on: this.today() }))
  notePhoto = (round: Round, view: PhotoView, sha256: string, zone?: Zone): Promise<boolean> =>
    this.#changeRound(round, (now) =>
      withPhoto(now, { view, sha256, ...(zone && { zone }), addedOn: this.today() }),
    )
  /** What was worn: a movement, a note of a zone, the cloth, the verdict, a page that was printed. */
  noteWorn = <K extends keyof Worn>(
    round: Round,
    what: K,
    entry: Omit<Worn[K][number], 'on'>,
  ): Promise<boolean> =>
    this.#changeRound(round, (now) =>
      withWorn(now, what, { ...entry, on: this.today() } as Worn[K][number]),
    )
  /** `round` as the screen shows it; where its notes were changed meanwhile both texts are kept. */
  writeNotes(round: Round, notes: string): Promise<boolean> {
    const write = (from: string, to: string) => {
      const now = this.#asItIs(round)
      return this.#keepRound(withNotes(now, now.notes === from ? to : `${now.notes}\n${to}`))
    }
    return this.#act({
      what: notesWritten(round.number),
      again: () => write(round.notes, notes),
      back: () =>
        this.#asItIs(round).notes === notes ? write(notes, round.notes) : Promise.resolve(false),
    })
  }

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
    return this.#inTurn(async () => {
      const restored = await restore(this.#store, read.content)
      if (restored.ok) await this.#load()
      return restored
    })
  }
  room = () => this.#store.room()
  /** Asks the browser to promise that the work is not cleared when the device gets full. */
  async askToKeep(): Promise<void> {
    this.#asked = true
    this.promised = await this.#store.persist()
  }
  #asked = false

  today = (): string => this.#world.now().toISOString().slice(0, 10)

  #confirmed(garment: GarmentId) {
    const { needs, uses } = GARMENTS[garment]
    return confirm(this.book, needs, uses)
  }
  async #kept<T>(saving: Promise<Kept<T>>): Promise<{ readonly value: T } | undefined> {
    const outcome = await saving
    if (!outcome.ok) {
      this.problem = outcome.sentence
      if (outcome.sentence === CHANGED_ELSEWHERE) void this.#readElsewhere()
      return undefined
    }
    this.problem = undefined
    this.keptAt = this.#world.now()
    return { value: outcome.value }
  }
}

const choiceKeys = (choices: Choices) => Object.keys(choices) as (keyof Choices)[]

export const [useSession, provideSession] = createContext<Session>()
