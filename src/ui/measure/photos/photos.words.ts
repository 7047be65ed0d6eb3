/** Photos to numbers: choosing, reading, accepting, keeping. */
import type { View } from '../../../capture/reading.ts'
import { DATE_WORDS } from '../../../units/dates.words.ts'

export const PHOTOS_WORDS = {
  title: 'Photos',
  /** Beside the title. */
  readCount: (read: number) => `${read} of 3 read`,
  ifYouLike: 'if you like',
  about:
    'Photos give a starting number for each length. Your tape confirms it. The photos leave this device only by your own act.',
  here: 'Take them here',
  takeHere: 'Take the photos here',
  hereAbout:
    'Front, side and back in one go, alone, with hints and a count-down. The pictures stay in this page; none lands in a gallery.',
  tapeMeanwhile: 'You can tape meanwhile.',
  stopReading: 'Stop reading',
  read: 'Read the photos',
  nothingSeen: 'No length was seen yet. Put the photos right first.',
  accept: 'Accept these points',
  accepted: 'Points accepted.',
  notCovered:
    'The head could not be covered, so the photos were not kept. The numbers are in the tape book. Close other tabs and accept once more.',
}

/** Photos that lie on the table here and are to be read on another device. */
export const HAND_ON_WORDS = {
  title: 'Read them on another device',
  /** Before, in and after the link to bringing over. */
  about:
    'Taken on the phone and read on the laptop: hand the photos on as files and choose them there in Measure, or',
  bring: 'bring them over directly',
  end: '. They go as they were taken, without place and time, and with the head uncovered.',
  save: 'Save the photos as files',
  files: {
    front: 'photo-front.jpg',
    side: 'photo-side.jpg',
    back: 'photo-back.jpg',
  } satisfies Record<View, string>,
}

export const CHOOSE_WORDS = {
  title: 'Or choose photos you have',
  /** Before, in and after the link to bringing over. */
  about:
    'A picture taken with the phone’s own camera program lands in its gallery, and often in a cloud copy; look there if you want it gone. Chosen here, it goes nowhere else. Photos on your phone can be',
  bring: 'brought over from it',
  end: '.',
  opening: (name: string) => `Opening ${name}`,
  notOpened: (name: string) => `${name} was not opened.`,
  none: 'None chosen.',
}

/** What may give a photo its scale. */
export const SCALE_BY_WORDS = {
  label: 'What gives the scale',
  ways: {
    sheet: 'Our printed sheet',
    id1: 'Bank-size card',
    a4: 'Blank A4',
    letter: 'Blank Letter',
    own: 'My own rectangle',
  },
  hangs: 'It hangs or is held flat, square to the camera; you tap its four corners in each photo.',
  sides: ['One side', 'Other side'] satisfies readonly string[],
}

export const DESK_WORDS = {
  opened: {
    front: 'Front photo opened.',
    side: 'Side photo opened.',
    back: 'Back photo opened.',
  } satisfies Record<View, string>,
  takenHere: 'Taken here',
  onTable: (count: number) => `${count} of 3 taken here, on the table.`,
  opening: 'A photo is being opened.',
  allRead: 'All chosen photos are read.',
  chooseFirst: 'Choose a photo first.',
  bothSides: 'Write down both sides of the rectangle first.',
  tapFirst: {
    front: 'Tap the four corners of the card or paper in the front photo first.',
    side: 'Tap the four corners of the card or paper in the side photo first.',
    back: 'Tap the four corners of the card or paper in the back photo first.',
  } satisfies Record<View, string>,
  fetching: 'Fetching the model that finds nape and waist: 13 MB, once.',
  stopped: 'Stopped. Nothing is lost; read them when you like.',
  reading: {
    front: 'Reading the front photo.',
    side: 'Reading the side photo.',
    back: 'Reading the back photo.',
  } satisfies Record<View, string>,
  done: 'Photos read.',
  failed:
    'The photos could not be read: the model did not arrive whole, or this browser blocks WebAssembly. Connect once and read them again. The tape book works without photos.',
}

/** A photo on the table, with its points or the corners of the card. */
export const VIEW_TABLE_WORDS = {
  inView: 'Photo in view',
  corners: ['Top left', 'Top right', 'Bottom right', 'Bottom left'] satisfies readonly string[],
  /** Which corner comes next, `next` as in `corners`. */
  tap: {
    sheet: (next: string) => tapCorners('sheet', next),
    id1: (next: string) => tapCorners('card', next),
    a4: (next: string) => tapCorners('paper', next),
    letter: (next: string) => tapCorners('paper', next),
    own: (next: string) => tapCorners('rectangle', next),
  },
  cornersSet: 'Four corners are set. Drag a ring to put it right.',
  withPoints: {
    front: 'Front view, with its points',
    side: 'Side view, with its points',
    back: 'Back view, with its points',
  } satisfies Record<View, string>,
  forCorners: {
    front: 'Front view, for the corners',
    side: 'Side view, for the corners',
    back: 'Back view, for the corners',
  } satisfies Record<View, string>,
  arrows: 'Arrow keys move it by one pixel of the photo, with Shift by ten.',
  drag: 'Drag a ring to move a point; the numbers follow.',
  setFour: 'Set four rings to drag',
  tapAgain: 'Tap the corners again',
  guess: (name: string) => `${name}, a guess`,
  covered: 'covered',
  coveredAndKept: 'Head covered, also in the photo that is kept',
  paperOver: 'Paper over the head',
  sheetFound: 'Printed sheet found.',
  cardFound: 'Card found.',
  personFound: 'Person found.',
  missing: (point: string, why: string) => `${point}: ${why}`,
}
const tapCorners = (what: string, next: string): string =>
  `Tap the corners of the ${what}, clockwise from its top left. Next: ${next.toLowerCase()}.`

export const ESTIMATE_TABLE_WORDS = {
  about: (unit: string) => `Nine times in ten the tape will lie within ±. All in ${unit}.`,
  length: 'Length',
  camera: 'Camera says',
  checks: (count: number) =>
    `${count} ${count === 1 ? 'check' : 'checks'} on the tape: girths, and the breadths and depths they come from`,
  check: 'Check',
  unseen: (count: number) => `${count} not seen, and why`,
}

export const KEPT_WORDS = {
  gone: 'The photos are gone from this device.',
  goneNumbers:
    'The numbers stay in the tape book. A file you saved with photos before still holds them.',
  stay: 'The photos stay on this device.',
  stayUntil: 'They can be let go here at any time.',
  guesses: 'The camera numbers lie in the tape book as guesses. Tape each one.',
  /** `list`: each photo by `one`. */
  list: (list: readonly string[]) => `Kept on this device: ${list.join('; ')}.`,
  one: (view: KeptView, on: string) => `${KEPT_VIEWS[view]}, ${DATE_WORDS.short(on)}`,
  letGo: 'Keep the numbers, let the photos go',
  keep: 'Keep the photos on this device',
}
export type KeptView = View | 'closeUp'
const KEPT_VIEWS: Readonly<Record<KeptView, string>> = {
  front: 'front',
  side: 'side',
  back: 'back',
  closeUp: 'close-up',
}
