/** What is kept of a round: its record on the screen, its sheets on paper, what it was made from. */
import type { HowRead } from '../../fitting/pinned.ts'
import type { PaperHow } from '../../rounds/worn.ts'
import type { Mm } from '../../units/length.ts'
import type { Said } from '../fitting/change-said.ts'

export const RECORD_WORDS = {
  title: 'The record',
  fact: 'a round on paper stays as it is',
  round: 'Round',
  /** In a list under the word “Round”. */
  option: (number: number, standing: string) => `${number}, ${standing}`,
  keptVerdict: (verdict: string) => `Kept: ${verdict}.`,
  keptCloth: 'Kept: the cloth.',
  goesOn: (round: number | undefined, from: number) =>
    `Round ${round ?? ''} goes on from round ${from}.`,
  muslinIs: (round: number) => `Muslin ${round} is`,
  sewnOf: 'Sewn of',
  clothSuch: 'bleached calico, washed',
  movements: 'Movements',
  noMovements: 'None was tried in this muslin yet; the Fit page asks for them.',
  putOnPaper: 'Put on paper',
  on: (day: string) => `On ${day}.`,
  notYet: 'Not yet.',
  setAside: (round: number) =>
    `Round ${round} is not on paper yet. It is set aside as it is, with all that was decided in it; a round can be started from it later.`,
  branch: (round: number) => `Start a round from round ${round}`,
  notesTo: (round: number) => `Notes to round ${round}`,
  notesSuch: 'cloth, needle, what to look at next time',
  kept: 'Kept.',
  notesByZone: 'Notes by zone',
  noneYet: 'none yet',
  keptZone: (zone: string) => `Kept: ${zone}.`,
}

/** What left the program for the table. */
export const PAPER_WORDS: Readonly<Record<PaperHow, string>> = {
  sheets: 'sheets to paste',
  roll: 'one large sheet',
  byHand: 'drawn by hand',
  projector: 'thrown by a projector',
  drawing: 'a drawing for a cutter',
  cuttingPlan: 'the cutting plan',
  sewingPlan: 'the sewing plan',
}
/** "25 Nov 2026: sheets to paste, A4, 14 sheets" */
export const PAPER_SAID = (day: string, how: PaperHow, about: string | undefined): string =>
  `${day}: ${PAPER_WORDS[how]}${about ? `, ${about}` : ''}`

/** Without the day it never was on paper: being drawn, or set aside for a later round. */
const standing = (onPaper: string | undefined, aside: boolean): string =>
  onPaper !== undefined
    ? `on paper ${onPaper}`
    : aside
      ? 'set aside, never on paper'
      : 'not on paper yet'

export const FACTS_WORDS = {
  round: (number: number) => `Round ${number}`,
  days: (begun: string, onPaper: string | undefined, aside: boolean) =>
    `begun ${begun}, ${standing(onPaper, aside)}`,
  changes: 'Changes',
  noChanges: 'None: this is the draft as the numbers and choices make it.',
  broughtAlong: 'Brought along from an earlier garment: it comes from the body.',
  takenBack: 'Taken back.',
  choices: 'Choices turned',
  noChoices: 'None; every choice stands as usual.',
  numbers: 'Numbers',
}

const HOW_READ_WORDS: Readonly<Record<HowRead, string>> = {
  wholeFold: 'whole fold',
  foldToPin: 'fold to pin',
  seamToPin: 'seam to pins',
  levelError: 'line to line',
  slitOpen: 'slit',
}
/** What a correction rests on; `share` is "half of it", `watch` what is left for the next muslin. */
export interface Read {
  readonly round: number
  readonly complaint: string
  readonly cause: string
  readonly read: Mm
  readonly how: HowRead
  readonly share: string
  readonly watch: Mm
}
export const BECAUSE = ({ round, complaint, cause, read, how, share, watch }: Read): Said => [
  `Because of muslin ${round}: ${complaint.toLowerCase()}, ${cause}. Read `,
  read,
  ` (${HOW_READ_WORDS[how]}), ${share} changed.`,
  ...(watch === 0 ? [] : [' Watch ', watch, ' next time.']),
]

export const DRIFT_WORDS = {
  /** `lengths` are the first three by name, `more` how many numbers beside them. */
  numbers: (lengths: readonly string[], more: number, round: number) => {
    const rest = more > 0 ? [`${more} ${lengths.length > 0 ? 'more' : 'points'}`] : []
    return `The program has changed since: it would now print other numbers for ${[...lengths, ...rest].join(', ')}. Your paper of round ${round} stays as it is; what is drawn here is the new reckoning.`
  },
  words: (count: number) =>
    `The program words ${count} ${count === 1 ? 'step' : 'steps'} otherwise now; the numbers are the same.`,
  which: (count: number) => `Which they are: ${count}`,
  point: (name: string) => name.replace('.', ', point '),
  notThen: 'not printed then',
  notNow: 'no longer drawn',
  /** Before and after a length. */
  lies: ['lies', 'elsewhere'] as readonly [string, string],
  steps: 'Steps as they were printed, worded otherwise now:',
}

export const SHEET_WORDS = {
  title: 'On paper, to keep',
  garment: 'Garment',
  drawing: 'The sheets are being drawn.',
  notLoaded:
    'The file could not be made: a part of this program did not load. Reload the page and try again.',
  saveRound: (round: number) => `Save the fit sheet of round ${round} (PDF)`,
  saveHistory: (rounds: number) =>
    `Save the history, ${rounds} ${rounds === 1 ? 'round' : 'rounds'} (PDF)`,
  withPhotos:
    'Put my photos into the file, faces under paper. Without this tick no photo leaves this browser.',
  locked: 'Your photos are locked: until you open them the file is made without.',
  saved: (file: string, photos: number) =>
    `Saved as ${file}, ${photos === 0 ? 'without photos' : `with ${photos} ${photos === 1 ? 'photo' : 'photos'}, faces under paper`}.`,
  /** Ends of file names. */
  roundFile: 'fit-sheet.pdf',
  historyFile: 'history.pdf',
  photoOf: (round: number, view: string) => `Round ${round}, ${view}`,
  titleAll: (garment: string) => `${garment}, all rounds`,
  titleOne: (garment: string, round: number | undefined) => `${garment}, round ${round ?? ''}`,
  foot: (garment: string, round: number) => `${garment} · round ${round}`,
}

/** The lines of a printed fit sheet. */
export const FIT_SHEET_WORDS = {
  round: (number: number) => `Round ${number}`,
  days: (begun: string, onPaper: string | undefined, aside: boolean, fromEarlier: boolean) =>
    `Begun ${begun}, ${standing(onPaper, aside)}${fromEarlier ? '; it goes on from an earlier round' : ''}.`,
  sewnOf: (cloth: string) => `Sewn of ${cloth}.`,
  verdict: (verdict: string) => `The muslin is ${verdict}.`,
  changes: 'Changes up to this round',
  takenBack: 'Taken back.',
  seen: 'What was seen on the muslin',
  seenLine: (day: string, complaint: string, read: string | undefined, answer: string) =>
    `${day}: ${complaint}${read === undefined ? '' : `, ${read}`}; ${answer}.`,
  movements: 'Movements',
  notes: 'Notes',
  putOnPaper: 'Put on paper',
  numbers: 'Numbers',
  choices: 'Choices that are not the usual ones',
  upTo: (rounds: number, last: number) =>
    `${rounds} ${rounds === 1 ? 'round' : 'rounds'}, up to round ${last}.`,
  course: 'The course',
  /** One round of the course; `zones` such as "bust +0.5 cm", `open` the names of complaints. */
  courseLine: (round: number, zones: readonly string[], open: readonly string[]) =>
    `Round ${round}: ${zones.join(', ') || 'nothing corrected'}; ${open.length === 0 ? 'no complaint' : open.join(', ')} open.`,
}
