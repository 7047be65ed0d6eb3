/** An operation in a few plain words and its amount, for lists, steps and work on paper. */
import { DART_WORDS, EDGE_WORDS } from '../../draft/piece.words.ts'
import { mm, type Mm } from '../../units/length.ts'
import type { NamedPlace, Operation, WedgeLevel } from './operation.ts'

export interface OperationSaid {
  readonly words: string
  readonly amount: Mm
}

const LEVEL: Readonly<Record<WedgeLevel, string>> = {
  chest: 'above the bust',
  blade: 'over the blades',
  nape: 'below the nape',
  waist: 'above the waist',
  belowWaist: 'below the waist',
}
const PLACE: Readonly<Record<NamedPlace, string>> = {
  shoulderTip: 'shoulder tip',
  sideNeck: 'side-neck point',
  neckAtCentre: 'neck at the centre',
  underarm: 'underarm point',
}

export function operationSaid(op: Operation): OperationSaid {
  const size = (x: number): Mm => mm(Math.abs(x))
  switch (op.op) {
    case 'ROT':
      return {
        words: `${op.piece}: wedge ${op.width > 0 ? 'closed' : 'opened'} at the ${EDGE_WORDS[op.edge]} into the ${DART_WORDS[op.into]}`,
        amount: size(op.width),
      }
    case 'WEDGE':
      return {
        words: `${op.piece}: centre ${op.by > 0 ? 'longer' : 'shorter'} ${LEVEL[op.level]}, nothing at the far edge`,
        amount: size(op.by),
      }
    case 'STRIP':
      return {
        words: `${op.piece}: ${op.by > 0 ? 'wider' : 'narrower'} across`,
        amount: size(op.by),
      }
    case 'DROP':
      return {
        words: `front: ${op.by > 0 ? 'longer' : 'shorter'} over the bust, the side dart with it`,
        amount: size(op.by),
      }
    case 'BUST':
      return { words: `front: ${op.by > 0 ? 'fuller' : 'smaller'} bust`, amount: size(op.by) }
    case 'MOVE': {
      const whose = op.piece === 'both' ? 'front and back' : op.piece
      const ways = [
        ...(op.out === 0 ? [] : [op.out > 0 ? 'out' : 'in']),
        ...(op.down === 0 ? [] : [op.down > 0 ? 'down' : 'up']),
      ]
      return {
        words: `${whose}: ${PLACE[op.point]} ${ways.join(' and ')}${op.carries ? ', the underarm with it' : ''}`,
        amount: size(Math.hypot(op.out, op.down)),
      }
    }
    case 'SWAP':
      return {
        words: `seam over the shoulder ${op.by > 0 ? 'forward' : 'back'}`,
        amount: size(op.by),
      }
    case 'GROUP':
      return {
        words: `${op.piece}: ${DART_WORDS[op.dart]} moved as it is`,
        amount: size(Math.hypot(op.out, op.down)),
      }
    case 'DARTLEN':
      return {
        words: `${op.piece}: ${DART_WORDS[op.dart]} ${op.by > 0 ? 'shorter' : 'longer'}`,
        amount: size(op.by),
      }
    case 'DARTSHAPE':
      return {
        words: `${op.piece}: ${DART_WORDS[op.dart]} ${op.by > 0 ? 'wider' : 'narrower'}`,
        amount: size(op.by),
      }
    case 'SPLIT':
      return { words: 'front: part of the waist dart into the side dart', amount: size(op.width) }
  }
}

/** Dart that an operation had to make, by the note it gave. */
export const NOTE_WORDS: Readonly<Record<string, string>> = {
  createdSideDart: 'The front had no side dart; one is drawn on the level of the bust tip.',
  createdShoulderDart: 'The back had no shoulder dart; one is drawn towards the blade.',
  createdWaistDart: 'There was no waist dart; one is drawn under the pivot.',
}
