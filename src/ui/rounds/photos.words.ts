/** Photos of muslins: added, taken, read, brought over each other, marked and traced. */
import type { MuslinLineName } from '../../capture/muslin-lines.ts'
import type { View } from '../../capture/reading.ts'
import type { Zone } from '../../rounds/zones.ts'
import { ZONE_WORDS } from '../../rounds/zones.words.ts'
import type { PhotoView } from '../../storage/schema/photo.ts'

/** On a key of its own. */
export const VIEW_KEYS: Readonly<Record<View, string>> = {
  front: 'front',
  side: 'side',
  back: 'back',
}
/** Under a printed photo. */
export const VIEW_SHOWN: Readonly<Record<PhotoView, string>> = {
  ...VIEW_KEYS,
  closeUp: 'close-up',
}

export const SLOT_WORDS = {
  title: 'On the body',
  sameScale: 'same scale',
  view: 'View',
  howTheyLie: 'How the photos lie',
  paperOverFace: 'Paper over the face',
  seen: (round: number, view: View) =>
    `Muslin ${round} from the ${view}, with what was seen of the cloth`,
  liftPaper: 'Paper over the head. Lift it as far as the neck.',
  paperDownTo: (hundredths: number) => `down to ${hundredths} in a hundred of the photo`,
  stopReading: 'Stop reading',
  asTaken:
    'As they were taken, the two photos differ in scale and place: look at folds, not at sizes.',
  toOneScale: 'Bring the two photos to one scale',
  lookFor: 'Look for folds and drawn lines',
  coverRead: 'Cover the head in the pixels once it is found; then it cannot be uncovered',
  notTogether: 'Not brought together.',
  notRead: 'Not read.',
  markByHand: 'Mark the same two places by hand',
  traceLine: 'Trace a line of the muslin',
  others: 'Other photos for these two muslins',
  newPhotos: (round: number) => `New photos of muslin ${round}`,
  stay: 'Photos stay on this device. Chosen from files, a picture may also lie in a gallery or a cloud copy; look there if you want it gone.',
  round: (number: number) => `Round ${number}`,
  muslinFrom: (round: number, view: View) => `Muslin ${round} from the ${view}`,
  letGo: 'Let this photo go',
  letGoLabel: (view: View, round: number) => `Let the ${view} photo of round ${round} go`,
  /** Rounds that hold the same photo; `elsewhere`: of another garment. */
  alsoWith: (rounds: readonly { number: number; elsewhere: boolean }[]) =>
    `It also lies with ${rounds
      .map(({ number, elsewhere }) => `round ${number}${elsewhere ? ' of another garment' : ''}`)
      .join(', ')}: let go, it is gone from there as well.`,
  opened: 'The photo is being opened.',
  removed: (day: string) =>
    `Photo removed on ${day}. The numbers of the round stay. A file saved with photos before may still hold it.`,
  notSewn: 'Not sewn yet. Its photo lies here once it is.',
  /** On the key that adds one; the muslin is read out after it. */
  add: (view: PhotoView, another: boolean) =>
    `${another ? 'Another' : 'Add a'} ${view === 'closeUp' ? 'close-up' : `${view} photo`}`,
  ofMuslin: (round: number) => `of muslin ${round}`,
  opening: 'Opening the photo.',
  notKeptLead: 'Not kept.',
  notKept: 'The photo was not kept. Choose it once more.',
}

export const CLOSE_UP_WORDS = {
  title: 'Close-ups',
  ofThe: 'Of the',
  onceSewn: 'Once the muslin is sewn.',
  /** What it shows; without a zone the muslin. */
  shows: (zone: Zone | undefined) => (zone ? ZONE_WORDS[zone] : 'the muslin'),
  removed: (day: string) => `Photo removed on ${day}.`,
  alt: (round: number, shows: string) => `Muslin ${round}, close-up of ${shows}`,
  letGo: 'Let it go',
  letGoLabel: (shows: string) => `Let the close-up of ${shows} go`,
}

/** How two photos lie together. */
export const WAY_WORDS = { edge: 'edge', over: 'laid over', blink: 'blink', beside: 'beside' }

export const MATCHED_WORDS = {
  edge: (before: number, after: number, view: View) =>
    `Muslins ${before} and ${after} from the ${view}, parted by a straight edge`,
  over: (before: number, after: number, view: View) =>
    `Muslin ${after} laid over muslin ${before}, from the ${view}`,
  edgeBetween: (before: number, after: number) =>
    `Straight edge between round ${before} and round ${after}`,
  edgeAt: (before: number, hundredths: number) =>
    `Round ${before} to ${hundredths} in a hundred from the left`,
  strength: (before: number, after: number) =>
    `How strongly round ${after} lies over round ${before}`,
  inHundred: (hundredths: number) => `${hundredths} in a hundred`,
  swap: 'Swap the two photos',
  hold: 'Hold to blink',
  byMarks: 'Lined up by your two marks. Sizes are made alike by them, so they cannot be compared.',
  noCard: 'No card: sizes are made alike by shoulders and hips, so they cannot be compared.',
  /** `round`: the one whose photo has the card, where only one has. */
  linedUp: (round: number | undefined, shoulders: string, hips: string) =>
    `Lined up by ${round === undefined ? 'the cards' : `the card of round ${round}`}, shoulders and hips; still apart by ${shoulders} at the shoulders and ${hips} at the hips.`,
  cardsDisagree: (hundredths: number) =>
    `The two cards tell scales ${hundredths} in a hundred apart: look at folds, not at sizes.`,
}

export const MARK_WORDS = {
  places: ['Front or back of the neck', 'Middle of the hem'] as readonly [string, string],
  about:
    'Put the two rings on the same two places of the body or the muslin in both photos, far apart: the pit of the neck and the middle of the hem serve.',
  alt: (round: number) => `Muslin ${round}, with two rings`,
  keys: 'Arrow keys move it by one pixel of the photo, with Shift by ten.',
  layOver: 'Lay them over on these marks',
  leave: 'Leave it',
}

export const TRACE_WORDS = {
  muslin: 'Muslin',
  round: (number: number) => `round ${number}`,
  line: 'Line',
  lines: { bustLine: 'bust', waistLine: 'waist', hipLine: 'hip', centre: 'centre' } as Readonly<
    Record<MuslinLineName, string>
  >,
  upright: ['upper end', 'lower end'] as readonly [string, string],
  level: ['left end', 'right end'] as readonly [string, string],
  /** `line` as in “waist line”. */
  keep: (line: string) => `Keep this ${line}`,
  kept: (line: string, round: number) => `Kept: the ${line} of muslin ${round}.`,
  done: 'Done',
}

export const CLOTH_WORDS = {
  folds: 'Folds, as hints',
  lines: 'Lines on the muslin',
  muslin: (round: number) => `Muslin ${round}`,
  notFromSide: 'Folds are not looked for from the side.',
  noFold: 'No fold that draws the cloth was seen.',
  noPlace: 'A line was seen that fits no place of our table.',
  /** `place` begins with a capital. */
  fits: (place: string, complaints: readonly string[]) =>
    `${place}. Complaints that fit: ${complaints.map((name) => name.toLowerCase()).join('; ')}.`,
  noLine:
    'No drawn line was found. Draw bust, waist and hip line and the centre on the muslin with a ruler and a dark pen, or trace them here.',
  line: 'Line',
  asFar: 'Left and right are those of the photo. Tilts hold as far as the camera stood level.',
  notFound: 'not found',
  level: 'level',
  /** `degrees` with one decimal; which way it leans. */
  plumb: (degrees: number, right: boolean) =>
    `${degrees.toFixed(1)}° foot to the ${right ? 'right' : 'left'}`,
  tilted: (degrees: number, right: boolean) =>
    `${degrees.toFixed(1)}° lower on the ${right ? 'right' : 'left'}`,
  /** How it lies, how far below the shoulders, whether she traced it. */
  lies: (how: string, below: string | undefined, traced: boolean) =>
    `${how}${below === undefined ? '' : `, ${below} below the shoulders`}${traced ? ', traced' : ''}`,
  /** How often the reader of folds is right, on pictures it was not fitted on. */
  readRight: (found: number, place: number, oneFalseIn: number) =>
    `A hint, never a verdict; you say what you see. On rendered test pictures it found ${found} of 100 folds, named the right place among its first two in ${place} of 100 muslins, and drew a false line on one smooth muslin in ${oneFalseIn}. It was not tried on sewn muslins yet.`,
}

export const TAKE_WORDS = {
  title: 'Take them here',
  take: (round: number) => `Take the photos of muslin ${round}`,
  about: (round: number) =>
    `Front, side and back in one go, alone, with hints and a count-down. Stand where you stood for the muslin before, the camera as high. They go to round ${round}; none lands in a gallery.`,
  cover: 'Cover the head in the kept photos',
  keeping: 'Keeping the photos.',
  kept: (views: readonly View[], round: number) => `Kept with round ${round}: ${list(views)}.`,
  uncovered: (view: View) =>
    `The head could not be covered in the ${view} photo. It is kept, under paper on the screen only.`,
  notKept: 'A photo was not kept. Take it once more.',
}
function list(views: readonly View[]): string {
  const last = views.at(-1) ?? ''
  return views.length > 1 ? `${views.slice(0, -1).join(', ')} and ${last}` : last
}

export const READING_WORDS = {
  fetching: 'Fetching the model that finds shoulders and hips: 13 MB, once.',
  reading: (at: number, of: number, round: number) =>
    `Reading photo ${at} of ${of}: round ${round}.`,
  read: 'The photos are read.',
  stopped: 'Stopped. What was read is kept; go on when you like.',
  failed:
    'The photos could not be read: the model did not arrive, or this browser blocks WebAssembly. Connect once and try again. The photos lie side by side meanwhile.',
  gone: 'A photo is locked, or not in this browser, so it cannot be read.',
}
