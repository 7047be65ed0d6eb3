/** The openings of a draft: what lets the waist pass, what the head, and how long each is. */
import type { Draft } from '../../draft/draft.ts'
import { pieceOf } from '../../draft/draft.ts'
import type { Opening, OpeningKind } from '../../draft/opening.ts'
import type { InnerLine } from '../../draft/piece.ts'
import { pathLength } from '../../geometry/length.ts'
import { mm, type Mm } from '../../units/length.ts'

const LINE: Readonly<Record<OpeningKind, InnerLine['name']>> = {
  sideZip: 'zip',
  backZip: 'zip',
  buttonedFront: 'centreFront',
  neckSlit: 'slit',
  keyhole: 'keyhole',
}

const WHOLE: readonly OpeningKind[] = ['backZip', 'buttonedFront']
/** The opening that lets waist or head pass; undefined where the closed garment does. */
export const opensFor = (draft: Draft, part: 'waist' | 'head'): Opening | undefined =>
  draft.openings.find(
    ({ kind }) =>
      WHOLE.includes(kind) ||
      (part === 'waist' ? kind === 'sideZip' : kind === 'neckSlit' || kind === 'keyhole'),
  )

/** How long the opening is on the paper, a keyhole down the centre; undefined where it is not drawn. */
export function openingLength(draft: Draft, { kind, piece, from, to }: Opening): Mm | undefined {
  if (kind === 'keyhole') return mm(to - from)
  const drawn = pieceOf(draft, piece).inner.find(({ name }) => name === LINE[kind])
  return drawn && mm(pathLength(drawn.path))
}
