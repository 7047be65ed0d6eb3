/** The line under each place of the tape: how far she is, in two or three words. */
import { GARMENTS } from '../../draft/garments.ts'
import { standing } from '../../measurements/book.ts'
import type { Session } from '../session.svelte.ts'
import type { PlaceId } from './places.ts'

type Words = Readonly<Partial<Record<PlaceId, string>>>
type Work = Pick<Session, 'book' | 'garments' | 'roundsOf'>

export function standingWords(work: Work, garmentId: string | undefined): Words {
  const hung = work.garments.find((g) => g.id === garmentId)
  const { needs } = GARMENTS[hung?.garment ?? 'blouse']
  const agreed = needs.filter((id) => standing(work.book[id], id) === 'agreed').length
  const measured = { measure: `${agreed} of ${needs.length}` }
  if (!hung) return measured
  const rounds = work.roundsOf(hung.id)
  const [last, onPaper] = [rounds.at(-1), rounds.filter((r) => r.printed)]
  return {
    ...measured,
    draft: agreed < needs.length ? 'from guesses' : last ? `round ${last.number}` : 'drafted',
    ...(onPaper.length > 0 ? { fit: `muslin ${onPaper.at(-1)?.number}` } : {}),
    ...(rounds.length > 1 ? { compare: `${rounds.at(-2)?.number} with ${last?.number}` } : {}),
    ...(last?.printed ? { cut: 'on paper' } : {}),
  }
}
