/** The draped-sleeve blouse as a garment. */
import { drawBlouse } from '../blocks/draped-blouse.ts'
import { completed } from '../completed.ts'
import { pieceOf } from '../draft.ts'
import type { Making } from '../garment.ts'
import { armOpening, gettingIn, neckJoin, pair, soundness } from '../proof.ts'
import { bodyFindings } from '../proof-body.ts'

export const BLOUSE: Making = {
  draw: (body, choices) => {
    const { back, front } = drawBlouse(body, choices)
    return [
      { sheet: back, words: 'Back, half', cutting: 'Cut 1 on the fold' },
      { sheet: front, words: 'Front, half', cutting: 'Cut 1 on the fold' },
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
