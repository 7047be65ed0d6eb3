/** Words of parts that every page uses. */
import type { Fold } from './folds.ts'

export const PART_WORDS = {
  same: 'same',
  was: 'Was',
  willBe: 'Will be',
  change: 'Change',
  /** Head of a column, with the unit of its numbers. */
  column: (head: string, unit: string) => `${head}, ${unit}`,
  dotsApart: (spacing: string) => `Dots are ${spacing} apart`,
  closer: 'Closer',
  further: 'Further',
  whole: 'Whole',
  drawingKeys:
    'Plus and minus draw it closer and further, arrows push it along, 0 shows the whole.',
  readAs: (length: string) => `Read as ${length}.`,
  type: 'type',
  cannotTell: 'I cannot tell',
  range: (label: string, least: string, most: string) =>
    `${label} can be ${least} to ${most}. Write one of those.`,
  /** Read out before a message that stops. */
  stop: 'Stop:',
  nextAct: 'Next act',
  /** What camera and tape say of a length. */
  camera: (guess: string | undefined) =>
    guess === undefined ? 'camera: unseen' : `camera ${guess}`,
  tape: (camera: string, readings: readonly string[]) =>
    `${camera}, tape ${readings.join(' and ') || 'not yet'}`,
}

/** How a fold lies. */
export const FOLD_WORDS: Readonly<Record<Fold, string>> = {
  level: 'level',
  rising: 'rising',
  upright: 'upright',
  falling: 'falling',
}
