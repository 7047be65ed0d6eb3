/** The darted bodice block and the sleeveless blouse made from it. */
import { knows, lengthOf, type Body } from '../../measurements/confirmed.ts'
import { distance } from '../../geometry/point.ts'
import { ARMHOLE_ROOM, drawRoomyBodice } from '../blocks/armhole-rule.ts'
import { bodiceFrame } from '../blocks/bodice-frame.ts'
import { bodiceNumbers } from '../blocks/bodice-numbers.ts'
import type { Choices } from '../choices.ts'
import { completed, opened } from '../completed.ts'
import { pieceOf, type Draft } from '../draft.ts'
import { say, type Finding } from '../finding.ts'
import type { DrawnPiece, Making } from '../garment.ts'
import { namedPoint, ON_FOLD, sewnLength, type Piece } from '../piece.ts'
import { halfTitle } from '../piece.words.ts'
import type { Sheet } from '../sheet.ts'
import { dartHigher } from '../proof-body.ts'
import { armholeJoin, gettingIn, neckJoin, pair, soundness } from '../proof.ts'

const draw = (body: Body, choices: Choices): readonly DrawnPiece[] => {
  const { back, front } = drawRoomyBodice(body, choices)
  return bodiceHalves(back, front)
}
export const bodiceHalves = (back: Sheet, front: Sheet): readonly DrawnPiece[] => [
  { sheet: back, words: halfTitle('back'), cut: ON_FOLD },
  { sheet: front, words: halfTitle('front'), cut: ON_FOLD },
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
    ...dartHigher(bodiceNumbers(d.body, d.choices, bodiceFrame(d.body, d.choices))),
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
    const [id, unknown] =
      piece.id === 'back'
        ? (['acrossBack', 'acrossBackUnknown'] as const)
        : (['acrossChest', 'acrossChestUnknown'] as const)
    return [
      ...(z.x > u.x - 5 ? [say('acrossWide', 'stop', `${piece.id}.armhole`, z.x, u.x)] : []),
      ...(knows(body, id) ? [] : [say(unknown, 'muslin', `${piece.id}.armhole`, z.x)]),
    ]
  })
}

export const BLOCK: Making = { draw, complete: opened, prove: bodiceProof }

export const SLEEVELESS: Making = { ...BLOCK, complete: completed }
