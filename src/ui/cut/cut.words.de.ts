import type {
  ABOUT_WORDS as About,
  CHECK_WORDS as Check,
  CUT_WORDS as Cut,
  FILE_NAMES as Files,
  HAND_WORDS as Hand,
  MAKING_WORDS as Making,
  PAPER_SHEET as Paper,
  WORK_WORDS as Work,
} from './cut.words.ts'

const sheetsSaid = (count: number): string => (count === 1 ? '1 Blatt' : `${count} Blätter`)

export const CUT_WORDS: typeof Cut = {
  title: 'Zuschnitt',
  about: 'Blätter, Zugaben und die Wege ohne Drucker.',
  aboutRound: (garment, round, printedOn) =>
    `${garment}, Runde ${round}${printedOn === undefined ? ', jede Zahl vom Maßband' : `, auf Papier seit ${printedOn}`}.`,
  aboutCloth: (garment, round) => `${garment}, Runde ${round}, mit den Verarbeitungen für Stoff.`,
  leaves: 'Blätter von Zuschnitt',
  leaf: { paper: 'Papier', cloth: 'Stoff', plan: 'Nähplan' },
  waits: {
    cloth: 'Der Stoff wird ausgelegt, sobald das Maßband diese Zahlen zweimal gegeben hat.',
    plan: 'Die Reihenfolge des Nähens steht hier, sobald das Maßband diese Zahlen zweimal gegeben hat.',
  },
  tapeBook: 'Maßbuch öffnen',
  openDraft: 'Schnitt öffnen',
  toTheRail: 'Zurück zur Stange',
  absent: 'Dieses Stück hängt nicht an der Stange.',
  absentWhy: 'Vielleicht ist es abgenommen, oder die Adresse gehört zu einem anderen Gerät.',
  notForCloth: 'Noch nicht für den Stoff.',
  undrawable: 'Diese Zahlen lassen sich nicht zusammen zeichnen.',
  undrawableWhy: 'Die Seite Schnitt sagt, welche nicht zusammenpassen.',
  notYet: 'Noch nicht zum Zuschneiden.',
  notYetWhy:
    'Blätter entstehen aus Zahlen, die das Maßband zweimal gegeben hat. Ist der Schnitt gezeichnet, liegen sie hier, mit ihren Zugaben.',
  guesses: 'Aus Schätzungen gezeichnet, nicht zum Zuschneiden.',
  guessesWhy: 'Blätter entstehen aus Zahlen, die das Maßband zweimal gegeben hat.',
  notAgreed: (missing) =>
    missing === 1 ? '1 Zahl ist nicht bestätigt.' : `${missing} Zahlen sind nicht bestätigt.`,
  cutFrom: 'Zuschneiden aus',
  stuff: { muslin: 'Nessel', cloth: 'Stoff' },
  noSheets: 'Keine Blätter.',
  notYetForCloth: 'Noch nicht für den Stoff: Der Grund steht oben.',
  notForCutting: 'Nicht zum Zuschneiden: Der Grund steht oben.',
  onPaper: (round) => `Runde ${round} ist auf Papier und bleibt, wie sie ist.`,
  saved: (name, pageOne, sheets, steps) =>
    `Gespeichert als ${name}: ${pageOne ? 'Seite eins, ' : ''}${sheetsSaid(sheets)}, ${steps} mit Schritten.`,
  sewIt: ['Näh es, dann', 'sag, was du siehst', '.'],
  ask: (round) =>
    `Mit der Datei kommt Runde ${round} auf Papier: Von da an bleibt sie, wie sie ist, und Änderungen kommen in Runde ${round + 1}.`,
  savePdf: 'PDF speichern',
  savePdfOf: (sheets) => `PDF speichern, ${sheetsSaid(sheets)}`,
  drawnByHand: 'Es ist von Hand gezeichnet',
  muslinOnly: 'Nur für ein Probeteil, nicht für den Stoff.',
  muslinFirst: 'Erst für ein Probeteil.',
  proofHolds: 'Die Prüfung ist bestanden. Trotzdem erst ein Probeteil: Stoff kommt nicht wieder.',
  goesOnPaper: (round) => `Kommt Runde ${round} auf Papier?`,
  goesOnPaperWhy: (round) =>
    `Von da an bleiben ihre Zahlen, wie sie sind, und jede Änderung kommt in Runde ${round + 1}.`,
  no: 'Noch nicht',
}

export const MAKING_WORDS: typeof Making = {
  drawn: 'Die Blätter werden gezeichnet.',
  laidOut: 'Die Blätter werden eingeteilt.',
  pages: 'Die Seiten werden gezeichnet.',
  broken:
    'Die Blätter ließen sich hier nicht machen. Speichere stattdessen die Zeichnung oder die Schritte.',
  noType:
    'Die Schrift für die Blätter war nicht zu lesen. Öffne diese Seite einmal mit Netz und versuch es noch einmal.',
  nothingAsked: 'Es waren keine Seiten gefragt.',
  title: (garment, round) => `${garment}, Runde ${round}`,
}

export const PAPER_SHEET: typeof Paper = {
  title: { muslin: 'Papier für das Probeteil', cloth: 'Papier für das Stück' },
  sheets: sheetsSaid,
  of: (paper, layout) =>
    `${paper}${layout ? ` zum Zusammenlegen, ${layout.rows} ${layout.rows === 1 ? 'Reihe' : 'Reihen'} mit bis zu ${layout.columns}` : ''}.`,
  onBlock: 'Die beiden Quadrate stehen darauf; die Schritte kommen als Seiten für zu Hause.',
  pageOne: 'Seite eins mit den beiden Quadraten und die Schritte kommen dazu.',
  stop: 'Anhalten',
  noPlan: 'Es lassen sich keine Blätter verteilen. Der Grund steht oben.',
  map: (sheets, rows, names) =>
    `${sheetsSaid(sheets)} in ${rows} ${rows === 1 ? 'Reihe' : 'Reihen'}: ${names.join(', ')}`,
  squares: 'Quadrate',
  paper: 'Papier',
  roll: 'Rolle',
  rollWidth: 'Breite der Rolle',
}

export const CHECK_WORDS: typeof Check = {
  before: 'Miss beide Quadrate, bevor du schneidest.',
  squares: (metric, inch) =>
    `Auf Seite eins stehen ein Quadrat von ${metric} und eines von ${inch}. Drucke mit 100\u00a0%, nie an die Seite angepasst. Weicht ein Quadrat um mehr als einen Bleistiftstrich ab, stimmen die Blätter nicht: Stell 100\u00a0% ein und drucke Seite eins noch einmal.`,
  title: 'Stimmt der Druck?',
  corrected: 'für einen Drucker berichtigt',
  how: 'Drucke erst Seite eins. Leg das Lineal an beide Quadrate und tipp ein, was ihre Seiten messen, so genau du es ablesen kannst.',
  onePrinter: 'Dateien werden für einen Drucker gemacht.',
  trueSize: 'Zurück zur Originalgröße',
  square: { mm100: 'Quadrat 100\u00a0mm', inch4: 'Quadrat 4 in' },
  way: { across: 'Quer', down: 'Längs' },
  save: 'Berichtigte Datei speichern',
  again: 'Miss noch einmal.',
}

export const HAND_WORDS: typeof Hand = {
  title: 'Ohne Drucker',
  steps: 'Für die Schritte brauchst du Lineal, Winkel, Zirkel und Bleistift.',
  stepsOnly:
    'Für die Schritte brauchst du Lineal, Winkel, Zirkel und Bleistift; sie allein bringen die Runde nicht auf Papier.',
  saveSteps: 'Schritte speichern (Text)',
  projector: 'Teile mit dem Beamer projizieren',
  drawn: 'Ich habe es von Hand gezeichnet',
  savedSteps: (name) => `Die Schritte sind als ${name} gespeichert.`,
  drawings: 'Zeichnungen für Plotter oder Copyshop',
  trueScale: 'In Originalgröße, mit der Schneidelinie.',
  trueScalePreview:
    'In Originalgröße, mit der Schneidelinie und mit „nicht mit dem Maßband bestätigt“ quer darüber.',
  putsOnPaper: 'Speicherst du eine, kommt die Runde auf Papier.',
  saveAll: 'Alle Teile für eine Schneidemaschine (DXF)',
  savePiece: (piece) => `${piece}, Zeichnung (SVG)`,
  savedPiece: (piece, name) => `${piece} ist als ${name} gespeichert, in Originalgröße.`,
  savedAll: (name) => `Alle Teile sind als ${name} gespeichert, in Millimetern.`,
}

export const WORK_WORDS: typeof Work = {
  title: 'Von Hand, auf dem Papier, das du hast',
  paperOf: (round) => `Papier von Runde ${round}`,
  pencil: 'Die Schneidelinie mit Lineal und Bleistift',
  takenBack: (what) => `Zurückgenommen. ${what}`,
  stillHas: (round) =>
    `Auf dem Papier von Runde ${round} ist sie noch. Zeichne die Teile neu nach den Schritten.`,
  otherChanges: 'Auch Maße oder Wahl sind anders',
  doesNotHold: (round) =>
    `Auf dem Papier von Runde ${round} stehen sie nicht. Drucke oder zeichne die Teile neu.`,
  nothingMoves: 'Auf dem Papier ändert sich nichts.',
}

export const ABOUT_WORDS: typeof About = {
  sheets: (paper, sheets, stuff) =>
    `${paper}, ${sheetsSaid(sheets)}, ${stuff === 'cloth' ? 'Stoff' : 'Probeteil'}`,
  roll: 'Rolle',
  pages: (pages) => `${pages} ${pages === 1 ? 'Seite' : 'Seiten'}`,
  run: (pages) => `alles in einem Druck, ${pages}`,
}

const file = (words: string): string =>
  words
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')

export const FILE_NAMES: typeof Files = {
  garment: 'stück',
  round: (round) => `runde-${round}`,
  sheets: (stuff, corrected, paper) =>
    `${stuff === 'cloth' ? 'stoff-' : ''}${corrected ? 'berichtigt-' : ''}blätter-${paper}.pdf`,
  roll: 'rolle',
  steps: 'schritte.txt',
  piece: (stuff, _id, name) => `${stuff === 'cloth' ? 'stoff-' : ''}${file(name)}.svg`,
  pieces: (stuff) => `${stuff === 'cloth' ? 'stoff-' : ''}teile.dxf`,
  sewingPlan: 'nähplan.pdf',
  cuttingPlan: 'auflageplan.pdf',
  run: 'druck.pdf',
}
