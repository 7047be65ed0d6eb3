import type { SIDE_WORDS as English } from './side.words.ts'

const CORD_AT_SIDE = 'die Schnur in der Taille, an der Seite'

export const SIDE_WORDS: typeof English = {
  waistToBustLevel: {
    from: 'die Schnur in der Taille',
    to: 'die Höhe der Brustpunkte',
    words: 'An der Seite senkrecht hinauf von der Schnur bis zur Brusthöhe. Es ist eine Höhe.',
    alone:
      'Stell ein Lineal senkrecht an deine Seite, die Null auf der Schnur. Halte ein zweites waagerecht an den Brustpunkt, sodass sich beide kreuzen, und lies die Kreuzung im Spiegel ab.',
    moves: 'die Brustlinie',
  },
  armpitToWaist: {
    from: 'die Achselhöhe',
    to: CORD_AT_SIDE,
    words: 'An der Seite hinunter von der Achselhöhe bis zur Schnur.',
    alone:
      'Halte eine Pappe waagerecht hoch in die Achsel, lass den Arm darüber hängen und das Maßband von der Pappe bis zur Schnur fallen.',
    moves: 'die Seitennaht',
  },
  waistToHighHip: {
    from: CORD_AT_SIDE,
    to: 'die hohe Hüfte',
    words:
      'An der Seite auf der Haut hinunter von der Schnur bis dorthin, wo der Umfang der hohen Hüfte gemessen ist.',
    alone:
      'Lass ein zweites Gummiband auf der hohen Hüfte sitzen. Lass das Maßband an der Seite vom einen zum anderen hängen.',
    moves: 'die Höhe der hohen Hüfte',
  },
  waistToHip: {
    from: CORD_AT_SIDE,
    to: 'die Höhe des Hüftumfangs',
    words:
      'An der Seite auf der Haut hinunter von der Schnur bis dorthin, wo der Hüftumfang gemessen ist.',
    alone:
      'Lass ein zweites Gummiband auf der Hüfte sitzen. Lass das Maßband an der Seite vom einen zum anderen hängen.',
    moves: 'die Höhe der Hüfte',
  },
  waistToFloor: {
    from: CORD_AT_SIDE,
    to: 'der Boden',
    words: 'An der Seite von der Schnur gerade bis zum Boden, ohne Schuhe.',
    alone:
      'Häng ein kleines Gewicht an das Ende des Maßbands, lass es von der Schnur bis auf den Boden hängen und lies an der Schnur ab.',
    moves: 'die Länge eines Kleids',
  },
  stature: {
    from: 'der Boden',
    to: 'der Scheitel',
    words: 'Vom Boden bis zum Scheitel, ohne Schuhe, aufrecht.',
    alone:
      'Stell dich mit dem Rücken an eine Wand, leg ein Buch flach auf den Kopf und an die Wand, tritt weg, miss bis zur Unterkante des Buchs.',
    moves: 'nichts; sie prüft die anderen Längen',
  },
}
