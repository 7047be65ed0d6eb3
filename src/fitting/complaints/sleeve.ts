/**
 * Complaints of a set-in sleeve.
 * A table, one entry a complaint: longer than other files for that reason.
 */
import type { ComplaintBody, Edit } from './complaint.ts'
import { causes, edit, letOut, making, place, see, takeIn, tests } from './work.ts'

const cap = (op: 'CAP+' | 'CAP-'): readonly Edit[] => [
  edit(op, 'sleeve.cap', op === 'CAP+' ? 'out' : 'in'),
]
const pitch: readonly Edit[] = [edit('PITCH', 'sleeve.cap', 'forward')]

export const SLEEVE: readonly ComplaintBody[] = [
  {
    id: 'L1',
    said: ['sleeve cap too short', 'slanting folds in the sleeve cap'],
    where: 'sleeve cap',
    sign: 'Taut slanting folds from the shoulder tip to the underarm on both sides; the sleeve hem lifts at its middle.',
    causes: causes(
      ['cap too low', letOut('length', 15, cap('CAP+'))],
      ['shoulders slope differently', see('SH1', 1)],
      ['armhole too big', see('A2', 1)],
    ),
    tests: tests(
      ['Release the top of the cap. Does it open, with the level line lifted at its middle?', [1]],
      ['Does a pin at the shoulder tip cure it?', [2]],
    ),
    usual: [6, 20],
    cap: 15,
    trueAfter: ['cap length against armhole and ease'],
    doNot: 'Do not add at the hem.',
    source: ['R22', 'R1'],
    evidence: 'operative text',
  },
  {
    id: 'L2',
    said: ['cap too tall', 'sleeve puffs at the top'],
    where: 'sleeve cap',
    sign: 'A loose level fold or roll at the top.',
    causes: causes(
      ['cap too high', takeIn('length', 13, cap('CAP-'))],
      ['too much ease in the cap', see('L6', 1)],
    ),
    tests: tests(
      ['Pin a level tuck across the cap. Does it lie?', [1]],
      ['Is it gathered rather than folded?', [2]],
    ),
    usual: [3, 13],
    cap: 13,
    trueAfter: ['cap length'],
    doNot: 'A lower cap lifts better and hangs worse: look at both.',
    source: ['R2', 'CP'],
    evidence: 'heading only',
  },
  {
    id: 'L3',
    said: ['sleeve grips', 'tight upper arm'],
    where: 'upper arm',
    sign: 'Level strain round the upper arm.',
    causes: causes([
      'too little ease at the upper arm',
      letOut('asRead', 20, [edit('BICEPS+', 'sleeve.cap', 'out')]),
    ]),
    tests: tests(['Open the sleeve seam. Does it spread?', [1]]),
    usual: [6, 25],
    cap: 20,
    trueAfter: ['cap length: surplus out, or the armhole longer'],
    doNot: 'Do not let out the sleeve seam without the body.',
    source: ['R22', 'R24', 'R2'],
    evidence: 'operative text',
  },
  {
    id: 'L4',
    said: ['folds in front or at the back of the sleeve', 'sleeve seam spirals'],
    where: 'sleeve',
    sign: 'A slanting fold from the armhole down to the other side of the hem.',
    causes: causes(
      ['cap set for an arm that hangs differently', place('asRead', 13, pitch)],
      ['sleeve cut off the grain', making('Cut the sleeve anew on its grain; leave the draft.')],
      ['rounded shoulders', see('K3', 1)],
    ),
    tests: tests(
      ['Unpick the cap above the notches and turn it until the grain hangs. Did it move?', [1]],
      ['Is the marked grain off the thread?', [2]],
    ),
    usual: [5, 15],
    cap: 13,
    trueAfter: ['notches', 'underarm seam'],
    doNot: 'Do not turn only the upper half of an eased cap.',
    source: ['R1', 'R17'],
    evidence: 'operative text',
  },
  {
    id: 'L5',
    said: ['the body rises when I lift the arm', 'I cannot lift my arm'],
    where: 'underarm',
    sign: 'When the arm lifts, side seam and hem rise with it.',
    causes: causes(
      [
        'armhole too low',
        place('asRead', 20, [
          edit('MOVE', 'front.armhole', 'up', { point: 'underarm' }),
          edit('MOVE', 'back.armhole', 'up', { point: 'underarm' }),
        ]),
      ],
      ['cap too high and narrow', place('length', 15, cap('CAP-'))],
      ['back too narrow', see('K1', 1)],
      ['sleeve too short under the arm', see('L1', 1)],
    ),
    tests: tests(
      ['Pin the armhole up. Is it better?', [1]],
      ['Is it better with the lower half of the sleeve unpicked?', [2]],
    ),
    usual: [6, 20],
    cap: 20,
    trueAfter: ['armhole', 'cap', 'seams'],
    doNot: 'Do not deepen the armhole: that makes it worse.',
    source: ['PUBLIC', 'R24', 'R14'],
    evidence: 'partly seen',
  },
  {
    id: 'L6',
    said: ['too much to ease in', 'gathers at the sleeve cap'],
    where: 'cap seam',
    sign: 'Gathers or puckers along the cap.',
    causes: causes(
      [
        'more cap ease than the cloth takes',
        place('asRead', 20, [edit('CAPLEN', 'sleeve.cap', 'in')]),
      ],
      ['shoulder moved since the sleeve was drawn', see('SH3', 1)],
    ),
    tests: tests(['Measure cap less armhole. Is it more than the cloth takes?', [1]]),
    usual: [13, 38],
    cap: 20,
    trueAfter: ['cap'],
    doNot: 'Notches are no limit for the ease.',
    source: ['R24', 'PUBLIC'],
    evidence: 'operative text',
  },
  {
    id: 'L7',
    said: ['armhole puckers', 'dents at the top of the sleeve'],
    where: 'cap seam',
    sign: 'The armhole gathers and the cap is tense.',
    causes: causes(
      ['too little cap ease', letOut('asRead', 15, [edit('CAPLEN', 'sleeve.cap', 'out')])],
      ['hollow where shoulder and armhole meet', see('SH7', 1)],
    ),
    tests: tests(
      ['Measure cap less armhole. Is it less than the cloth wants?', [1]],
      ['Is there a hollow at the shoulder end?', [2]],
    ),
    usual: [3, 15],
    cap: 15,
    trueAfter: ['cap'],
    doNot: 'Do not stretch the cap to fit.',
    source: ['R14', 'CP'],
    evidence: 'common practice',
  },
  {
    id: 'L8',
    said: ['too short when bent'],
    where: 'elbow',
    sign: 'Strain at the elbow when the arm bends.',
    causes: causes(
      [
        'no ease or dart at the elbow',
        letOut('length', 20, [edit('WEDGE+', 'sleeve.backSeam', 'out')]),
      ],
      [
        'sleeve too short',
        letOut('length', 20, [
          edit('PAR+', 'sleeve.frontSeam', 'out'),
          edit('PAR+', 'sleeve.backSeam', 'out'),
        ]),
      ],
    ),
    tests: tests(
      ['Bend the arm until the fingertips touch the ear. Does it pull at the elbow?', [1]],
      ['Does the hem ride up past the wrist?', [2]],
    ),
    usual: [6, 20],
    cap: 20,
    trueAfter: ['ease of the underarm seam'],
    doNot: 'Do not widen the hem for it.',
    source: ['R1'],
    evidence: 'operative text',
  },
  {
    id: 'L9',
    said: ['sleeve hem rides up inside'],
    where: 'sleeve hem',
    sign: 'The hem of the sleeve is not level.',
    causes: causes(
      ['cap set for an arm that hangs differently', place('asRead', 10, pitch)],
      ['front and back of the cap out of balance', place('length', 10, cap('CAP+'))],
    ),
    tests: tests(
      ['Turned in the armhole, does it hang level?', [1]],
      ['Is one half of the cap short?', [2]],
    ),
    usual: [3, 10],
    cap: 10,
    trueAfter: ['hem'],
    doNot: 'Do not level it at the hem alone.',
    source: ['CP'],
    evidence: 'common practice',
  },
]
