/** The Cut page: paper for the muslin or the garment, ways without a printer, what is said of saving. */
export const CUT_WORDS = {
  title: 'Cut',
  about: 'Sheets, allowances and the ways without a printer.',
  aboutRound: (garment: string, round: number, printedOn: string | undefined) =>
    `${garment}, round ${round}${printedOn === undefined ? ', every number taped' : `, on paper since ${printedOn}`}.`,
  aboutCloth: (garment: string, round: number) =>
    `${garment}, round ${round}, with the finishes for cloth.`,
  leaves: 'Leaves of Cut',
  leaf: { paper: 'Paper', cloth: 'Cloth', plan: 'Sewing plan' },
  /** What waits for the tape, by leaf. */
  waits: {
    cloth: 'The cloth is laid out once the tape has given these numbers twice.',
    plan: 'The order of sewing is told once the tape has given these numbers twice.',
  },
  tapeBook: 'Open the tape book',
  openDraft: 'Open the draft',
  toTheRail: 'Back to the rail',
  absent: 'This garment is not on the rail.',
  absentWhy: 'It may have been taken off, or the address belongs to another device.',
  notForCloth: 'Not for cloth yet.',
  undrawable: 'These numbers cannot be drawn together.',
  undrawableWhy: 'The Draft page says which of them do not meet.',
  notYet: 'Not for cutting yet.',
  notYetWhy:
    'Sheets are made from numbers the tape has given twice. Once the draft is drawn they lie here, with their allowances.',
  guesses: 'Drawn from guesses, not for cutting.',
  guessesWhy: 'Sheets are made from numbers the tape has given twice.',
  notAgreed: (missing: number) =>
    `${missing} ${missing === 1 ? 'number is' : 'numbers are'} not agreed.`,
  cutFrom: 'Cut from',
  stuff: { muslin: 'muslin', cloth: 'cloth' },
  noSheets: 'No sheets.',
  notYetForCloth: 'Not yet for cloth: the reason stands above.',
  notForCutting: 'Not for cutting: the reason stands above.',
  onPaper: (round: number) => `Round ${round} is on paper and stays as it is.`,
  saved: (name: string, pageOne: boolean, sheets: number, steps: number) =>
    `Saved as ${name}: ${pageOne ? 'page one, ' : ''}${sheetsSaid(sheets)}, ${steps} of steps.`,
  /** Around a link. */
  sewIt: ['Sew it, then', 'say what you see', '.'],
  ask: (round: number) =>
    `Making the file puts round ${round} on paper: it stays as it is from then on, and changes go into round ${round + 1}.`,
  savePdf: 'Save the PDF',
  savePdfOf: (sheets: number) => `Save the PDF, ${sheetsSaid(sheets)}`,
  drawnByHand: 'It is drawn by hand',
  muslinOnly: 'For a muslin only, not for cloth.',
  muslinFirst: 'For a muslin first.',
  proofHolds: 'The proof holds. A muslin first all the same: cloth does not come back.',
  goesOnPaper: (round: number) => `Does round ${round} go on paper?`,
  goesOnPaperWhy: (round: number) =>
    `From then on its numbers stay as they are, and every change goes into round ${round + 1}.`,
  no: 'Not yet',
}
const sheetsSaid = (count: number): string => (count === 1 ? '1 sheet' : `${count} sheets`)

/** What keeps a file from being saved this moment, and why it could not be made. */
export const MAKING_WORDS = {
  drawn: 'The sheets are being drawn.',
  laidOut: 'The sheets are being laid out.',
  pages: 'The pages are being drawn.',
  broken: 'The sheets could not be made here. Save the drawing or the steps instead.',
  noType:
    'The letters for the sheets could not be read. Open this page once with a network, then try again.',
  nothingAsked: 'No pages were asked for.',
  title: (garment: string, round: number) => `${garment}, round ${round}`,
}

/** The sheets and their map. */
export const PAPER_SHEET = {
  title: { muslin: 'Paper for the muslin', cloth: 'Paper for the garment' },
  sheets: sheetsSaid,
  /** After the number of sheets. */
  of: (paper: string, layout: { readonly rows: number; readonly columns: number } | undefined) =>
    `of ${paper}${layout ? ` to lay together, ${layout.rows} ${layout.rows === 1 ? 'row' : 'rows'} of up to ${layout.columns}` : ''}.`,
  onBlock: 'The two squares stand on it; the steps come as pages for home.',
  pageOne: 'Page one with the two squares and the steps come with them.',
  stop: 'Stop',
  noPlan: 'No sheets can be laid out. The reason stands above.',
  map: (sheets: number, rows: number, names: readonly string[]) =>
    `${sheetsSaid(sheets)} in ${rows} ${rows === 1 ? 'row' : 'rows'}: ${names.join(', ')}`,
  squares: 'squares',
  paper: 'Paper',
  roll: 'Roll',
  rollWidth: 'Width of the roll',
}

export const CHECK_WORDS = {
  before: 'Measure both squares before you cut.',
  squares: (metric: string, inch: string) =>
    `Page one carries a square of ${metric} and one of ${inch}. Print at 100 %, never fitted to the page. If either square is off by more than the width of a pencil line, the sheets are not true: set the scale to 100 % and print page one again.`,
  title: 'Is the print true?',
  corrected: 'corrected for one printer',
  how: 'Print page one first. Lay the ruler on both squares and type what their sides measure, as finely as you can read it.',
  onePrinter: 'Files are made for one printer.',
  trueSize: 'Back to true size',
  square: { mm100: '100 mm square', inch4: '4 in square' },
  way: { across: 'Across', down: 'Down' },
  save: 'Save a corrected file',
  again: 'Measure once more.',
}

/** Ways without a printer, and files for others. */
export const HAND_WORDS = {
  title: 'Without a printer',
  steps: 'The steps take ruler, square, compass and pencil.',
  stepsOnly:
    'The steps take ruler, square, compass and pencil and do not put the round on paper by themselves.',
  saveSteps: 'Save the steps (text)',
  projector: 'Throw the pieces with a projector',
  drawn: 'I have drawn it by hand',
  savedSteps: (name: string) => `The steps are saved as ${name}.`,
  drawings: 'Drawings for a plotter or a copy shop',
  trueScale: 'At true scale, with the cutting line.',
  trueScalePreview:
    'At true scale, with the cutting line and with “not confirmed by tape” across them.',
  putsOnPaper: 'Saving one puts the round on paper.',
  saveAll: 'Save all pieces, for cutting by machine (DXF)',
  savePiece: (piece: string) => `Save the ${piece}, drawing (SVG)`,
  savedPiece: (piece: string, name: string) => `${piece} is saved as ${name}, at true scale.`,
  savedAll: (name: string) => `All pieces are saved as ${name}, in millimetres.`,
}

/** Pencil work on the paper she has. */
export const WORK_WORDS = {
  title: 'By hand, on the paper you have',
  paperOf: (round: number) => `the paper of round ${round}`,
  pencil: 'The cutting line by ruler and pencil',
  takenBack: (what: string) => `Taken back. ${what}`,
  stillHas: (round: number) =>
    `The paper of round ${round} still has it. Draw the pieces anew from the steps.`,
  otherChanges: 'Numbers or choices changed as well',
  doesNotHold: (round: number) =>
    `The paper of round ${round} does not hold them. Print or draw the pieces anew instead.`,
  nothingMoves: 'Nothing on the paper moves.',
}

/** What a piece of paper work was about, told in the record of the round. */
export const ABOUT_WORDS = {
  sheets: (paper: string, sheets: number, stuff: 'muslin' | 'cloth') =>
    `${paper}, ${sheetsSaid(sheets)}, ${stuff}`,
  roll: 'ROLL',
  pages: (pages: number) => `${pages} ${pages === 1 ? 'page' : 'pages'}`,
  run: (pages: string) => `everything as one run, ${pages}`,
}

/** Names of saved files: small letters, figures and hyphens. */
export const FILE_NAMES = {
  garment: 'garment',
  round: (round: number) => `round-${round}`,
  sheets: (stuff: 'muslin' | 'cloth', corrected: boolean, paper: string) =>
    `${stuff === 'cloth' ? 'cloth-' : ''}${corrected ? 'corrected-' : ''}sheets-${paper}.pdf`,
  roll: 'roll',
  steps: 'steps.txt',
  /** `id` is the piece as the program calls it, `name` as she does. */
  piece: (stuff: 'muslin' | 'cloth', id: string, _name: string) =>
    `${stuff === 'cloth' ? 'cloth-' : ''}${id}.svg`,
  pieces: (stuff: 'muslin' | 'cloth') => `${stuff === 'cloth' ? 'cloth-' : ''}pieces.dxf`,
  sewingPlan: 'sewing-plan.pdf',
  cuttingPlan: 'cutting-plan.pdf',
  run: 'print-run.pdf',
}
