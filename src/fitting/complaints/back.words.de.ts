/** What she reads of the complaints in back.ts, in German. */
import type { BACK_WORDS as English } from './back.words.ts'

export const BACK_WORDS: typeof English = {
  K1: {
    said: ['ich kann nicht nach vorn greifen', 'der Rücken platzt', 'Rücken zu schmal'],
    where: 'quer über den Rücken an den Schulterblättern',
    sign: 'Waagerechte Spannung von Schulterblatt zu Schulterblatt; ein Ärmel wird nach hinten gezogen.',
    causes: {
      1: 'Rückenbreite zu schmal',
      2: 'keine Bewegungsweite',
      3: 'Ärmel zu eng oder seine Armkugel zu knapp',
      4: 'Rücken zu kurz',
    },
    tests: {
      1: 'Öffne das hintere Armloch oder schneide die hintere Mitte ein. Klafft es schon im ruhigen Stehen?',
      2: 'Klafft es nur, wenn du nach vorn greifst?',
      3: 'Lässt es nach, wenn du den Ärmel heraustrennst?',
    },
    trueAfter: ['Einhalteweite der Schulter', 'Armloch', 'hintere Armkugel', 'Taille'],
    doNot: 'Lass dafür nicht die Seitennaht heraus.',
  },
  K2: {
    said: [
      'Querfalte hinten über der Taille',
      'im Kreuz sammelt sich Stoff',
      'Hohlkreuz',
      'hinten staut es sich über der Taille',
    ],
    where: 'hintere Mitte dicht über der Taille, zur Seite hin auslaufend',
    sign: 'Querfalten, an der hinteren Mitte am tiefsten, an den Seitennähten verschwunden.',
    causes: {
      1: 'hintere Mitte zu lang',
      2: 'Hüfte zu eng, der Stoff schiebt sich hoch',
      3: 'Taille im Ganzen zu lang, die Falten laufen rundum',
      4: 'hintere Mitte nicht geformt, Taille zu weit',
    },
    tests: {
      1: 'Steck an der hinteren Mitte eine Querfalte ab, zur Seite auf null. Hängt der Saum waagerecht?',
      2: 'Zieh den Stoff glatt nach unten. Ist es unter der Taille eng?',
      3: 'Laufen die Falten ins Vorderteil weiter?',
    },
    trueAfter: [
      'hintere Mitte im Fadenlauf',
      'Seite unverändert',
      'Länge des Taillenabnähers',
      'Saum in der Mitte',
    ],
    doNot: 'Ändere das nicht, solange die Hüfte eng ist. Nimm nichts an der Seite weg.',
  },
  K3: {
    said: ['der Saum geht hinten hoch', 'runder Rücken', 'zieht über dem oberen Rücken'],
    where: 'Schulterblätter, hinterer Saum',
    sign: 'Taille und Saum heben sich an der hinteren Mitte; waagerechte Spannung über den Schulterblättern, der Halsausschnitt kann abstehen.',
    causes: {
      1: 'gerundeter oberer Rücken braucht Länge über den Schulterblättern',
      2: 'über dem Gesäß eng',
      3: 'Rücken zu kurz',
    },
    tests: {
      1: 'Schneide quer an den Schulterblättern ein. Öffnet es sich in der Mitte und am Armloch nicht?',
      2: 'Ist es unter der Taille eng?',
      3: 'Öffnet es sich am Armloch ebenso weit?',
    },
    trueAfter: ['hintere Mitte gerade', 'Schulterlänge', 'Halsausschnitt'],
    doNot: 'Verlängere nicht nur in der Taille.',
  },
  K4: {
    said: ['die Schulterblätter drücken durch'],
    where: 'Schulterblatt bis seitliche Taille oder Achsel',
    sign: 'Schräge Zugfalten vom Schulterblatt aus.',
    causes: {
      1: 'Abnäher am Schulterblatt zu klein',
      2: 'Rücken dort zu kurz',
    },
    tests: {
      1: 'Öffne den Schulterabnäher oder die Schultermitte. Geht es auseinander?',
      2: 'Öffnet sich ein Schnitt quer über dem Schulterblatt?',
    },
    trueAfter: ['Schulter'],
    doNot: 'Bügle es nicht platt.',
  },
  K5: {
    said: ['Rücken über der Taille zu lang', 'aufrechter Rücken', 'flacher Rücken'],
    where: 'oberer und mittlerer Rücken',
    sign: 'Querfalten zwischen Schulterblättern und Taille; der Fadenlauf sinkt an der hinteren Mitte.',
    causes: {
      1: 'aufrechte Haltung, Rücken zu lang',
      2: 'hinterer Schulterabnäher zu groß',
    },
    tests: {
      1: 'Steck quer über den Rücken eine Falte ab, bis die Querfalten weg sind. Sitzt der Halsausschnitt noch bequem?',
      2: 'Endet die Falte an der Spitze des Schulterabnähers?',
    },
    trueAfter: ['Schulter', 'Halsausschnitt', 'Seiten gleich lang'],
    doNot: 'Nimm es nicht in der Taille weg. Halte die Seitennähte gleich lang.',
  },
  K6: {
    said: ['Längsfalten hinten in der Taille', 'hinten steht die Taille ab'],
    where: 'hintere Taille',
    sign: 'Lose Weite längs hinten in der Taille.',
    causes: {
      1: 'hinterer Abnäher nimmt zu wenig auf',
      2: 'hintere Mitte nicht geformt',
    },
    tests: {
      1: 'Steck auf den Abnäherlinien Längsfalten ab. Liegt es an?',
      2: 'Ist es mit einem Kniff an der hinteren Mitte besser?',
    },
    trueAfter: ['Taillennaht', 'Abnäher darunter'],
    doNot: 'Mach es nicht zu eng: 20 bis 25 mm Mehrweite bleiben rund um die Taille.',
  },
  K7: {
    said: ['der Kragen rutscht nach hinten', 'Rundung oben am Rücken'],
    where: 'hintere Mitte, bis 100 mm unter dem Nackenpunkt',
    sign: 'Spannung über der Rundung am Nacken; darüber oder darunter steht der Halsausschnitt ab.',
    causes: { 1: 'die obere Wirbelsäule ist dort gerundet' },
    tests: {
      1: 'Schneide 40 bis 60 mm unter dem Nackenpunkt quer ein. Öffnet es sich in der Mitte?',
    },
    trueAfter: ['hinterer Halsausschnitt bei gefaltetem Abnäher', 'Schulter'],
    doNot: 'Stelle nicht nur die hintere Mitte schräg.',
  },
}
