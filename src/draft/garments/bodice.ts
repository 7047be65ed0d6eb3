/** The darted bodice block and the sleeveless blouse made from it. */
import { knows, lengthOf, type Body } from '../../measurements/confirmed.ts'
import { distance } from '../../geometry/point.ts'
import { mm } from '../../units/length.ts'
import { ARMHOLE_ROOM, drawRoomyBodice } from '../blocks/armhole-rule.ts'
import { bodiceFrame } from '../blocks/bodice-frame.ts'
import { BODICE_NEEDS, BODICE_USES } from '../blocks/bodice.ts'
import type { ChoiceId, Choices } from '../choices.ts'
import { completed, opened } from '../completed.ts'
import { pieceOf, type Draft } from '../draft.ts'
import { say, type Finding } from '../finding.ts'
import type { DrawnPiece, Garment } from '../garment.ts'
import { namedPoint, sewnLength, type Piece } from '../piece.ts'
import type { Sheet } from '../sheet.ts'
import { armholeJoin, gettingIn, neckJoin, pair, soundness } from '../proof.ts'

const CHOICES: readonly ChoiceId[] = [
  'easeBust',
  'easeWaist',
  'easeHighHip',
  'easeHip',
  'frontShare',
  'sideNeckRise',
  'frontRaise',
  'frontShort',
  'acrossEase',
  'shoulderDart',
  'underarmDrop',
  'lengthAdded',
  'lengthBelowWaist',
  'sideIntake',
  'centreBackMost',
  'frontDartTip',
  'backDartTip',
  'dartSecondMouth',
  'frontDartLow',
  'backDartLow',
  'ventLength',
]

const draw = (body: Body, choices: Choices): readonly DrawnPiece[] => {
  const { back, front } = drawRoomyBodice(body, choices)
  return bodiceHalves(back, front)
}
export const bodiceHalves = (back: Sheet, front: Sheet): readonly DrawnPiece[] => [
  { sheet: back, words: 'Back, half', cutting: 'Cut 1 on the fold' },
  { sheet: front, words: 'Front, half', cutting: 'Cut 1 on the fold' },
]

/** @param room what the arm is given in this armhole or in the sleeve set into it, mm */
export function bodiceProof(d: Draft, room: number = ARMHOLE_ROOM): readonly Finding[] {
  const [back, front] = [pieceOf(d, 'back'), pieceOf(d, 'front')]
  return [
    ...[back, front].flatMap(soundness),
    ...pair(back, front, 'shoulder', 'shoulderPair'),
    ...pair(back, front, 'side', 'sidePair'),
    ...neckJoin(back, front),
    ...armholeJoin(back, front),
    ...gettingIn(back, front, d),
    ...armhole(back, front, d),
    ...deeper(back, d, room),
    ...bustDart(front, d),
    ...across(back, front, d),
  ]
}

/** The rule could not lower the underarm far enough. */
function armhole(back: Piece, front: Piece, { body }: Draft): Finding[] {
  const round = sewnLength(back, 'armhole') + sewnLength(front, 'armhole')
  if (!knows(body, 'upperArmGirth'))
    return [say('upperArmUnknown', 'muslin', 'front.armhole', round)]
  const need = lengthOf(body, 'upperArmGirth') + ARMHOLE_ROOM
  return round < need ? [say('armholeSmall', 'note', 'front.armhole', round, need)] : []
}

/** What was wanted of the bust dart and could not be done. */
function bustDart(front: Piece, { choices }: Draft): Finding[] {
  const dart = front.edgeDarts.find((x) => x.name === 'bustDart')
  if (!dart) return []
  const mouth = distance(dart.upper, dart.lower)
  const inSide = front.points['J1'] !== undefined
  return [
    ...(choices.dartAt !== 'side' && inSide
      ? [say('dartStays', 'note', 'front.bustDart', mouth)]
      : []),
    ...(choices.dartAs === 'seam' && dart.seam !== true
      ? [say('seamNotHere', 'note', 'front.bustDart', mouth)]
      : []),
  ]
}

function deeper(back: Piece, { body, choices }: Draft, room: number): Finding[] {
  const by = namedPoint(back, 'E').y - bodiceFrame(body, choices).scye.mm
  return by > 1e-6 && knows(body, 'upperArmGirth')
    ? [say('underarmDeeper', 'note', 'back.armhole', by, lengthOf(body, 'upperArmGirth') + room)]
    : []
}

function across(back: Piece, front: Piece, { body }: Draft): Finding[] {
  return [back, front].flatMap((piece) => {
    const [z, u] = [namedPoint(piece, 'Z'), namedPoint(piece, 'U')]
    const id = piece.id === 'back' ? 'acrossBack' : 'acrossChest'
    return [
      ...(z.x > u.x - 5 ? [say('acrossWide', 'stop', `${piece.id}.armhole`, z.x, u.x)] : []),
      ...(knows(body, id) ? [] : [say('acrossUnknown', 'muslin', `${piece.id}.armhole`, z.x)]),
    ]
  })
}

export const BLOCK: Garment = {
  id: 'block',
  name: 'Bodice block',
  what: 'The body’s own shape in paper, with side bust dart, waist darts and back shoulder dart. Sew it as a muslin and fit it first; other garments are drawn from it.',
  notFor: 'Not for knits, and no garment to wear: its ease is for standing and breathing.',
  needs: BODICE_NEEDS,
  uses: BODICE_USES,
  choices: CHOICES,
  options: [
    'construction',
    'shaping',
    'waistDarts',
    'surplus',
    'dartAt',
    'dartSecond',
    'dartAs',
    'opening',
  ],
  // 10 cm round the bust: a close British block and the older proportional one.
  standard: {
    easeBust: mm(25),
    easeWaist: mm(12),
    easeHighHip: mm(14),
    easeHip: mm(14),
    sideNeckRise: mm(20),
    underarmDrop: mm(15),
    opening: 'backZip',
  },
  draw,
  complete: opened,
  prove: bodiceProof,
}

export const SLEEVELESS: Garment = {
  ...BLOCK,
  id: 'sleeveless',
  name: 'Sleeveless blouse',
  what: 'Woven, close at the armhole, with side bust dart and waist darts; neck and armholes finished with bias strips or facings.',
  notFor: 'Not for knits, or for a sleeve: its armhole is too high and too close for one.',
  choices: [...CHOICES, 'facingWidth', 'stripWidth', 'buttonOverlap'],
  options: [...BLOCK.options, 'neckFinish'],
  // 50, 25 and 50 mm round: the close sleeveless preset of the ease tables.
  standard: {
    ...BLOCK.standard,
    easeBust: mm(13),
    easeWaist: mm(7),
    easeHighHip: mm(13),
    easeHip: mm(13),
    acrossEase: mm(0),
    underarmDrop: mm(10),
    opening: 'auto',
  },
  complete: completed,
}
