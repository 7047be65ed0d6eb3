/**
 * An invented standing woman of 1660 mm, seven and a half heads tall, in a close top with short
 * sleeves, leggings and flat shoes, hair pinned up. Everything is made of the shapes in
 * field.ts; no person and no foreign model stood for her.
 */
import {
  bothSides,
  ellipsoid,
  join,
  length,
  limb,
  meet,
  within,
  type Field,
  type Vec,
} from './field.ts'
import { torsoField } from './torso.ts'

/** Arm of her left side by its joints; the right one is its mirror image. */
export interface Arm {
  readonly shoulder: Vec
  readonly elbow: Vec
  readonly wrist: Vec
  /** Unit vectors: along the hand, and across it towards the thumb. */
  readonly hand: Vec
  readonly thumb: Vec
}

/** Hanging, a little away from the body, so that the waist and hips are seen free. */
export const ARM_AWAY: Arm = {
  shoulder: [150, 1346, -22],
  elbow: [252, 1078, -32],
  wrist: [306, 850, 14],
  hand: [0.13, -0.98, 0.14],
  thumb: [-0.25, 0.1, 0.96],
}

/** Lifted forward with the forearm up, so that the side of the torso is seen free. */
export const ARM_FORWARD: Arm = {
  shoulder: [152, 1352, -10],
  elbow: [196, 1290, 262],
  wrist: [178, 1494, 352],
  hand: [-0.1, 0.92, 0.37],
  thumb: [0.2, -0.35, 0.9],
}

export interface Figure {
  /** What a tape round the torso feels: no arms, hands, head hair or shoes. */
  readonly trunk: Field
  readonly head: Field
  readonly hair: Field
  readonly legs: Field
  readonly shoes: Field
  readonly arms: Field
  readonly all: Field
  readonly leftArm: Arm
  readonly rightArm: Arm
  /** Worn over everything, when there is one. */
  readonly blouse?: Field
  /** Set when it was shaped from another (shape.ts), which knows the colours. */
  readonly plain?: { readonly figure: Figure; readonly inner: (p: Vec) => Vec }
}

const breast = join(
  26,
  ellipsoid([78, 1206, 60], [60, 62, 66]),
  ellipsoid([90, 1197, 84], [44, 46, 50]),
)
const buttock = ellipsoid([72, 845, -62], [80, 92, 66])
const shoulderRidge = join(
  40,
  limb([34, 1396, -30], 40, [148, 1350, -26], 41),
  limb([52, 1348, -46], 42, [132, 1330, -46], 40),
)
const collarbone = limb([14, 1366, 22], 14, [120, 1372, 0], 16)
const neck = join(
  24,
  limb([0, 1385, -26], 54, [0, 1496, 4], 51),
  limb([0, 1400, -38], 42, [0, 1480, -14], 40),
  // The last bone of the neck, which is felt at the nape.
  ellipsoid([0, 1411, -74], [17, 20, 13]),
)

const trunk: Field = join(
  38,
  torsoField,
  bothSides(shoulderRidge),
  neck,
  bothSides(collarbone),
  bothSides(breast),
  bothSides(buttock),
)

/** Limbs that share a joint and its radius meet smoothly by themselves; a fillet would be a bulge. */
const CHAIN = 0.5
const leg = join(
  20,
  join(
    CHAIN,
    limb([84, 838, -8], 90, [84, 690, -2], 79),
    limb([84, 690, -2], 79, [98, 462, 8], 53),
    limb([98, 462, 8], 53, [101, 330, -12], 50),
    limb([101, 330, -12], 50, [103, 95, -24], 34),
  ),
  ellipsoid([102, 352, -26], [49, 100, 46]),
)
const upper = join(
  20,
  limb([103, 44, -32], 36, [108, 26, 96], 34),
  ellipsoid([110, 26, 108], [40, 30, 58]),
  limb([103, 82, -28], 36, [103, 44, -34], 38),
)
/** Flat on the floor. */
const shoe: Field = (x, y, z) => Math.max(upper(x, y, z), -y)

const skull = ellipsoid([0, 1572, 8], [73, 86, 92])
const jaw = join(30, ellipsoid([0, 1520, 44], [57, 66, 58]), ellipsoid([0, 1468, 68], [26, 22, 24]))
const cheek = ellipsoid([38, 1532, 66], [26, 28, 28])
const brow = limb([12, 1577, 92], 9, [46, 1576, 78], 9)
const nose = join(
  8,
  limb([0, 1570, 92], 7, [0, 1533, 112], 10),
  ellipsoid([0, 1529, 112], [11, 9, 12]),
  bothSides(ellipsoid([11, 1527, 103], [8, 7, 9])),
)
const lips = ellipsoid([0, 1498, 93], [22, 12, 11])
const ear = ellipsoid([76, 1544, 2], [8, 30, 18])
const eyeball = ellipsoid([31, 1561, 80], [14, 12, 13])
const head: Field = join(
  14,
  join(34, skull, jaw, bothSides(cheek)),
  bothSides(brow),
  nose,
  lips,
  bothSides(ear),
  bothSides(eyeball),
)

const bun = ellipsoid([0, 1618, -96], [46, 42, 40])
const cap: Field = (x, y, z) => {
  const shell = ellipsoid([0, 1578, 0], [82, 92, 98])(x, y, z)
  // The hairline: a sloping cut keeps the face, the ears and the nape free.
  const line = (z - 62) * 0.78 - (y - 1590) * 0.62
  const nape = 1518 - y + Math.max(0, z + 20) * 0.4
  return Math.max(shell, line, nape)
}
const hair: Field = join(16, cap, bun)

/** Makes the figure with these arms. The right arm is given as if it were a left one. */
export function figureWith(leftArm: Arm, rightArm: Arm): Figure {
  const [left, right] = [armField(leftArm), armField(rightArm)]
  const arms: Field = (x, y, z) => Math.min(left(x, y, z), right(-x, y, z))
  const headNear = within([0, 1560, 10], 190, head)
  const hairNear = within([0, 1580, -20], 190, hair)
  const trunkNear = within([0, 1150, 0], 480, trunk)
  // The thighs meet above; a fillet between them leaves no gap too narrow to see into.
  const legs: Field = (x, y, z) => meet(leg(x, y, z), leg(-x, y, z), 14)
  const legsNear = within([0, 470, 0], 500, legs)
  const shoes = bothSides(shoe)
  const skin = join(30, trunkNear, headNear, arms)
  const bodied = join(40, skin, legsNear)
  const all: Field = (x, y, z) => Math.min(bodied(x, y, z), shoes(x, y, z), hairNear(x, y, z))
  return { trunk, head: headNear, hair: hairNear, legs, shoes, arms, all, leftArm, rightArm }
}

function armField({ shoulder, elbow, wrist, hand, thumb }: Arm): Field {
  const along = (t: number, side: number): Vec => [
    wrist[0] + hand[0] * t + thumb[0] * side,
    wrist[1] + hand[1] * t + thumb[1] * side,
    wrist[2] + hand[2] * t + thumb[2] * side,
  ]
  const fingers = [-27, -9, 9, 27].map((side, i) =>
    limb(along(78, side), 8.5, along([142, 160, 165, 150][i] ?? 150, side * 0.85), 6.5),
  )
  const palm = join(
    14,
    limb(along(8, -6), 21, along(70, -16), 16),
    limb(along(8, 8), 21, along(72, 16), 16),
  )
  const thumbPart = limb(along(26, 26), 12, along(92, 52), 8)
  const mid: Vec = [
    (elbow[0] * 2 + wrist[0]) / 3,
    (elbow[1] * 2 + wrist[1]) / 3,
    (elbow[2] * 2 + wrist[2]) / 3,
  ]
  const bones = join(
    CHAIN,
    limb(shoulder, 45, elbow, 34),
    limb(elbow, 34, mid, 35),
    limb(mid, 35, wrist, 24),
  )
  const arm = join(12, bones, join(10, palm, thumbPart, join(4, ...fingers)))
  const centre: Vec = [
    (shoulder[0] + wrist[0]) / 2,
    (shoulder[1] + wrist[1]) / 2,
    (shoulder[2] + wrist[2]) / 2,
  ]
  const reach = Math.max(length(...minus(shoulder, centre)), length(...minus(elbow, centre))) + 190
  return within(centre, reach, arm)
}

const minus = (a: Vec, b: Vec): [number, number, number] => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
