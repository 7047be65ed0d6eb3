/** The draped-sleeve blouse as a garment. */
import { drawBlouse } from '../blocks/draped-blouse.ts'
import { completed } from '../completed.ts'
import { pieceOf } from '../draft.ts'
import type { Making } from '../garment.ts'
import { ON_FOLD } from '../piece.ts'
import { halfTitle } from '../piece.words.ts'
import { armOpening, gettingIn, neckJoin, pair, soundness } from '../proof.ts'
import { bodyFindings } from '../proof-body.ts'

export const BLOUSE: Making = {
  draw: (body, choices) => {
    const { back, front } = drawBlouse(body, choices)
    return [
      { sheet: back, words: halfTitle('back'), cut: ON_FOLD },
      { sheet: front, words: halfTitle('front'), cut: ON_FOLD },
    ]
  },
  complete: completed,
  prove: (d) => {
    const [back, front] = [pieceOf(d, 'back'), pieceOf(d, 'front')]
    return [
      ...[back, front].flatMap(soundness),
      ...pair(back, front, 'overarm', 'overarmPair'),
      ...pair(back, front, 'side', 'sidePair'),
      ...neckJoin(back, front),
      ...armOpening(back, front, d),
      ...gettingIn(back, front, d),
      ...bodyFindings(d),
    ]
  },
}
