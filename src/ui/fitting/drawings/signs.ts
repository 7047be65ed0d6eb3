/**
 * What each complaint looks like on the muslin: a view and the marks on it. Drawn by ourselves from
 * the words of its sign; taut lines have arrowheads, loose folds are waves, the chalk dots are level
 * or plumb, a broken line is where the cloth should lie. Longer than other files: one entry each.
 */
import type { ComplaintId } from '../../../fitting/complaints/complaint.ts'
import {
  arrow,
  bubble,
  dart,
  dot,
  fishEye,
  gape,
  grain,
  hole,
  level,
  loop,
  plumb,
  point,
  rays,
  slack,
  taut,
  tip,
  waves,
} from './marks.ts'
import {
  FRONT,
  BACK,
  SIDE,
  SLEEVE,
  WING,
  FRONT_NECK,
  BACK_NECK,
  FRONT_TOP,
  BACK_TOP,
  SHOULDER,
  BUST,
  ONE_BUST,
  ARMHOLE,
  BACK_ARMHOLE,
  FRONT_WAIST,
  BACK_WAIST,
  SIDE_LOW,
  SIDE_TOP,
  CAP,
} from './frames.ts'
import { both, cloth, framed, sketch, wanted, type Sketch } from './sketch.ts'
import type { At } from './views.ts'

/** Bust darts and waist darts as the block has them, in the units of the front. */
const waistDart = (at: At, x = 73) => fishEye(at(x, 62), at(x + 1, 100), 5)

export const SIGNS: Readonly<Record<ComplaintId, Sketch>> = {
  N1: sketch(
    FRONT_NECK,
    both((at) => [loop(at(61, 30), at(70, 21), at(62, 22))]),
  ),
  N2: sketch(
    FRONT_NECK,
    both((at) => [
      rays(at(66, 28), at(74, 40), at(66, 44)),
      rays(at(71, 21), at(82, 30), at(84, 23)),
    ]),
  ),
  N3: sketch(BACK_NECK, (at) => [
    loop(at(50, 19), at(70, 19), at(60, 15)),
    slack(at(60, 24), at(60, 42), { n: 1 }),
  ]),
  N4: sketch(BACK_NECK, (at) => [slack(at(47, 30), at(73, 30), { n: 2 })]),
  N5: sketch(
    FRONT_NECK,
    both((at) => [
      wanted(at, 'M72 17C72 26 66 30 60 30'),
      cloth(at, 'M81 20C80 30 70 36 60 36'),
      cloth(at, 'M81 20L91 24'),
      arrow(at(73, 24), at(78.5, 27)),
    ]),
    ['neck', 'shoulder'],
  ),
  N6: sketch(
    SHOULDER,
    (at) => [
      wanted(at, 'M72 17L91 24'),
      loop(at(72, 10), at(91, 24), at(83, 15.5)),
      arrow(at(74, 17), at(74, 11.5)),
      taut(at(83, 27), at(92, 31), { n: 2 }),
    ],
    ['shoulder'],
  ),
  N7: sketch(
    SIDE,
    (at) => [
      cloth(at, 'M54 19L51 28'),
      point(at(61, 22)),
      arrow(at(72, 8), at(56, 8)),
      taut(at(66, 23), at(78, 25), { n: 2 }),
      level(at(36, 112), at(86, 112)),
      cloth(at, 'M34 116L85 105'),
    ],
    ['shoulder', 'hem'],
  ),
  N8: sketch(
    SIDE,
    (at) => [
      cloth(at, 'M67 21L71 29'),
      point(at(61, 22)),
      arrow(at(50, 8), at(66, 8)),
      slack(at(74, 31), at(83, 36), { n: 2 }),
      level(at(34, 112), at(84, 112)),
      cloth(at, 'M34 104L85 116'),
    ],
    ['shoulder', 'hem'],
  ),
  SH1: sketch(
    FRONT_TOP,
    both((at) => [slack(at(71, 26), at(88, 50)), loop(at(83, 21), at(92, 26), at(89, 21))]),
  ),
  SH2: sketch(
    FRONT_TOP,
    both((at) => [
      rays(at(90, 25), at(66, 34), at(66, 45), at(72, 54)),
      slack(at(62, 33), at(70, 28), { n: 1 }),
    ]),
  ),
  SH3: sketch(
    SHOULDER,
    (at) => [
      wanted(at, 'M91 24C87 32 85 42 91 50'),
      cloth(at, 'M91 24L98 27C92 34 88 43 91 50'),
      dot(at(90, 23)),
      arrow(at(91, 18), at(99, 21)),
      slack(at(84, 30), at(82, 46), { n: 2, gap: 9 }),
    ],
    ['armhole'],
  ),
  SH4: sketch(
    SHOULDER,
    (at) => [
      wanted(at, 'M84 21.5L91 24C87 32 85 42 91 50'),
      cloth(at, 'M72 17L83 21C80 31 80 44 91 50'),
      dot(at(90, 23)),
      taut(at(81, 25), at(92, 29), { n: 2 }),
      taut(at(80, 34), at(91, 37), { n: 2 }),
    ],
    ['armhole', 'shoulder'],
  ),
  SH5: sketch(
    SIDE_TOP,
    (at) => [
      cloth(at, 'M61 21L53 30'),
      wanted(at, 'M61 21L61 27'),
      dot(at(61, 28)),
      arrow(at(62, 14), at(52, 18)),
      slack(at(72, 30), at(70, 46), { n: 2 }),
    ],
    ['shoulder'],
  ),
  SH6: sketch(
    SIDE_TOP,
    (at) => [
      cloth(at, 'M66 21.5L69 31'),
      wanted(at, 'M61 21L61 27'),
      dot(at(61, 28)),
      arrow(at(59, 14), at(69, 17)),
    ],
    ['shoulder'],
  ),
  SH7: sketch(
    framed('front', 70, 8, 34),
    (at) => [
      wanted(at, 'M91 24C88 30 86 36 86.4 41'),
      cloth(at, 'M91 24L95 22C89 30 85 42 91 50'),
      point(at(94, 22.5)),
    ],
    ['armhole'],
  ),
  SH8: sketch(
    FRONT,
    (at) => [
      slack(at(72, 28), at(88, 52)),
      level(at(24, 112), at(96, 112)),
      cloth(at, 'M27 110L93 117'),
      cloth(at, 'M72 17L91 29'),
      wanted(at, 'M72 17L91 24'),
      cloth(at, 'M48 17L29 24'),
      arrow(at(97, 20), at(97, 29)),
      wanted(at, 'M60 30L64 114'),
    ],
    ['hem', 'shoulder'],
  ),
  B1: sketch(BUST, (at) => [
    taut(at(44, 54), at(76, 54)),
    ...both((to) => [tip(to(73, 54)), taut(to(79, 54), to(89, 56), { n: 2 })])(at),
  ]),
  B2: sketch(
    FRONT,
    (at) => [
      ...both((to) => [taut(to(74, 60), to(85, 82)), tip(to(73, 54))])(at),
      level(at(24, 112), at(96, 112)),
      cloth(at, 'M27 112C42 112 50 103 60 103C70 103 78 112 93 112'),
      arrow(at(60, 96), at(60, 86)),
    ],
    ['hem'],
  ),
  B3: sketch(
    BUST,
    both((at) => [slack(at(71, 46), at(74, 66)), dart(at(89, 66), at(80, 59), 6)]),
  ),
  B4: sketch(ONE_BUST, (at) => [
    dart(at(88, 62), at(67, 53), 7),
    point(at(73, 55)),
    arrow(at(73, 47), at(66, 47)),
  ]),
  B5: sketch(ONE_BUST, (at) => [
    dart(at(88, 70), at(76, 67), 7),
    point(at(73, 54)),
    ...[arrow(at(68, 67), at(68, 56))],
    slack(at(68, 46), at(80, 45), { n: 2 }),
  ]),
  B6: sketch(
    FRONT_WAIST,
    both((at) => [
      fishEye(at(82, 62), at(81, 104), 6),
      point(at(72, 56)),
      arrow(at(81, 56), at(76, 56)),
    ]),
  ),
  B7: sketch(ONE_BUST, (at) => [dart(at(88, 68), at(76, 57), 12), bubble(at(72, 54), 12)]),
  B8: sketch(ARMHOLE, (at) => [
    loop(at(91, 50), at(87, 30), at(92, 39)),
    slack(at(86, 44), at(74, 53), { n: 2 }),
    tip(at(72, 55)),
  ]),
  B9: sketch(FRONT_TOP, (at) => [slack(at(42, 40), at(78, 40))]),
  B10: sketch(
    FRONT_TOP,
    both((at) => [slack(at(81, 26), at(80, 50), { n: 3 })]),
  ),
  B11: sketch(FRONT_TOP, (at) => [taut(at(36, 39), at(84, 39), { n: 4 })]),
  B12: sketch(BUST, (at) => [
    gape(at(60, 44), at(60, 64), 16),
    dot(at(60, 43)),
    dot(at(60, 65)),
    dot(at(60, 80)),
    dot(at(60, 94)),
    ...both((to) => [taut(to(66, 54), to(80, 54), { n: 3 })])(at),
  ]),
  B13: sketch(
    FRONT_WAIST,
    both((at) => [slack(at(73, 64), at(73, 80)), waistDart(at)]),
  ),
  B14: sketch(BUST, (at) => [
    level(at(30, 54), at(90, 54)),
    cloth(at, 'M31 54C44 54 52 58 60 58C68 58 76 54 89 54'),
    slack(at(38, 69), at(82, 69)),
  ]),
  B15: sketch(
    BUST,
    both((at) => [taut(at(72, 27), at(73, 50), { n: 2 }), tip(at(73, 54))]),
  ),
  A1: sketch(ARMHOLE, (at) => [
    rays(at(89, 48), at(80, 58), at(88, 62), at(78, 49), at(80, 40)),
    cloth(at, 'M91 24C87 32 85 42 91 50'),
  ]),
  A2: sketch(
    ARMHOLE,
    (at) => [
      wanted(at, 'M91 24C87 32 85 42 91 50'),
      cloth(at, 'M91 24C83 34 80 52 89 60'),
      arrow(at(95, 50), at(95, 59)),
      slack(at(70, 48), at(86, 63), { n: 2 }),
    ],
    ['armhole'],
  ),
  A3: sketch(BACK_ARMHOLE, (at) => [
    loop(at(91, 50), at(88, 28), at(93, 38)),
    slack(at(85, 42), at(76, 45), { n: 1 }),
  ]),
  A4: sketch(
    BACK_TOP,
    both((at) => [slack(at(81, 30), at(82, 54))]),
  ),
  A5: sketch(CAP, (at) => [slack(at(56, 44), at(46, 62), { n: 2 })]),
  K1: sketch(BACK_TOP, (at) => [
    taut(at(38, 42), at(82, 42)),
    ...both((to) => [taut(to(85, 34), to(98, 33), { n: 2 })])(at),
  ]),
  K2: sketch(BACK_WAIST, (at) => [slack(at(42, 73), at(78, 73))]),
  K3: sketch(
    BACK,
    (at) => [
      taut(at(42, 44), at(78, 44), { n: 2 }),
      level(at(24, 112), at(96, 112)),
      cloth(at, 'M27 112C42 112 50 102 60 102C70 102 78 112 93 112'),
      arrow(at(60, 96), at(60, 86)),
    ],
    ['hem'],
  ),
  K4: sketch(
    BACK,
    both((at) => [taut(at(74, 46), at(85, 76), { n: 3 })]),
  ),
  K5: sketch(BACK, (at) => [slack(at(36, 56), at(84, 56), { n: 4 })]),
  K6: sketch(
    BACK_WAIST,
    both((at) => [slack(at(70, 68), at(70, 94))]),
  ),
  K7: sketch(
    SIDE_TOP,
    (at) => [
      cloth(at, 'M42 14C52 21 66 23 74 20'),
      wanted(at, 'M49 17C56 21 66 23 74 20'),
      cloth(at, 'M42 14C36 22 33 34 35 46C37 58 40 66 42 76'),
      rays(at(43, 23), at(56, 30), at(50, 40), at(58, 22)),
      arrow(at(49, 11), at(42, 10)),
    ],
    ['back', 'neck'],
  ),
  W1: sketch(FRONT_WAIST, (at) => [
    cloth(at, 'M34 70L86 70'),
    level(at(34, 82), at(86, 82)),
    ...[42, 60, 78].map((x) => arrow(at(x, 80), at(x, 72))),
  ]),
  W2: sketch(FRONT_WAIST, (at) => [
    slack(at(30, 70), at(90, 70), { n: 3 }),
    level(at(32, 82), at(88, 82)),
  ]),
  W3: sketch(FRONT_WAIST, (at) => [
    taut(at(36, 80), at(84, 80)),
    ...both((to) => [waistDart(to)])(at),
  ]),
  W4: sketch(FRONT_WAIST, (at) => [slack(at(60, 70), at(60, 94), { n: 7, gap: 11 })]),
  W5: sketch(SIDE_LOW, (at) => [
    level(at(44, 80), at(80, 80)),
    cloth(at, 'M43 78L81 90'),
    arrow(at(88, 78), at(88, 90)),
  ]),
  W6: sketch(
    SIDE_LOW,
    (at) => [
      plumb(at(61, 56), at(61, 107)),
      cloth(at, 'M61 56L72 112'),
      arrow(at(63, 100), at(70, 100)),
    ],
    ['sideSeam'],
  ),
  W7: sketch(
    SIDE_LOW,
    (at) => [
      plumb(at(61, 56), at(61, 107)),
      cloth(at, 'M61 56L50 112'),
      arrow(at(59, 100), at(52, 100)),
    ],
    ['sideSeam'],
  ),
  W8: sketch(
    SIDE_LOW,
    (at) => [
      plumb(at(61, 56), at(61, 107)),
      cloth(at, 'M61 56C72 64 70 74 61 84C54 92 58 104 61 112'),
      arrow(at(63, 68), at(69, 68)),
    ],
    ['sideSeam'],
  ),
  W9: sketch(framed('back', 20, 38, 80), (at) => [
    taut(at(33, 103), at(87, 103)),
    slack(at(44, 78), at(76, 78), { n: 2 }),
  ]),
  W10: sketch(
    SIDE_LOW,
    (at) => [
      rays(at(83, 97), at(66, 90), at(64, 98), at(68, 106)),
      level(at(34, 112), at(88, 112)),
      cloth(at, 'M34 112L62 112L86 103'),
      arrow(at(92, 112), at(92, 103)),
    ],
    ['hem'],
  ),
  W11: sketch(
    FRONT,
    (at) => [
      level(at(24, 108), at(98, 108)),
      cloth(at, 'M27 106C40 114 48 104 60 108C72 112 82 117 93 114'),
      arrow(at(104, 100), at(104, 107)),
      arrow(at(104, 118), at(104, 111)),
    ],
    ['hem'],
  ),
  W12: sketch(framed('front', 54, 58, 58), (at) => [
    fishEye(at(73, 62), at(74, 99), 6),
    bubble(at(74, 103), 9),
  ]),
  L1: sketch(
    SLEEVE,
    (at) => [
      rays(at(59, 28), at(56, 62), at(66, 66), at(86, 60)),
      level(at(60, 112), at(96, 112)),
      cloth(at, 'M64 112C70 112 74 104 78 104C82 104 86 112 92 112'),
    ],
    ['hem'],
  ),
  L2: sketch(CAP, (at) => [slack(at(60, 36), at(84, 42), { n: 2 })]),
  L3: sketch(SLEEVE, (at) => [taut(at(56, 66), at(90, 64))]),
  L4: sketch(SLEEVE, (at) => [
    slack(at(58, 50), at(88, 104), { n: 2 }),
    grain(at(73, 54), at(82, 106)),
  ]),
  L5: sketch(
    framed('lifted'),
    (at) => [
      taut(at(87, 58), at(87, 88), { n: 2 }),
      level(at(24, 112), at(104, 112)),
      cloth(at, 'M27 112C56 112 76 112 92 102'),
      arrow(at(104, 112), at(104, 102)),
    ],
    ['hem'],
  ),
  L6: sketch(CAP, (at) => [
    ...[
      [62, 27, 55, 39],
      [71, 30, 62, 41],
      [79, 37, 68, 46],
      [85, 46, 73, 52],
    ].map(([x1 = 0, y1 = 0, x2 = 0, y2 = 0]) => slack(at(x1, y1), at(x2, y2), { n: 1 })),
  ]),
  L7: sketch(CAP, (at) => [
    taut(at(60, 34), at(84, 48), { n: 2 }),
    ...[30, 38, 46, 54].map((y) => slack(at(36, y - 3), at(48, y), { n: 1 })),
  ]),
  L8: sketch(framed('bent'), (at) => [
    rays(at(32, 90), at(48, 70), at(36, 62), at(60, 84), at(28, 70)),
  ]),
  L9: sketch(
    framed('sleeve', 36, 40, 80),
    (at) => [
      level(at(58, 110), at(98, 110)),
      cloth(at, 'M64 116L92 104'),
      arrow(at(96, 116), at(96, 106)),
    ],
    ['hem'],
  ),
  D1: sketch(
    WING,
    (at) => [
      wanted(at, 'M25 13C50 19 82 36 107 60'),
      cloth(at, 'M25 13C52 13 84 14 112 18'),
      cloth(at, 'M112 18L92 56'),
      cloth(at, 'M92 56C80 62 68 72 58 84'),
      arrow(at(94, 42), at(94, 24)),
    ],
    ['overarm', 'edge', 'under'],
  ),
  D2: sketch(WING, (at) => [rays(at(48, 21), at(104, 62), at(94, 74), at(86, 84), at(44, 46))]),
  D3: sketch(framed('wingLifted'), (at) => [
    rays(at(60, 80), at(52, 112), at(40, 108), at(30, 98)),
    taut(at(66, 76), at(98, 58), { n: 2 }),
    arrow(at(68, 112), at(68, 96)),
  ]),
  D4: sketch(WING, (at) => [slack(at(70, 68), at(52, 108), { n: 4 })]),
  D5: sketch(framed('wingSide'), (at) => [
    slack(at(66, 44), at(76, 70), { n: 3, gap: 5 }),
    slack(at(54, 52), at(50, 70), { n: 1 }),
  ]),
  D6: sketch(
    WING,
    (at) => [
      cloth(at, 'M107 60L82 104'),
      cloth(at, 'M82 104C74 100 64 98 57 100'),
      hole(at(104, 66), at(78, 102), 13),
    ],
    ['edge', 'under'],
  ),
  D7: sketch(WING, (at) => [
    taut(at(106, 62), at(86, 89), { n: 4, gap: 5 }),
    arrow(at(116, 66), at(108, 62)),
    arrow(at(80, 100), at(84, 93)),
  ]),
  D8: sketch(WING, (at) => [waves(at(107, 60), at(86, 90), 5, 5), wanted(at, 'M107 60L86 90')], [
    'edge',
  ]),
  X1: sketch(FRONT, (at) => [
    grain(at(52, 38), at(64, 106)),
    plumb(at(60, 34), at(60, 104)),
    slack(at(74, 62), at(84, 92), { n: 2 }),
    slack(at(38, 50), at(46, 76), { n: 2 }),
  ]),
  X2: sketch(FRONT, (at) => [
    taut(at(33, 52), at(87, 52), { n: 2 }),
    taut(at(36, 79), at(84, 79), { n: 2 }),
    taut(at(30, 104), at(90, 104), { n: 2 }),
  ]),
  X3: sketch(FRONT, (at) => [
    slack(at(60, 38), at(60, 60), { n: 5, gap: 10 }),
    slack(at(60, 68), at(60, 104), { n: 5, gap: 11 }),
  ]),
  X4: sketch(FRONT, (at) => [
    ...[wanted(at, 'M60 30L60 112')],
    slack(at(70, 46), at(86, 56), { n: 2 }),
    slack(at(66, 72), at(84, 72), { n: 2 }),
    slack(at(72, 84), at(86, 106), { n: 2 }),
  ]),
}
