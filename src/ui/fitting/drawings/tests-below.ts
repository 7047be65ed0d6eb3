/**
 * The tests of back, waist, sleeve and the whole garment, each drawn as it may come out. In the
 * order of the tests of the complaint. Longer than other files: one entry each.
 */
import type { ComplaintId } from '../../../fitting/complaints/complaint.ts'
import {
  cut,
  drawn,
  eased,
  looked,
  nothing,
  pinned,
  square,
  twoTapes,
  type Asked,
  type Draw,
} from './asked.ts'
import {
  arrow,
  bubble,
  dart,
  fishEye,
  gape,
  grain,
  level,
  mouth,
  plumb,
  point,
  rays,
  slack,
  slit,
  tape,
  taut,
  ticks,
  tuck,
  waves,
  wedge,
} from './marks.ts'
import {
  BACK,
  BACK_NECK,
  BACK_TOP,
  BACK_WAIST,
  CAP,
  FRONT,
  FRONT_WAIST,
  SIDE_LOW,
  SLEEVE,
  WING,
} from './frames.ts'
import { SEES_WORDS as SEES } from './sees.words.ts'
import { both, cloth, framed, wanted } from './sketch.ts'

const PAPER = framed('paper')
const JOINED = framed('joined')
const LIFTED = framed('lifted')
const WING_LIFTED = framed('wingLifted')
const WING_SIDE = framed('wingSide')
const BENT = framed('bent')
const SEATED = framed('seated')
const HIP = framed('front', 22, 46, 76)
const ONE_DART = framed('front', 54, 58, 58)

const backLevel: Draw = (at) => [level(at(24, 112), at(96, 112))]
const backHem: Draw = (at) => [cloth(at, 'M27 112L93 112')]
const backHemUp: Draw = (at) => [
  cloth(at, 'M27 112C42 112 50 102 60 102C70 102 78 112 93 112'),
  arrow(at(60, 116), at(60, 105)),
]
const hipTaut: Draw = (at) => [taut(at(32, 103), at(88, 103))]
const bladeOpen: Draw = (at) => [gape(at(34, 44), at(86, 44), 12)]
const bladeShut: Draw = (at) => [slit(at(36, 44), at(84, 44))]
const armsForward = both((at) => [arrow(at(95, 40), at(98, 60))])
const sidesOpen = both((at) => [slit(at(86, 84), at(91, 106), 9)])
const sidesShut = both((at) => [slit(at(86, 84), at(91, 106))])
/** The side seam, with the plumb line it is judged by. */
const seamAgainstPlumb =
  (d: string, from = 61): Draw =>
  (at) => [plumb(at(from, 56), at(from, 107)), cloth(at, d)]
const SIDE_SEAM = ['sideSeam'] as const
const STRAIGHT = 'M61 56L61 112'
const capFolds: Draw = (at) => [rays(at(59, 29), at(56, 60), at(72, 62), at(84, 58))]
const liftDrag: Draw = (at) => [taut(at(86, 60), at(87, 88), { n: 2 })]
const wingDrag: Draw = (at) => [rays(at(59, 82), at(52, 110), at(40, 106), at(30, 98))]
const wingFolds: Draw = (at) => [slack(at(66, 70), at(46, 106), { n: 3 })]
const wingStands: Draw = (at) => [
  cloth(at, 'M25 13C52 13 84 14 112 18'),
  cloth(at, 'M112 18L92 56'),
  cloth(at, 'M92 56C80 62 68 72 58 84'),
]
const SLEEVE_PIECE = 'M30 104L22 60C34 52 40 26 60 26C80 26 86 52 98 60L90 104Z'

type Below = Extract<ComplaintId, `${'K' | 'W' | 'L' | 'D' | 'X'}${number}`>

export const TESTS_BELOW: Readonly<Record<Below, readonly Asked[]>> = {
  K1: [
    cut(
      BACK_TOP,
      (at) => [slit(at(60, 28), at(60, 58), 12)],
      (at) => [slit(at(60, 28), at(60, 58))],
      SEES.itGapesStandingStill,
    ),
    cut(
      BACK_TOP,
      drawn(armsForward, (at) => [slit(at(60, 28), at(60, 58), 12)]),
      drawn(armsForward, (at) => [slit(at(60, 28), at(60, 58))]),
      SEES.onlyWithTheArmsForward,
    ),
    eased(
      BACK_TOP,
      both((at) => [slit(at(90, 26), at(88, 46), 7)]),
      (at) => [taut(at(40, 44), at(80, 44))],
      SEES.unpickingTheSleeveFreesIt,
    ),
  ],
  K2: [
    looked(
      BACK_WAIST,
      SEES.theFoldsGoTheHemHangsLevel,
      drawn(
        both((at) => [wedge(at(60, 74), at(84, 74), 10)]),
        backLevel,
        backHem,
      ),
      drawn(
        both((at) => [wedge(at(60, 74), at(84, 74), 10)]),
        backLevel,
        backHemUp,
      ),
      ['hem'],
    ),
    looked(
      BACK_WAIST,
      SEES.tightBelowTheWaist,
      drawn(
        hipTaut,
        both((at) => [arrow(at(72, 80), at(72, 95))]),
      ),
      both((at) => [arrow(at(72, 80), at(72, 95))]),
    ),
    looked(
      SIDE_LOW,
      SEES.theyRunOnIntoTheFront,
      (at) => [slack(at(42, 74), at(79, 74), { n: 2 })],
      (at) => [slack(at(41, 74), at(58, 74), { n: 2 })],
    ),
  ],
  K3: [
    cut(BACK, bladeOpen, bladeShut, SEES.itOpensAtTheCentreNotAtTheArmhole),
    looked(BACK, SEES.tightBelowTheWaist, hipTaut, nothing),
    cut(BACK, (at) => [gape(at(12, 44), at(108, 44), 12)], bladeOpen, SEES.asWideAtTheArmhole),
  ],
  K4: [
    cut(
      BACK_TOP,
      both((at) => [slit(at(80, 21), at(76, 42), 8)]),
      both((at) => [slit(at(80, 21), at(76, 42))]),
    ),
    cut(BACK_TOP, bladeOpen, bladeShut),
  ],
  K5: [
    looked(
      BACK,
      SEES.theFoldsGoTheNeckIsEasy,
      (at) => [tuck(at(36, 54), at(84, 54), 6)],
      drawn(
        (at) => [tuck(at(36, 54), at(84, 54), 6)],
        both((at) => [rays(at(68, 22), at(80, 30), at(74, 36))]),
      ),
    ),
    looked(
      BACK_TOP,
      SEES.atTheTipOfTheShoulderDart,
      both((at) => [dart(at(81, 20.5), at(76, 40), 5), slack(at(70, 45), at(84, 45), { n: 2 })]),
      drawn(
        both((at) => [dart(at(81, 20.5), at(76, 40), 5)]),
        (at) => [slack(at(38, 52), at(82, 52), { n: 2 })],
      ),
    ),
  ],
  K6: [
    pinned(
      BACK_WAIST,
      both((at) => [tuck(at(72, 66), at(72, 96), 7)]),
      both((at) => [slack(at(64, 68), at(64, 92), { n: 1 })]),
    ),
    pinned(
      BACK_WAIST,
      (at) => [tuck(at(60, 66), at(60, 96), 8)],
      both((at) => [slack(at(74, 68), at(74, 92), { n: 2 })]),
      SEES.thatDoesItBetter,
    ),
  ],
  K7: [
    cut(
      BACK_NECK,
      (at) => [gape(at(42, 34), at(78, 34), 14)],
      (at) => [slit(at(44, 34), at(76, 34))],
      SEES.itOpensAtTheCentre,
    ),
  ],
  W1: [
    looked(
      FRONT_WAIST,
      SEES.theSameAllRound,
      (at) => [
        cloth(at, 'M34 70L86 70'),
        level(at(34, 84), at(86, 84)),
        ...[42, 60, 78].map((x) => arrow(at(x, 71), at(x, 82))),
      ],
      (at) => [
        cloth(at, 'M34 79C46 78 52 68 60 68C68 68 74 78 86 79'),
        level(at(34, 84), at(86, 84)),
        arrow(at(60, 70), at(60, 82)),
      ],
    ),
    cut(
      HIP,
      drawn(sidesOpen, (at) => [arrow(at(60, 74), at(60, 86))]),
      sidesShut,
      SEES.itLetsTheWaistDown,
    ),
    cut(
      FRONT,
      drawn(
        both((at) => [slit(at(86, 40), at(85, 58), 8)]),
        (at) => [arrow(at(60, 74), at(60, 86))],
      ),
      both((at) => [slit(at(86, 40), at(85, 58))]),
      SEES.itLetsTheWaistDown,
    ),
  ],
  W2: [
    pinned(
      FRONT_WAIST,
      (at) => [tuck(at(36, 66), at(84, 66), 7)],
      (at) => [slack(at(36, 76), at(84, 76), { n: 2 })],
      SEES.theFoldsGo,
    ),
    looked(
      FRONT,
      SEES.foldsAboveTheArmholeLineToo,
      (at) => [slack(at(38, 40), at(82, 40), { n: 2 }), slack(at(38, 70), at(82, 70), { n: 2 })],
      (at) => [slack(at(38, 70), at(82, 70), { n: 2 })],
    ),
  ],
  W3: [
    cut(
      HIP,
      both((at) => [slit(at(86, 68), at(86, 92), 9)]),
      both((at) => [slit(at(86, 68), at(86, 92))]),
      SEES.itSpreadsStandingAtEase,
    ),
    looked(
      SEATED,
      SEES.itBindsOnlyWhenSitting,
      (at) => [taut(at(39, 62), at(66, 62), { n: 3 })],
      nothing,
    ),
  ],
  W4: [
    pinned(
      FRONT_WAIST,
      both((at) => [tuck(at(73, 68), at(73, 92), 7), wedge(at(86, 80), at(88, 98), 8)]),
      (at) => [slack(at(60, 70), at(60, 90), { n: 3 })],
    ),
  ],
  W5: [
    looked(
      SIDE_LOW,
      SEES.onlyTheFrontIsLow,
      (at) => [
        level(at(40, 80), at(84, 80)),
        cloth(at, 'M42 80L60 80L81 91'),
        arrow(at(88, 80), at(88, 90)),
      ],
      (at) => [level(at(40, 80), at(84, 80)), cloth(at, 'M42 70L81 90')],
    ),
    looked(
      SIDE_LOW,
      SEES.theBackIsHigh,
      (at) => [
        level(at(40, 80), at(84, 80)),
        cloth(at, 'M41 69L60 80L80 80'),
        arrow(at(34, 80), at(34, 70)),
      ],
      (at) => [level(at(40, 80), at(84, 80)), cloth(at, 'M42 80L60 80L81 91')],
    ),
  ],
  W6: [
    looked(
      SIDE_LOW,
      SEES.onlyItsTopLeansForward,
      seamAgainstPlumb('M70 56C66 66 61 74 61 82L61 112', 61),
      seamAgainstPlumb('M61 56L72 112'),
      SIDE_SEAM,
    ),
    looked(
      SIDE_LOW,
      SEES.theBackWaistIsLifted,
      drawn(seamAgainstPlumb('M61 56L70 112'), (at) => [
        cloth(at, 'M41 70L80 80'),
        arrow(at(33, 82), at(33, 71)),
      ]),
      drawn(seamAgainstPlumb('M61 56L70 112'), (at) => [cloth(at, 'M42 80L80 80')]),
      SIDE_SEAM,
    ),
    looked(
      SIDE_LOW,
      SEES.plumbButTooFarBack,
      (at) => [
        plumb(at(61, 56), at(61, 107)),
        cloth(at, 'M52 56L52 112'),
        arrow(at(60, 90), at(53, 90)),
      ],
      seamAgainstPlumb('M61 56L72 112'),
      SIDE_SEAM,
    ),
  ],
  W7: [
    looked(
      SIDE_LOW,
      SEES.theBackIsLiftedOrStrained,
      drawn(seamAgainstPlumb('M61 56L50 112'), (at) => [rays(at(37, 48), at(54, 74), at(44, 78))]),
      seamAgainstPlumb('M61 56L50 112'),
      SIDE_SEAM,
    ),
    looked(
      SIDE_LOW,
      SEES.slackInFront,
      drawn(seamAgainstPlumb('M61 56L50 112'), (at) => [slack(at(68, 72), at(82, 70), { n: 2 })]),
      seamAgainstPlumb('M61 56L50 112'),
      SIDE_SEAM,
    ),
    looked(
      SIDE_LOW,
      SEES.plumbButTooFarForward,
      (at) => [
        plumb(at(61, 56), at(61, 107)),
        cloth(at, 'M70 56L70 112'),
        arrow(at(62, 90), at(69, 90)),
      ],
      seamAgainstPlumb('M61 56L50 112'),
      SIDE_SEAM,
    ),
  ],
  W8: [
    looked(
      SIDE_LOW,
      SEES.itBowsMostAtTheBust,
      drawn(seamAgainstPlumb('M61 56C73 60 72 72 61 80L61 112'), (at) => [
        arrow(at(62, 65), at(68, 65)),
      ]),
      seamAgainstPlumb(STRAIGHT),
      SIDE_SEAM,
    ),
    looked(
      SIDE_LOW,
      SEES.itBowsMostAtTheWaist,
      drawn(seamAgainstPlumb('M61 56L61 68C50 74 50 90 61 96L61 112'), (at) => [
        arrow(at(60, 82), at(54, 82)),
      ]),
      seamAgainstPlumb(STRAIGHT),
      SIDE_SEAM,
    ),
  ],
  W9: [
    cut(HIP, sidesOpen, drawn(sidesShut, hipTaut), SEES.itSpreads),
    looked(
      ONE_DART,
      SEES.itEndsAtTheTipOfADart,
      (at) => [
        fishEye(at(73, 62), at(74, 100), 6),
        rays(at(74, 101), at(64, 108), at(60, 101), at(88, 104)),
      ],
      (at) => [fishEye(at(73, 62), at(74, 96), 6), taut(at(58, 106), at(90, 106), { n: 2 })],
    ),
  ],
  W10: [
    cut(
      HIP,
      (at) => [gape(at(36, 94), at(84, 94), 15), arrow(at(60, 102), at(60, 114))],
      (at) => [slit(at(38, 94), at(82, 94))],
      SEES.itOpensAtTheCentreFront,
    ),
  ],
  W11: [
    looked(
      FRONT,
      SEES.theyLeanToOneSide,
      (at) => [
        ...[52, 80].flatMap((y) => [
          level(at(30, y), at(90, y)),
          cloth(at, `M33 ${y - 4}L87 ${y + 5}`),
        ]),
        cloth(at, 'M27 108L93 118'),
      ],
      (at) => [
        ...[52, 80].map((y) => level(at(33, y), at(87, y))),
        cloth(at, 'M27 106C40 114 48 106 60 110C72 114 82 117 93 114'),
      ],
      ['hem'],
    ),
    looked(
      framed('side'),
      SEES.theyTiltFromFrontToBack,
      (at) => [
        ...[64, 84].flatMap((y) => [
          level(at(38, y), at(82, y)),
          cloth(at, `M40 ${y - 6}L80 ${y + 6}`),
        ]),
      ],
      (at) => [...[64, 84].map((y) => level(at(40, y), at(81, y)))],
    ),
    looked(
      FRONT,
      SEES.onlyTheHemIsNotLevel,
      (at) => [
        ...[52, 80].map((y) => level(at(33, y), at(87, y))),
        cloth(at, 'M27 104C40 114 48 106 60 110C72 114 82 119 93 114'),
      ],
      (at) => [
        ...[52, 80].map((y) => cloth(at, `M33 ${y - 4}L87 ${y + 5}`)),
        cloth(at, 'M27 108L93 118'),
      ],
      ['hem'],
    ),
  ],
  W12: [
    looked(
      ONE_DART,
      SEES.theTipLiesBelowTheFullestPlace,
      (at) => [
        level(at(56, 94), at(92, 94)),
        fishEye(at(73, 62), at(74, 107), 7),
        point(at(74, 107)),
      ],
      (at) => [
        level(at(56, 100), at(92, 100)),
        fishEye(at(73, 62), at(74, 90), 7),
        point(at(74, 90)),
      ],
    ),
    looked(
      ONE_DART,
      SEES.itLiesFlatOrItStillBulges,
      (at) => [slit(at(86, 84), at(91, 106), 7), fishEye(at(73, 62), at(74, 98), 6)],
      (at) => [
        slit(at(86, 84), at(91, 106)),
        fishEye(at(73, 62), at(74, 98), 6),
        bubble(at(74, 103), 8),
      ],
    ),
  ],
  L1: [
    cut(
      CAP,
      (at) => [gape(at(54, 36), at(80, 34), 12), arrow(at(68, 38), at(68, 50))],
      (at) => [slit(at(56, 29), at(78, 33)), rays(at(59, 32), at(56, 60), at(74, 62))],
      SEES.itOpensTheLevelLineWasLifted,
    ),
    pinned(SLEEVE, (at) => [wedge(at(58, 28), at(24, 21), 10)], capFolds, SEES.aPinAtTheTipCuresIt),
  ],
  L2: [
    pinned(
      CAP,
      (at) => [tuck(at(56, 42), at(86, 46), 8)],
      (at) => [slack(at(60, 34), at(80, 36), { n: 1 })],
      SEES.itLiesOrTheRollStays,
    ),
    looked(
      CAP,
      SEES.gatheredAlongTheSeam,
      (at) => [34, 42, 50].map((y) => slack(at(58 - (y - 34) * 0.3, y), at(70, y + 3), { n: 1 })),
      (at) => [slack(at(60, 36), at(84, 42), { n: 2 })],
    ),
  ],
  L3: [
    cut(
      SLEEVE,
      (at) => [slit(at(58, 70), at(63, 104), 11)],
      (at) => [slit(at(58, 70), at(63, 104)), taut(at(62, 66), at(88, 64), { n: 2 })],
      SEES.itSpreads,
    ),
  ],
  L4: [
    looked(
      SLEEVE,
      SEES.turnedItsGrainHangs,
      (at) => [
        plumb(at(76, 40), at(76, 104)),
        grain(at(76, 42), at(76, 100)),
        arrow(at(62, 22), at(80, 27)),
      ],
      (at) => [grain(at(76, 42), at(76, 104))],
    ),
    looked(
      PAPER,
      SEES.theMarkLiesOffTheThread,
      (at) => [
        cloth(at, SLEEVE_PIECE),
        grain(at(52, 40), at(68, 98)),
        level(at(60, 34), at(60, 100)),
      ],
      (at) => [
        cloth(at, SLEEVE_PIECE),
        grain(at(60, 34), at(60, 98)),
        level(at(72, 40), at(72, 100)),
      ],
    ),
  ],
  L5: [
    eased(
      LIFTED,
      (at) => [tuck(at(78, 58), at(88, 58), 6, 1), arrow(at(98, 66), at(98, 56))],
      liftDrag,
      SEES.itIsBetter,
    ),
    eased(
      LIFTED,
      (at) => [slit(at(85, 38), at(88, 54), 8), slit(at(89, 53), at(100, 42), 7)],
      liftDrag,
      SEES.itIsBetter,
    ),
  ],
  L6: [looked(PAPER, SEES.moreThanTheClothTakes, twoTapes(22), twoTapes(6))],
  L7: [
    looked(PAPER, SEES.lessThanTheClothWants, twoTapes(0), twoTapes(12)),
    looked(
      JOINED,
      SEES.aHollowAtTheSeam,
      (at) => [
        cloth(at, 'M66 60C74 46 72 24 92 8M66 60C74 74 72 96 92 112'),
        wanted(at, 'M78 60C74 44 72 24 92 8M78 60C74 76 72 96 92 112'),
        point(at(66, 60)),
      ],
      (at) => [cloth(at, 'M78 60C74 44 72 24 92 8M78 60C74 76 72 96 92 112')],
      ['armhole'],
    ),
  ],
  L8: [
    looked(
      BENT,
      SEES.itPullsAtTheElbow,
      (at) => [rays(at(32, 90), at(48, 70), at(34, 62), at(60, 84))],
      nothing,
    ),
    looked(
      BENT,
      SEES.theHemRidesUpPastTheWrist,
      (at) => [
        cloth(at, 'M86 49L96 69'),
        arrow(at(110, 66), at(100, 73)),
        wanted(at, 'M98 42L108 62'),
      ],
      (at) => [cloth(at, 'M98 42L108 62')],
      ['hem'],
    ),
  ],
  L9: [
    looked(
      SLEEVE,
      SEES.turnedItHangsLevel,
      (at) => [
        arrow(at(62, 22), at(80, 27)),
        level(at(58, 112), at(98, 112)),
        cloth(at, 'M64 112L92 112'),
      ],
      (at) => [
        arrow(at(62, 22), at(80, 27)),
        level(at(58, 112), at(98, 112)),
        cloth(at, 'M64 116L92 105'),
      ],
      ['hem'],
    ),
    looked(
      PAPER,
      SEES.oneHalfIsShort,
      (at) => [
        cloth(at, SLEEVE_PIECE),
        level(at(60, 26), at(60, 104)),
        cloth(at, 'M60 26C74 26 84 46 98 50'),
        arrow(at(106, 60), at(106, 51)),
      ],
      (at) => [cloth(at, SLEEVE_PIECE), level(at(60, 26), at(60, 104))],
    ),
  ],
  D1: [
    looked(
      WING,
      SEES.itLiesDown,
      (at) => [
        wedge(at(106, 60), at(40, 19), 16),
        cloth(at, 'M25 13C50 19 82 36 107 60M107 60L86 90M86 90C76 83 65 80 58 84'),
      ],
      drawn(wingStands, (at) => [wedge(at(110, 20), at(40, 13), 11)]),
      ['overarm', 'edge', 'under'],
    ),
    looked(
      WING,
      SEES.inSoftClothAsWell,
      wingStands,
      (at) => [
        cloth(at, 'M25 13C50 19 82 36 107 60M107 60L86 90M86 90C76 83 65 80 58 84'),
        slack(at(96, 56), at(78, 78), { n: 2 }),
      ],
      ['overarm', 'edge', 'under'],
    ),
  ],
  D2: [
    cut(
      WING,
      (at) => [slit(at(36, 17), at(86, 41), 11)],
      (at) => [slit(at(36, 17), at(86, 41)), rays(at(54, 26), at(96, 70), at(86, 80))],
    ),
    eased(
      WING,
      (at) => [slit(at(42, 18), at(62, 26), 9)],
      (at) => [rays(at(54, 28), at(96, 70), at(86, 80))],
      SEES.openingAtTheBoneAloneFreesIt,
    ),
  ],
  D3: [
    eased(WING_LIFTED, (at) => [slit(at(40, 17.5), at(96, 18.5), 9)], wingDrag, SEES.itFreesTheArm),
    eased(
      WING_LIFTED,
      (at) => [tuck(at(62, 68), at(76, 56), 9, 1), arrow(at(84, 76), at(76, 66))],
      wingDrag,
      SEES.itFreesTheArm,
    ),
    eased(WING_LIFTED, (at) => [slit(at(110, 40), at(88, 40), 11)], wingDrag, SEES.itFreesTheArm),
  ],
  D4: [
    looked(
      WING_LIFTED,
      SEES.pinnedTheArmStillLifts,
      (at) => [tuck(at(66, 78), at(76, 62), 9, 1)],
      (at) => [tuck(at(66, 78), at(76, 62), 9, 1), ...wingDrag(at)],
    ),
    pinned(WING, (at) => [wedge(at(97, 76), at(66, 60), 16)], wingFolds, SEES.itLiesOrTheFoldsStay),
  ],
  D5: [
    looked(
      WING_SIDE,
      SEES.theSeamLiesOffTheTop,
      (at) => [
        cloth(at, 'M61 20C66 40 68 58 70 74'),
        point(at(61, 34)),
        arrow(at(62, 50), at(68, 50)),
      ],
      (at) => [cloth(at, 'M61 20L61 75'), point(at(61, 34))],
      ['overarm'],
    ),
    looked(
      WING_SIDE,
      SEES.theTwoEdgesDiffer,
      (at) => [tape(at(41, 84), at(58, 88)), tape(at(62, 88), at(92, 80))],
      (at) => [tape(at(40, 84), at(59, 88)), tape(at(63, 88), at(82, 84))],
    ),
  ],
  D6: [
    looked(
      WING,
      SEES.theUnderarmLiesLowerThanWanted,
      (at) => [
        cloth(at, 'M86 90C76 96 64 96 57 100'),
        tape(at(70, 32), at(70, 80)),
        point(at(70, 84)),
        arrow(at(78, 84), at(78, 93)),
      ],
      (at) => [
        cloth(at, 'M86 90C76 83 65 80 58 84'),
        tape(at(70, 34), at(70, 78)),
        point(at(70, 82)),
      ],
      ['under'],
    ),
    looked(
      WING,
      SEES.theDepthIsRightTheEdgeTooLong,
      (at) => [cloth(at, 'M107 60L84 102C76 92 66 82 58 84'), tape(at(114, 62), at(90, 106))],
      (at) => [cloth(at, 'M107 60L86 90C76 83 65 80 58 84'), tape(at(114, 64), at(92, 95))],
      ['edge', 'under'],
    ),
  ],
  D7: [
    cut(
      WING,
      (at) => [mouth(at(96, 75), at(76, 58), 14)],
      (at) => [slit(at(96, 75), at(76, 58)), taut(at(104, 64), at(88, 87), { n: 2 })],
    ),
  ],
  D8: [
    looked(
      WING,
      SEES.longerThanTheDraft,
      (at) => [
        wanted(at, 'M107 60L86 90'),
        cloth(at, 'M107 60C108 76 100 90 86 90'),
        arrow(at(98, 77), at(105, 83)),
      ],
      (at) => [wanted(at, 'M107 60L86 90')],
      ['edge'],
    ),
    looked(
      WING,
      SEES.asLongAsDrawnYetWavy,
      (at) => [waves(at(107, 60), at(86, 90), 4, 5)],
      (at) => [cloth(at, 'M107 60L86 90')],
      ['edge'],
    ),
  ],
  X1: [
    looked(
      PAPER,
      SEES.offTheSelvedge,
      (at) => [
        cloth(at, 'M20 8L20 112'),
        ticks(at(20, 12), at(20, 108), 13, 7, 'dart'),
        grain(at(54, 100), at(76, 24)),
      ],
      (at) => [
        cloth(at, 'M20 8L20 112'),
        ticks(at(20, 12), at(20, 108), 13, 7, 'dart'),
        grain(at(64, 100), at(64, 24)),
      ],
    ),
    looked(
      PAPER,
      SEES.itsCrossThreadIsNotSquare,
      (at) => [
        cloth(at, 'M20 8L20 112'),
        grain(at(36, 100), at(36, 24)),
        ...[40, 60, 80].map((y) => level(at(22, y), at(104, y - 18))),
      ],
      (at) => [
        cloth(at, 'M20 8L20 112'),
        grain(at(36, 100), at(36, 24)),
        ...[40, 60, 80].map((y) => level(at(22, y), at(104, y))),
      ],
    ),
  ],
  X2: [
    looked(PAPER, SEES.squareAndMuslinAsDrawn, square(0), square(-10)),
    looked(PAPER, SEES.theSquareIsTooSmall, square(10), square(0)),
    looked(
      FRONT,
      SEES.smallerThanTheDraft,
      (at) => [
        tape(at(34, 54), at(86, 54)),
        wanted(at, 'M97 50C93 62 91 72 91 80C92 92 97 102 99 112'),
        arrow(at(95, 66), at(89, 66)),
      ],
      (at) => [tape(at(32, 54), at(88, 54))],
    ),
  ],
  X3: [
    looked(PAPER, SEES.squareAndMuslinAsDrawn, square(0), square(10)),
    looked(PAPER, SEES.theSquareIsTooLarge, square(-10), square(0)),
    looked(
      FRONT,
      SEES.largerThanTheDraft,
      (at) => [
        tape(at(32, 54), at(88, 54)),
        wanted(at, 'M85 50C81 62 79 72 79 80C80 92 85 102 87 112'),
        arrow(at(80, 66), at(86, 66)),
      ],
      (at) => [tape(at(32, 54), at(88, 54))],
    ),
  ],
  X4: [
    looked(PAPER, SEES.bothMeasureAlike, twoTapes(0), twoTapes(14)),
    looked(
      FRONT,
      SEES.theyDifferAlongTheSeams,
      both((at) => [
        wanted(at, 'M97 50C93 62 91 72 91 80C92 92 97 102 99 112'),
        tape(at(80, 54), at(77, 80)),
      ]),
      both((at) => [tape(at(80, 54), at(77, 80))]),
    ),
  ],
}
