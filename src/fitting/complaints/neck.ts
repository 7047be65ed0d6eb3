/**
 * Complaints at the neck, and of the whole garment hanging from it.
 * A table, one entry a complaint: longer than other files for that reason.
 */
import type { ComplaintBody, Edit } from './complaint.ts'
import { causes, edit, letOut, making, place, see, takeIn, tests, turned } from './work.ts'

const sideNeck = { point: 'sideNeck' } as const

const neckTuck: readonly Edit[] = [
  edit('ROT', 'front.neck', 'in', {
    angle: turned('apexToNeck', 'front.waistDart', 'apexToWaist'),
  }),
]

export const NECK: readonly ComplaintBody[] = [
  {
    id: 'N1',
    said: [
      'the neckline gapes in front',
      'loose neck edge',
      'the V falls open',
      'front neck stands away',
    ],
    where: 'front neck edge, between collarbone and bust',
    sign: 'The edge lifts off and stands in a loose loop, most of it half way between side neck and centre. Nothing pulls.',
    causes: causes(
      ['bust shaping too small: a dart is missing above the bust', takeIn('across', 15, neckTuck)],
      ['hollow under the collarbone', see('B9', 1)],
      ['neck cut wide or low and not drawn in', takeIn('across', 15, neckTuck)],
      [
        'neck edge stretched while sewing',
        making(
          'The edge is longer sewn than drafted. Stay-stitch it straight after cutting; leave the draft.',
        ),
      ],
      ['shoulders or neck base too wide', see('N5', 1)],
    ),
    tests: tests(
      [
        'Pin a flat wedge, wide at the neck edge and nothing at the bust tip. Does the gape go, and does nothing else pull?',
        [1, 3],
      ],
      ['Does only a level tuck above the bust make it lie flat?', [2]],
      ['Is the sewn edge over 3 mm longer than the draft?', [4]],
      ['Does the neck end of the shoulder seam lie off the neck?', [5]],
    ),
    usual: [6, 13],
    cap: 15,
    trueAfter: [
      'neck curve',
      'facing or strip length',
      'legs of the dart that opens',
      'waist seam',
      'neck square at fold and shoulder',
    ],
    doNot:
      'Do not only shorten the strip. Do not take it in at the centre front of a full-bust draft: that takes bust width.',
    source: ['R22', 'R24', 'CP'],
    evidence: 'operative text',
  },
  {
    id: 'N2',
    said: ['it chokes', 'pulls at the throat', 'the top button will not close'],
    where: 'front neck',
    sign: 'Strain level or like rays round the neck base; the front cuts in when she sits.',
    causes: causes(
      [
        'front neck not deep enough',
        letOut('asRead', 10, [edit('MOVE', 'front.neck', 'down', { point: 'frontNeck' })]),
      ],
      [
        'neck too small all round',
        letOut(
          'asRead',
          10,
          [edit('MOVE', 'front.neck', 'out', sideNeck), edit('MOVE', 'back.neck', 'out', sideNeck)],
          {
            at: [
              {
                places: ['allRound'],
                work: {
                  moves: 'out',
                  readAs: 'asRead',
                  cap: 30,
                  edits: [
                    edit('MOVE', 'front.neck', 'down', { part: 1 / 3, point: 'frontNeck' }),
                    edit('MOVE', 'front.neck', 'out', { part: 1 / 8, ...sideNeck }),
                    edit('MOVE', 'back.neck', 'out', { part: 1 / 8, ...sideNeck }),
                  ],
                },
              },
            ],
          },
        ),
      ],
      ['back neck too shallow, or it slides back', see('N7')],
      ['square shoulders push cloth to the neck', see('SH2', 1)],
    ),
    tests: tests(
      [
        'Snip the front allowance every 15 mm. Does it ease with the shoulders still lying flat?',
        [1],
      ],
      ['Does it ease only when it is snipped all round?', [2]],
      ['Does the shoulder seam lie behind the top of the shoulder?', [3]],
    ),
    usual: [3, 10],
    cap: 10,
    trueAfter: ['front and back neck as one curve over the shoulder', 'facings'],
    doNot: 'Do not deepen it before slope and balance are right: what is cut off stays off.',
    source: ['R1', 'CP'],
    evidence: 'partly seen',
  },
  {
    id: 'N3',
    said: ['gap at the nape', 'back neck gapes', 'the collar stands off'],
    where: 'nape, centre back',
    sign: 'The back edge stands off the neck and may fold upright at the centre; there is no level fold below it.',
    causes: causes(
      [
        'rounded upper back with too little shaping',
        takeIn('across', 12, [
          edit('ROT', 'back.neck', 'in', {
            angle: turned('bladeToNeck', 'back.shoulderDart', 'bladeToShoulder'),
          }),
        ]),
      ],
      [
        'back neck cut too wide',
        takeIn('across', 12, [
          edit('MOVE', 'back.neck', 'in', sideNeck),
          edit('MOVE', 'front.neck', 'in', sideNeck),
        ]),
      ],
      ['back too short above the blades, so it hangs from them', see('K3', 1)],
      ['head carried forward', see('K7', 1)],
      ['back neck edge stretched', making('Stay-stitch the back neck; leave the draft.')],
    ),
    tests: tests(
      ['Pin small tucks either side of the centre back. Flat, and the hem stays level?', [1]],
      ['Is it flat with one pinch at the centre seam, and the centre stays straight?', [2]],
      ['Does the tuck lift the hem at the centre back, or strain across the blades?', [3]],
      ['Is the sewn edge over 3 mm longer than the draft?', [5]],
    ),
    usual: [3, 10],
    cap: 12,
    trueAfter: ['back neck', 'shoulder lengths with ease', 'facing'],
    doNot:
      'Do not slant the centre back by more than 5 mm at the neck. Do not shorten only the facing.',
    source: ['R20', 'R24', 'CP'],
    evidence: 'partly seen',
  },
  {
    id: 'N4',
    said: ['fold under the nape', 'bunching at the back of the neck'],
    where: 'centre back, 20 to 60 mm under the nape',
    sign: 'Short level folds just under the back neck; the shoulder seams may stand up near the neck.',
    causes: causes(
      ['square shoulders: the cloth hangs from the tips', see('SH2', 1)],
      [
        'back neck too shallow',
        place('asRead', 8, [edit('MOVE', 'back.neck', 'down', { point: 'nape' })]),
      ],
      ['back too long above the blades', see('K5', 1)],
    ),
    tests: tests(
      ['Let out the shoulder tips. Does the fold go?', [1]],
      ['Snip the back neck seam by 6 mm. Does the fold go?', [2]],
      ['Does only a level tuck across the blades take it away?', [3]],
    ),
    usual: [3, 8],
    cap: 8,
    trueAfter: ['back neck curve and facing', 'back neck stays above front neck'],
    doNot: 'Do not take length at the waist for a fold at the neck.',
    source: ['R3', 'R13', 'CP'],
    evidence: 'partly seen',
  },
  {
    id: 'N5',
    said: ['straps show', 'it slips off the shoulders', 'neckline too wide'],
    where: 'both side-neck points',
    sign: 'The neck edge lies outside the neck base, with no slack along it; the seam slips sideways.',
    causes: causes(
      [
        'side-neck point too far out',
        place('asRead', 20, [
          edit('MOVE', 'front.neck', 'in', sideNeck),
          edit('MOVE', 'back.neck', 'in', sideNeck),
        ]),
      ],
      ['shoulder too steep near the neck', see('SH1', 1)],
      ['narrow shoulders', see('SH3', 1)],
    ),
    tests: tests(
      [
        'Mark where the edge should begin and measure along the seam. Is it off standing still?',
        [1],
      ],
      ['Does it slide only when she moves?', [2, 3]],
    ),
    usual: [5, 20],
    cap: 20,
    trueAfter: ['neck', 'facings', 'shoulder lengths'],
    doNot: 'Do not pull it in at the centres: that tilts the grain.',
    source: ['CP'],
    evidence: 'common practice',
  },
  {
    id: 'N6',
    said: ['gap between neck and seam', 'the seam floats near the neck'],
    where: 'neck end of the shoulder seam',
    sign: 'The seam floats above the body near the neck while the tip is taut.',
    causes: causes(
      ['square shoulders for this draft', see('SH2', 1)],
      ['shoulder too long, pulling the neck away', see('SH3', 1)],
    ),
    tests: tests(
      ['Let out at the tip. Does the neck settle?', [1]],
      ['Fold the overhang at the tip away. Does the neck settle?', [2]],
    ),
    usual: undefined,
    cap: undefined,
    trueAfter: ['as for the shoulder it leads to'],
    doNot: 'Do not take it in at the neck alone, unless the level lines are level then.',
    source: ['R3', 'R1'],
    evidence: 'operative text',
  },
  {
    id: 'N7',
    said: [
      'the front chokes and the back drops',
      'shoulder seams creep backwards',
      'shirt slides back',
    ],
    where: 'whole shoulder and neck',
    sign: 'Pressure at the throat, shoulder seams behind the bone, front hem up and back hem down.',
    causes: causes(
      ['front too short over the bust', see('B2', 1)],
      ['back too long above the blades', see('K5', 1)],
      ['shoulders carried forward', see('SH5', 1)],
      ['tight hip or back holds the back down', see('W9', 1)],
    ),
    tests: tests(
      ['With length added over the bust, is the neck free?', [1]],
      ['Is there a level roll above the blades?', [2]],
      ['Is the roll only at the seam?', [3]],
    ),
    usual: [5, 20],
    cap: 15,
    trueAfter: ['shoulder seams', 'side seams equal'],
    doNot: 'Do not deepen the front neck first.',
    source: ['R17', 'R22', 'CP'],
    evidence: 'partly seen',
  },
  {
    id: 'N8',
    said: ['back of the neck pushes up', 'front neck too low and loose'],
    where: 'whole shoulder',
    sign: 'The back neck rides high, slack folds lie above the bust, the shoulder seam lies before the bone, the back hem rises.',
    causes: causes(
      ['back too short above the blades', see('K3', 1)],
      ['front too long above the bust', see('B9', 1)],
      ['shoulder seam should lie farther back', see('SH6', 1)],
    ),
    tests: tests(
      ['Cut across at the blades. Does the hem drop level?', [1]],
      ['Does a level tuck across the upper chest cure it?', [2]],
    ),
    usual: [5, 20],
    cap: 15,
    trueAfter: ['shoulder', 'neck', 'side'],
    doNot: 'Do not shorten the front at the waist.',
    source: ['R17', 'R21'],
    evidence: 'partly seen',
  },
]
