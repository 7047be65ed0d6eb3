/**
 * Her work while the page is open, and everything the screens may do with it. How it is done lies
 * in `session/`: `work` is what is shown, `keeping` the one order in which all of it is kept, and
 * each of the others one kind of act.
 */
import { createContext } from 'svelte'
import type { MeasurementId } from '../measurements/catalogue.ts'
import { takeStandInsBack } from './session/answered.ts'
import { ChangeActs } from './session/change-acts.ts'
import { Keeping } from './session/keeping.ts'
import { LockActs } from './session/lock-acts.ts'
import { OpenRound } from './session/open-round.ts'
import { PhotoActs } from './session/photo-acts.ts'
import { RailActs } from './session/rail-acts.ts'
import { RoundActs } from './session/round-acts.ts'
import { SafeKeeping } from './session/safe-keeping.ts'
import { TapeActs } from './session/tape-acts.ts'
import { WishActs } from './session/wish-acts.ts'
import { Work } from './session/work.svelte.ts'

export class Session extends Work {
  readonly #keeping = new Keeping(this, this.store, this.world)
  readonly #safe = new SafeKeeping(this.#keeping)
  readonly #tape = new TapeActs(this.#keeping, this.#safe)
  readonly #photos = new PhotoActs(this.#keeping)
  readonly #lock = new LockActs(this.#keeping)
  readonly #rail = new RailActs(this.#keeping)
  readonly #wishes = new WishActs(this, this.#rail)
  readonly #open = new OpenRound(this.#keeping)
  readonly #rounds = new RoundActs(this.#keeping, this.#open)
  readonly #changes = new ChangeActs(this.#keeping, this.#open)

  open = this.#keeping.open
  undo = this.#keeping.undo
  redo = this.#keeping.redo

  typeReading: TapeActs['typeReading'] = (id, value) =>
    this.#heard(id, this.#tape.typeReading(id, value))
  withdrawReading = this.#tape.withdrawReading
  correctReading: TapeActs['correctReading'] = (id, index, value) =>
    this.#heard(id, this.#tape.correctReading(id, index, value))
  async #heard(id: MeasurementId, reading: Promise<boolean>): Promise<boolean> {
    const done = await reading
    if (done) await takeStandInsBack(this, this.#changes, id)
    return done
  }
  propose = this.#tape.propose
  doubt = this.#tape.doubt
  tapeStands = this.#tape.tapeStands
  tapeAnew = this.#tape.tapeAnew

  keepPhoto = this.#photos.keepPhoto
  addPhoto = this.#photos.addPhoto
  noteRead = this.#photos.noteRead
  keptPhotos = this.#photos.keptPhotos
  readPhoto = this.#photos.readPhoto
  bringPixels = this.#photos.bringPixels
  letPhotoGo = this.#photos.letPhotoGo
  keepCovered = this.#photos.keepCovered

  setPassphrase = this.#lock.setPassphrase
  unlockPhotos = this.#lock.unlockPhotos
  lockPhotos = this.#lock.lockPhotos
  changePassphrase = this.#lock.changePassphrase
  takeOffPassphrase = this.#lock.takeOffPassphrase
  letLockedGo = this.#lock.letLockedGo

  hang = this.#rail.hang
  changeGarment = this.#rail.changeGarment
  cutWishes = this.#wishes.cutWishes
  changeCut = this.#wishes.changeCut
  clothWishes = this.#wishes.clothWishes
  changeCloth = this.#wishes.changeCloth
  laid = this.#wishes.laid
  keepLaid = this.#wishes.keepLaid
  ownWork = this.#wishes.ownWork
  changeOwn = this.#wishes.changeOwn
  tickSewn = this.#wishes.tickSewn
  sewAnew = this.#wishes.sewAnew

  startNext = this.#rounds.startNext
  branch = this.#rounds.branch
  putOnPaper = this.#rounds.putOnPaper
  notePlan = this.#rounds.notePlan
  noteSeen = this.#rounds.noteSeen
  noteWorn = this.#rounds.noteWorn
  noteZone = this.#rounds.noteZone
  nameCloth = this.#rounds.nameCloth
  writeNotes = this.#rounds.writeNotes
  turnChoice = this.#changes.turnChoice
  changeChoices = this.#changes.changeChoices
  makeChange = this.#changes.makeChange
  takeBack = this.#changes.takeBack

  backup = this.#safe.backup
  restore = this.#safe.restore
  room = this.#safe.room
  askToKeep = this.#safe.askToKeep
}

export const [useSession, provideSession] = createContext<Session>()
