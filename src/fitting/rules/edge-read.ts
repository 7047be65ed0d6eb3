/**
 * A sewn edge held against its draft: a loose edge that grew over 3 mm was stretched in sewing
 * (`gates.ts`), and one that did not was not. The reading answers the test that asks for it.
 */
import { pieceOf, type Draft } from '../../draft/draft.ts'
import type { EdgeName, PieceId } from '../../draft/piece.ts'
import { pathLength } from '../../geometry/length.ts'
import { mm, type Mm } from '../../units/length.ts'
import { complaintOf } from '../complaints/catalogue.ts'
import type { Cause, Complaint, ComplaintId } from '../complaints/complaint.ts'
import type { Answers } from './answers.ts'
import { STRETCHED } from './gates.ts'

/** The edge that may have stretched, by complaint; the first of its names that the piece has. */
const EDGES: Readonly<
  Partial<Record<ComplaintId, { readonly piece: PieceId; readonly edges: readonly EdgeName[] }>>
> = {
  N1: { piece: 'front', edges: ['neck'] },
  N3: { piece: 'back', edges: ['neck'] },
  B8: { piece: 'front', edges: ['armhole', 'sleeveEdge'] },
}

/** Length of that edge as drawn, on the half piece. */
export function draftedEdge(id: ComplaintId, draft: Draft): Mm | undefined {
  const at = EDGES[id]
  const edge = at && pieceOf(draft, at.piece).edges.find(({ name }) => at.edges.includes(name))
  return edge && mm(pathLength(edge.path))
}
export const stretchedCause = (c: Complaint): Cause | undefined =>
  c.causes.find(({ name }) => name.includes('stretched'))

/** The test that a measured edge answers. */
export function edgeTest(id: ComplaintId): number | undefined {
  const c = complaintOf(id)
  const cause = id in EDGES ? stretchedCause(c) : undefined
  return cause && c.tests.find(({ yes }) => yes.includes(cause.number))?.number
}

/** Her answers, and the one that the measured edge gives. */
export function withEdge(c: Complaint, answers: Answers, longer: Mm | undefined): Answers {
  const number = longer === undefined ? undefined : edgeTest(c.id)
  return number === undefined || longer === undefined
    ? answers
    : { ...answers, [`test ${number}`]: longer > STRETCHED }
}
