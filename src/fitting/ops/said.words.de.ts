import { DARTS, EDGES, PIECES } from '../../draft/piece.words.de.ts'
import type { NamedPlace, WedgeLevel } from './operation.ts'
import type { NOTE_WORDS as EnglishNotes, operationWords as English } from './said.words.ts'

const LEVEL: Readonly<Record<WedgeLevel, string>> = {
  chest: 'oberhalb der Brust',
  blade: 'über den Schulterblättern',
  nape: 'unter dem Nackenpunkt',
  waist: 'über der Taille',
  belowWaist: 'unter der Taille',
}
const PLACE: Readonly<Record<NamedPlace, string>> = {
  shoulderTip: 'Schulterpunkt',
  sideNeck: 'Halspunkt',
  neckAtCentre: 'Halsausschnitt in der Mitte',
  underarm: 'Achselpunkt',
}

export const operationWords: typeof English = (op) => {
  switch (op.op) {
    case 'ROT':
      return `${PIECES[op.piece].bare}: Keil ${EDGES[op.edge].am} ${op.width > 0 ? 'geschlossen' : 'geöffnet'}, in ${DARTS[op.into].den}`
    case 'WEDGE':
      return `${PIECES[op.piece].bare}: Mitte ${LEVEL[op.level]} ${op.by > 0 ? 'länger' : 'kürzer'}, an der Kante gegenüber null`
    case 'STRIP':
      return `${PIECES[op.piece].bare}: quer ${op.by > 0 ? 'breiter' : 'schmaler'}`
    case 'DROP':
      return `Vorderteil: über der Brust ${op.by > 0 ? 'länger' : 'kürzer'}, mit dem seitlichen Abnäher`
    case 'BUST':
      return `Vorderteil: ${op.by > 0 ? 'mehr' : 'weniger'} Raum für die Brust`
    case 'MOVE': {
      const whose = op.piece === 'both' ? 'Vorder- und Rückenteil' : PIECES[op.piece].bare
      const ways = [
        ...(op.out === 0 ? [] : [op.out > 0 ? 'nach außen' : 'nach innen']),
        ...(op.down === 0 ? [] : [op.down > 0 ? 'nach unten' : 'nach oben']),
      ]
      return `${whose}: ${PLACE[op.point]} ${ways.join(' und ')}${op.carries ? ', der Achselpunkt mit' : ''}`
    }
    case 'SWAP':
      return `Naht über die Schulter ${op.by > 0 ? 'nach vorn' : 'nach hinten'}`
    case 'GROUP':
      return `${PIECES[op.piece].bare}: ${DARTS[op.dart].bare} versetzt, wie er ist`
    case 'DARTLEN':
      return `${PIECES[op.piece].bare}: ${DARTS[op.dart].bare} ${op.by > 0 ? 'kürzer' : 'länger'}`
    case 'DARTSHAPE':
      return `${PIECES[op.piece].bare}: ${DARTS[op.dart].bare} ${op.by > 0 ? 'breiter' : 'schmaler'}`
    case 'SPLIT':
      return 'Vorderteil: ein Teil des Taillenabnähers in den seitlichen Abnäher'
  }
}

export const NOTE_WORDS: typeof EnglishNotes = {
  createdSideDart:
    'Das Vorderteil hatte keinen seitlichen Abnäher; auf der Höhe des Brustpunkts wird einer gezeichnet.',
  createdShoulderDart:
    'Das Rückenteil hatte keinen Schulterabnäher; zum Schulterblatt hin wird einer gezeichnet.',
  createdWaistDart: 'Es gab keinen Taillenabnäher; unter dem Drehpunkt wird einer gezeichnet.',
}
