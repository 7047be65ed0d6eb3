import { EDGES, PIECES } from '../../draft/piece.words.de.ts'
import type { DRAFT_WORDS as English } from './draft.words.ts'

export const DRAFT_WORDS: typeof English = {
  draft: 'Schnitt',
  fromGuesses: 'Nach Schätzungen gezeichnet. Zum Ansehen, nicht zum Zuschneiden.',
  nothingYet: 'Noch ist nichts gezeichnet.',
  needs: (needed, missing) =>
    `Der Schnitt braucht ${needed} Maße; ${missing === 1 ? 'eines davon ist' : `${missing} davon sind`} nicht bestätigt. Ein Foto oder je eine Ablesung genügt, um die Teile anzusehen; zugeschnitten wird nach zwei Ablesungen, die übereinstimmen.`,
  openTapeBook: 'Maßbuch öffnen',
  cannotTogether: 'Diese Zahlen lassen sich nicht zusammen zeichnen.',
  linesDoNotMeet:
    'Die Linien der Konstruktion treffen sich nicht. Eines der Maße gehört nicht zu den anderen: Prüf zuerst Oberarmlänge und Brust.',
  lookAtNumbers: 'Maße ansehen',
  notOnRail: 'Dieses Stück hängt nicht an der Stange.',
  mayBeTakenOff: 'Vielleicht wurde es abgenommen, oder die Adresse gehört zu einem anderen Gerät.',
  backToRail: 'Zurück zur Stange',
  onPaperSince: (round, on) => `Runde ${round}, auf Papier seit ${on}.`,
  fromTaped: (round) =>
    `Runde ${round}, nach gemessenen Zahlen gezeichnet. Geh die Schritte mit Lineal, Winkel und Zirkel.`,

  notForCuttingLead: 'Nach Schätzungen gezeichnet, nicht zum Zuschneiden.',
  notAgreed: (count) =>
    `${count === 1 ? 'Ein Maß ist' : `${count} Maße sind`} noch nicht bestätigt. Zwei Ablesungen, die übereinstimmen, machen aus einer Schätzung ein Maß.`,
  stillToTape: 'Noch zu messen',
  ofThem: (count) => `${count} davon`,
  choicesLater: 'Verstellen kannst du sie, sobald die Maße genommen sind.',
  guesses: (notForCutting) => `Schätzungen, ${notForCutting}`,

  drawing: 'Die Zeichnung',
  piece: 'Schnittteil',
  pointedAt: (line, words) => `${line}: ${words}`,
  marked: (letters) => `${letters} markiert`,

  steps: 'Die Schritte',
  stepsFor: (count, piece) => `${count} für: ${piece}`,
  stepOf: (step, count) => `${step} von ${count}`,
  foldList: 'Liste einklappen',
  allSteps: (count, piece) => `Alle ${count} Schritte: ${piece}`,
  backAStep: 'Schritt zurück',
  back: 'Zurück',
  nextStep: 'Nächster Schritt',
  nextStepIs: (name) => `Weiter: ${name}`,
  nowThe: (piece, name) => `Jetzt ${piece}: ${name}`,
  walkFromFirst: 'Ab dem ersten Schritt gehen',
  firstStep: 'Erster Schritt',
  thisIsFirst: 'Das ist der erste Schritt.',
  thisIsLast: 'Das ist der letzte Schritt.',
  stepSaid: (step, sentence) => `Schritt ${step}. ${sentence}`,
  stepLead: (step, count) => `Schritt ${step} von ${count}.`,
  traceIt: 'durchzeichnen',
  ruleIt: 'mit dem Lineal zeichnen',
  theMitre: 'die Gehrung',
  theWedge: 'der Keil',
  theSide: { left: 'links', right: 'rechts' },

  choices: 'Wahl',
  takeBack: (what) => `Zurücknehmen: ${what}`,
  takeItBack: 'Zurücknehmen',
  turned: (what) => `Verstellt: ${what}.`,
  frozen: (round, next) =>
    `Runde ${round} ist auf Papier und bleibt, wie sie ist. Was du änderst, kommt in Runde ${next}.`,
  turnForNext: (next) => `Für Runde ${next} verstellen`,
  firstBegins: (next) => `Sobald du etwas verstellst und loslässt, beginnt Runde ${next}.`,
  theCorrection: 'Die Änderung',
  takenBack: (what) => `${what}: zurückgenommen.`,
  staysInBook: 'Sie bleibt im Protokoll der Runde stehen und wird nicht mehr gezeichnet.',

  corrections: 'Änderungen',
  inForce: (count) => `${count} ${count === 1 ? 'gilt' : 'gelten'}`,
  seenIn: (round) => `gesehen in Runde ${round}`,
  notDrawn: 'Nicht gezeichnet.',
  choiceChanged: (label, change) => `${label} ${change}.`,
  operated: (words, amount) => `${words}, ${amount}.`,
  wedgeClosed: (width, piece, edge, done) =>
    `Ein Keil von ${width} ${EDGES[edge].am} ${PIECES[piece].des} geschlossen${done ? `: Der Abnäher öffnet sich um ${done.opens}, die Kante ist ${done.shortens} kürzer` : ''}.`,
  takeBackOf: (name, round) => `Zurücknehmen: ${name}, Runde ${round}`,
  takeItBackIn: (round) => `In Runde ${round} zurücknehmen`,

  numbers: 'Zahlen',
  allIn: (unit) => `alle in ${unit}`,
  fromTheBody: 'Am Körper genommen',
  whatMoves: 'Was ändert es?',
  show: 'Zeigen',
  whatMeasureMoves: (measure) => `, was dieses Maß ändert: ${measure}`,
  noPoint: 'kein Punkt',
  onThePaper: 'Auf dem Papier',
}
