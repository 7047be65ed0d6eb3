/**
 * The tests of neck, shoulder, bust and armhole, each drawn as it may come out. In the order of the
 * tests of the complaint. Longer than other files: one entry each.
 */
import type { ComplaintId } from '../../../fitting/complaints/complaint.ts'
import {
  cut,
  drawn,
  EDGE_LONGER,
  eased,
  looked,
  nothing,
  pinned,
  type Asked,
  type Draw,
} from './asked.ts'
import {
  arrow,
  dart,
  dot,
  fishEye,
  gape,
  bubble,
  level,
  loop,
  mouth,
  plumb,
  point,
  rays,
  slack,
  slit,
  tape,
  taut,
  ticks,
  tip,
  tuck,
  wedge,
} from './marks.ts'
import {
  ARMHOLE,
  BACK,
  BACK_ARMHOLE,
  BACK_NECK,
  BACK_TOP,
  BUST,
  CAP,
  FRONT,
  FRONT_NECK,
  FRONT_TOP,
  FRONT_WAIST,
  ONE_BUST,
  SHOULDER,
  SIDE_MIDDLE,
  SIDE_TOP,
} from './frames.ts'
import { SEES_WORDS as SEES } from './sees.words.ts'
import { both, cloth, framed, wanted } from './sketch.ts'

const neckLoops = both((at) => [loop(at(61, 30), at(70, 21), at(62, 22))])
const neckStrain = both((at) => [rays(at(66, 28), at(74, 38), at(66, 42))])
const chestTuck: Draw = (at) => [tuck(at(38, 40), at(82, 40), 5)]
const napeFold: Draw = (at) => [slack(at(47, 30), at(73, 30), { n: 2 })]
const slopeFolds = both((at) => [slack(at(71, 26), at(86, 48), { n: 2 })])
const tipsPinned = both((at) => [wedge(at(91, 25), at(74, 18.5), 9)])
const tipsOpen = both((at) => [mouth(at(90, 24), at(73, 17.5), 9)])
const tipsShut = both((at) => [slit(at(90, 23.5), at(73, 17.5))])
const overhangs = both((at) => [tuck(at(88, 24), at(83, 40), 6, 1)])
const oneTipPinned: Draw = (at) => [wedge(at(91, 25), at(75, 19), 10)]
const oneTipOpen: Draw = (at) => [mouth(at(90, 24), at(74, 18), 10)]
const hemLevel: Draw = (at) => [level(at(24, 112), at(96, 112))]
const hemUp: Draw = (at) => [
  cloth(at, 'M27 112C42 112 50 102 60 102C70 102 78 112 93 112'),
  arrow(at(60, 116), at(60, 105)),
]
const hemDown: Draw = (at) => [cloth(at, 'M27 112L93 112')]
const upperRoll: Draw = (at) => [slack(at(40, 35), at(80, 35), { n: 2 })]

/** Where the seam of the shoulder lies, seen from the side; the joint is the dot. */
const seamOn =
  (neck: number, end: number): Draw =>
  (at) => [dot(at(61, 29)), cloth(at, `M${neck} 21L${end} 32`)]
const PAST_BONE: Asked = looked(
  SHOULDER,
  SEES.theSeamLiesPastTheJoint,
  (at) => [
    cloth(at, 'M91 24L98 27C92 34 88 43 91 50'),
    dot(at(89, 23.3)),
    arrow(at(90, 17), at(98, 21)),
  ],
  (at) => [cloth(at, 'M91 24C87 32 85 42 91 50'), dot(at(90, 23.5))],
  ['armhole'],
)
const NECK_END_OFF: Asked = looked(
  SHOULDER,
  SEES.itLiesOffTheNeck,
  (at) => [
    dot(at(72, 17)),
    cloth(at, 'M79 19.5C78 28 70 36 60 36'),
    cloth(at, 'M79 19.5L91 24'),
    arrow(at(73, 11), at(79, 14)),
  ],
  (at) => [dot(at(72, 17)), cloth(at, 'M72 17C72 26 66 30 60 30'), cloth(at, 'M72 17L91 24')],
  ['neck', 'shoulder'],
)
/** Both side seams opened, a plumb line between; each edge draws back by so much. */
const sidesOpen =
  (front: number, back: number): Draw =>
  (at) => [
    cloth(at, `M61 56C${61 + front} 64 ${61 + front} 74 61 84`),
    cloth(at, `M61 56C${61 - back} 64 ${61 - back} 74 61 84L61 112`),
    plumb(at(61, 56), at(61, 92)),
    ...(front > 4 ? [arrow(at(64, 70), at(63 + front * 0.9, 70))] : []),
    ...(back > 4 ? [arrow(at(58, 70), at(59 - back * 0.9, 70))] : []),
  ]
/** The dart of one bust against the mark of its tip. */
const DART_PAST: Draw = (at) => [
  dart(at(88, 68), at(76, 66), 7),
  point(at(72, 54.5)),
  arrow(at(68, 66), at(68, 57)),
]
const DART_AT: Draw = (at) => [dart(at(88, 62), at(79, 58), 7), point(at(72, 54.5))]
const bustSidesOpen = both((at) => [slit(at(89, 52), at(87, 68), 7)])
const armholeStrain: Draw = (at) => [rays(at(89, 48), at(78, 58), at(76, 48), at(80, 38))]

type Above = Extract<ComplaintId, `${'N' | 'SH' | 'B' | 'A'}${number}`>

export const TESTS_ABOVE: Readonly<Record<Above, readonly Asked[]>> = {
  N1: [
    pinned(
      FRONT_NECK,
      both((at) => [wedge(at(67, 27), at(72, 50), 9)]),
      neckLoops,
    ),
    pinned(FRONT_TOP, chestTuck, neckLoops),
    EDGE_LONGER,
    NECK_END_OFF,
  ],
  N2: [
    eased(
      FRONT_NECK,
      both((at) => [ticks(at(62, 30), at(70, 24), 3)]),
      neckStrain,
    ),
    eased(
      FRONT_NECK,
      drawn(
        both((at) => [ticks(at(62, 30), at(70, 24), 3), ticks(at(71.5, 18), at(62, 22), 3)]),
        (at) => [cloth(at, 'M48 17C50 21 55 22 60 22C65 22 70 21 72 17')],
      ),
      neckStrain,
    ),
    looked(SIDE_TOP, SEES.itLiesBehind, seamOn(54, 50), seamOn(61, 61), ['shoulder']),
  ],
  N3: [
    pinned(
      BACK_NECK,
      both((at) => [wedge(at(66, 21), at(69, 40), 8)]),
      (at) => [loop(at(50, 19), at(70, 19), at(60, 15))],
    ),
    pinned(
      BACK_NECK,
      (at) => [wedge(at(60, 22), at(60, 46), 9)],
      (at) => [loop(at(50, 19), at(70, 19), at(60, 15))],
    ),
    looked(
      BACK,
      SEES.theHemLiftsOrTheBladesStrain,
      drawn(
        (at) => [wedge(at(60, 22), at(60, 42), 6), taut(at(40, 46), at(80, 46), { n: 2 })],
        hemLevel,
        hemUp,
      ),
      drawn((at) => [wedge(at(60, 22), at(60, 42), 6)], hemLevel, hemDown),
      ['hem'],
    ),
    EDGE_LONGER,
  ],
  N4: [
    pinned(BACK_TOP, tipsOpen, napeFold, SEES.theFoldGoes),
    pinned(
      BACK_NECK,
      both((at) => [ticks(at(61, 22), at(70, 20), 3)]),
      napeFold,
      SEES.theFoldGoes,
    ),
    pinned(BACK_TOP, (at) => [tuck(at(38, 46), at(82, 46), 6)], napeFold, SEES.theFoldGoes),
  ],
  N5: [
    looked(
      SHOULDER,
      SEES.theEdgeLiesFartherOut,
      (at) => [
        point(at(72, 17)),
        tape(at(72, 12.5), at(81, 15.5)),
        cloth(at, 'M81 20C80 30 70 36 60 36'),
        cloth(at, 'M81 20L91 24'),
      ],
      (at) => [point(at(72, 17)), cloth(at, 'M72 17C72 26 66 30 60 30'), cloth(at, 'M72 17L91 24')],
      ['neck', 'shoulder'],
    ),
    looked(
      FRONT_TOP,
      SEES.itSlidesInMoving,
      both((at) => [arrow(at(78, 14), at(92, 19)), wanted(at, 'M72 17C72 26 66 30 60 30')]),
      both((at) => [wanted(at, 'M72 17C72 26 66 30 60 30'), cloth(at, 'M79 20C78 30 70 35 60 35')]),
      ['neck'],
    ),
  ],
  N6: [
    pinned(
      SHOULDER,
      oneTipOpen,
      (at) => [loop(at(72, 10), at(88, 20), at(81, 14))],
      SEES.theNeckSettles,
    ),
    pinned(
      SHOULDER,
      (at) => [tuck(at(87, 24), at(84, 40), 9, 1)],
      (at) => [loop(at(72, 10), at(90, 23), at(82, 15.5))],
      SEES.theNeckSettles,
    ),
  ],
  N7: [
    eased(
      framed('front', 24, 12, 72),
      (at) => [gape(at(36, 63), at(84, 63), 12)],
      neckStrain,
      SEES.theNeckIsFree,
    ),
    looked(BACK_TOP, SEES.aLevelRoll, upperRoll, nothing),
    looked(
      BACK_TOP,
      SEES.onlyAlongTheSeam,
      both((at) => [slack(at(73, 23), at(88, 29), { n: 1 })]),
      drawn(
        both((at) => [slack(at(73, 23), at(88, 29), { n: 1 })]),
        (at) => [slack(at(42, 44), at(78, 44), { n: 2 })],
      ),
    ),
  ],
  N8: [
    looked(
      BACK,
      SEES.itOpensAndTheHemDropsLevel,
      drawn((at) => [gape(at(34, 44), at(86, 44), 12)], hemLevel, hemDown),
      drawn((at) => [slit(at(36, 44), at(84, 44))], hemLevel, hemUp),
      ['hem'],
    ),
    pinned(FRONT_TOP, chestTuck, (at) => [slack(at(44, 52), at(76, 52), { n: 2 })]),
  ],
  SH1: [
    pinned(FRONT_TOP, tipsPinned, slopeFolds, SEES.frontAndBackFoldsGo),
    pinned(FRONT_TOP, overhangs, slopeFolds, SEES.theFoldsGo),
  ],
  SH2: [
    looked(
      FRONT_TOP,
      SEES.theSeamGapsTheFoldsDrop,
      tipsOpen,
      drawn(
        tipsShut,
        both((at) => [rays(at(88, 26), at(68, 36), at(68, 48))]),
      ),
    ),
    looked(
      ARMHOLE,
      SEES.noGapTheArmholeCutsIn,
      (at) => [
        slit(at(90, 23.5), at(74, 18)),
        rays(at(88, 34), at(74, 32), at(76, 42), at(80, 50)),
      ],
      oneTipOpen,
    ),
    cut(
      FRONT_TOP,
      both((at) => [slit(at(81, 22), at(82, 44), 8)]),
      both((at) => [slit(at(81, 22), at(82, 44)), rays(at(88, 26), at(68, 36), at(68, 48))]),
    ),
  ],
  SH3: [
    PAST_BONE,
    NECK_END_OFF,
    looked(
      ARMHOLE,
      SEES.allTheHeightOfTheArmhole,
      (at) => [slack(at(79, 26), at(80, 58), { n: 2, gap: 9 })],
      (at) => [slack(at(82, 26), at(81, 38), { n: 2, gap: 9 })],
    ),
  ],
  SH4: [
    cut(
      SHOULDER,
      (at) => [slit(at(90, 25), at(86, 40), 7)],
      (at) => [slit(at(90, 25), at(86, 40))],
      SEES.theEdgesSpreadAtTheTop,
    ),
    cut(
      ARMHOLE,
      (at) => [slit(at(86, 34), at(90, 50), 9)],
      (at) => [slit(at(90, 25), at(86, 38), 7)],
      SEES.theySpreadLowerDown,
    ),
  ],
  SH5: [
    looked(SIDE_TOP, SEES.onlyTheTipLiesBehind, seamOn(61, 51), seamOn(54, 50), ['shoulder']),
    looked(SIDE_TOP, SEES.theWholeSeamLiesBehind, seamOn(54, 50), seamOn(61, 51), ['shoulder']),
  ],
  SH6: [
    looked(SIDE_TOP, SEES.itLiesBeforeTheJoint, seamOn(67, 71), seamOn(61, 61), ['shoulder']),
    looked(BACK_TOP, SEES.aLevelFold, upperRoll, nothing),
  ],
  SH7: [
    looked(
      framed('joined'),
      SEES.aPointOrAHollow,
      (at) => [
        cloth(at, 'M90 60C76 50 72 24 92 8M90 60C76 70 72 96 92 112'),
        wanted(at, 'M78 60C70 44 72 24 92 8M78 60C70 76 72 96 92 112'),
        point(at(90, 60)),
      ],
      (at) => [cloth(at, 'M78 60C74 44 72 24 92 8M78 60C74 76 72 96 92 112')],
      ['armhole'],
    ),
  ],
  SH8: [
    looked(
      FRONT_TOP,
      SEES.theSameSideOfTheBody,
      (at) => [slack(at(72, 28), at(86, 48)), wanted(at, 'M60 30L60 84')],
      (at) => [slack(at(48, 28), at(34, 48)), wanted(at, 'M60 30L60 84')],
    ),
    looked(
      FRONT_TOP,
      SEES.theyGoOverWithTheGarment,
      (at) => [
        slack(at(48, 28), at(34, 48)),
        arrow(at(78, 14), at(42, 14)),
        wanted(at, 'M60 30L60 84'),
      ],
      (at) => [slack(at(72, 28), at(86, 48)), wanted(at, 'M60 30L60 84')],
    ),
  ],
  B1: [
    looked(SIDE_MIDDLE, SEES.onlyTheFrontEdgeDrawsBack, sidesOpen(12, 0), sidesOpen(9, 9), [
      'sideSeam',
    ]),
    looked(SIDE_MIDDLE, SEES.bothDrawBackAlike, sidesOpen(10, 10), sidesOpen(0, 12), ['sideSeam']),
    looked(SIDE_MIDDLE, SEES.onlyTheBackEdgeDrawsBack, sidesOpen(0, 12), sidesOpen(0, 0), [
      'sideSeam',
    ]),
    looked(ONE_BUST, SEES.itAimsPastTheMark, DART_PAST, DART_AT),
  ],
  B2: [
    cut(
      FRONT,
      (at) => [gape(at(36, 66), at(84, 66), 14), arrow(at(60, 76), at(60, 86))],
      (at) => [slit(at(38, 66), at(82, 66))],
      SEES.itOpensAtTheCentreNotAtTheSide,
    ),
    cut(
      BUST,
      (at) => [gape(at(36, 66), at(84, 66), 12), slit(at(60, 48), at(60, 62), 9)],
      (at) => [gape(at(36, 66), at(84, 66), 12)],
      SEES.itOpensUprightAsWell,
    ),
  ],
  B3: [
    pinned(
      BUST,
      both((at) => [tuck(at(73, 42), at(73, 80), 7)]),
      both((at) => [slack(at(80, 48), at(82, 68), { n: 1 })]),
      SEES.theFoldsGoTheShouldersStayRight,
    ),
    looked(
      BACK,
      SEES.theSameSlackAtTheBack,
      both((at) => [slack(at(74, 40), at(74, 66))]),
      nothing,
    ),
    looked(ONE_BUST, SEES.itAimsAboveOrBelow, DART_PAST, DART_AT),
  ],
  B4: [
    looked(
      ONE_BUST,
      SEES.itMeetsTheMarkTheTipTooNear,
      (at) => [dart(at(88, 62), at(74, 55.5), 7), point(at(72, 54.5))],
      (at) => [dart(at(88, 68), at(76, 66), 7), point(at(72, 54.5))],
    ),
    looked(ONE_BUST, SEES.itAimsPastAboveOrBelow, DART_PAST, DART_AT),
  ],
  B5: [
    looked(
      FRONT_TOP,
      SEES.anotherLengthThanTheDraft,
      (at) => [
        tape(at(72, 19), at(72, 52)),
        point(at(72, 54)),
        tip(at(72, 66)),
        arrow(at(66, 55), at(66, 65)),
      ],
      (at) => [tape(at(72, 19), at(72, 58)), point(at(72, 61))],
    ),
    looked(
      ARMHOLE,
      SEES.theArmholeIsOffByAsMuch,
      (at) => [
        wanted(at, 'M91 24C87 32 85 42 91 50'),
        cloth(at, 'M91 24C83 34 80 52 89 60'),
        arrow(at(96, 50), at(96, 59)),
        dart(at(87, 62), at(76, 60), 7),
      ],
      (at) => [cloth(at, 'M91 24C87 32 85 42 91 50'), dart(at(87, 62), at(76, 60), 7)],
      ['armhole'],
    ),
  ],
  B6: [
    looked(
      FRONT_WAIST,
      SEES.anotherWidthThanTheDraft,
      (at) => [
        tape(at(48, 56), at(72, 56)),
        ...both((to) => [fishEye(to(81, 64), to(81, 104), 6)])(at),
        arrow(at(81, 60), at(75, 58)),
      ],
      (at) => [
        tape(at(48, 56), at(72, 56)),
        ...both((to) => [fishEye(to(72, 63), to(73, 104), 6)])(at),
      ],
    ),
  ],
  B7: [
    looked(
      ONE_BUST,
      SEES.widerThanThat,
      (at) => [dart(at(87, 66), at(74, 56), 34), arrow(at(93, 58), at(93, 74))],
      (at) => [dart(at(87, 66), at(74, 56), 10), arrow(at(93, 63), at(93, 69))],
    ),
    looked(
      ONE_BUST,
      SEES.itLiesWell,
      (at) => [dart(at(88, 66), at(74, 56), 8)],
      (at) => [dart(at(88, 66), at(76, 58), 8), bubble(at(72, 54), 10)],
    ),
  ],
  B8: [
    pinned(
      ARMHOLE,
      (at) => [wedge(at(87.5, 42), at(72, 55), 9), plumb(at(88, 53), at(88, 60))],
      (at) => [loop(at(91, 50), at(87, 30), at(92, 39))],
      SEES.itLiesCloseTheSideStaysPlumb,
    ),
    pinned(
      ARMHOLE,
      oneTipPinned,
      (at) => [loop(at(91, 50), at(87, 30), at(92, 39))],
      SEES.thatCuresItBetter,
    ),
    pinned(
      ARMHOLE,
      (at) => [tuck(at(78, 57), at(89, 57), 9, 1), arrow(at(97, 62), at(97, 51))],
      (at) => [loop(at(91, 50), at(87, 30), at(92, 39))],
      SEES.raisingTheSideCuresIt,
    ),
    EDGE_LONGER,
  ],
  B9: [
    pinned(
      FRONT_TOP,
      both((at) => [wedge(at(60, 40), at(85, 40), 9)]),
      (at) => [slack(at(44, 50), at(76, 50), { n: 2 })],
      SEES.allFallsFlat,
    ),
    looked(
      FRONT_TOP,
      SEES.itMustRunAcrossTheArmhole,
      (at) => [tuck(at(34, 40), at(86, 40), 6)],
      both((at) => [wedge(at(60, 40), at(85, 40), 9)]),
    ),
  ],
  B10: [
    looked(
      FRONT_TOP,
      SEES.itEndsAboveTheBust,
      both((at) => [wedge(at(81, 21), at(79, 46), 8)]),
      both((at) => [tuck(at(81, 22), at(78, 70), 5)]),
    ),
    PAST_BONE,
  ],
  B11: [
    cut(
      FRONT_TOP,
      both((at) => [slit(at(81, 22), at(82, 44), 8)]),
      both((at) => [slit(at(81, 22), at(82, 44))]),
    ),
    eased(FRONT_TOP, tipsOpen, (at) => [taut(at(38, 42), at(82, 42), { n: 3 })]),
    eased(FRONT_TOP, bustSidesOpen, (at) => [taut(at(38, 42), at(82, 42), { n: 3 })]),
  ],
  B12: [
    looked(
      BUST,
      SEES.theCentreLinesDoNotMeet,
      (at) => [
        level(at(54, 34), at(54, 98)),
        level(at(66, 34), at(66, 98)),
        arrow(at(59, 54), at(55, 54)),
        arrow(at(61, 54), at(65, 54)),
      ],
      (at) => [level(at(60, 34), at(60, 98))],
    ),
    looked(
      BUST,
      SEES.theyMeetNoButtonAtTheBust,
      (at) => [gape(at(60, 44), at(60, 66), 12), dot(at(60, 40)), dot(at(60, 70)), dot(at(60, 92))],
      (at) => [dot(at(60, 38)), dot(at(60, 55)), dot(at(60, 72)), dot(at(60, 90))],
    ),
  ],
  B13: [
    pinned(
      FRONT_WAIST,
      both((at) => [tuck(at(73, 64), at(73, 84), 8)]),
      both((at) => [slack(at(80, 66), at(79, 82), { n: 1 })]),
      SEES.theSlackGoes,
    ),
  ],
  B14: [
    pinned(
      FRONT,
      both((at) => [wedge(at(73, 18.5), at(90, 24), 7), arrow(at(70, 14), at(70, 4))]),
      (at) => [slack(at(40, 68), at(80, 68), { n: 2 })],
      SEES.liftingCuresIt,
    ),
    pinned(
      FRONT,
      (at) => [tuck(at(37, 77), at(83, 77), 5)],
      (at) => [slack(at(40, 66), at(80, 66), { n: 2 })],
      SEES.onlyThatCuresIt,
    ),
    looked(ONE_BUST, SEES.itAimsBelow, DART_PAST, DART_AT),
  ],
  B15: [
    eased(
      FRONT_TOP,
      both((at) => [mouth(at(73, 18), at(90, 24), 9)]),
      both((at) => [taut(at(73, 28), at(73, 50), { n: 2 })]),
    ),
    eased(
      FRONT_TOP,
      tipsOpen,
      both((at) => [taut(at(73, 28), at(73, 50), { n: 2 })]),
    ),
  ],
  A1: [
    eased(ARMHOLE, (at) => [ticks(at(87.5, 44), at(90, 50), 3, 9)], armholeStrain),
    eased(ARMHOLE, (at) => [ticks(at(88, 31), at(86.5, 40), 3, 9)], armholeStrain),
    eased(ARMHOLE, (at) => [slit(at(80, 22), at(80, 44), 8)], armholeStrain),
  ],
  A2: [
    pinned(
      ARMHOLE,
      (at) => [tuck(at(78, 57), at(89, 57), 9, 1), arrow(at(97, 62), at(97, 51))],
      (at) => [slack(at(70, 44), at(84, 52), { n: 2 })],
    ),
    pinned(ARMHOLE, oneTipPinned, (at) => [slack(at(70, 46), at(85, 58), { n: 2 })]),
    pinned(
      ARMHOLE,
      (at) => [wedge(at(89, 52), at(87, 64), 12)],
      (at) => [slack(at(68, 46), at(82, 56), { n: 2 })],
    ),
  ],
  A3: [
    pinned(
      BACK_ARMHOLE,
      (at) => [wedge(at(87, 38), at(72, 45), 9)],
      (at) => [loop(at(91, 50), at(88, 28), at(93, 38))],
    ),
  ],
  A4: [
    looked(
      BACK_TOP,
      SEES.slackEvenSo,
      both((at) => [arrow(at(95, 40), at(98, 60)), slack(at(81, 32), at(82, 54), { n: 2 })]),
      both((at) => [arrow(at(95, 40), at(98, 60))]),
    ),
    PAST_BONE,
    looked(
      BACK_TOP,
      SEES.theFoldVanishes,
      both((at) => [arrow(at(95, 40), at(98, 60))]),
      both((at) => [arrow(at(95, 40), at(98, 60)), slack(at(81, 32), at(82, 54), { n: 2 })]),
    ),
  ],
  A5: [
    looked(
      ARMHOLE,
      SEES.clothLiesBeyondTheCrease,
      (at) => [
        level(at(86, 26), at(80, 44)),
        level(at(80, 44), at(88, 52)),
        slack(at(88, 34), at(84, 46), { n: 1 }),
      ],
      (at) => [level(at(90, 26), at(86.5, 40)), level(at(86.5, 40), at(90, 50))],
    ),
    looked(
      CAP,
      SEES.inTheSleeve,
      (at) => [slack(at(66, 40), at(56, 62), { n: 2 })],
      (at) => [slack(at(46, 38), at(40, 62), { n: 2 })],
    ),
  ],
}
