/** What to wear, where sheet, dots and camera go, and what to print. */
import type { View } from '../../../capture/reading.ts'

export const PREPARATION_WORDS = {
  summary: 'Before you take them',
  /** What she wears in each photo. */
  wears: {
    front: 'Sheet at the waist, in front, touching the body. Arms a little away.',
    side: 'Sheet at the side to the camera. That arm lifts forward, hand up.',
    back: 'Sheet at the back of the waist. Arms a little away, weight on both feet.',
  } satisfies Record<View, string>,
  figure: (view: string, words: string) => `${view} view: ${words}`,
  clothes: 'Close-fitting clothes of one colour. Hair up and off the neck. Shoes off.',
  cord: 'A cord or elastic tied at the waist, level all round. The waist cannot be seen otherwise, and most lengths start from it.',
  dots: 'If you like: sticker dots of one strong colour at the nape, side neck, shoulder points, apexes, waist middle and hip. The hip dot goes at your side, level with the fullest of the seat; it helps where the sheet does not cover it. A dot is truer than a guess.',
  cameraDrawn:
    'The camera stands on a stool or shelf at the height of the waist, 2.5 m or 8 ft away, upright and level.',
  distance: '2.5 m, 8 ft',
  atWaist: 'level with the waist',
  camera: 'Camera.',
  cameraStands: 'Upright on a shelf or stool, not tilted. Light comes from behind it.',
}

export const PRINT_WORDS = {
  paper: 'Paper for the sheet',
  letter: 'Letter',
  save: (paper: string) => `Save the sheet, dots and pocket card, ${paper}`,
  title: 'To print for the photos',
  fileName: (paper: string) => `to-print-for-the-photos-${paper}.pdf`,
  /** In the unit of the bar that is to be measured. */
  saved: {
    cm: 'Saved: two pages. Print at 100 %, then lay the tape on the bar marked 10 cm, on either page: both must be 10.0 cm long.',
    inch: 'Saved: two pages. Print at 100 %, then lay the tape on the bar marked 4 in, on either page: both must be 4 in long.',
  },
  notLoaded:
    'The page could not be made: a part of this program did not load. Reload and try again.',
}

export const MODEL_WORDS = {
  label: 'Model that finds nape and waist',
  /** Megabytes, with one decimal. */
  value: (loaded: number, total: number) => `${loaded.toFixed(1)} of ${total.toFixed(1)} megabytes`,
  once: (loaded: number, total: number) => `${loaded.toFixed(1)} of ${total.toFixed(1)} MB, once`,
}
