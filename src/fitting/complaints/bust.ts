/**
 * Complaints at the bust and on the front above the waist.
 * A table, one entry a complaint: longer than other files for that reason.
 */
import type { ComplaintBody, Edit, Remedy, Target } from './complaint.ts'
import {
  causes,
  edit,
  hinged,
  job,
  letOut,
  making,
  place,
  see,
  takeIn,
  tests,
  turned,
} from './work.ts'

const fuller: readonly Edit[] = [
  edit('FBA', 'front.bustDart', 'wider', { angle: { kind: 'bust' } }),
]
const smaller: readonly Edit[] = [
  edit('SBA', 'front.bustDart', 'narrower', { angle: { kind: 'bust' } }),
]
const sides = (way: 'in' | 'out'): readonly Edit[] => [
  edit('EDGE', 'front.side', way),
  edit('EDGE', 'back.side', way),
]
const centreWedge = (op: 'WEDGE-' | 'WEDGE+'): readonly Edit[] => [
  edit(op, 'front.centre', op === 'WEDGE-' ? 'in' : 'out', { angle: hinged('chestWidth') }),
]
/** Edge at the shoulder's neck end lifted or let down. */
const neckEnd = (way: 'up' | 'down'): readonly Edit[] => [
  edit('MOVE', 'front.shoulder', way, { point: 'sideNeck' }),
]
const SIDE_FOR_GAPE =
  'A gape at the armhole is not taken in at the side seam: that tightens the bust and leaves the gape. Pin a flat wedge at the armhole, nothing at the bust tip.'

const armholeTuck: Remedy = takeIn(
  'across',
  15,
  [
    edit('ROT', 'front.armhole', 'in', {
      angle: turned('apexToArmhole', 'front.bustDart', 'apexToSide'),
    }),
  ],
  { never: { places: ['side', 'seam', 'hem', 'waist', 'bust', 'allRound'], why: SIDE_FOR_GAPE } },
)
const dartTip = (target: Target): readonly Edit[] => [
  edit('DARTLEN', target, 'in', { point: 'tip' }),
]

export const BUST: readonly ComplaintBody[] = [
  {
    id: 'B1',
    said: ['tight bust', 'drag lines to the bust', 'flattened', 'too tight across the bust'],
    where: 'bust line',
    sign: 'Level taut lines between the bust tips or from the side to them; closings strain, the side seam is drawn forward.',
    causes: causes(
      ['too little width in the front alone', letOut('onePiece', 20, fuller)],
      ['too little width all round', letOut('across', 13, sides('out'))],
      ['back too narrow, pulling', see('K1', 1)],
      ['bust tip drafted in another place', see('B5', 1)],
    ),
    tests: tests(
      [
        'Open both side seams from underarm to waist, with a plumb line at the side. Does only the front edge draw back?',
        [1],
      ],
      ['Do front and back edge draw back alike?', [2]],
      ['Does only the back edge draw back?', [3]],
      ['Do the edges stay shut, and the dart aims past the fullest place?', [4]],
    ),
    usual: [6, 25],
    cap: 20,
    trueAfter: [
      'waist',
      'side seams equal with the dart folded',
      'step at the centre front',
      'armhole',
    ],
    doNot:
      'Do not take a whole size larger: shoulder and neck grow too. Do not let out the side for a front that is too narrow: the armhole gapes then.',
    source: ['R8', 'R13', 'R20', 'R24', 'PUBLIC'],
    evidence: 'partly seen',
  },
  {
    id: 'B2',
    said: ['front hem lifts', 'waist tilts up in front', 'pulls from side waist to the bust'],
    where: 'under the bust, front hem',
    sign: 'Slanting strain from the bust tip down to the side waist; waist line and hem rise at the centre front.',
    causes: causes(
      [
        'front too short over the bust',
        letOut('length', 20, [
          edit('DROP', 'front.centre', 'down'),
          edit('DROP', 'front.bustDart', 'wider'),
        ]),
      ],
      ['bust tight', see('B1', 1)],
      ['fuller below the waist', see('W10', 1)],
    ),
    tests: tests(
      [
        'Cut level under the bust at the centre front. Does it open at the centre and not at the side?',
        [1],
      ],
      ['Does it open upright as well?', [2]],
    ),
    usual: [6, 25],
    cap: 20,
    trueAfter: ['side seams equal with the dart folded', 'waist seam', 'hem'],
    doNot:
      'Do not lengthen only the hem at the centre: the dart stays too small. Do not drop the back.',
    source: ['R12', 'R21', 'R24', 'PUBLIC'],
    evidence: 'partly seen',
  },
  {
    id: 'B3',
    said: ['baggy at the bust', 'collapses in front', 'empty over the bust', 'folds over the bust'],
    where: 'bust',
    sign: 'Loose folds, upright or curved, at the bust tip; the end of the dart stands empty.',
    causes: causes(
      [
        'front drafted for a fuller bust',
        takeIn('onePiece', 15, smaller, {
          at: [{ places: ['side', 'seam'], work: job('in', 'across', 15, sides('in')) }],
        }),
      ],
      ['too wide all round', takeIn('across', 15, sides('in'))],
      ['bust tip drafted at another height', see('B5', 1)],
    ),
    tests: tests(
      [
        'Pin an upright tuck through the bust tip to the waist. Do the folds go, with the shoulders right?',
        [1],
      ],
      ['Is there the same slack at the back?', [2]],
      ['Does the dart aim above or below the fullest place?', [3]],
    ),
    usual: [5, 20],
    cap: 15,
    trueAfter: ['waist', 'side seams equal with the dart folded', 'centre front', 'armhole'],
    doNot: 'Do not leave a dart narrower than 10 mm: turn it into ease.',
    source: ['R2', 'R13', 'CP'],
    evidence: 'heading only',
  },
  {
    id: 'B4',
    said: ['pointed dart', 'the dart runs over the bust'],
    where: 'dart tips',
    sign: 'The tip lies at or past the fullest place and pokes.',
    causes: causes(
      [
        'dart too long',
        place('asRead', 20, dartTip('front.waistDart'), {
          at: [{ places: ['side'], work: job('place', 'asRead', 20, dartTip('front.bustDart')) }],
        }),
      ],
      ['bust tip farther off than drafted', see('B5', 1)],
    ),
    tests: tests(
      [
        'Mark the bust tip on the muslin. Does the axis of the dart meet it, with the tip too near?',
        [1],
      ],
      ['Does the dart aim past it, above or below?', [2]],
    ),
    usual: [13, 64],
    cap: 20,
    trueAfter: ['dart legs equal', 'fold of the dart at the seam'],
    doNot: 'Do not move the bust tip where only the length is wrong.',
    source: ['R24', 'PUBLIC'],
    evidence: 'operative text',
  },
  {
    id: 'B5',
    said: ['bust point in the wrong place', 'dart too high', 'dart too low'],
    where: 'side and waist darts',
    sign: 'The dart aims above or below the fullest place, with slack or strain on the other side of it.',
    causes: causes(
      [
        'bust tip at another height than drafted',
        place('asRead', 25, [
          edit('GROUP', 'front.bustDart', 'down'),
          edit('MOVE', 'front.waistDart', 'down', { point: 'apex' }),
        ]),
      ],
      ['shoulders slope more, and all hangs low', see('SH1', 1)],
      [
        'other underwear than was measured in',
        making('Try it on in what it will be worn with; leave the draft.'),
      ],
    ),
    tests: tests(
      ['Tape side neck to bust tip. Is it another length than the draft has?', [1]],
      ['Is the armhole low or high by as much?', [2]],
    ),
    usual: [6, 38],
    cap: 25,
    trueAfter: ['side seam with the dart folded', 'waist dart aimed again'],
    doNot:
      'Do not change what the dart takes in while it moves. Width of the front first, then height.',
    source: ['PUBLIC'],
    evidence: 'operative text',
  },
  {
    id: 'B6',
    said: ['bust tips too wide apart', 'bust tips too near each other'],
    where: 'waist dart and side dart',
    sign: 'The axis of the waist dart passes beside the bust tip.',
    causes: causes(
      [
        'bust tips drafted too far apart or too near',
        place('onePiece', 20, [
          edit('MOVE', 'front.waistDart', 'out', { point: 'apex' }),
          edit('MOVE', 'front.bustDart', 'out', { point: 'tip' }),
        ]),
      ],
      ['front too wide or narrow between them', see('B1', 1)],
    ),
    tests: tests(['Tape from bust tip to bust tip. Is it another width than the draft has?', [1]]),
    usual: [3, 20],
    cap: 20,
    trueAfter: ['waist seam', 'dart legs'],
    doNot: 'Do not swing the dart about its mouth by more than 10 degrees: move it as it is.',
    source: ['CP'],
    evidence: 'common practice',
  },
  {
    id: 'B7',
    said: ['puckers at the end of the dart', 'dimple at the tip', 'bubble at the dart'],
    where: 'dart tip',
    sign: 'A cone or bubble at the very end.',
    causes: causes(
      [
        'one dart takes in too much',
        place('asRead', 20, [
          edit('SPLIT', 'front.waistDart', 'narrower', {
            angle: turned('apexToWaist', 'front.bustDart', 'apexToSide'),
          }),
        ]),
      ],
      ['sewn blunt', making('Sew the last stitches along the fold; leave the draft.')],
      ['pressed flat', making('Press it over something round; leave the draft.')],
      ['tip too near the bust tip', see('B4', 1)],
    ),
    tests: tests(
      ['Is its angle over 22 degrees, or its mouth over 44 mm?', [1]],
      ['Does it lie well once it is sewn to a fine end and pressed over a curve?', [2, 3]],
    ),
    usual: [38, 44],
    cap: 20,
    trueAfter: ['both darts'],
    doNot: 'Do not shorten the dart to hide the bubble.',
    source: ['PUBLIC', 'CP'],
    evidence: 'partly seen',
  },
  {
    id: 'B8',
    said: [
      'the armhole gapes in front',
      'armhole stands away',
      'the side shows at the arm',
      'baggy at the front of the arm',
      'sleeve edge gapes',
    ],
    where: 'lower half of the front armhole, mostly sleeveless',
    sign: 'A loose loop along the front armhole and a soft fold that points to the bust tip.',
    causes: causes(
      ['bust fuller than the darts hold', armholeTuck],
      ['drafted for a sleeve and worn without', armholeTuck],
      ['armhole too long and low', see('A2', 1)],
      ['shoulder slopes more, or is too long', see('SH1', 1)],
      [
        'edge stretched while sewing',
        making(
          'The armhole is longer sewn than drafted. Stay-stitch it straight after cutting; leave the draft.',
        ),
      ],
    ),
    tests: tests(
      [
        'Pin a flat wedge, wide at the armhole and nothing at the bust tip. Is it cured, with the side still plumb?',
        [1, 2],
      ],
      ['Does a pin at the shoulder tip cure it better?', [4]],
      ['Does raising the side seam cure it?', [3]],
      ['Is the sewn edge over 3 mm longer than the draft?', [5]],
    ),
    usual: [6, 13],
    cap: 15,
    trueAfter: [
      'armhole at side and shoulder',
      'side seam with the dart folded',
      'sleeve cap less by as much',
    ],
    doNot:
      'Do not take it in at the side seam. Do not dart the armhole of a sleeved draft without the cap. Do not ease in over 6 mm.',
    source: ['R24', 'R22', 'PUBLIC'],
    evidence: 'operative text',
  },
  {
    id: 'B9',
    said: ['too much across the upper chest', 'hollow chest', 'front too long above the bust'],
    where: 'between collarbone and bust',
    sign: 'Loose level folds across the upper chest; the grain dips at the centre, the neck may gape.',
    causes: causes(
      ['hollow chest', takeIn('length', 13, centreWedge('WEDGE-'))],
      ['front long above the bust', takeIn('length', 13, centreWedge('WEDGE-'))],
      ['stooped: the front of the body is short', takeIn('length', 13, neckEnd('down'))],
    ),
    tests: tests(
      ['Pin a level tuck at the centre, to nothing at the armhole. Does all fall flat?', [1, 2]],
      ['Must the tuck run on across the armhole?', [3]],
    ),
    usual: [5, 15],
    cap: 13,
    trueAfter: ['centre straight', 'neck', 'front shoulder', 'facing'],
    doNot:
      'Do not turn a wedge out of the neck for the same slack as well. Do not push the length below the waist.',
    source: ['R1', 'R2', 'R13'],
    evidence: 'partly seen',
  },
  {
    id: 'B10',
    said: ['chest too wide'],
    where: 'front, inside the armhole',
    sign: 'Upright slack between neck and armhole.',
    causes: causes(
      ['too wide across the chest', takeIn('across', 10, [edit('STRIP-', 'front.armhole', 'in')])],
      ['shoulder too long', see('SH3', 1)],
    ),
    tests: tests(
      ['Pin an upright tuck from mid shoulder. Does it end above the bust?', [1]],
      ['Does the shoulder seam lie past the bone?', [2]],
    ),
    usual: [3, 10],
    cap: 10,
    trueAfter: ['armhole', 'front of the cap'],
    doNot: 'Do not take it down to the waist.',
    source: ['R2', 'CP'],
    evidence: 'heading only',
  },
  {
    id: 'B11',
    said: ['strain between the armholes'],
    where: 'upper chest',
    sign: 'Level strain from armhole to armhole; the front armhole cuts in.',
    causes: causes(
      [
        'too narrow across the chest',
        letOut('across', 10, [edit('STRIP+', 'front.armhole', 'out')]),
      ],
      ['square or forward shoulders', see('SH2', 1)],
      ['bust tight', see('B1', 1)],
    ),
    tests: tests(
      ['Slit upright from mid shoulder to the notch. Does it open?', [1]],
      ['Does opening the shoulder seam at the tip free it?', [2]],
      ['Does opening the side at bust level free it?', [3]],
    ),
    usual: [3, 10],
    cap: 10,
    trueAfter: ['armhole', 'cap'],
    doNot: 'Do not scoop the armhole to cure it: that makes it narrower.',
    source: ['R1', 'CP'],
    evidence: 'common practice',
  },
  {
    id: 'B12',
    said: ['placket gapes', 'blouse opens between buttons'],
    where: 'centre front at the bust',
    sign: 'A gap like a diamond, with level strain.',
    causes: causes(
      ['bust tight', letOut('onePiece', 20, fuller)],
      [
        'no button at the level of the bust',
        making('Set a button at the bust line and divide the rest from there; leave the draft.'),
      ],
      ['no ease', letOut('across', 13, sides('out'))],
    ),
    tests: tests(
      ['Unbuttoned, do the centre lines fail to meet?', [1]],
      ['Do they meet, with no button at the bust line?', [2]],
    ),
    usual: [5, 30],
    cap: 20,
    trueAfter: ['waist', 'side seams equal with the dart folded', 'centre front'],
    doNot: 'Do not only widen the overlap.',
    source: ['R24', 'PUBLIC'],
    evidence: 'partly seen',
  },
  {
    id: 'B13',
    said: ['loose at the midriff', 'gap under the bust'],
    where: 'from under the bust to the waist',
    sign: 'Upright slack under the bust.',
    causes: causes(
      [
        'waist dart too narrow or too short',
        takeIn('across', 19, [edit('DARTSHAPE', 'front.waistDart', 'wider')]),
      ],
      [
        'a deep hollow under the bust',
        takeIn('across', 19, [edit('DARTSHAPE', 'front.waistDart', 'wider')]),
      ],
    ),
    tests: tests(['Pin along the dart line under the bust. Does the slack go?', [1, 2]]),
    usual: [5, 19],
    cap: 19,
    trueAfter: ['dart legs equal', 'waist'],
    doNot: 'Do not shape above the bust tip.',
    source: ['R24'],
    evidence: 'operative text',
  },
  {
    id: 'B14',
    said: ['folds under the bust all across', 'front sags'],
    where: 'front between bust and waist',
    sign: 'A level fold or blousing under the bust; the grain dips at the centre of the bust line.',
    causes: causes(
      [
        'front too long from shoulder to waist',
        takeIn('length', 13, neckEnd('down'), {
          at: [{ places: ['cf'], work: job('in', 'length', 13, centreWedge('WEDGE-')) }],
        }),
      ],
      ['bust tip drafted too low', see('B5', 1)],
      ['waist too low all round', see('W2', 1)],
    ),
    tests: tests(
      ['Lift the front at the neck end of the shoulder. Is it cured?', [1]],
      ['Does only a tuck at the waist cure it?', [3]],
      ['Does the dart aim below the fullest place?', [2]],
    ),
    usual: [5, 15],
    cap: 13,
    trueAfter: ['shoulder', 'neck', 'armhole notch'],
    doNot: 'Do not push the surplus under the waist seam.',
    source: ['R1'],
    evidence: 'operative text',
  },
  {
    id: 'B15',
    said: ['taut line from shoulder down to the bust'],
    where: 'neck point to bust tip',
    sign: 'A taut slanting line from the side neck to the bust tip.',
    causes: causes(
      [
        'front too short from side neck over the bust',
        letOut('length', 13, neckEnd('up'), {
          at: [{ places: ['cf'], work: job('out', 'length', 13, centreWedge('WEDGE+')) }],
        }),
      ],
      ['shoulder drafted too steep', see('SH2', 1)],
      ['bust tight', see('B1', 1)],
    ),
    tests: tests(
      ['Release the shoulder at its neck end. Is it eased?', [1]],
      ['Is it eased by releasing the tip?', [2]],
    ),
    usual: [5, 13],
    cap: 13,
    trueAfter: ['neck', 'shoulder'],
    doNot: 'Do not widen the neck.',
    source: ['R13', 'R17', 'CP'],
    evidence: 'common practice',
  },
]
