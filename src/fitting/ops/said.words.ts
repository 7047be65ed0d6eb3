/** What an operation does, in a few plain words without its amount. */
import { DART_WORDS, EDGE_WORDS } from '../../draft/piece.words.ts'
import type { NamedPlace, Operation, WedgeLevel } from './operation.ts'

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

export function operationWords(op: Operation): string {
  switch (op.op) {
    case 'ROT':
      return `${op.piece}: wedge ${op.width > 0 ? 'closed' : 'opened'} at the ${EDGE_WORDS[op.edge]} into the ${DART_WORDS[op.into]}`
    case 'WEDGE':
      return `${op.piece}: centre ${op.by > 0 ? 'longer' : 'shorter'} ${LEVEL[op.level]}, nothing at the far edge`
    case 'STRIP':
      return `${op.piece}: ${op.by > 0 ? 'wider' : 'narrower'} across`
    case 'DROP':
      return `front: ${op.by > 0 ? 'longer' : 'shorter'} over the bust, the side dart with it`
    case 'BUST':
      return `front: ${op.by > 0 ? 'fuller' : 'smaller'} bust`
    case 'MOVE': {
      const whose = op.piece === 'both' ? 'front and back' : op.piece
      const ways = [
        ...(op.out === 0 ? [] : [op.out > 0 ? 'out' : 'in']),
        ...(op.down === 0 ? [] : [op.down > 0 ? 'down' : 'up']),
      ]
      return `${whose}: ${PLACE[op.point]} ${ways.join(' and ')}${op.carries ? ', the underarm with it' : ''}`
    }
    case 'SWAP':
      return `seam over the shoulder ${op.by > 0 ? 'forward' : 'back'}`
    case 'GROUP':
      return `${op.piece}: ${DART_WORDS[op.dart]} moved as it is`
    case 'DARTLEN':
      return `${op.piece}: ${DART_WORDS[op.dart]} ${op.by > 0 ? 'shorter' : 'longer'}`
    case 'DARTSHAPE':
      return `${op.piece}: ${DART_WORDS[op.dart]} ${op.by > 0 ? 'wider' : 'narrower'}`
    case 'SPLIT':
      return 'front: part of the waist dart into the side dart'
  }
}

/** Dart that an operation had to make, by the note it gave. */
export const NOTE_WORDS: Readonly<Record<string, string>> = {
  createdSideDart: 'The front had no side dart; one is drawn on the level of the bust tip.',
  createdShoulderDart: 'The back had no shoulder dart; one is drawn towards the blade.',
  createdWaistDart: 'There was no waist dart; one is drawn under the pivot.',
}
