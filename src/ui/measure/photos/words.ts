/** What the points, the views and the lengths of the photos are called on the screen. */
import type { PointName, View, ViewReading } from '../../../capture/reading.ts'
import { POINT_NAMES } from '../../../capture/reading.ts'
import type { EstimateId } from '../../../measurements/estimate.ts'

export const VIEW_WORDS: Readonly<Record<View, string>> = {
  front: 'Front',
  side: 'Side',
  back: 'Back',
}

/** Left and right are the wearer's. */
export const POINT_WORDS: Readonly<Record<PointName, string>> = {
  nape: 'Nape',
  waistBack: 'Waist, back',
  waistFront: 'Waist, front',
  bustLevel: 'Bust level',
  apexLeft: 'Left bust point',
  apexRight: 'Right bust point',
  sideNeckLeft: 'Left side neck',
  sideNeckRight: 'Right side neck',
  shoulderLeft: 'Left shoulder bone',
  shoulderRight: 'Right shoulder bone',
  bustLeft: 'Bust, left side',
  bustRight: 'Bust, right side',
  bustFront: 'Bust, front',
  bustBack: 'Bust, back',
  waistLeft: 'Waist, left side',
  waistRight: 'Waist, right side',
  hipLeft: 'Hip, left side',
  hipRight: 'Hip, right side',
  hipFront: 'Hip, front',
  hipBack: 'Hip, back',
}

export const ESTIMATE_WORDS: Readonly<Record<EstimateId, string>> = {
  napeToWaist: 'Nape to waist',
  waistToBustLevel: 'Waist to bust level',
  apexSpacing: 'Bust point to bust point',
  sideNeckToApex: 'Side neck to bust point',
  sideNeckOverApexToWaist: 'Side neck over bust point to waist',
  shoulderLength: 'Shoulder length, both sides',
  shoulderLengthLeft: 'Shoulder length, left',
  shoulderLengthRight: 'Shoulder length, right',
  shoulderSlopeLeft: 'Shoulder drop, left',
  shoulderSlopeRight: 'Shoulder drop, right',
  acrossBack: 'Across back',
  napeToArmpitLevel: 'Nape to armpit level',
  waistToHip: 'Waist to hip',
  bustBreadth: 'Bust breadth',
  waistBreadth: 'Waist breadth',
  hipBreadth: 'Hip breadth',
  bustDepth: 'Bust depth',
  waistDepth: 'Waist depth',
  hipDepth: 'Hip depth',
  bustGirth: 'Bust girth',
  waistGirth: 'Waist girth',
  hipGirth: 'Hip girth',
}

export interface Sentence {
  readonly stop: boolean
  readonly text: string
}

/** What was found in one photo: card and person first, then every point that was not seen. */
export function foundIn({ card, person, missing }: ViewReading): readonly Sentence[] {
  const cardWord = card.ok && card.card.kind === 'sheet' ? 'Printed sheet found.' : 'Card found.'
  const first: readonly Sentence[] = [
    card.ok ? { stop: false, text: cardWord } : { stop: true, text: card.reason },
    person.ok ? { stop: false, text: 'Person found.' } : { stop: true, text: person.reason },
  ]
  if (!person.ok) return first
  const unseen = POINT_NAMES.flatMap((name) => {
    const reason = missing[name]
    return reason === undefined ? [] : [{ stop: false, text: `${POINT_WORDS[name]}: ${reason}` }]
  })
  return [...first, ...unseen]
}
