/**
 * The numbers of a darted bodice block above the bust, each by tape where it is taped, else by the
 * rule of the chosen construction. Millimetres.
 *
 * - measured: from direct measurements only; what is missing follows the neck base and the bust.
 * - neckFifths: a metric British block (figures of Aldrich, Metric Pattern Cutting, and of Beazley
 *   & Bond, as quoted in tutorials; steps per 4 cm of bust from the size table).
 * - bustShares: a Japanese proportional block, the newer of two (shares of the bust, partly from
 *   memory; reference size 83/64/38).
 */
import { knows, lengthOf, measured, type Body } from '../../measurements/confirmed.ts'
import type { MeasurementId } from '../../measurements/catalogue.ts'
import { fixed, found, minus, over, plus, restingOn, type Amount } from '../../units/amount.ts'
import { mm } from '../../units/length.ts'
import { choice, type Choices } from '../choices.ts'
import { neckBaseHalf, shoulderSlope } from './shoulder.ts'
import { TORSO_WORDS as W } from './torso.words.ts'

export interface BodiceFrame {
  /** Nape down to the underarm line. */
  readonly scye: Amount
  readonly neckBack: Amount
  readonly neckFront: Amount
  /** Side neck above the nape level, on the back. */
  readonly neckRise: Amount
  /** Side neck down to the neck edge at the centre front; undefined: by front neck to waist. */
  readonly neckDepth: Amount | undefined
  readonly shoulder: Amount
  readonly shoulderDrop: Amount
  /** Half the width across, ease counted in. */
  readonly acrossBack: Amount
  readonly acrossChest: Amount
  /** Full angle of the bust dart at the apex; undefined: its mouth follows the balance. */
  readonly dartAngle: number | undefined
  /** Side neck of the front above that of the back when the dart is still open at armhole or shoulder. */
  readonly frontHigher: number
}

/** Rows of the British table go by bust: the value at 880 and its step, for 40 mm up to 1040 and 60 past it. */
function byBust(body: Body, at880: number, step: number): number {
  const bust = lengthOf(body, 'bustGirth')
  const steps = (Math.min(bust, 1040) - 880) / 40 + Math.max(0, bust - 1040) / 60
  return at880 + steps * step
}
const byTable = (body: Body, words: string, at880: number, step: number): Amount =>
  found(words, mm(byBust(body, at880, step)), ['bustGirth'])

export function bodiceFrame(body: Body, choices: Choices): BodiceFrame {
  const neck = knows(body, 'neckBaseGirth')
    ? measured(body, 'neckBaseGirth')
    : byTable(body, W.neckOfSize, 370, 10)
  return {
    scye: restingOn(scye(body, choices), ['construction']),
    ...neckLine(body, choices, neck),
    ...shoulderLine(body),
    acrossBack: half(body, choices, 'acrossBack', [344, 10], (b) => b / 8 + 74),
    acrossChest: half(body, choices, 'acrossChest', [324, 12], (b) => b / 8 + 62),
    ...bustShaping(body, choices),
  }
}

function scye(body: Body, choices: Choices): Amount {
  const ease = choice(choices, 'underarmDrop')
  if (knows(body, 'napeToArmpitLevel')) return plus(measured(body, 'napeToArmpitLevel'), ease)
  const bust = measured(body, 'bustGirth')
  switch (choices.construction) {
    case 'bustShares':
      return plus(over(bust, 12), fixed(mm(137)))
    // 21.0 cm at bust 88 and 5 mm; the step of 4 mm from memory.
    case 'neckFifths':
    case 'measured':
      return plus(byTable(body, W.armholeDepthOfSize, 210, 4), fixed(mm(5)))
  }
}

function neckLine(
  body: Body,
  choices: Choices,
  neck: Amount,
): Pick<BodiceFrame, 'neckBack' | 'neckFront' | 'neckRise' | 'neckDepth'> {
  const fifth = over(neck, 5)
  switch (choices.construction) {
    case 'bustShares': {
      const front = plus(over(measured(body, 'bustGirth'), 24), fixed(mm(34)))
      const back = plus(front, fixed(mm(2)))
      return {
        neckFront: front,
        neckBack: back,
        neckRise: over(back, 3),
        neckDepth: plus(front, fixed(mm(5))),
      }
    }
    case 'neckFifths':
      return {
        neckBack: minus(fifth, fixed(mm(2))),
        neckFront: minus(fifth, fixed(mm(7))),
        neckRise: choice(choices, 'sideNeckRise'),
        neckDepth: minus(fifth, fixed(mm(2))),
      }
    case 'measured': {
      const width = neckBaseHalf(body) ?? minus(fifth, fixed(mm(2)))
      return {
        neckBack: width,
        neckFront: width,
        neckRise: choice(choices, 'sideNeckRise'),
        neckDepth: knows(body, 'frontNeckToWaist') ? undefined : minus(fifth, fixed(mm(2))),
      }
    }
  }
}

function shoulderLine(body: Body): Pick<BodiceFrame, 'shoulder' | 'shoulderDrop'> {
  const ids = (['shoulderLengthLeft', 'shoulderLengthRight'] as const).filter((id) =>
    knows(body, id),
  )
  const [a, b] = ids
  const shoulder =
    a && b
      ? over(plus(measured(body, a), measured(body, b)), 2)
      : a
        ? measured(body, a)
        : byTable(body, W.shoulderOfSize, 122.5, 2.5)
  const drop = shoulder.mm * Math.sin(shoulderSlope(body))
  return {
    shoulder,
    shoulderDrop: found(W.dropOfShoulder, mm(drop), [
      'shoulderLengthLeft',
      'shoulderLengthRight',
      'shoulderSlopeLeft',
      'shoulderSlopeRight',
      'bustGirth',
    ]),
  }
}

function half(
  body: Body,
  choices: Choices,
  id: MeasurementId,
  [at880, step]: readonly [number, number],
  ofBust: (bust: number) => number,
): Amount {
  const ease = choice(choices, 'acrossEase')
  if (knows(body, id)) return restingOn(plus(over(measured(body, id), 2), ease), ['construction'])
  const rule =
    choices.construction === 'bustShares'
      ? found(W.eighthOfBust, mm(ofBust(lengthOf(body, 'bustGirth'))), ['bustGirth'])
      : plus(found(W.halfWidthOfSize, mm(byBust(body, at880, step) / 2), ['bustGirth']), ease)
  return restingOn(rule, ['construction'])
}

function bustShaping(body: Body, choices: Choices): Pick<BodiceFrame, 'dartAngle' | 'frontHigher'> {
  const bust = lengthOf(body, 'bustGirth')
  switch (choices.construction) {
    // 70 mm on the shoulder at bust 880, 6 more for 40, on a leg of 245: 16.4° at 880.
    case 'neckFifths':
      return {
        dartAngle: 2 * Math.asin(byBust(body, 70, 6) / (2 * SHOULDER_DART_LEG)),
        frontHigher: 0,
      }
    // A quarter of the bust in cm less 2.5, in degrees. The side neck: B/5 + 83 above the bust
    // line in front, B/12 + 137 and the neck rise at the back.
    case 'bustShares':
      return {
        dartAngle: ((bust / 40 - 2.5) * Math.PI) / 180,
        frontHigher: bust / 5 + 83 - (bust / 12 + 137) - (bust / 24 + 36) / 3,
      }
    case 'measured':
      return { dartAngle: undefined, frontHigher: 0 }
  }
}
const SHOULDER_DART_LEG = 245
