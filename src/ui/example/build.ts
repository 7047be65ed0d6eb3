/** The invented example made from its seed by the same calls that her own acts make. */
import { redraft } from '../../rounds/redraft.ts'
import { fitMuslin } from '../../fitting/fit-muslin.ts'
import { complaintOf } from '../../fitting/complaints/catalogue.ts'
import { causeId } from '../../fitting/complaints/complaint.ts'
import type { Decision } from '../../fitting/rules/decide.ts'
import type { Reported } from '../../fitting/rules/judged.ts'
import type { NewCorrection } from '../../fitting/preview.ts'
import { isMeasurementId } from '../../measurements/catalogue.ts'
import type { Store } from '../../storage/store.ts'
import { mm } from '../../units/length.ts'
import { Session } from '../session.svelte.ts'
import { SEED, type Seed, type SewnMuslin } from './seed.ts'
import { WHOLE } from './whole.ts'
import { EXAMPLE_WORDS } from './example.words.ts'

/** @returns undefined when it hangs whole, else the sentence why it does not */
export async function hangExample(
  store: Store,
  newId: () => string,
  seed: Seed = SEED,
): Promise<string | undefined> {
  let day = seed.taped
  const session = new Session(store, { now: () => new Date(`${day}T10:00:00Z`), newId })
  const made = async (): Promise<boolean> => {
    await session.open()
    if (!(await tapeAll(session, seed))) return false
    const garment = await session.hang(seed.garment, seed.name)
    if (garment === undefined) return false
    for (const muslin of seed.muslins) {
      day = muslin.onPaper
      if (!(await session.putOnPaper(garment))) return false
      day = muslin.worn
      if (!(await wear(session, garment, muslin))) return false
    }
    return (await store.saveSetting(WHOLE, true)).ok
  }
  return (await made()) ? undefined : (session.problem ?? EXAMPLE_WORDS.notMade)
}

async function tapeAll(session: Session, { numbers }: Seed): Promise<boolean> {
  for (const [id, readings] of Object.entries(numbers))
    for (const reading of readings)
      if (!isMeasurementId(id) || !(await session.typeReading(id, mm(reading)))) return false
  return true
}

/** What was seen of one muslin, decided by the rules, and the changes made in the next round. */
async function wear(session: Session, garment: string, muslin: SewnMuslin): Promise<boolean> {
  const round = session.latest(garment)
  if (!round) return false
  const { complaints, movements, cloth, notes, verdict } = muslin
  const { corrections, decision } = fitMuslin({
    ...round,
    complaints,
    round: round.number,
    on: muslin.worn,
  })
  const steps = [
    () => session.noteWorn(round, 'cloths', { text: cloth }),
    ...movements.map(
      ([movement, freedom]) =>
        () =>
          session.noteWorn(round, 'movements', { movement, freedom }),
    ),
    ...seenOf(complaints, decision, corrections).map((seen) => () => session.noteSeen(round, seen)),
    () => session.writeNotes(round, notes),
    () => session.noteWorn(round, 'verdicts', { verdict }),
    ...corrections.map((correction) => () => session.makeChange(garment, correction)),
  ]
  for (const step of steps) if (!(await step())) return false
  const last = session.latest(garment)
  return last !== undefined && redraft(last).refused.length === 0
}

/** Each complaint with the cause that was settled on and what was pinned. */
const seenOf = (
  complaints: readonly Reported[],
  { changes }: Decision,
  corrections: readonly NewCorrection[],
) =>
  complaints.flatMap(({ id }) => {
    const found = changes.find((change) => change.id === id)?.found ?? []
    const cause = complaintOf(id).causes.find(({ number }) => found.includes(number))
    const because = corrections.flatMap((c) => (c.kind === 'withdraw' ? [] : [c.because]))
    const own = because.find(({ complaint }) => complaint === id)
    return own && cause
      ? [{ complaint: id, answer: causeId(id, cause.number), pinned: own.pinned }]
      : []
  })
