/**
 * What to tell her while she stands before the camera: one hint at a time, the one that has to be
 * mended first. Two chalk lines bound where she stands; she fits between them, she does not fill
 * a figure.
 */
import type { LivePose } from './live-pose.ts'
import type { View } from './reading.ts'

/** Heights of the two chalk lines, shares of the frame: head below the first, feet above the second. */
export const HEAD_LINE = 0.05
export const FLOOR_LINE = 0.96
/**
 * Where the card is looked for by eye, shares of the frame: the waist of anyone who stands between
 * the lines and is near enough. Drawn as a frame, never enforced: the reading finds the card anywhere.
 */
export const CARD_FRAME = { left: 0.36, top: 0.41, right: 0.64, bottom: 0.64 } as const
/**
 * Crown to floor as a share of the frame. At 2.5 m a body of 1.7 m takes 0.51 of a phone's field of
 * 67 degrees (computed); smaller than this, the sheet has too few pixels.
 */
const LEAST_TALL = 0.45
/** Middle of the body: within this of the frame's middle, the whole of both arms is in it. */
const ASIDE = 0.2
/** Wrist from the plumb line, degrees. Rendered bodies whose hands clear the hips hold 13 to 23. */
const [ARM_NEAR, ARM_FAR] = [9, 50]

export type HintId =
  | 'nobody'
  | 'stepBack'
  | 'feet'
  | 'head'
  | 'nearer'
  | 'goLeft'
  | 'goRight'
  | 'middle'
  | 'faceCamera'
  | 'turnSide'
  | 'turnBack'
  | 'armsAway'
  | 'armsDown'
  | 'handDown'

export const TURN_HINT: Readonly<Record<View, HintId>> = {
  front: 'faceCamera',
  side: 'turnSide',
  back: 'turnBack',
}

/** The first thing to mend for this view; undefined when the photo can be taken. */
export function hintFor(view: View, pose: LivePose | undefined): HintId | undefined {
  if (!pose) return 'nobody'
  const headOut = pose.crown < HEAD_LINE / 2
  const feetOut = !pose.feetSeen || pose.foot > (1 + FLOOR_LINE) / 2
  if (headOut && feetOut) return 'stepBack'
  if (feetOut) return 'feet'
  if (headOut) return 'head'
  if (pose.foot - pose.crown < LEAST_TALL) return 'nearer'
  const aside = pose.across - 0.5
  if (Math.abs(aside) > ASIDE) return asideHint(pose, aside > 0)
  if (pose.turn !== view) return TURN_HINT[view]
  if (pose.handRaised) return 'handDown'
  // From the side the near arm may hang or be lifted forward: both keep the back's contour free.
  if (view === 'side' || !pose.arms) return undefined
  if (pose.arms[0] < ARM_NEAR) return 'armsAway'
  return pose.arms[1] > ARM_FAR ? 'armsDown' : undefined
}

/** The right of the picture is her left when she faces the camera. */
function asideHint(pose: LivePose, right: boolean): HintId {
  if (pose.turn === 'front') return right ? 'goRight' : 'goLeft'
  if (pose.turn === 'back') return right ? 'goLeft' : 'goRight'
  return 'middle'
}
