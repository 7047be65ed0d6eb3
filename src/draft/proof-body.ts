/** Findings that rest on the body beside the drawing: what is not taped, and what follows from it. */
import { knows, lengthOf } from '../measurements/confirmed.ts'
import { distance } from '../geometry/point.ts'
import { UNDERARM_GUESS } from './blocks/blouse-levels.ts'
import { frontNeckPoint } from './blocks/blouse-neck.ts'
import {
  blouseNumbers,
  FULLER,
  fullerBust,
  RAISE_MOST,
  type TorsoNumbers,
} from './blocks/blouse-numbers.ts'
import { fittingSleeve, settleOverarm, STRUCK } from './blocks/blouse-overarm.ts'
import { mouthRaised } from './blocks/blouse-side.ts'
import { DART_MOST } from './blocks/waist-plan.ts'
import type { Draft } from './draft.ts'
import { say, type Finding } from './finding.ts'

export function bodyFindings(d: Draft): Finding[] {
  const numbers = blouseNumbers(d.body, d.choices)
  return [
    ...underarm(d, numbers),
    ...neck(d),
    ...balance(d, numbers),
    ...waist(d, numbers),
    ...(fullerBust(d.body) && d.choices.frontShare === 0
      ? [
          say(
            'fullerBust',
            'note',
            'front.side',
            lengthOf(d.body, 'bustGirth') - lengthOf(d.body, 'highBustGirth'),
            FULLER,
          ),
        ]
      : []),
  ]
}

function underarm({ body, choices: chosen }: Draft, n: TorsoNumbers): Finding[] {
  const { choices, raised } = fittingSleeve(body, chosen)
  const { unused, underarm: struck, deeper, shortest } = settleOverarm(body, choices, n)
  const armpit = knows(body, 'napeToArmpitLevel')
  const drop =
    struck !== undefined && armpit
      ? struck - lengthOf(body, 'napeToArmpitLevel')
      : choices.underarmDrop
  return [
    ...(armpit ? [] : [say('armpitUnknown', 'muslin', 'back.sleeveEdge', UNDERARM_GUESS)]),
    ...(armpit && drop < STRUCK.least
      ? [say('underarmPlace', 'stop', 'back.sleeveEdge', drop, STRUCK.least)]
      : []),
    ...(deeper > 0 && knows(body, 'upperArmGirth')
      ? [
          say(
            'underarmDeeper',
            'note',
            'back.sleeveEdge',
            deeper,
            lengthOf(body, 'upperArmGirth') + choices.armRoom,
          ),
        ]
      : []),
    ...(raised > 0 ? [say('overarmRaised', 'note', 'back.overarm', raised)] : []),
    ...(unused?.why === 'tooShort'
      ? [say('overarmShort', 'note', 'back.overarm', unused.wanted, shortest)]
      : []),
    ...(unused?.why === 'struckOutside'
      ? [say('struckOutside', 'note', 'back.overarm', unused.wanted)]
      : []),
  ]
}

function neck({ body, choices }: Draft): Finding[] {
  const point = frontNeckPoint(body)
  return [
    ...(knows(body, 'neckBaseGirth') ? [] : [say('neckBaseUnknown', 'note', 'back.neck')]),
    ...(point !== undefined && choices.frontNeckDrop < point
      ? [say('frontNeckHigh', 'stop', 'front.neck', choices.frontNeckDrop, point)]
      : []),
  ]
}

function balance({ choices }: Draft, n: TorsoNumbers): Finding[] {
  if (n.balance === undefined)
    return [say('balanceUnknown', 'note', 'front.overarm', choices.frontRaise)]
  return n.bustDart > 0
    ? [say('bustDart', 'note', 'front.bustDart', n.bustDart, RAISE_MOST), ...dartHigher(n)]
    : []
}

export function dartHigher(n: TorsoNumbers): Finding[] {
  const by = mouthRaised(n)
  return by > 0 ? [say('bustDartHigher', 'muslin', 'front.bustDart', by)] : []
}

function waist(d: Draft, { waist: plan }: TorsoNumbers): Finding[] {
  if (plan.kind !== 'shaped') {
    const id = plan.kind === 'straight' ? 'straightWaist' : 'waistWider'
    return [say(id, 'note', 'back.side'), say(id, 'note', 'front.side')]
  }
  return d.pieces.flatMap((piece) => {
    if (piece.id !== 'back' && piece.id !== 'front') return []
    const { centre, left } = plan[piece.id]
    const mouths = piece.darts.reduce((sum, x) => sum + distance(x.inner, x.outer), 0)
    return [
      ...(piece.darts.length > 1
        ? [say('secondDart', 'note', `${piece.id}.waistDart2`, mouths, DART_MOST[piece.id])]
        : []),
      ...(left > 0 ? [say('waistLooser', 'note', `${piece.id}.side`, left, mouths)] : []),
      ...(centre > 0 ? [say('centreBackSeam', 'note', `${piece.id}.centre`, centre)] : []),
    ]
  })
}
