import type { SLEEVE_WORDS as English } from './sleeve.words.ts'

export const SLEEVE_WORDS: typeof English = {
  topOfCap: 'der höchste Punkt der Armkugel, an der Schulternaht',
  widerForLowerCap: 'weiter, für eine flachere Armkugel',
  heightOfCap: 'Höhe der Armkugel',
  frontOfWidth: 'vorderer Teil der Weite',
  underarmOfFront: 'der Achselpunkt vorn',
  underarmOfBack: 'der Achselpunkt hinten',
  hemAtMiddle: 'der Saum in der Mitte',
  endAtMiddle: 'das Ärmelende in der Mitte',
  littleBelowUnderarm: 'ein wenig unter der Achsel',
  sewnToBackArmhole: 'an beiden Enden waagerecht, in das hintere Armloch genäht',
  sewnToFrontArmhole: 'an beiden Enden waagerecht, in das vordere Armloch genäht',
  hemAtFrontSeam: 'der Saum an der vorderen Naht',
  hemAtBackSeam: 'der Saum an der hinteren Naht',
  endAtFrontSeam: 'das Ärmelende an der vorderen Naht',
  endAtBackSeam: 'das Ärmelende an der hinteren Naht',
  sewnToBackSeam: 'an die hintere Naht genäht',
  straight: 'gerade',
  drawnUpIntoCuff: 'gerade, eingereiht und an die Manschette genäht',
  sewnToFrontSeam: 'an die vordere Naht genäht',
  marks: {
    K: 'das vordere Passzeichen: Von hier bis zur Achsel wird nichts eingehalten',
    L: 'das hintere Passzeichen',
    S: 'diese Marke trifft die Schulternaht: Der Ärmel ist im Armloch gedreht, seine Naht unter dem Arm auch',
  },
}
