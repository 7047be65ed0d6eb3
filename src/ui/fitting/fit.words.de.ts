import type { FIT_WORDS as English } from './fit.words.ts'

export const FIT_WORDS: typeof English = {
  title: 'Was siehst du?',
  about: (garment, muslin) =>
    `${garment}, Probeteil ${muslin} am Körper. Falsch ist höchstens der Schnitt, nie du.`,
  aboutNone: 'Hier sagst du, was der Stoff tut. Falsch ist höchstens der Schnitt, nie du.',

  noGarment: 'Dieses Stück hängt nicht an der Stange.',
  noGarmentWhy: 'Vielleicht wurde es abgenommen, oder die Adresse ist von Hand getippt.',
  backToRail: 'Zurück zur Stange',
  noMuslin: 'Noch ist kein Probeteil genäht.',
  missing: (count) =>
    `${count === 1 ? 'Eine Zahl ist' : `${count} Zahlen sind`} noch mit dem Maßband zu messen, bevor sich ein Probeteil zeichnen lässt. Hast du es an, sag hier, was der Stoff tut.`,
  openBook: 'Maßbuch öffnen',
  notOnPaper: (round) => `Runde ${round} ist noch nicht auf Papier.`,
  sewFirst: (round) =>
    `Drucke sie in Originalgröße oder zeichne sie mit Lineal und Winkel, näh ein Probeteil danach, und komm mit dem Probeteil am Körper wieder. Von da an bleiben die Zahlen von Runde ${round}, wie sie sind; was sich ändert, kommt in Runde ${round + 1}.`,
  muslinAtMost: 'Höchstens für ein Probeteil.',
  haveSewn: 'Dieses Probeteil ist genäht',
  onPaperFirst: 'Erst zu Papier bringen',

  youSee: 'Du siehst',
  differently: 'Anders sagen',
  seeChange: 'Ansehen, was sich ändern würde',
  seeOutcome: 'Ansehen, was herauskommt',
  question: 'Weiter: eine Frage',
  seeHeard: 'Ansehen, was das sein kann',
  saySeen: 'Sagen, was du siehst',

  takenBack: 'Zurückgenommen. Der Schnitt ist wie vor dieser Änderung.',
  kept: (round) => `Mit Runde ${round} behalten. Der Schnitt bleibt, wie er ist.`,
  noted: (round, words) => `Als Notiz mit Runde ${round} behalten: ${words}`,
  nothingChanged: 'Es wurde nichts geändert.',
}
