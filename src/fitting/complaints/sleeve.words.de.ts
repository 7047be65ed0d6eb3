/** What she reads of the complaints in sleeve.ts, in German. */
import type { SLEEVE_WORDS as English } from './sleeve.words.ts'

export const SLEEVE_WORDS: typeof English = {
  L1: {
    said: ['die Armkugel ist zu niedrig', 'schräge Falten in der Armkugel'],
    where: 'Armkugel',
    sign: 'Straffe schräge Falten vom Schulterpunkt zur Achsel, vorn und hinten; der Ärmelsaum hebt sich in der Mitte.',
    causes: {
      1: 'Armkugel zu niedrig',
      2: 'Schultern fallen anders ab',
      3: 'Armloch zu groß',
    },
    tests: {
      1: 'Trenne die Armkugel oben auf. Öffnet es sich, und hebt sich die Waagerechte in der Mitte?',
      2: 'Ist es gut, wenn du am Schulterpunkt absteckst?',
    },
    trueAfter: ['Länge der Armkugel gegen Armloch und Einhalteweite'],
    doNot: 'Gib nichts am Saum zu.',
  },
  L2: {
    said: ['die Armkugel ist zu hoch', 'der Ärmel beult oben'],
    where: 'Armkugel',
    sign: 'Eine lose Querfalte oder ein Wulst ganz oben.',
    causes: {
      1: 'Armkugel zu hoch',
      2: 'zu viel Einhalteweite in der Armkugel',
    },
    tests: {
      1: 'Steck quer über die Armkugel eine Falte ab. Liegt der Ärmel glatt?',
      2: 'Ist es eher gekräuselt als gefaltet?',
    },
    trueAfter: ['Länge der Armkugel'],
    doNot:
      'Eine niedrigere Armkugel lässt den Arm besser heben und hängt weniger schön: Sieh dir beides an.',
  },
  L3: {
    said: ['der Ärmel klemmt', 'am Oberarm zu eng'],
    where: 'Oberarm',
    sign: 'Waagerechte Spannung rund um den Oberarm.',
    causes: { 1: 'zu wenig Mehrweite am Oberarm' },
    tests: { 1: 'Öffne die Ärmelnaht. Geht sie auseinander?' },
    trueAfter: ['Länge der Armkugel: Überschuss heraus, oder das Armloch länger'],
    doNot: 'Lass die Ärmelnaht nicht ohne das Oberteil heraus.',
  },
  L4: {
    said: ['Falten vorn oder hinten am Ärmel', 'die Ärmelnaht dreht sich'],
    where: 'Ärmel',
    sign: 'Eine schräge Falte vom Armloch hinab zur anderen Seite des Saums.',
    causes: {
      1: 'Armkugel für einen Arm eingesetzt, der anders hängt',
      2: 'Ärmel nicht im Fadenlauf zugeschnitten',
      3: 'gerundete Schultern',
    },
    advice: { 2: 'Schneide den Ärmel im Fadenlauf neu zu; der Schnitt bleibt.' },
    tests: {
      1: 'Trenne die Armkugel oberhalb der Passzeichen auf und dreh sie, bis der Fadenlauf lotrecht hängt. Hat sie sich verschoben?',
      2: 'Weicht der angezeichnete Fadenlauf vom Faden ab?',
    },
    trueAfter: ['Passzeichen', 'untere Ärmelnaht'],
    doNot: 'Dreh nicht nur die obere Hälfte einer eingehaltenen Armkugel.',
  },
  L5: {
    said: ['das Oberteil geht hoch, wenn ich den Arm heb', 'ich bekomme den Arm nicht hoch'],
    where: 'Achsel',
    sign: 'Hebst du den Arm, gehen Seitennaht und Saum mit hoch.',
    causes: {
      1: 'Armloch zu tief',
      2: 'Armkugel zu hoch und zu schmal',
      3: 'Rückenbreite zu schmal',
      4: 'Ärmel unter dem Arm zu kurz',
    },
    tests: {
      1: 'Steck das Armloch höher. Ist es besser?',
      2: 'Ist es besser, wenn die untere Hälfte des Ärmels herausgetrennt ist?',
    },
    trueAfter: ['Armloch', 'Armkugel', 'Nähte'],
    doNot: 'Setz das Armloch nicht tiefer: Das macht es schlimmer.',
  },
  L6: {
    said: ['zu viel einzuhalten', 'der Ärmel kräuselt sich an der Armkugel'],
    where: 'Armkugelnaht',
    sign: 'Kräuselfalten oder Fältchen an der Armkugel entlang.',
    causes: {
      1: 'mehr Einhalteweite, als der Stoff aufnimmt',
      2: 'Schulter versetzt, seit der Ärmel gezeichnet ist',
    },
    tests: {
      1: 'Miss Armkugel und Armloch. Ist die Armkugel um mehr länger, als der Stoff aufnimmt?',
    },
    trueAfter: ['Armkugel'],
    doNot: 'Passzeichen sind keine Grenze für die Einhalteweite.',
  },
  L7: {
    said: ['das Armloch kräuselt sich', 'Dellen oben am Ärmel'],
    where: 'Armkugelnaht',
    sign: 'Das Armloch kräuselt sich, und die Armkugel spannt.',
    causes: {
      1: 'zu wenig Einhalteweite',
      2: 'Delle, wo Schulter und Armloch sich treffen',
    },
    tests: {
      1: 'Miss Armkugel und Armloch. Ist die Armkugel um weniger länger, als der Stoff braucht?',
      2: 'Ist am Ende der Schulter eine Delle?',
    },
    trueAfter: ['Armkugel'],
    doNot: 'Dehne die Armkugel nicht, damit sie passt.',
  },
  L8: {
    said: ['beim Beugen zu kurz', 'spannt am Ellbogen'],
    where: 'Ellbogen',
    sign: 'Spannung am Ellbogen, wenn du den Arm beugst.',
    causes: {
      1: 'keine Einhalteweite und kein Abnäher am Ellbogen',
      2: 'Ärmel zu kurz',
    },
    tests: {
      1: 'Beuge den Arm, bis die Fingerspitzen das Ohr berühren. Zieht es am Ellbogen?',
      2: 'Rutscht der Saum über das Handgelenk hinauf?',
    },
    trueAfter: ['Einhalteweite der unteren Ärmelnaht'],
    doNot: 'Mach dafür nicht den Saum weiter.',
  },
  L9: {
    said: ['der Ärmelsaum geht innen hoch'],
    where: 'Ärmelsaum',
    sign: 'Der Saum des Ärmels läuft nicht waagerecht.',
    causes: {
      1: 'Armkugel für einen Arm eingesetzt, der anders hängt',
      2: 'vordere und hintere Armkugel nicht in Balance',
    },
    tests: {
      1: 'Hängt der Saum waagerecht, wenn du den Ärmel im Armloch drehst?',
      2: 'Ist eine Hälfte der Armkugel zu kurz?',
    },
    trueAfter: ['Saum'],
    doNot: 'Gleiche es nicht nur am Saum aus.',
  },
}
