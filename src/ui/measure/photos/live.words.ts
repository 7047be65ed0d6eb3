/**
 * What is said while the photos are taken: large, one line for what to do; small, where the sheet
 * hangs, what was found in a photo, and what becomes of it.
 */
import type { View } from '../../../capture/reading.ts'

/** What hangs on her in the photo. */
export type CardKind = 'sheet' | 'card'

/** Where the sheet or card hangs in each view, after "The sheet hangs". */
const PLACE: Readonly<Record<View, string>> = {
  front: 'in front, at the waist',
  side: 'at your side, at the waist, towards the camera; that arm lifts forward',
  back: 'at the back, at the waist',
}
const MUSLIN_STAND: Readonly<Record<View, string>> = {
  front: 'Closed and pinned as you judge it, arms a little away.',
  side: 'The side you judge. Side seam in view.',
  back: 'Look ahead, not over your shoulder: turning draws the back.',
}

export const LIVE_WORDS = {
  /** Small, beside the large line. */
  hangs: (card: CardKind, view: View) =>
    `The ${card} hangs ${PLACE[view]}. A raised hand begins the count.`,
  muslinHangs: (view: View) =>
    `${MUSLIN_STAND[view]} If you use the printed sheet, it hangs ${PLACE[view]}. A raised hand begins the count.`,
  threePhotos: 'Three photos',
  muslin: (round: number) => `Muslin ${round}`,
  sheetAndPerson: 'Sheet and person found.',
  personNoSheet: 'Person found, no sheet.',
  use: 'Use these photos',
  keepWithRound: (round: number) => `Keep them with round ${round}`,

  /** The large line. */
  standStill: 'Stand still.',
  good: 'Good. Stay so.',
  handDown: 'Hand down. Stand still.',
  stay: 'Stay so.',
  taken: {
    front: 'Front is taken.',
    side: 'Side is taken.',
    back: 'Back is taken.',
  } satisfies Record<View, string>,
  next: {
    front: 'Now face the camera.',
    side: 'Now your side.',
    back: 'Now your back.',
  } satisfies Record<View, string>,
  all: 'All are taken.',

  /** The picture. */
  picture: 'Picture of the camera',
  headLine: 'head below this line',
  feetLine: 'feet above this line',
  inHere: { sheet: 'sheet in here', card: 'card in here' } satisfies Record<CardKind, string>,

  /** The keys. */
  tonesOn: 'Tones on',
  tonesOff: 'Tones off',
  switchOff: 'Tones are on. Switch them off',
  switchOn: 'Tones are off. Switch them on',
  otherCamera: 'Other camera',
  leave: 'Leave',
  withoutHints: 'Go on without hints',
  hintsComing: 'The hints are on their way.',
  startAgain: 'Start the camera again',
  stopCount: 'Stop the count',
  countDown: 'Count down from 10',
  leavingKeeps: 'Leaving keeps what is taken.',

  /** The list of what is taken. */
  stop: 'Stop:',
  isTaken: 'Taken.',
  takeAgain: 'Take again',
  takeThatAgain: {
    front: 'Take the front photo again',
    side: 'Take the side photo again',
    back: 'Take the back photo again',
  } satisfies Record<View, string>,
  now: 'Now.',
  still: 'Still to take.',
}

export const LIVE_TROUBLE = {
  noHints: 'The hints did not arrive. The count-down key takes the photos without them.',
  away: 'The camera was let go while this page was out of sight. Start it again.',
  lost: 'The camera stopped. Look at its plug or its cover and start it again.',
  noPicture: 'The camera gave no picture. Stand once more.',
}

/** Why the device's camera did not start, and the way on without it. */
export const STREAM_WORDS = {
  notAllowed:
    'The camera is not allowed for this page. Allow it beside the page’s address and try again.',
  notFound: 'This device shows no camera. Plug one in and try again.',
  notReadable: 'The camera did not start. Another program may hold it; close that and try again.',
  unsafe: 'This page cannot reach a camera, because it was not opened over https.',
  unknown: 'The camera did not start. Try again.',
  chooseInstead: 'Or choose photos you have; nothing is lost.',
}
