/** The draped-sleeve blouse as a garment. */
import { BLOUSE_NEEDS, BLOUSE_USES, drawBlouse } from '../blocks/draped-blouse.ts'
import { completed } from '../completed.ts'
import { pieceOf } from '../draft.ts'
import type { Garment } from '../garment.ts'
import { armOpening, gettingIn, neckJoin, pair, soundness } from '../proof.ts'
import { bodyFindings } from '../proof-body.ts'

export const BLOUSE: Garment = {
  id: 'blouse',
  name: 'Draped-sleeve blouse',
  what: 'Woven, with a wide draped sleeve cut in one with the body and waist darts.',
  notFor: 'Not for set-in or raglan sleeves, knits or children’s nightwear.',
  needs: BLOUSE_NEEDS,
  uses: BLOUSE_USES,
  choices: [
    'easeBust',
    'easeWaist',
    'easeHighHip',
    'easeHip',
    'frontShare',
    'neckHalfWidth',
    'sideNeckRise',
    'frontNeckDrop',
    'frontRaise',
    'underarmDrop',
    'overarmDrop',
    'sweepBack',
    'sweepFront',
    'cornerRadius',
    'armRoom',
    'lengthAdded',
    'lengthBelowWaist',
    'sideIntake',
    'centreBackMost',
    'frontDartTip',
    'backDartTip',
    'frontDartLow',
    'backDartLow',
    'ventLength',
    'facingWidth',
    'stripWidth',
    'buttonOverlap',
    'keyholeLength',
    'keyholeWidth',
  ],
  options: [
    'overarmRule',
    'neckShape',
    'shaping',
    'waistDarts',
    'surplus',
    'opening',
    'neckFinish',
  ],
  standard: {},
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
