/** A correction as work on paper: the sentences around what is cut, moved and drawn anew. */
import { DART_WORDS, EDGE_WORDS } from '../draft/piece.words.ts'
import type { AnyDart, EdgeName, HalfId, PieceId } from '../draft/piece.ts'
import { capital } from '../units/capital.ts'

export const ON_PAPER_WORDS = {
  /** A step of the construction, after the piece it is done on. */
  stepOf: (piece: PieceId, step: string) => `${capital(piece)}. ${step}`,
  does: (words: string, amount: string) => `${capital(words)}, ${amount}.`,
  turned: (choice: string, from: string, to: string) =>
    `${capital(choice)}: ${from} becomes ${to}.`,
  cutAcross:
    'Back and front alike. Rule a line square to the fold half way between bust line and waist line and cut along it.',
  spread: (by: string) =>
    `Lay a strip of paper under the cut and spread it by ${by}, the fold in one line. Tape.`,
  overlap: (by: string) => `Overlap the cut by ${by}, the fold in one line. Tape.`,
  smoothAcross:
    'Draw the side seam smooth across the cut, and the legs of the darts straight from tip to mouth again.',
  markAnew: (letter: string) => `mark ${letter} anew as the steps say`,
  letter: (letter: string, way: string) => `${letter} ${way}`,
  /** @param words the tip by its dart */
  tip: (words: string, way: string) => `the ${words} ${way}`,
  out: (by: string) => `${by} out`,
  in: (by: string) => `${by} in`,
  down: (by: string) => `${by} down`,
  up: (by: string) => `${by} up`,
  ways: (parts: readonly string[]) => parts.join(' and '),
  /** @param taped the paper was cut and taped already */
  move: (half: HalfId, spots: readonly string[], taped: boolean) =>
    `${capital(half)}. ${taped ? 'To check it, or instead of cutting, measured from where they were:' : 'Move'} ${spots.join('; ')}.`,
  edge: (name: EdgeName) => `the ${EDGE_WORDS[name]}`,
  dart: (name: AnyDart) => `the ${DART_WORDS[name]}`,
  drawAnew: (half: HalfId, lines: readonly string[]) =>
    `${capital(half)}. Draw anew: ${lines.join(', ')}.`,
  cutAnew: (piece: string, length: string) =>
    `Cut anew: ${piece.toLowerCase()}, now ${length} long.`,
}
