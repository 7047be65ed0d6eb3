/** How a pin is read and where it sits, in words. */
import type { PinPlace } from './complaints/complaint.ts'
import type { How } from './half-amount.ts'

export const HOW_READ: Readonly<Record<How, { readonly word: string; readonly hint: string }>> = {
  pinch: { word: 'whole fold', hint: 'The whole width of cloth the pins take out.' },
  fold: {
    word: 'fold to pin',
    hint: 'The tuck lies flat: from its fold to the pin. It counts twice.',
  },
  slit: { word: 'slit', hint: 'Cut and let spring open: the gap between the two cut edges.' },
  level: {
    word: 'line to line',
    hint: 'From the line drawn on the muslin to where it should lie.',
  },
  newLine: { word: 'seam to pins', hint: 'From the seam to the new line of pins, on one piece.' },
}

export const PLACE_WORDS: Readonly<Record<PinPlace, string>> = {
  cf: 'centre front',
  cb: 'centre back',
  side: 'side seam',
  seam: 'a seam',
  allRound: 'all round',
  neck: 'neck edge',
  shoulder: 'shoulder seam',
  overarm: 'overarm seam',
  armhole: 'armhole',
  sleeveEdge: 'sleeve edge',
  centre: 'centre line',
  hem: 'hem',
  waist: 'waist line',
  bust: 'bust line',
  hip: 'hip line',
  dart: 'dart',
  cap: 'sleeve cap',
  sleeve: 'sleeve',
  inside: 'inside the piece',
}
