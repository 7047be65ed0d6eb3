/**
 * What a body needs of a garment, from its numbers and from what the garment is meant to be: the
 * ease it was given, how deep its neck and its underarm lie. No piece is drawn for it.
 *
 * - Girths: the body and the ease wanted there.
 * - Front length: the back length, and what the tape over the apex is longer than over the blade.
 *   Both tapes begin at the side neck, where the garment hangs, and end at the cord.
 * - Bust dart: the classic rule of dressmaking lessons, mouth = front length − back length, here
 *   with the underarm level on both halves: two published blocks then take the front armhole 29
 *   and 43 mm shorter than the back one, and the dart is larger by that.
 * - Apex: waist up to the bust level. The tape over the dart runs half its mouth longer than the
 *   upright height. Own reasoning: the cloth tilts to one side of the apex as to the other.
 * - Neck: half its base is a sixth of the girth and 8 mm, common practice. A wider neck falls
 *   along the shoulder.
 */
import type { Choices } from '../../../src/draft/choices.ts'
import type { GarmentId } from '../../../src/draft/draft.ts'
import { numberOf, type Numbers } from '../bodies/numbers.ts'
import type { Lengths } from './lengths.ts'

/** A dart narrower than this is not sewn, mm: common practice, no source. */
const DART_LEAST = 5
/** The front of a waist-dart blouse is cut longer by so much before a side dart takes the rest, mm. */
const RAISE_MOST = 20

/** All but the front armhole, which is a curve: that of the piece from the true numbers. */
export const needed = (body: Numbers, garment: GarmentId, intent: Choices): Lengths =>
  garment === 'blouse' ? cutInOne(body, intent) : darted(body, intent)

export const slopeOf = (body: Numbers): number => {
  const side = (which: 'Left' | 'Right'): number =>
    Math.asin(numberOf(body, `shoulderSlope${which}`) / numberOf(body, `shoulderLength${which}`))
  return (side('Left') + side('Right')) / 2
}
export const shoulderOf = (body: Numbers): number =>
  (numberOf(body, 'shoulderLengthLeft') + numberOf(body, 'shoulderLengthRight')) / 2

const neckHalf = (body: Numbers): number => numberOf(body, 'neckBaseGirth') / 6 + 8
/** Over the apex less over the blade. */
const balanceOf = (body: Numbers): number =>
  numberOf(body, 'sideNeckOverApexToWaist') - numberOf(body, 'sideNeckOverBladeToWaist')

function girths(body: Numbers, intent: Choices): Lengths {
  const bust = numberOf(body, 'bustGirth') + 4 * intent.easeBust
  return {
    bust,
    bustFront: bust / 2 + 2 * intent.frontShare,
    bustBack: bust / 2 - 2 * intent.frontShare,
    waist: numberOf(body, 'waistGirth') + 4 * intent.easeWaist,
    hip: numberOf(body, 'hipGirth') + 4 * intent.easeHip,
    apexOut: numberOf(body, 'apexSpacing') / 2,
  }
}

/** @param rise of the side neck above the nape @param mouth of the bust dart, mm */
function lengths(body: Numbers, intent: Choices, rise: number, mouth: number): Lengths {
  const backLength = numberOf(body, 'napeToWaist') + intent.lengthAdded
  const frontLength = backLength + rise + balanceOf(body)
  const up = numberOf(body, 'waistToBustLevel') + intent.lengthAdded + mouth / 2
  return {
    backLength,
    sideLength: backLength,
    frontLength,
    apexDown: frontLength - up,
    bustDart: mouth,
  }
}

function cutInOne(body: Numbers, intent: Choices): Lengths {
  const fall = Math.max(0, intent.neckHalfWidth - neckHalf(body)) * Math.tan(slopeOf(body))
  const rise = intent.sideNeckRise - fall
  const balance = balanceOf(body)
  const mouth = balance - RAISE_MOST >= DART_LEAST ? balance - RAISE_MOST : 0
  return {
    ...girths(body, intent),
    ...lengths(body, intent, rise, mouth),
    // The neck edge is chosen, so far below the nape level; the front hangs from a higher side neck.
    frontNeck: intent.frontNeckDrop + rise + balance - mouth,
    neckWidth: 2 * intent.neckHalfWidth,
  }
}

function darted(body: Numbers, intent: Choices): Lengths {
  const wanted = balanceOf(body) + intent.frontShort
  const mouth = wanted >= DART_LEAST ? wanted : 0
  const hang = lengths(body, intent, intent.sideNeckRise, mouth)
  const shoulder = shoulderOf(body)
  return {
    ...girths(body, intent),
    ...hang,
    acrossBack: numberOf(body, 'acrossBack') + 2 * intent.acrossEase,
    acrossChest: numberOf(body, 'acrossChest') + 2 * intent.acrossEase,
    shoulder,
    shoulderDrop: shoulder * Math.sin(slopeOf(body)),
    underarm: numberOf(body, 'napeToArmpitLevel') + intent.underarmDrop,
    frontNeck: (hang.frontLength ?? NaN) - numberOf(body, 'frontNeckToWaist') - intent.lengthAdded,
    neckWidth: 2 * neckHalf(body),
  }
}
