/** The tape with its places, how far she is at each, and the tools in the head of a page. */
import type { PlaceId } from './places.ts'

export const PLACE_WORDS: Readonly<Record<PlaceId, string>> = {
  rail: 'Rail',
  measure: 'Measure',
  draft: 'Draft',
  fit: 'Fit',
  compare: 'Compare',
  cut: 'Cut',
}

export const TAPE_WORDS = {
  tape: 'The tape',
  measured: (agreed: number, needed: number) => `${agreed} of ${needed}`,
  fromGuesses: 'from guesses',
  round: (number: number) => `round ${number}`,
  drafted: 'drafted',
  muslin: (round: number) => `muslin ${round}`,
  compared: (before: number, after: number) => `${before} with ${after}`,
  onPaper: 'on paper',
}

export const NO_PLACE_WORDS = {
  willLieHere: {
    draft: 'The pieces of a garment lie here, with the steps for ruler, square and pencil.',
    fit: 'Here you say what a muslin does, and the draft is changed in numbers.',
    compare: 'Rounds of one garment lie here over each other, with what changed between them.',
    cut: 'Seam allowances, cloth and true-scale sheets lie here once a draft is proved.',
  },
  noGarment: 'No garment is on the table.',
  choose: 'Choose a garment on the rail',
  nothingTitle: 'Nothing lies here',
  nothing: 'This address leads to no page.',
  why: 'It may have been typed by hand or belong to a garment taken off the rail.',
  back: 'Back to the rail',
}

export const TOOL_WORDS = {
  light: 'Light',
  day: 'Day',
  lamp: 'Lamp',
  kept: (clock: string) => `Kept on this device, ${clock}`,
  /** Before the fraction an inch is printed to. */
  to: 'to',
  inchesTo: 'Inches to',
  units: 'Units',
  inches: 'inches',
  thumb: 'Thumb',
  left: 'Left',
  right: 'Right',
  more: 'More',
  guide: 'Guide, from photo to sewn',
  words: 'Words and pocket card',
  keys: 'Keys 1 to 6 walk the tape',
}
