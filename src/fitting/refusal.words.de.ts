import { CHOICES, outOfRange } from '../draft/choices.ts'
import { DARTS, EDGES, PIECES } from '../draft/piece.words.de.ts'
import { capital } from '../units/capital.ts'
import type { refusalSaid as English } from './refusal.words.ts'

export const refusalSaid: typeof English = (why, say) => {
  switch (why.id) {
    case 'choiceOutOfRange':
      return (
        outOfRange(why.choice, why.to, say) ??
        `So weit lässt sich das nicht verstellen: ${CHOICES[why.choice].label}.`
      )
    case 'noDart':
      return `${capital(PIECES[why.piece].der)} hat keinen Taillenabnäher, der den Keil aufnimmt. Nimm erst an der Seite in der Taille weniger weg, damit ein Abnäher gezeichnet wird.`
    case 'noEdge':
      return `Bei diesem Stück hat ${PIECES[why.piece].der} keine solche Kante (${EDGES[why.edge].bare}). Wähl eine, die es gibt.`
    case 'wedgeTooWide':
      return `Ein Keil von ${say(why.width)} passt nicht auf ${say(why.reach)} Abstand zum Brustpunkt. Steck ihn noch einmal ab, als flache Falte, die am Brustpunkt endet.`
    case 'wedgeMissesEdge':
      return `Der Keil läuft über das Ende ${EDGES[why.edge].des} hinaus. Wähl eine Stelle näher an der Mitte.`
    case 'edgeSlants':
      return `Dort läuft ${EDGES[why.edge].der} schräg zu dem Punkt, an dem der Keil endet: Geschlossen nimmt er der Kante ${say(why.most)} und nicht ${say(why.width)}. Steck ihn näher dorthin, wo eine Linie von diesem Punkt die Kante im rechten Winkel trifft.`
    case 'dartTooWide':
      return `${capital(DARTS[why.dart ?? 'waistDart'].der)} würde ${say(why.to)} breit; ein Abnäher fasst ${say(why.most)}. ${
        why.dart === undefined
          ? 'Nimm in dieser Runde weniger, oder nimm erst an der Seite in der Taille mehr weg.'
          : 'Nimm in dieser Runde weniger, oder nimm einen zweiten Abnäher dazu.'
      }`
    case 'cannotDraw':
      return `Nach dieser Änderung lässt sich ${EDGES[why.edge].der} nicht mehr als eine glatte Linie zeichnen. Nimm in dieser Runde weniger.`
    case 'noPlace':
      return `${capital(PIECES[why.piece].im)} ist dafür kein Platz: Zu nah endet ${EDGES[why.edge].der}. Nimm in dieser Runde weniger, oder ändere dort erst die Länge oder die Breite.`
    case 'noTip':
      return `${capital(PIECES[why.piece].der)} hat kein Armloch und keinen Schulterpunkt: Der Ärmel ist angeschnitten. Schwenke stattdessen die Oberarmnaht, versetze den Achselpunkt, oder ändere die Mehrweite.`
    case 'noSideDart':
      return `${capital(PIECES[why.piece].der)} hat keinen seitlichen Abnäher, der kleiner werden könnte. Nimm die Weite stattdessen am Taillenabnäher oder an der Seite weg.`
    case 'dartTooSmall':
      return `${capital(PIECES[why.piece].im)} bliebe ein Abnäher von ${say(why.to)} und damit keiner mehr. Nimm in dieser Runde weniger, oder nimm den anderen Abnäher.`
    case 'sideTooShort':
      return `${say(why.by)} tiefer träfe der Achselpunkt ${PIECES[why.piece].des} auf den Abnäher darunter. Versetze erst den seitlichen Abnäher nach unten, oder nimm in dieser Runde weniger.`
    case 'nothingToWithdraw':
      return 'Es gibt nichts zurückzunehmen: Diese Änderung gilt nicht.'
  }
}
