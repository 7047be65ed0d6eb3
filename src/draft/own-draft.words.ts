/** What is measured on her own draft, and where to look where it differs from the tool's. */
const WIDTH = 'Look at the quarter girth and its ease, and that the line is square to the centre.'
const SLEEVE_SEAM = 'Look at the length of the sleeve and at what is taken off at its hem.'
const WAIST_DART = 'Look at the width of the dart at the waist and that half lies on either side.'

export const OWN_DRAFT_WORDS = {
  checks: {
    bustLine: 'underarm line, centre to side',
    waistLine: 'waist line, centre to side',
    hipLine: 'hip line, centre to side',
    bustTip: 'bust tip, from the centre',
  },
  look: {
    centre: 'Lay the ruler along the centre again: nape to waist first, then waist to hem.',
    neck: 'Look at the width and depth of the neck, then that the curve leaves the centre square.',
    overarm: 'Measure from the side neck; look at the level on which the overarm ends.',
    shoulder: 'Measure from the side neck; look at the level of the shoulder bone.',
    sleeveEdge: 'Look at the compass: its centre, how far it is open, and that the arc ends at U.',
    armhole: 'Look at the across point Z and the underarm line; a flatter curve is shorter.',
    side: 'Look at U, W and X, then at the depth of the underarm; the curve comes last.',
    hem: 'Look at the width on the hip line, and that the hem is square to the centre.',
    waist: 'Look at the widths of the darts, then at the width on the waist line.',
    cap: 'Look at the height of the cap and its width; a rounder curve is longer.',
    frontSeam: SLEEVE_SEAM,
    backSeam: SLEEVE_SEAM,
    waistDart: WAIST_DART,
    waistDart2: WAIST_DART,
    bustDart: 'Look at the front length over the bust less the back length over the blade.',
    bustDart2: 'Look at how much of the bust dart went to its second place.',
    shoulderDart: 'Look at the width of the shoulder dart; the shoulder is longer by it.',
    bustLine: WIDTH,
    waistLine: WIDTH,
    hipLine: WIDTH,
    bustTip: 'Look at the apex spacing; half of it is laid out from the centre.',
  },
}
