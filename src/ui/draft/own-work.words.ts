/** Her own draft beside the tool's, and the garment she likes. */
import type { LikedId } from '../../draft/own-work.ts'

export const OWN_WORK_WORDS = {
  drawnByHand: (piece: string): string => `Drawn by hand: ${piece}`,
  noneEntered: 'none entered',
  allAgree: (entered: number): string => `${entered} entered, all agree`,
  lieApart: (apart: number, entered: number): string => `${apart} of ${entered} lie apart`,
  /** Begins the sentence with the line. */
  differs: (line: string, by: string, longer: boolean): string =>
    `${line}: yours is ${by} ${longer ? 'longer' : 'shorter'}.`,
  measureYourPaper: (pencil: string): string =>
    `Measure your own paper along these lines, with a tape on its edge round a curve. Up to ${pencil} is the pencil; past it a line is pointed at.`,
  followsOthers: 'This piece follows the others. Measure back, front or sleeve.',
  line: 'Line',
  draftIn: (unit: string): string => `Draft, ${unit}`,
  yours: 'Yours',
  apart: 'Apart',
  yoursOf: (line: string): string => `${line}, yours`,
  agrees: 'agrees',
  showThe: (line: string): string => `Show the ${line}`,
  showIt: 'Show it',
  yoursBy: (change: string): string => `yours ${change}`,
}

export const LIKED_FIELDS: Readonly<Record<LikedId, string>> = {
  bust: 'Across, under the armholes',
  waist: 'Across, at the waist',
  highHip: 'Across, at the high hip',
  hip: 'Across, at the hip',
  backLength: 'Centre back, neck seam to hem',
}

export const LIKED_GARMENT_WORDS = {
  title: 'A garment you like',
  noneLaidFlat: 'none laid flat',
  how: 'Woven, closed, laid on a table and smoothed without pulling. Not a knit: it stretches, and its ease reads too small.',
  belowTheWaist: (field: string, length: string): string => `${field}, ${length} below the waist`,
  outside: (least: string, most: string): string =>
    `It goes from ${least} to ${most}: measure both again.`,
  draftHasIt: 'The draft has it.',
  draftHas: (length: string): string => `The draft has ${length}.`,
  drawWith: (count: number): string => `Draw it with ${count === 1 ? 'this' : `these ${count}`}`,
  hasThatEase: 'The draft has the ease of that garment.',
  easeOfLiked: 'ease of the garment you like',
}
