/**
 * Cap height, width and length of a set-in sleeve hang together: with the armhole and the width
 * of the sleeve given, a higher cap is a longer one. The ease that makes a cap so much higher is
 * searched for. Source: the triangle rule of a pattern-making lesson site; see `sleeve-cap.ts`.
 */
import { fittedCap } from '../../draft/blocks/cap-rule.ts'
import { sleeveWidth } from '../../draft/blocks/sleeve.ts'
import { CHOICES } from '../../draft/choices.ts'
import { pieceOf, type Draft } from '../../draft/draft.ts'
import { edge } from '../../draft/piece.ts'
import { pathLength } from '../../geometry/length.ts'
import { mm, type Mm } from '../../units/length.ts'

/** Halving so often leaves less than a thousandth of the range of the choice. */
const ROUNDS = 24

/** By how much the cap ease must grow for a cap `higher` mm higher; undefined past its range. */
export function capEaseFor(draft: Draft, higher: number): Mm | undefined {
  const long = (id: 'front' | 'back'): number =>
    pathLength(edge(pieceOf(draft, id), 'armhole').path)
  const armholes = { front: long('front'), back: long('back') }
  const width = sleeveWidth(draft.body, draft.choices).mm
  const at = (ease: number): number | undefined => fittedCap(armholes, width, mm(ease))?.height
  const now = draft.choices.capEase
  const height = at(now)
  if (height === undefined) return undefined
  let [low, high]: [number, number] = [CHOICES.capEase.min, CHOICES.capEase.max]
  const ends = [at(low), at(high)]
  const wanted = height + higher
  if (ends[1] === undefined || ends[1] < wanted || (ends[0] !== undefined && ends[0] > wanted))
    return undefined
  for (let i = 0; i < ROUNDS; i++) {
    const middle = (low + high) / 2
    const there = at(middle)
    if (there === undefined || there < wanted) low = middle
    else high = middle
  }
  return mm((low + high) / 2 - now)
}
