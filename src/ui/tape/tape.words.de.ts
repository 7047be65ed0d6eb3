import type {
  NO_PLACE_WORDS as EnglishNoPlace,
  PLACE_WORDS as EnglishPlaces,
  TAPE_WORDS as EnglishTape,
  TOOL_WORDS as EnglishTools,
} from './tape.words.ts'

export const PLACE_WORDS: typeof EnglishPlaces = {
  rail: 'Stange',
  measure: 'Messen',
  draft: 'Schnitt',
  fit: 'Anprobe',
  compare: 'Vergleich',
  cut: 'Zuschnitt',
}

export const TAPE_WORDS: typeof EnglishTape = {
  tape: 'Das Maßband',
  measured: (agreed, needed) => `${agreed} von ${needed}`,
  fromGuesses: 'aus Schätzungen',
  round: (number) => `Runde ${number}`,
  drafted: 'gezeichnet',
  muslin: (round) => `Probeteil ${round}`,
  compared: (before, after) => `${before} mit ${after}`,
  onPaper: 'auf Papier',
}

export const NO_PLACE_WORDS: typeof EnglishNoPlace = {
  willLieHere: {
    draft:
      'Hier liegen die Schnittteile eines Stücks, mit den Schritten für Lineal, Winkel und Bleistift.',
    fit: 'Hier sagst du, was ein Probeteil macht, und der Schnitt ändert sich in Zahlen.',
    compare:
      'Hier liegen Runden eines Stücks übereinander, mit dem, was sich dazwischen geändert hat.',
    cut: 'Hier liegen Nahtzugaben, Stoff und Blätter in Originalgröße, sobald ein Schnitt geprüft ist.',
  },
  noGarment: 'Auf dem Tisch liegt kein Stück.',
  choose: 'Ein Stück an der Stange wählen',
  nothingTitle: 'Hier liegt nichts',
  nothing: 'Diese Adresse führt zu keiner Seite.',
  why: 'Vielleicht ist sie von Hand getippt oder gehört zu einem Stück, das von der Stange genommen wurde.',
  back: 'Zurück zur Stange',
}

export const TOOL_WORDS: typeof EnglishTools = {
  light: 'Licht',
  day: 'Tag',
  lamp: 'Lampe',
  kept: (clock) => `Auf diesem Gerät gesichert, ${clock} Uhr`,
  to: 'auf',
  inchesTo: 'Zoll auf',
  units: 'Einheiten',
  inches: 'Zoll',
  thumb: 'Daumen',
  left: 'Links',
  right: 'Rechts',
  more: 'Mehr',
  guide: 'Anleitung, vom Foto bis genäht',
  words: 'Wörter und Taschenkarte',
  keys: 'Tasten 1 bis 6 gehen das Maßband entlang',
}
