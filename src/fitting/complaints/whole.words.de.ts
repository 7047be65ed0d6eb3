/** What she reads of the complaints in whole.ts, in German. */
import type { WHOLE_WORDS as English } from './whole.words.ts'

const SCALE =
  'Das Prüfquadrat hat nicht das Maß, das darin steht: Drucke in voller Größe und schneide neu zu; der Schnitt bleibt.'
const ALLOWANCE =
  'Miss eine Nahtzugabe nach: Sie wurde zu schmal oder zu breit genäht. Näh neu; der Schnitt bleibt.'
const ANEW =
  'Mehr als 40 mm im Umfang werden nicht an den Nähten geändert: Miss Brust, Taille und Hüfte noch einmal mit dem Maßband und zeichne neu.'

export const WHOLE_WORDS: typeof English = {
  X1: {
    said: ['die Mitte ist nicht gerade', 'die Nähte drehen sich'],
    where: 'überall',
    sign: 'Die angezeichneten Fadenläufe stehen schief.',
    causes: {
      1: 'nicht im Fadenlauf zugeschnitten',
      2: 'der Stoff selbst ist verzogen',
      3: 'links und rechts sind verschieden',
    },
    advice: {
      1: 'Schneide im Fadenlauf neu zu; der Schnitt bleibt.',
      2: 'Zieh den Stoff rechtwinklig und schneide neu zu.',
      3: 'Miss links und rechts und sag, was sich unterscheidet.',
    },
    tests: {
      1: 'Vergleiche den angezeichneten Fadenlauf mit der Webkante. Weicht er ab?',
      2: 'Stimmt der Fadenlauf, und steht der Querfaden des Stoffs nicht rechtwinklig dazu?',
    },
    trueAfter: [],
    doNot: 'Ändere den Schnitt nicht.',
  },
  X2: {
    said: ['überall zu eng', 'zu klein'],
    where: 'überall',
    sign: 'Überall waagerechte Spannung.',
    causes: {
      1: 'ein Maß oder die Mehrweite ist zu klein',
      2: 'zu klein gedruckt',
      3: 'Nahtzugaben zu breit genäht',
    },
    advice: { 2: SCALE, 3: ALLOWANCE },
    past: ANEW,
    tests: {
      1: 'Hat das Prüfquadrat das Maß, das darin steht, und ist das Probeteil um die Brust so weit wie der Schnitt?',
      2: 'Ist das Prüfquadrat kleiner, als darin steht?',
      3: 'Ist das Probeteil im Umfang kleiner als der Schnitt?',
    },
    trueAfter: ['alles'],
    doNot: 'Erst der Maßstab des Drucks, dann die Passform.',
  },
  X3: {
    said: ['überall zu weit', 'zu groß'],
    where: 'überall',
    sign: 'Überall Längsfalten.',
    causes: {
      1: 'ein Maß oder die Mehrweite ist zu groß',
      2: 'zu groß gedruckt',
      3: 'Nahtzugaben zu schmal genäht',
    },
    advice: { 2: SCALE, 3: ALLOWANCE },
    past: ANEW,
    tests: {
      1: 'Hat das Prüfquadrat das Maß, das darin steht, und ist das Probeteil um die Brust so weit wie der Schnitt?',
      2: 'Ist das Prüfquadrat größer, als darin steht?',
      3: 'Ist das Probeteil im Umfang größer als der Schnitt?',
    },
    trueAfter: ['alles'],
    doNot: 'Erst der Maßstab des Drucks, dann die Passform.',
  },
  X4: {
    said: ['das Probeteil hat gepasst', 'im richtigen Stoff sind neue Falten'],
    where: 'überall',
    sign: 'Falten, die das Probeteil nicht hatte.',
    causes: {
      1: 'der Stoff fällt, schrumpft oder dehnt sich anders',
      2: 'andere Nahtzugaben oder Belege',
      3: 'Körper oder Unterwäsche sind anders als vorher',
    },
    advice: {
      1: 'Behalte den Schnitt. Wähl für diesen Stoff mehr oder weniger Mehrweite.',
      2: ALLOWANCE,
      3: 'Miss Brust, Taille und Hüfte noch einmal mit dem Maßband, bevor etwas geändert wird.',
    },
    tests: {
      1: 'Miss beide Stücke. Sind sie gleich?',
      2: 'Unterscheiden sich die Stücke an den Nähten?',
    },
    trueAfter: [],
    doNot: 'Überschreibe den angepassten Grundschnitt nicht.',
  },
}
