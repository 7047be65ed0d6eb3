/** The Draft page: what stands over it, the drawing, the steps, the numbers and the corrections. */
import type { EdgeName, HalfId } from '../../draft/piece.ts'
import { EDGE_WORDS } from '../../draft/piece.words.ts'

export const DRAFT_WORDS = {
  draft: 'Draft',
  fromGuesses: 'Drawn from guesses. To look at, not for cutting.',
  nothingYet: 'Nothing is drawn yet.',
  needs: (needed: number, missing: number): string =>
    `The draft needs ${needed} numbers; ${missing} of them ${missing === 1 ? 'is' : 'are'} not agreed. A photo or one reading of each is enough to look at the pieces; they are cut from two readings that agree.`,
  openTapeBook: 'Open the tape book',
  cannotTogether: 'These numbers cannot be drawn together.',
  linesDoNotMeet:
    'The lines of the construction do not meet. One of the taped numbers does not belong with the others: look at the overarm and the bust first.',
  lookAtNumbers: 'Look at the numbers',
  notOnRail: 'This garment is not on the rail.',
  mayBeTakenOff: 'It may have been taken off, or the address belongs to another device.',
  backToRail: 'Back to the rail',
  onPaperSince: (round: number, on: string): string => `Round ${round}, on paper since ${on}.`,
  fromTaped: (round: number): string =>
    `Round ${round}, drawn from taped numbers. Walk the steps with ruler, square and compass.`,

  notForCuttingLead: 'Drawn from guesses, not for cutting.',
  notAgreed: (count: number): string =>
    `${count === 1 ? 'One number is' : `${count} numbers are`} not agreed yet. Two readings of the tape that agree turn a guess into a number.`,
  stillToTape: 'Still to tape',
  ofThem: (count: number): string => `${count} of them`,
  choicesLater: 'They can be turned once the numbers are taped.',
  guesses: (notForCutting: string): string => `guesses, ${notForCutting}`,

  drawing: 'The drawing',
  piece: 'Piece',
  pointedAt: (line: string, words: string): string => `${line}: ${words}`,
  marked: (letters: string): string => `${letters} marked`,

  steps: 'The steps',
  stepsFor: (count: number, piece: string): string => `${count} for the ${piece}`,
  stepOf: (step: number, count: number): string => `${step} of ${count}`,
  foldList: 'Fold the list',
  allSteps: (count: number, piece: string): string => `All ${count} steps of the ${piece}`,
  backAStep: 'Back a step',
  back: 'Back',
  nextStep: 'Next step',
  nextStepIs: (name: string): string => `Next step: ${name}`,
  nowThe: (piece: string, name: string): string => `Now the ${piece}: ${name}`,
  walkFromFirst: 'Walk from the first step',
  firstStep: 'First step',
  thisIsFirst: 'This is the first step.',
  thisIsLast: 'This is the last step.',
  stepSaid: (step: number, sentence: string): string => `Step ${step}. ${sentence}`,
  stepLead: (step: number, count: number): string => `Step ${step} of ${count}.`,
  traceIt: 'trace it',
  ruleIt: 'rule it',
  theMitre: 'the mitre',
  theWedge: 'the wedge',
  theSide: { left: 'the left one', right: 'the right one' },

  choices: 'Choices',
  takeBack: (what: string): string => `Take back: ${what}`,
  takeItBack: 'Take it back',
  turned: (what: string): string => `Turned: ${what}.`,
  frozen: (round: number, next: number | undefined): string =>
    `Round ${round} is on paper and stays as it is. What you change goes into round ${next}.`,
  turnForNext: (next: number | undefined): string => `Turn choices for round ${next}`,
  firstBegins: (next: number): string => `The first choice you let go begins round ${next}.`,
  theCorrection: 'The correction',
  takenBack: (what: string): string => `${what}: taken back.`,
  staysInBook: 'It stays in the book of the round and is not drawn any more.',

  corrections: 'Corrections',
  inForce: (count: number): string => `${count} in force`,
  seenIn: (round: number): string => `seen in round ${round}`,
  notDrawn: 'Not drawn.',
  choiceChanged: (label: string, change: string): string => `${label} ${change}.`,
  operated: (words: string, amount: string): string => `${words}, ${amount}.`,
  wedgeClosed: (
    width: string,
    piece: HalfId,
    edge: EdgeName,
    done?: { readonly opens: string; readonly shortens: string },
  ): string =>
    `A wedge of ${width} closed at the ${piece} ${EDGE_WORDS[edge]}${done ? `: the dart opens by ${done.opens}, the edge is ${done.shortens} shorter` : ''}.`,
  takeBackOf: (name: string, round: number): string => `Take back: ${name}, round ${round}`,
  takeItBackIn: (round: number): string => `Take it back in round ${round}`,

  numbers: 'Numbers',
  allIn: (unit: string): string => `all in ${unit}`,
  fromTheBody: 'Taken from the body',
  whatMoves: 'What does it move?',
  show: 'Show',
  whatMeasureMoves: (measure: string): string => ` what ${measure} moves`,
  noPoint: 'no point',
  onThePaper: 'On the paper',
}
