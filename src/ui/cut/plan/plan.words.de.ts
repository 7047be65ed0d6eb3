import { capital } from '../../../units/capital.ts'
import type { HANG_WORDS as Hang, KIND_WORDS as Kind, PLAN_LEAF as Plan } from './plan.words.ts'

export const PLAN_LEAF: typeof Plan = {
  title: 'Nähplan',
  order: 'Die Reihenfolge',
  done: (done, steps) => `${done} von ${steps} fertig`,
  next: (step, title) => `Als Nächstes Schritt ${step}: ${title}.`,
  allDone: 'Jeder Schritt ist getan. Häng es an die Stange und sieh es noch einmal an.',
  anew: 'Den Plan von vorn beginnen',
  stepDone: (step) => `Schritt ${step} ist fertig`,
  onPaper: 'Auf Papier',
  save: 'Nähplan speichern (PDF)',
  saved: (name, pages) => `Gespeichert als ${name}, ${pages}.`,
  inOneFile: ['Mit Teilen, Auflageplan und Listen in einer Datei:', 'auf dem Blatt Stoff', '.'],
  inUnit: { cm: 'Alles in Zentimetern', inch: 'Alles in Zoll' },
  lengths:
    'Die Längen gelten für die Nahtlinie einer Seite. Die Nahtzugabe liegt zwischen Nahtlinie und Schneidelinie. Jede Naht wird gebügelt, bevor eine andere sie kreuzt.',
  doneOn: (date) => `Erledigt am ${date}.`,
  sewnOn: (date) => `Genäht am ${date}.`,
  drawing: (pieces) => `${pieces.join(' und ')}; was genäht wird, ist mit Kreide gezeichnet`,
}

export const HANG_WORDS: typeof Hang = {
  hoursYet: (hours) => `Es hängt: noch ${hours} Stunden.`,
  minutesYet: (minutes) => `Es hängt: noch ${minutes} ${minutes === 1 ? 'Minute' : 'Minuten'}.`,
  sinceToday: 'Hängt seit heute.',
  clockSetBack: 'Die Uhr dieses Geräts wurde seither zurückgestellt.',
  goOn: (from) => `Mach ${from} weiter.`,
  next: (hung, from, step, title) =>
    `Schritt ${hung} hängt. Mach ${from} weiter, mit Schritt ${step}: ${title}.`,
  from: (day, time) => `${day} ab ${time} Uhr`,
  today: 'heute',
  tomorrow: 'morgen',
  on: (date) => `am ${date}`,
  sameHour: 'morgen um diese Zeit',
  counted: 'nach einem Tag und einer Nacht',
  hasHung: 'Es hat lange genug gehangen.',
  measure: 'Miss es noch einmal, schneide ab, was sich ausgehängt hat, und mach dann weiter.',
}

export const KIND_WORDS: typeof Kind = {
  title: 'Der Stoff',
  kind: 'Art',
  forThisSleeve: 'Für diesen Ärmel:',
  asks: 'Er verlangt andere Verarbeitungen',
  instead: (edge, finish, old) => `${capital(edge)}: ${finish} statt ${old}`,
  take: (offers) => (offers === 1 ? 'Nehmen' : `Alle ${offers} nehmen`),
  beforePrinting: 'Die Zugaben ändern sich mit. Mach es, bevor das Papier gedruckt ist.',
  drape: 'Fallprobe an einem Quadrat',
  drapeHow: (square) =>
    `Schneide fadengerade ein Quadrat von ${square}. Steck die Mitte einer Seite an einen Türrahmen und lass es hängen. Miss zwischen den beiden unteren Ecken.`,
  apart: 'Abstand der unteren Ecken',
  ofAnother: (apart, kind) =>
    `Abgelesen hast du ${apart}. Das war: ${kind}. Dieser Stoff ist noch nicht geprobt.`,
}
