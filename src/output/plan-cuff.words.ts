/** Slits and cuffs of sleeves in the sewing plan. */
import type { Mm } from '../units/length.ts'
import { says } from './pass.ts'

export const CUFF_PLAN_WORDS = {
  slits: 'Bind the slits of the sleeves',
  stitchSlit: (beside: Mm) =>
    says`Sew round the line of the slit with a short stitch, ${beside} beside it, to a point at its top.`,
  cutSlit: says`Cut along the line to the last thread before the point.`,
  layStrip: (by: Mm) =>
    says`Open the slit out straight, lay the strip to it right sides together, the stitched point at its edge, and sew ${by} from the edge of the strip.`,
  turnStrip: (by: Mm) =>
    says`Press the other edge of the strip under by ${by}, fold it over the seam and sew it down.`,
  foldStrip: says`Fold the binding in half at the top and sew across it on a slant. The front edge goes to the inside, the back edge stands out under it.`,
  pressSlit: says`With the point of the iron, the seam into the strip.`,
  sewThenCut: 'Sew first, cut after, with the points of small scissors, away from your hand.',
  mirrored: 'The two sleeves are mirrored: the edge that lies on top is nearer the front on both.',
  interface: 'Interface the cuffs',
  fuse: says`Lay the interfacing on the wrong side of each cuff, without its allowances, and press it on.`,
  make: 'Make the cuffs',
  turnUnder: says`Press the free long edge to the wrong side on its seam line.`,
  sewEnds: says`Fold the cuff on its fold, right sides together; sew both short ends, and along the sleeve end from C to B.`,
  sewRing: says`Sew the short ends together, press the seam open, fold the ring on its fold and press.`,
  turnOut: (trimmed: Mm) =>
    says`Trim to ${trimmed}, cut the corners off, snip to B, turn and ease the corners out.`,
  pressCuff: says`The seam rolled a hair to the inside, the fold sharp.`,
  iron: 'Steam burns: turn the corners out before you press, not over the hot iron.',
  set: 'Set the cuffs',
  gatherRows: (inner: Mm, outer: Mm) =>
    says`Two rows of the longest stitch along the sleeve end, ${inner} and ${outer} outside the seam line.`,
  drawUp: (to: Mm) => says`Draw them up to ${to}, spread evenly.`,
  matchSlit: says`The front edge of the slit, its binding turned in, meets end A; the back edge of the slit meets notch B, its binding lies on the overlap.`,
  matchSeam: says`The seam of the ring meets the sleeve seam.`,
  sew: (by: Mm) =>
    says`Outside of the cuff and sleeve right sides together, sew ${by} from the edge.`,
  sewInside: says`Lay the pressed edge over the seam inside and sew it down.`,
  pressSet: says`Into the cuff, never across the gathers.`,
  buttons: 'Buttonholes and buttons of the cuffs',
  placeButton: says`Buttonhole in the end that lies on top, half way up the cuff; button on the end that lies under.`,
  loops: 'Loops and buttons of the sleeve slits',
  sewLoop: says`At the hem, sew the loop to the edge that lies on top and the button to the other.`,
  hemAtSlit: 'It ends at the slit: turn its ends in flush with the binding and sew them shut.',
}
