/** The tape book on the screen: what the camera says, what was taped, how it stands. */
import { DATE_WORDS } from '../../../units/dates.words.ts'
import type { View } from '../../../capture/reading.ts'

const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`

export const TAPE_BOOK_WORDS = {
  title: 'Tape book',
  about: (agreed: number, needed: number) =>
    `The camera proposes. Your tape decides. ${agreed} of ${needed} needed numbers are agreed.`,
  cameraAndTape: 'Camera and tape',
  which: 'Which numbers',
  foot: 'Chalk band: what the camera thinks, 9 times in 10. Upright strokes: your tape. A draft is only ever made from the strokes.',
}

export const GROUP_WORDS = {
  needed: 'Needed',
  /** `garments` by the names of their own, "Blouse". */
  neededAbout: (garments: readonly string[]) =>
    `Without these ${listed(garments.map((name) => `the ${name.toLowerCase()}`))} ${garments.length === 1 ? 'is' : 'are'} not drawn.`,
  truer: 'Makes it truer',
  truerAbout: 'Without these a usual amount stands in, and the proof says so.',
  others: 'All others',
  othersAbout: 'For later garments, and as a check on the rest.',
}

export const BOOK_TABLE_WORDS = {
  measurement: 'Measurement',
  camera: 'Camera says',
  ruler: 'On one ruler',
  tape: (reading: number) => `Tape ${reading}`,
  standing: 'Standing',
}

export const BOOK_ROW_WORDS = {
  moves: (what: string) => `moves ${what}`,
  field: (label: string, reading: number) => `${label}, tape ${reading}`,
  notTaped: 'not taped',
  onceMore: 'once more',
  thirdReading: 'third reading',
  agreed: 'agreed',
  photoDiffers: 'photo differs',
  muslinDoubts: 'muslin doubts it',
  /** Before the number, on a phone. */
  camera: 'camera',
  unseen: 'unseen',
}

export const MEASURE_SHEET_WORDS = {
  fromTo: (from: string, to: string) => `From ${from} to ${to}.`,
  alone: 'Alone.',
  camera: (value: string, pm: string) => `Camera ${value} ±${pm}.`,
  basis: (basis: string) => `${basis}.`,
  tapeIsRight: (on: string) => `You said on ${DATE_WORDS.day(on)} that the tape is right.`,
  tapeDecides: 'The tape decides.',
  unusual: 'An unusual combination.',
  notYet: 'Not in the draft yet',
  goesIn: 'Goes into the draft',
  on: (day: string) => DATE_WORDS.short(day),
  takeBack: 'Take it back',
  takeBackThat: (reading: number, value: string) => `Take back tape ${reading}, ${value}`,
  tolerance: (value: string, source: string) => `Two readings agree within ${value} (${source}).`,
  iso: (clause: string) => `${clause}.`,
  /** The drawing of the tape on a figure; where it runs is said beside it. */
  drawn: {
    front: (label: string) => `Figure from the front with the tape: ${label}`,
    side: (label: string) => `Figure from the side with the tape: ${label}`,
    back: (label: string) => `Figure from the back with the tape: ${label}`,
    flat: (label: string) => `Garment laid flat with the tape: ${label}`,
  },
}

export const DOUBT_WORDS = {
  lead: 'The muslin doubts it.',
  /** `name` of the complaint as at the head of a line. */
  inDoubt: (on: string, name: string) => doubt(on, name, 'puts it in doubt'),
  more: (on: string, name: string, by: string) => doubt(on, name, `speaks for ${by} more`),
  less: (on: string, name: string, by: string) => doubt(on, name, `speaks for ${by} less`),
}
const doubt = (on: string, name: string, says: string): string =>
  `On ${DATE_WORDS.day(on)} “${name.toLowerCase()}” ${says}. Tape it again. If the tape agrees, take back the change that stood in for it: the draft follows the number.`

export const DIFFERS_WORDS = {
  lead: (apart: string) => `Tape and photo differ by ${apart}.`,
  says: (taped: string, photo: string, pm: string) =>
    `The tape says ${taped}; the photo says ${photo} ±${pm}. That is more than twice its ±, so one of them is wrong.`,
  notHere: 'The photo is not on this device any more.',
  which: 'Which is right?',
  look: (from: string, to: string) =>
    `Look where the line begins and ends: it should be at ${from} and at ${to}.`,
  notSure:
    'If you are not sure, tape it anew; a tape that slips or slants is soon a finger’s breadth out.',
  right: 'The tape is right',
  anew: 'Tape it anew',
  anewLong: 'Tape it anew: the readings are withdrawn and stay in the book, marked',
  withLine: {
    front: 'The front photo with the line the length was read along',
    side: 'The side photo with the line the length was read along',
    back: 'The back photo with the line the length was read along',
  } satisfies Record<View, string>,
  /** Before the word that it is not here. */
  photo: {
    front: 'front photo:',
    side: 'side photo:',
    back: 'back photo:',
  } satisfies Record<View, string>,
}
