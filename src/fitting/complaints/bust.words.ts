/** What she reads of the complaints in bust.ts; causes and tests by their numbers. */
export const BUST_WORDS = {
  B1: {
    said: ['tight bust', 'drag lines to the bust', 'flattened', 'too tight across the bust'],
    where: 'bust line',
    sign: 'Level taut lines between the bust tips or from the side to them; closings strain, the side seam is drawn forward.',
    causes: {
      1: 'too little width in the front alone',
      2: 'too little width all round',
      3: 'back too narrow, pulling',
      4: 'bust tip drafted in another place',
    },
    tests: {
      1: 'Open both side seams from underarm to waist, with a plumb line at the side. Does only the front edge draw back?',
      2: 'Do front and back edge draw back alike?',
      3: 'Does only the back edge draw back?',
      4: 'Do the edges stay shut, and does the dart aim past the fullest place?',
    },
    trueAfter: [
      'waist',
      'side seams equal with the dart folded',
      'step at the centre front',
      'armhole',
    ],
    doNot:
      'Do not take a whole size larger: shoulder and neck grow too. Do not let out the side for a front that is too narrow: the armhole gapes then.',
  },
  B2: {
    said: ['front hem lifts', 'waist tilts up in front', 'pulls from side waist to the bust'],
    where: 'under the bust, front hem',
    sign: 'Slanting strain from the bust tip down to the side waist; waist line and hem rise at the centre front.',
    causes: { 1: 'front too short over the bust', 2: 'bust tight', 3: 'fuller below the waist' },
    tests: {
      1: 'Cut level under the bust at the centre front. Does it open at the centre and not at the side?',
      2: 'Does it open upright as well?',
    },
    trueAfter: ['side seams equal with the dart folded', 'waist seam', 'hem'],
    doNot:
      'Do not lengthen only the hem at the centre: the dart stays too small. Do not drop the back.',
  },
  B3: {
    said: ['baggy at the bust', 'collapses in front', 'empty over the bust', 'folds over the bust'],
    where: 'bust',
    sign: 'Loose folds, upright or curved, at the bust tip; the end of the dart stands empty.',
    causes: {
      1: 'front drafted for a fuller bust',
      2: 'too wide all round',
      3: 'bust tip drafted at another height',
    },
    tests: {
      1: 'Pin an upright tuck through the bust tip to the waist. Do the folds go, with the shoulders right?',
      2: 'Is there the same slack at the back?',
      3: 'Does the dart aim above or below the fullest place?',
    },
    trueAfter: ['waist', 'side seams equal with the dart folded', 'centre front', 'armhole'],
    doNot: 'Do not leave a dart narrower than 10 mm: turn it into ease.',
  },
  B4: {
    said: ['pointed dart', 'the dart runs over the bust'],
    where: 'dart tips',
    sign: 'The tip lies at or past the fullest place and pokes.',
    causes: { 1: 'dart too long', 2: 'bust tip farther off than drafted' },
    tests: {
      1: 'Mark the bust tip on the muslin. Does the axis of the dart meet it, with the tip too near?',
      2: 'Does the dart aim past it, above or below?',
    },
    trueAfter: ['dart legs equal', 'fold of the dart at the seam'],
    doNot: 'Do not move the bust tip where only the length is wrong.',
  },
  B5: {
    said: ['bust point in the wrong place', 'dart too high', 'dart too low'],
    where: 'side and waist darts',
    sign: 'The dart aims above or below the fullest place, with slack or strain on the other side of it.',
    causes: {
      1: 'bust tip at another height than drafted',
      2: 'shoulders slope more, and all hangs low',
      3: 'other underwear than was measured in',
    },
    advice: { 3: 'Try it on in what it will be worn with; leave the draft.' },
    tests: {
      1: 'Tape side neck to bust tip. Is it another length than the draft has?',
      2: 'Is the armhole low or high by as much?',
    },
    trueAfter: ['side seam with the dart folded', 'waist dart aimed again'],
    doNot:
      'Do not change what the dart takes in while it moves. Width of the front first, then height.',
  },
  B6: {
    said: ['bust tips too wide apart', 'bust tips too near each other'],
    where: 'waist dart and side dart',
    sign: 'The axis of the waist dart passes beside the bust tip.',
    causes: {
      1: 'bust tips drafted too far apart or too near',
      2: 'front too wide or narrow between them',
    },
    tests: { 1: 'Tape from bust tip to bust tip. Is it another width than the draft has?' },
    trueAfter: ['waist seam', 'dart legs'],
    doNot: 'Do not swing the dart about its mouth by more than 10 degrees: move it as it is.',
  },
  B7: {
    said: ['puckers at the end of the dart', 'dimple at the tip', 'bubble at the dart'],
    where: 'dart tip',
    sign: 'A cone or bubble at the very end.',
    causes: {
      1: 'one dart takes in too much',
      2: 'sewn blunt',
      3: 'pressed flat',
      4: 'tip too near the bust tip',
    },
    advice: {
      2: 'Sew the last stitches along the fold; leave the draft.',
      3: 'Press it over something round; leave the draft.',
    },
    tests: {
      1: 'Is its angle over 22 degrees, or its mouth over 44 mm?',
      2: 'Does it lie well once it is sewn to a fine end and pressed over a curve?',
    },
    trueAfter: ['both darts'],
    doNot: 'Do not shorten the dart to hide the bubble.',
  },
  B8: {
    said: [
      'the armhole gapes in front',
      'armhole stands away',
      'the side shows at the arm',
      'baggy at the front of the arm',
      'sleeve edge gapes',
    ],
    where: 'lower half of the front armhole, mostly sleeveless',
    sign: 'A loose loop along the front armhole and a soft fold that points to the bust tip.',
    causes: {
      1: 'bust fuller than the darts hold',
      2: 'drafted for a sleeve and worn without',
      3: 'armhole too long and low',
      4: 'shoulder slopes more, or is too long',
      5: 'edge stretched while sewing',
    },
    advice: {
      5: 'The armhole is longer sewn than drafted. Stay-stitch it straight after cutting; leave the draft.',
    },
    never:
      'A gape at the armhole is not taken in at the side seam: that tightens the bust and leaves the gape. Pin a flat wedge at the armhole, nothing at the bust tip.',
    tests: {
      1: 'Pin a flat wedge, wide at the armhole and nothing at the bust tip. Is it cured, with the side still plumb?',
      2: 'Does a pin at the shoulder tip cure it better?',
      3: 'Does raising the side seam cure it?',
      4: 'Is the sewn edge more than 3 mm longer than the draft?',
    },
    trueAfter: [
      'armhole at side and shoulder',
      'side seam with the dart folded',
      'sleeve cap less by as much',
    ],
    doNot:
      'Do not take it in at the side seam. Do not dart the armhole of a sleeved draft without the cap. Do not ease in more than 6 mm.',
  },
  B9: {
    said: ['too much across the upper chest', 'hollow chest', 'front too long above the bust'],
    where: 'between collarbone and bust',
    sign: 'Loose level folds across the upper chest; the grain dips at the centre, the neck may gape.',
    causes: {
      1: 'hollow chest',
      2: 'front long above the bust',
      3: 'stooped: the front of the body is short',
    },
    tests: {
      1: 'Pin a level tuck at the centre, to nothing at the armhole. Does all fall flat?',
      2: 'Must the tuck run on across the armhole?',
    },
    trueAfter: ['centre straight', 'neck', 'front shoulder', 'facing'],
    doNot:
      'Do not turn a wedge out of the neck for the same slack as well. Do not push the length below the waist.',
  },
  B10: {
    said: ['chest too wide'],
    where: 'front, inside the armhole',
    sign: 'Upright slack between neck and armhole.',
    causes: { 1: 'too wide across the chest', 2: 'shoulder too long' },
    tests: {
      1: 'Pin an upright tuck from mid shoulder. Does it end above the bust?',
      2: 'Does the shoulder seam lie past the bone?',
    },
    trueAfter: ['armhole', 'front of the cap'],
    doNot: 'Do not take it down to the waist.',
  },
  B11: {
    said: ['strain between the armholes'],
    where: 'upper chest',
    sign: 'Level strain from armhole to armhole; the front armhole cuts in.',
    causes: { 1: 'too narrow across the chest', 2: 'square or forward shoulders', 3: 'bust tight' },
    tests: {
      1: 'Slit upright from mid shoulder to the notch. Does it open?',
      2: 'Does opening the shoulder seam at the tip free it?',
      3: 'Does opening the side at bust level free it?',
    },
    trueAfter: ['armhole', 'cap'],
    doNot: 'Do not scoop the armhole to cure it: that makes it narrower.',
  },
  B12: {
    said: ['placket gapes', 'blouse opens between buttons'],
    where: 'centre front at the bust',
    sign: 'A gap like a diamond, with level strain.',
    causes: { 1: 'bust tight', 2: 'no button at the level of the bust', 3: 'no ease' },
    advice: { 2: 'Set a button at the bust line and divide the rest from there; leave the draft.' },
    tests: {
      1: 'Unbuttoned, do the centre lines fail to meet?',
      2: 'Do they meet, with no button at the bust line?',
    },
    trueAfter: ['waist', 'side seams equal with the dart folded', 'centre front'],
    doNot: 'Do not only widen the overlap.',
  },
  B13: {
    said: ['loose at the midriff', 'gap under the bust'],
    where: 'from under the bust to the waist',
    sign: 'Upright slack under the bust.',
    causes: { 1: 'waist dart too narrow or too short', 2: 'a deep hollow under the bust' },
    tests: { 1: 'Pin along the dart line under the bust. Does the slack go?' },
    trueAfter: ['dart legs equal', 'waist'],
    doNot: 'Do not shape above the bust tip.',
  },
  B14: {
    said: ['folds under the bust all across', 'front sags'],
    where: 'front between bust and waist',
    sign: 'A level fold or blousing under the bust; the grain dips at the centre of the bust line.',
    causes: {
      1: 'front too long from shoulder to waist',
      2: 'bust tip drafted too low',
      3: 'waist too low all round',
    },
    tests: {
      1: 'Lift the front at the neck end of the shoulder. Is it cured?',
      2: 'Does only a tuck at the waist cure it?',
      3: 'Does the dart aim below the fullest place?',
    },
    trueAfter: ['shoulder', 'neck', 'armhole notch'],
    doNot: 'Do not push the surplus under the waist seam.',
  },
  B15: {
    said: ['taut line from shoulder down to the bust'],
    where: 'neck point to bust tip',
    sign: 'A taut slanting line from the side neck to the bust tip.',
    causes: {
      1: 'front too short from side neck over the bust',
      2: 'shoulder drafted too steep',
      3: 'bust tight',
    },
    tests: {
      1: 'Release the shoulder at its neck end. Is it eased?',
      2: 'Is it eased by releasing the tip?',
    },
    trueAfter: ['neck', 'shoulder'],
    doNot: 'Do not widen the neck.',
  },
}
