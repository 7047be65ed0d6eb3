/**
 * After a reading: corrections that stood in for the number are taken back, each a decision of its
 * own that can be undone, and told in one sentence.
 */
import { standInsAnswered, type Doubted } from '../../fitting/stand-ins.ts'
import { HEADS } from '../../fitting/complaints/heads.ts'
import { openDoubts, type Book } from '../../measurements/book.ts'
import { measure, MEASUREMENT_IDS, type MeasurementId } from '../../measurements/catalogue.ts'
import { isAside } from '../../rounds/line.ts'
import type { ChangeActs } from './change-acts.ts'
import type { Work } from './work.svelte.ts'
import { APP_WORDS } from '../app.words.ts'

export async function takeStandInsBack(
  work: Work,
  changes: ChangeActs,
  id: MeasurementId,
): Promise<void> {
  const doubts = doubtsOf(work.book)
  if (!doubts.some(({ measurement }) => measurement === id)) return
  const told: string[] = []
  for (const round of work.rounds.filter((r) => !r.printed && !isAside(work.rounds, r))) {
    const rounds = work.roundsOf(round.garmentId)
    const answered = standInsAnswered(
      round.corrections,
      doubts,
      (number) => rounds.find((r) => r.number === number)?.body.values,
      round.body.values,
    )
    for (const { id: made, because } of answered)
      if (await changes.takeBack(round.garmentId, made))
        told.push(
          APP_WORDS.answered(measure(id).label, because.round, HEADS[because.complaint].name),
        )
  }
  if (told.length > 0) work.answered = [...new Set(told)].join(' ')
}

const doubtsOf = (book: Book): readonly Doubted[] =>
  MEASUREMENT_IDS.flatMap((measurement) => {
    const entry = book[measurement]
    const open = openDoubts(entry, measurement)
    return (entry?.doubts ?? []).flatMap((d) => (open.includes(d) ? [] : [{ ...d, measurement }]))
  })
