/** The line under each place of the tape: how far she is, in two or three words. */
import { GARMENTS } from '../../draft/garments.ts'
import { standing } from '../../measurements/book.ts'
import type { Session } from '../session.svelte.ts'
import type { PlaceId } from './places.ts'
import { TAPE_WORDS } from './tape.words.ts'

type Words = Readonly<Partial<Record<PlaceId, string>>>
type Work = Pick<Session, 'book' | 'garments' | 'roundsOf'>

export function standingWords(work: Work, garmentId: string | undefined): Words {
  const hung = work.garments.find((g) => g.id === garmentId)
  const { needs } = GARMENTS[hung?.garment ?? 'blouse']
  const agreed = needs.filter((id) => standing(work.book[id], id) === 'agreed').length
  const measured = { measure: TAPE_WORDS.measured(agreed, needs.length) }
  if (!hung) return measured
  const rounds = work.roundsOf(hung.id)
  const [last, before, sewn] = [rounds.at(-1), rounds.at(-2), rounds.findLast((r) => r.printed)]
  return {
    ...measured,
    draft:
      agreed < needs.length
        ? TAPE_WORDS.fromGuesses
        : last
          ? TAPE_WORDS.round(last.number)
          : TAPE_WORDS.drafted,
    ...(sewn ? { fit: TAPE_WORDS.muslin(sewn.number) } : {}),
    ...(before && last ? { compare: TAPE_WORDS.compared(before.number, last.number) } : {}),
    ...(last?.printed ? { cut: TAPE_WORDS.onPaper } : {}),
  }
}
