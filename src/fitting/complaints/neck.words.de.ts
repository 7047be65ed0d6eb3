/** What she reads of the complaints in neck.ts, in German. */
import type { NECK_WORDS as English } from './neck.words.ts'

export const NECK_WORDS: typeof English = {
  N1: {
    said: [
      'der Ausschnitt steht vorn ab',
      'die Halskante ist locker',
      'der V-Ausschnitt klafft',
      'man sieht mir in den Ausschnitt',
    ],
    where: 'vorderer Halsausschnitt, zwischen Schlüsselbein und Brust',
    sign: 'Die Kante hebt sich ab und steht als lose Schlaufe, am meisten auf halbem Weg zwischen Halspunkt und Mitte. Nichts zieht.',
    causes: {
      1: 'zu wenig Brustform, oberhalb der Brust fehlt ein Abnäher',
      2: 'Mulde unter dem Schlüsselbein',
      3: 'Ausschnitt weit oder tief geschnitten und nicht eingehalten',
      4: 'Halskante beim Nähen gedehnt',
      5: 'Schultern oder Halsansatz zu weit',
    },
    advice: {
      4: 'Die Kante ist genäht länger als gezeichnet. Sichere sie gleich nach dem Zuschneiden mit einer Stütznaht; der Schnitt bleibt.',
    },
    tests: {
      1: 'Steck einen flachen Keil ab, breit an der Halskante, zum Brustpunkt hin auf null. Liegt die Kante dann an, und zieht sonst nichts?',
      2: 'Liegt die Halskante nur mit einer waagerechten Falte oberhalb der Brust glatt?',
      3: 'Ist die genähte Kante mehr als 3 mm länger als im Schnitt?',
      4: 'Liegt das Halsende der Schulternaht vom Hals entfernt?',
    },
    trueAfter: [
      'Halsrundung',
      'Länge von Beleg oder Streifen',
      'Schenkel des Abnähers, der sich öffnet',
      'Taillennaht',
      'Halsausschnitt rechtwinklig an Stoffbruch und Schulter',
    ],
    doNot:
      'Kürze nicht nur den Streifen. Ist der Schnitt für eine füllige Brust gezeichnet, nimm nichts an der vorderen Mitte weg: Das nimmt Brustweite.',
  },
  N2: {
    said: ['es würgt mich', 'drückt am Kehlkopf', 'der oberste Knopf geht nicht zu'],
    where: 'vorderer Halsausschnitt',
    sign: 'Spannung waagerecht oder strahlenförmig um den Halsansatz; vorn schneidet es im Sitzen ein.',
    causes: {
      1: 'vorderer Halsausschnitt nicht tief genug',
      2: 'Halsausschnitt rundum zu klein',
      3: 'hinterer Halsausschnitt zu flach, oder es rutscht nach hinten',
      4: 'gerade Schultern schieben Stoff zum Hals',
    },
    tests: {
      1: 'Schneide vorn die Zugabe alle 15 mm ein. Lässt es nach, und liegen die Schultern weiter glatt?',
      2: 'Lässt es erst nach, wenn die Zugabe rundum eingeschnitten ist?',
      3: 'Liegt die Schulternaht hinter der höchsten Stelle der Schulter?',
    },
    trueAfter: ['Halsausschnitt vorn und hinten als eine Rundung über die Schulter', 'Belege'],
    doNot:
      'Vertiefe nichts, bevor Schulterschräge und Balance stimmen: Was weggeschnitten ist, bleibt weg.',
  },
  N3: {
    said: ['Lücke im Nacken', 'der Ausschnitt steht im Nacken ab', 'der Kragen steht hinten weg'],
    where: 'Nackenpunkt, hintere Mitte',
    sign: 'Die hintere Kante steht vom Hals ab und kann in der Mitte längs knicken; darunter liegt keine Querfalte.',
    causes: {
      1: 'gerundeter oberer Rücken, zu wenig Form',
      2: 'hinterer Halsausschnitt zu weit geschnitten',
      3: 'Rücken oberhalb der Schulterblätter zu kurz, darum hängt er an ihnen',
      4: 'Kopf wird weiter vorn gehalten',
      5: 'hintere Halskante gedehnt',
    },
    advice: { 5: 'Sichere die hintere Halskante mit einer Stütznaht; der Schnitt bleibt.' },
    tests: {
      1: 'Steck kleine Fältchen beiderseits der hinteren Mitte ab. Liegt es glatt, und bleibt der Saum waagerecht?',
      2: 'Liegt es mit einem einzigen Kniff an der Mittelnaht glatt, und bleibt die Mitte gerade?',
      3: 'Hebt die Falte hinten den Saum, oder spannt es über den Schulterblättern?',
      4: 'Ist die genähte Kante mehr als 3 mm länger als im Schnitt?',
    },
    trueAfter: ['hinterer Halsausschnitt', 'Schulterlängen mit Einhalteweite', 'Beleg'],
    doNot: 'Stelle die hintere Mitte am Hals um höchstens 5 mm schräg. Kürze nicht nur den Beleg.',
  },
  N4: {
    said: ['Falte unter dem Nacken', 'im Nacken staucht es sich', 'im Nacken ist ein Buckel'],
    where: 'hintere Mitte, 20 bis 60 mm unter dem Nackenpunkt',
    sign: 'Kurze Querfalten dicht unter dem hinteren Halsausschnitt; die Schulternähte können am Hals hochstehen.',
    causes: {
      1: 'gerade Schultern, der Stoff hängt an den Schulterpunkten',
      2: 'hinterer Halsausschnitt zu flach',
      3: 'Rücken oberhalb der Schulterblätter zu lang',
    },
    tests: {
      1: 'Lass die Naht am Schulterpunkt heraus. Verschwindet die Falte?',
      2: 'Schneide die hintere Halsnaht 6 mm tief ein. Verschwindet die Falte?',
      3: 'Ist die Falte nur weg, wenn du quer über den Schulterblättern absteckst?',
    },
    trueAfter: [
      'hintere Halsrundung und Beleg',
      'hinterer Halsausschnitt bleibt höher als der vordere',
    ],
    doNot: 'Nimm für eine Falte am Hals keine Länge in der Taille weg.',
  },
  N5: {
    said: ['man sieht die Träger', 'rutscht von den Schultern', 'Ausschnitt zu weit'],
    where: 'beide Halspunkte',
    sign: 'Die Halskante liegt außerhalb des Halsansatzes, ist aber nirgends locker; die Naht rutscht zur Seite.',
    causes: {
      1: 'Halspunkt zu weit außen',
      2: 'Schulter am Hals zu steil',
      3: 'schmale Schultern',
    },
    tests: {
      1: 'Zeichne an, wo die Kante beginnen soll, und miss an der Naht entlang. Liegt sie im Stehen daneben?',
      2: 'Rutscht die Kante nur, wenn du dich bewegst?',
    },
    trueAfter: ['Halsausschnitt', 'Belege', 'Schulterlängen'],
    doNot: 'Zieh ihn nicht an den Mitten zusammen: Das kippt den Fadenlauf.',
  },
  N6: {
    said: ['Lücke zwischen Hals und Naht', 'die Schulternaht schwebt am Hals'],
    where: 'Halsende der Schulternaht',
    sign: 'Die Naht schwebt am Hals über dem Körper, während sie am Schulterpunkt spannt.',
    causes: {
      1: 'Schultern gerader als dieser Schnitt',
      2: 'Schulter zu lang, sie zieht den Hals weg',
    },
    tests: {
      1: 'Lass die Naht am Schulterpunkt heraus. Legt sich der Halsausschnitt an?',
      2: 'Schlag den Überstand am Schulterpunkt ein. Legt sich der Halsausschnitt an?',
    },
    trueAfter: [],
    doNot: 'Nimm nicht nur am Hals weg, außer die Waagerechten liegen danach wirklich waagerecht.',
  },
  N7: {
    said: [
      'vorn würgt es und hinten hängt es',
      'die Schulternähte wandern nach hinten',
      'die Bluse rutscht nach hinten',
    ],
    where: 'ganze Schulter und Hals',
    sign: 'Druck am Hals vorn, Schulternähte hinter dem Knochen, der Saum vorn zu hoch und hinten zu tief.',
    causes: {
      1: 'vorn über der Brust zu kurz',
      2: 'Rücken oberhalb der Schulterblätter zu lang',
      3: 'Schultern liegen weiter vorn',
      4: 'enge Hüfte oder enger Rücken hält hinten fest',
    },
    tests: {
      1: 'Gib über der Brust Länge zu. Ist der Hals dann frei?',
      2: 'Liegt ein waagerechter Wulst oberhalb der Schulterblätter?',
      3: 'Liegt der Wulst nur an der Naht?',
    },
    trueAfter: [],
    doNot: 'Vertiefe nicht als Erstes den vorderen Halsausschnitt.',
  },
  N8: {
    said: ['schiebt sich im Nacken hoch', 'vorn am Hals zu tief und zu locker'],
    where: 'ganze Schulter',
    sign: 'Hinten sitzt der Hals hoch, oberhalb der Brust liegen lose Falten, die Schulternaht liegt vor dem Knochen, der Saum hebt sich hinten.',
    causes: {
      1: 'Rücken oberhalb der Schulterblätter zu kurz',
      2: 'vorn oberhalb der Brust zu lang',
      3: 'Schulternaht gehört weiter nach hinten',
    },
    tests: {
      1: 'Schneide an den Schulterblättern quer durch. Fällt der Saum waagerecht?',
      2: 'Ist es mit einer Querfalte oben auf der Brust gut?',
    },
    trueAfter: [],
    doNot: 'Kürze das Vorderteil nicht in der Taille.',
  },
}
