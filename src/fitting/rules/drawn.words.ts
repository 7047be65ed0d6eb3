/**
 * What a draft carries of a decision, in words: what cannot be drawn and what to do instead, which
 * dart takes a turn up, what a change does besides. In millimetres; the screen sets them in her unit.
 */
import type { EaseLevel } from '../../draft/ease.ts'
import { EDGE_WORDS } from '../../draft/piece.words.ts'
import type { EdgeName, HalfId } from '../../draft/piece.ts'
import type { ComplaintId } from '../complaints/complaint.ts'
import type { Receiver } from './drawable.ts'

const LEVELS: Readonly<Record<EaseLevel, string>> = {
  bust: 'bust',
  waist: 'waist',
  highHip: 'high hip',
  hip: 'hip',
}
/** "round the hip" */
export const roundBody = (level: EaseLevel): string => `round the ${LEVELS[level]}`

export const DRAWN_WORDS = {
  wouldWiden: (by: number, level: EaseLevel) =>
    `In the waist dart it would add ${by} mm ${roundBody(level)}.`,
  otherDart: (id: ComplaintId, why: string) => `${id}: ${why} The other dart is tried.`,
  inPart: (id: ComplaintId, why: string) =>
    `${id}: ${why} So much as can be drawn is drawn now, the rest is watched.`,
  notHere: (by: number, why: string) => `${by} mm cannot be drawn here. ${why}`,
  turnsAlong: (by: number, level: EaseLevel) =>
    `Below the waist the front turns along: ${by} mm more ${roundBody(level)}.`,
  slants: (of: {
    readonly piece: HalfId
    readonly edge: EdgeName
    readonly closes: boolean
    readonly width: number
    readonly across: number
  }) =>
    `The ${of.piece} ${EDGE_WORDS[of.edge]} runs slantwise to the ${of.piece === 'front' ? 'bust tip' : 'blade point'} there: to ${of.closes ? 'take' : 'give'} it ${of.width} mm of length the wedge is ${of.across} mm wide, and the dart opens by as much more.`,
  /** @param wider round the body below the waist; undefined where it is not seen */
  takenUp: (
    into: Receiver,
    opens: number,
    wider: number | undefined,
    level: EaseLevel,
    taken: boolean,
  ) => {
    const dart = into === 'front.bustDart' ? 'side bust dart' : 'waist dart'
    const below =
      wider === undefined
        ? 'leaves the width below the waist as it is'
        : `adds ${wider} mm ${roundBody(level)}`
    return taken
      ? `The ${dart} takes it up: it opens ${opens} mm and ${below}.`
      : `Taken up by the ${dart} instead, it opens ${opens} mm and ${below}. Which of the two is yours to choose.`
  },
  noSuchPart: 'This garment has no such part to change. Look at the other causes of the complaint.',
  oneSide:
    'It moves the centre line, which both sides share. Pin both sides, or look for the cause at the shoulder or the side seam of this one side.',
  noWidthAcross:
    'The sleeve is cut in one: there is no width across to change. Change the ease at the bust, or raise the overarm.',
  noArmhole:
    'The sleeve is cut in one: there is no armhole to move. Swing the overarm, or move the underarm.',
  noSuchCap: 'No cap of this width is so high. Change the width of the sleeve first.',
  noElbowDart:
    'The sleeve is drawn without a dart at the elbow. Ease the back seam in, or lengthen the sleeve.',
}
