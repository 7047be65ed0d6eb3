/** What she does with a round as a whole: begins it, puts it on paper, notes what the muslin showed. */
import {
  branchFrom,
  withNotes,
  withSeen,
  withWorn,
  type Round,
  type Seen,
} from '../../rounds/round.ts'
import { clothOf, noteOf, type PaperWork, type Worn } from '../../rounds/worn.ts'
import type { Zone } from '../../rounds/zones.ts'
import { notesWritten } from '../undo/act-words.ts'
import type { Keeping } from './keeping.ts'
import type { OpenRound } from './open-round.ts'
import type { Work } from './work.svelte.ts'

export class RoundActs {
  readonly #keeping: Keeping
  readonly #work: Work
  readonly #open: OpenRound

  constructor(keeping: Keeping, open: OpenRound) {
    this.#keeping = keeping
    this.#work = keeping.work
    this.#open = open
  }

  /** Begins the round after the one on paper, as it is, so that it can be looked at and changed. */
  startNext = (garmentId: string): Promise<boolean> => this.#open.change(garmentId, (r) => r)
  /** A further muslin from a round on paper, whatever was made since; what was taped again enters. */
  branch = (round: Round): Promise<boolean> =>
    this.#keeping.inTurn(() => {
      const last = this.#work.latest(round.garmentId) ?? round
      const from = this.#open.asItIs(round)
      const [number, id] = [last.number + 1, this.#keeping.newId()]
      return this.#keeping.keepRound(
        this.#open.retaped(branchFrom(from, number, id, this.#work.today())),
      )
    })
  /** The round goes on paper, printed or drawn by hand: from here on it is as it is. */
  putOnPaper = (garmentId: string, work?: Omit<PaperWork, 'on'>): Promise<boolean> =>
    this.#keeping.inTurn(async () => {
      const on = this.#work.today()
      if (!this.#work.latest(garmentId)?.printed) {
        const { close } = await import('../../rounds/redraft.ts')
        if ((await this.#open.changed(garmentId, (r) => close(r, on))) === undefined) return false
      }
      return work === undefined || this.#note(this.#work.latest(garmentId), work)
    })
  /** A plan was printed: noted with its round, which it does not put on paper. */
  notePlan = (round: Round, work: Omit<PaperWork, 'on'>): Promise<boolean> =>
    this.#keeping.inTurn(() =>
      // A round that was never changed is not kept yet, and has nothing to note it in.
      this.#note(
        this.#work.rounds.find(({ id }) => id === round.id),
        work,
      ),
    )
  #note(round: Round | undefined, work: Omit<PaperWork, 'on'>): Promise<boolean> {
    const on = this.#work.today()
    const same = (w: PaperWork) => w.how === work.how && w.about === work.about && w.on === on
    // Saved twice on one day it is one sheet on her table.
    if (!round || round.paperWork.some(same)) return Promise.resolve(true)
    return this.#keeping.keepRound(withWorn(round, 'paperWork', { ...work, on }))
  }
  noteSeen = (round: Round, seen: Omit<Seen, 'on'>): Promise<boolean> =>
    this.#open.changeRound(round, (now) => withSeen(now, { ...seen, on: this.#work.today() }))
  /** What was worn: a movement, a note of a zone, the cloth, the verdict, a page that was printed. */
  noteWorn = <K extends keyof Worn>(
    round: Round,
    what: K,
    entry: Omit<Worn[K][number], 'on'>,
  ): Promise<boolean> =>
    this.#open.changeRound(round, (now) =>
      withWorn(now, what, { ...entry, on: this.#work.today() } as Worn[K][number]),
    )
  /** Her note to a zone, as `writeNotes` does it. */
  noteZone = (round: Round, zone: Zone, text: string): Promise<boolean> =>
    this.#open.changeRound(round, (now) => {
      const both = bothTexts(noteOf(round, zone), noteOf(now, zone), text.trim())
      return withWorn(now, 'zoneNotes', { zone, text: both, on: this.#work.today() })
    })
  /** What the muslin was sewn of, as `writeNotes` does it; one line. */
  nameCloth = (round: Round, name: string): Promise<boolean> =>
    this.#open.changeRound(round, (now) => {
      const both = bothTexts(clothOf(round), clothOf(now), name.trim(), '; ')
      return withWorn(now, 'cloths', { text: both, on: this.#work.today() })
    })
  /** `round` as the screen shows it; where its notes were changed meanwhile both texts are kept. */
  writeNotes = (round: Round, notes: string): Promise<boolean> => {
    const write = (from: string, to: string) => {
      const now = this.#open.asItIs(round)
      return this.#keeping.keepRound(withNotes(now, bothTexts(from, now.notes, to)))
    }
    return this.#keeping.act({
      what: notesWritten(round.number),
      again: () => write(round.notes, notes),
      back: () =>
        this.#open.asItIs(round).notes === notes
          ? write(notes, round.notes)
          : Promise.resolve(false),
    })
  }
}

/** What she wrote over `from`, behind what another window put there meanwhile. */
const bothTexts = (from: string, now: string, to: string, between = '\n'): string =>
  now === from || now === to ? to : [now, to].filter((text) => text !== '').join(between)
