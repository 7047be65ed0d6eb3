/**
 * How the front of a bodice block differs from the back. With the bust dart lying in the side the
 * underarm is level on both; what the dart opens is taken from the front armhole, so that
 *   raise of the front side neck = balance − mouth of the dart.
 * Balance: front longer than back from side neck to waist, taped or by the construction.
 * Source: worked out from two published blocks whose darts lie at shoulder and armhole.
 */
import { knows, lengthOf, type Body } from '../../measurements/confirmed.ts'
import type { Choices } from '../choices.ts'
import type { BodiceFrame } from './bodice-frame.ts'
import { frontTip, share, type TorsoNumbers } from './blouse-numbers.ts'
import { waistPlan } from './waist-plan.ts'

/** A bust dart narrower than this is not worth sewing, mm. */
const DART_LEAST = 5

export function bodiceNumbers(body: Body, choices: Choices, frame: BodiceFrame): TorsoNumbers {
  const taped =
    knows(body, 'sideNeckOverApexToWaist') && knows(body, 'sideNeckOverBladeToWaist')
      ? lengthOf(body, 'sideNeckOverApexToWaist') - lengthOf(body, 'sideNeckOverBladeToWaist')
      : undefined
  const ruled = frame.dartAngle === undefined ? choices.frontRaise : frame.frontHigher
  const balance = taped ?? ruled
  const mouth = mouthOf(body, choices, frame, balance)
  const bustDart = mouth >= DART_LEAST ? mouth : 0
  const rise = lengthOf(body, 'waistToBustLevel') + choices.lengthAdded
  const bust = lengthOf(body, 'bustGirth') / 4 + choices.easeBust
  return {
    balance: taped,
    raise: balance - bustDart,
    bustDart,
    dartRests:
      frame.dartAngle === undefined
        ? ['frontShort', 'construction']
        : ['construction', 'bustGirth', 'easeBust', 'frontShare', 'apexSpacing'],
    rise,
    waist: waistPlan(
      {
        bust: { back: bust + share(choices, 'back'), front: bust + share(choices, 'front') },
        waist: lengthOf(body, 'waistGirth') / 4 + choices.easeWaist,
      },
      choices,
      {
        back: rise - choices.backDartTip,
        front: rise + bustDart / 2 - frontTip(body, choices),
      },
    ),
  }
}

function mouthOf(body: Body, choices: Choices, frame: BodiceFrame, balance: number): number {
  if (frame.dartAngle === undefined) return Math.max(0, balance + choices.frontShort)
  const leg =
    lengthOf(body, 'bustGirth') / 4 +
    choices.easeBust +
    share(choices, 'front') -
    lengthOf(body, 'apexSpacing') / 2
  // The mouth is plumb and square to the leg that runs level to the bust tip.
  return 2 * leg * Math.tan(frame.dartAngle / 2)
}
