/** What she reads of the complaints in shoulder.ts, in German. */
import type { SHOULDER_WORDS as English } from './shoulder.words.ts'

export const SHOULDER_WORDS: typeof English = {
  SH1: {
    said: [
      'Falten vom Hals zur Achsel',
      'an der Schulterspitze zu locker',
      'oben am Armloch steht ein Flügel ab',
    ],
    where: 'Schulterpunkt bis Achsel, vorn und hinten',
    sign: 'Lose Falten laufen schräg vom Halspunkt zur Achsel; am Schulterpunkt steht der Stoff ab, unter dem Arm sitzt es tief.',
    causes: {
      1: 'Schulterschräge für diese Schultern zu flach gezeichnet',
      2: 'Schulter zu lang',
      3: 'Schulterpolster fehlen',
    },
    advice: {
      3: 'Leg die Polster ein, mit denen du es tragen willst, und sieh noch einmal hin; der Schnitt bleibt.',
    },
    tests: {
      1: 'Steck die Naht am Schulterpunkt tiefer ab, zum Hals auf null. Verschwinden die Falten vorn und hinten?',
      2: 'Verschwinden die Falten, wenn du den Überstand am Schulterpunkt einschlägst?',
    },
    trueAfter: [
      'Armloch an der Schulter',
      'Länge der Seitennaht',
      'Armkugel unverändert, wo es das Armloch ist',
    ],
    doNot:
      'Vergiss den Achselpunkt nicht: Er sinkt um ebenso viel, sonst wird das Armloch eng. Ändere nur dann eine Seite allein, wenn eine Schulter tiefer ist.',
  },
  SH2: {
    said: ['zieht an der Schulterspitze', 'ein Zug quer über die Brust', 'Naht am Arm zu stramm'],
    where: 'Schulterpunkt bis zu den Mitten',
    sign: 'Straffe Zugfalten vom Schulterpunkt zu beiden Mitten, Falten quer am Halsansatz, das Armloch spannt am Schulterpunkt.',
    causes: {
      1: 'Schulterschräge zu steil gezeichnet',
      2: 'Schulter zu kurz',
      3: 'Rückenbreite oder Brustbreite zu schmal',
    },
    tests: {
      1: 'Öffne die Schulternaht vom Schulterpunkt nach innen. Glätten sich die Falten, und klafft die Naht?',
      2: 'Klafft nichts, aber das Armloch schneidet ein?',
      3: 'Öffnet sich ein senkrechter Einschnitt von der Schultermitte zum Passzeichen?',
    },
    trueAfter: ['Armloch', 'Armkugel, wo das Armloch nicht mit gehoben wird'],
    doNot: 'Mach dafür den Hals nicht weiter.',
  },
  SH3: {
    said: ['Schultern zu breit', 'der Ärmel hängt runter', 'schmale Schultern'],
    where: 'äußere Schulter, oben am Armloch',
    sign: 'Die Armlochnaht liegt außerhalb des Knochens, daneben stehen Längsfalten; der Ärmel wirkt zu lang.',
    causes: {
      1: 'Schulter zu lang',
      2: 'Hals zu weit',
      3: 'Brustbreite und Rückenbreite im Ganzen zu groß',
    },
    tests: {
      1: 'Heb den Arm, um das Gelenk zu finden. Liegt die Naht außerhalb davon, und stimmt das Halsende?',
      2: 'Liegt das Halsende vom Hals entfernt?',
      3: 'Laufen die Falten über die ganze Höhe des Armlochs?',
    },
    trueAfter: ['Armloch glatt, am Schulterpunkt rechtwinklig', 'Armkugel'],
    doNot: 'Schneide das Armloch unterhalb des Passzeichens nicht nach.',
  },
  SH4: {
    said: [
      'das Armloch schneidet in die Schulter',
      'der Ärmel zieht nach oben',
      'breite Schultern',
    ],
    where: 'äußere Schulter',
    sign: 'Die Armlochnaht liegt innerhalb des Knochens; Armkugel und Schulter spannen, der Ärmel zieht hoch.',
    causes: {
      1: 'Schulter zu kurz',
      2: 'Brustbreite oder Rückenbreite zu schmal',
      3: 'Armkugel zu niedrig',
    },
    tests: {
      1: 'Trenn die Armlochnaht oben auf. Gehen die Kanten dort auseinander?',
      2: 'Gehen die Kanten vor allem am Schulterblatt oder vorn an der Brust auseinander?',
    },
    trueAfter: ['Armloch', 'Armkugel'],
    doNot: 'Lass die Naht der Armkugel allein nicht mehr als 5 mm heraus.',
  },
  SH5: {
    said: [
      'vorgeschobene Schultern',
      'hinter der Schulter staut sich Stoff',
      'der Ärmel zieht nach vorn',
    ],
    where: 'äußere Hälfte der Schulternaht',
    sign: 'Die Naht liegt am Schulterpunkt hinter dem Knochen und stimmt am Hals; in der Mulde neben dem vorderen Armloch liegt eine Falte.',
    causes: {
      1: 'Schultergelenk liegt weiter vorn',
      2: 'ein gerundeter Rücken zieht die ganze Naht',
      3: 'Naht an der falschen Stelle gezeichnet',
    },
    tests: {
      1: 'Stimmt das Halsende, und liegt nur der Schulterpunkt hinter dem Knochen?',
      2: 'Liegt die ganze Naht zu weit hinten?',
    },
    trueAfter: ['Armloch in einem Zug', 'Schulterlängen gleich', 'Passzeichen der Armkugel'],
    doNot: 'Ändere dafür nicht die ganze Schräge. Versetze die Passzeichen an der Achsel nicht.',
  },
  SH6: {
    said: ['man sieht die Schulternaht von vorn'],
    where: 'Schulternaht',
    sign: 'Die Naht liegt vor dem Knochen, auf ganzer Länge oder am Schulterpunkt.',
    causes: {
      1: 'aufrechte Haltung',
      2: 'vorher zu weit versetzt',
      3: 'Rücken oberhalb der Schulterblätter zu lang',
    },
    tests: {
      1: 'Miss am Hals und am Schulterpunkt. Liegt die Naht vor dem Knochen?',
      2: 'Liegt eine Querfalte über dem oberen Rücken?',
    },
    trueAfter: ['Halsrundung, wo das Ende versetzt ist', 'Armloch', 'Passzeichen der Armkugel'],
    doNot: 'Versetze das Halsende nicht, ohne beide Halsausschnitte neu zu zeichnen.',
  },
  SH7: {
    said: ['das Armloch steht oben spitz ab'],
    where: 'wo Schulter und Armloch sich treffen',
    sign: 'Das Armloch hat an der Naht eine Spitze oder eine Delle.',
    causes: { 1: 'vorderes und hinteres Armloch nicht in einem Zug gezeichnet' },
    tests: {
      1: 'Leg die Teile an der Schulter aneinander. Ist da eine Spitze oder eine Delle?',
    },
    trueAfter: ['Armloch', 'Passzeichen der Armkugel'],
    doNot: 'Dehne es nicht in Form.',
  },
  SH8: {
    said: ['Falten nur auf einer Seite', 'ungleiche Schultern', 'eine Schulter hängt'],
    where: 'eine Seite',
    sign: 'Auf einer Seite schräge Falten vom Hals zur Achsel, die Mitten stehen schief, der Saum hängt auf dieser Seite.',
    causes: {
      1: 'eine Schulter ist tiefer als die andere',
      2: 'ungleich zugeschnitten oder genäht',
      3: 'Hüften verschieden hoch',
    },
    advice: {
      2: 'Die Falten wandern mit dem Stück: Näh es neu, beide Seiten gleich. Der Schnitt bleibt.',
      3: 'Die Schultern sind gleich hoch. Zeichne den Saum vom Boden aus an; die Schulter bleibt.',
    },
    tests: {
      1: 'Wende das Probeteil auf links. Bleiben die Falten auf derselben Seite des Körpers?',
      2: 'Wandern die Falten mit dem gewendeten Stück auf die andere Seite?',
    },
    trueAfter: ['beide Seiten', 'Halsausschnitt links und rechts der Mitte gleich'],
    doNot: 'Nimm keinen Mittelwert beider Seiten. Schneide nicht mehr im Stoffbruch zu.',
  },
}
