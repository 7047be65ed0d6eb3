import type {
  MODEL_WORDS as EnglishModel,
  PREPARATION_WORDS as EnglishPreparation,
  PRINT_WORDS as EnglishPrint,
} from './preparation.words.ts'

export const PREPARATION_WORDS: typeof EnglishPreparation = {
  summary: 'Bevor du sie aufnimmst',
  wears: {
    front: 'Bogen in der Taille, vorn, am Körper. Arme etwas abgespreizt.',
    side: 'Bogen an der Seite zur Kamera. Dieser Arm geht nach vorn, Hand hoch.',
    back: 'Bogen hinten in der Taille. Arme etwas abgespreizt, beide Füße belastet.',
  },
  figure: (view, words) => `Ansicht ${view.toLowerCase()}: ${words}`,
  clothes: 'Enge Kleidung in einer Farbe. Haare hoch, Nacken frei. Schuhe aus.',
  cord: 'Eine Schnur oder ein Gummiband in der Taille, rundum waagerecht. Anders ist die Taille nicht zu sehen, und dort beginnen die meisten Längen.',
  dots: 'Wenn du magst: Klebepunkte in einer kräftigen Farbe an Nackenpunkt, Halspunkt, Schulterpunkten, Brustpunkten, Mitte der Taille und Hüfte. Der an der Hüfte klebt seitlich, auf Höhe der stärksten Stelle des Gesäßes; er hilft, wo der Bogen ihn nicht verdeckt. Ein Punkt ist genauer als eine Schätzung.',
  cameraDrawn:
    'Die Kamera steht auf einem Hocker oder Regal in Höhe der Taille, 2,5\u00a0m entfernt, aufrecht und waagerecht.',
  distance: '2,5\u00a0m',
  atWaist: 'in Höhe der Taille',
  camera: 'Kamera.',
  cameraStands:
    'Aufrecht auf Regal oder Hocker, nicht geneigt. Das Licht kommt aus ihrer Richtung.',
}

export const PRINT_WORDS: typeof EnglishPrint = {
  paper: 'Papier für den Bogen',
  letter: 'US-Letter',
  save: (paper) => `Bogen, Punkte und Taschenkarte speichern, ${paper}`,
  title: 'Zum Drucken für die Fotos',
  fileName: (paper) => `zum-drucken-fuer-die-fotos-${paper}.pdf`,
  saved: {
    cm: 'Gespeichert: zwei Seiten. Druck sie mit 100\u00a0% und leg das Maßband auf beiden an den Balken mit der Aufschrift 10 cm: Er muss 10,0\u00a0cm lang sein.',
    inch: 'Gespeichert: zwei Seiten. Druck sie mit 100\u00a0% und leg das Maßband auf beiden an den Balken mit der Aufschrift 4 in: Er muss 4\u00a0in lang sein.',
  },
  notLoaded:
    'Die Seite ließ sich nicht machen: Ein Teil dieses Programms wurde nicht geladen. Lade neu und versuch es noch einmal.',
}

const mega = (value: number): string => value.toFixed(1).replace('.', ',')

export const MODEL_WORDS: typeof EnglishModel = {
  label: 'Modell, das Nacken und Taille findet',
  value: (loaded, total) => `${mega(loaded)} von ${mega(total)} Megabyte`,
  once: (loaded, total) => `${mega(loaded)} von ${mega(total)} MB, einmalig`,
}
