/** What she reads of the complaints in armhole.ts, in German. */
import type { ARMHOLE_WORDS as English } from './armhole.words.ts'

const REACH =
  'Die Falte ist der Platz, um nach vorn zu greifen: 6 bis 13 mm bleiben auf jeder Hälfte. Der Schnitt bleibt.'

export const ARMHOLE_WORDS: typeof English = {
  A1: {
    said: ['schneidet unter dem Arm ein', 'das Armloch ist zu eng', 'klemmt unter der Achsel'],
    where: 'Achsel',
    sign: 'Eine Druckstelle und strahlenförmige Falten um das Armloch.',
    causes: {
      1: 'Achselpunkt zu hoch',
      2: 'vorderes Armloch nicht genug ausgehöhlt',
      3: 'Rückenbreite oder Brustbreite zu schmal',
      4: 'Schulter zu kurz',
    },
    tests: {
      1: 'Schneide die Zugabe an der Achsel ein. Lässt es nach?',
      2: 'Lässt es nach, wenn du am vorderen Passzeichen einschneidest?',
      3: 'Lässt es mit einem senkrechten Einschnitt an der hinteren Mitte oder von der Schultermitte aus nach?',
    },
    trueAfter: [
      'Armloch rechtwinklig zur Seite, vorn und hinten in einer Rundung',
      'Armkugel',
      'Länge der Seite',
    ],
    doNot: 'Setz es nicht tiefer als nötig: Der Arm lässt sich dann weniger heben.',
  },
  A2: {
    said: ['die Seite hängt unter dem Arm durch', 'man sieht den BH unter dem Arm'],
    where: 'Achsel',
    sign: 'Schräge Falten unter dem Armloch, die Naht sackt; mit Ärmel hebt sich das Oberteil, wenn du den Arm hebst.',
    causes: {
      1: 'Achselpunkt zu tief',
      2: 'Schultern fallen stärker ab',
      3: 'an der Seite zu weit',
    },
    tests: {
      1: 'Steck die Seitennaht höher. Ist es dann gut?',
      2: 'Ist es gut, wenn du am Schulterpunkt absteckst?',
      3: 'Ist es gut, wenn du die Seitennaht tiefer absteckst?',
    },
    trueAfter: ['Armloch', 'Armkugel an der Achsel', 'Seite'],
    doNot: 'Füll das Armloch nicht nur vorn auf.',
  },
  A3: {
    said: ['hinten am Armloch steht eine Schlaufe ab'],
    where: 'hinteres Armloch',
    sign: 'Eine lose Schlaufe am hinteren Armloch.',
    causes: {
      1: 'gerundeter Rücken oder vorstehendes Schulterblatt, kein Abnäher',
      2: 'mit Ärmel gezeichnet und ohne getragen',
      3: 'kein Abnäher in der hinteren Schulter',
    },
    never:
      'Ein hinten abstehendes Armloch nimmst du nicht an der Seite weg: Das nimmt die Weite, die die Brust braucht. Steck einen flachen Keil vom Armloch zum Schulterblatt ab.',
    tests: { 1: 'Steck einen flachen Keil vom Armloch zum Schulterblatt ab. Ist es dann gut?' },
    trueAfter: [
      'Armloch',
      'Schulter: so lang wie die vordere und ihre Einhalteweite',
      'hintere Armkugel',
    ],
    doNot: 'Nimm es nicht an der Seite weg.',
  },
  A4: {
    said: ['der Rücken ist zu breit'],
    where: 'hinten, zwischen Schulterblatt und Armloch',
    sign: 'Lose Weite längs; eine solche Falte brauchst du, um nach vorn zu greifen.',
    causes: { 1: 'Rückenbreite zu groß', 2: 'Schulter zu lang' },
    leaves: REACH,
    tests: {
      1: 'Verschränk die Arme vorn. Ist dann noch lose Weite da?',
      2: 'Liegt die Schulternaht außerhalb des Knochens?',
      3: 'Verschwindet die Falte bei verschränkten Armen?',
    },
    trueAfter: ['Armloch', 'hintere Armkugel'],
    doNot:
      'Nimm nicht alles weg: Lass auf jeder Hälfte 6 bis 13 mm, damit du nach vorn greifen kannst.',
  },
  A5: {
    said: ['vorn an der Achsel staut sich Stoff', 'kratzt vorn am Arm'],
    where: 'vordere Armlochrundung',
    sign: 'Eine weiche schräge Knitterfalte in der Höhlung des vorderen Armlochs, bei einem Ärmel.',
    causes: {
      1: 'vorderes Armloch nicht ausgehöhlt',
      2: 'vordere Armkugel zu weit',
    },
    tests: {
      1: 'Zeichne die Hautfalte am Armansatz auf dem Probeteil an. Liegt Stoff jenseits davon?',
      2: 'Liegt die Falte im Ärmel und nicht im Oberteil?',
    },
    trueAfter: ['Armloch und vordere Armkugel um ebenso viel'],
    doNot: 'Höhle nicht das hintere Armloch aus.',
  },
}
