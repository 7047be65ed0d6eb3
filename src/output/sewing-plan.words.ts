/** The sewing plan in words: what each step is called, how it is done, what is minded. */
import { capital } from '../units/capital.ts'
import type { AnyDart, EdgeName, PieceId } from '../draft/piece.ts'
import { DART_WORDS, EDGE_WORDS, PIECE_WORDS } from '../draft/piece.words.ts'
import { mm, type Mm } from '../units/length.ts'
import { says } from './pass.ts'

const lower = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1)

/** The plan as a whole, and the numbers of a step. */
export const PLAN_WORDS = {
  title: 'Sewing plan',
  lengths:
    'Lengths are those of the seam line of one side. Every seam is pressed before another crosses it.',
  allowance: (by: string) => `allowance ${by}`,
  sides: (left: string, right: string) => `left ${left}, right ${right}`,
  /** @param times how often; undefined where it is not said */
  long: (long: string, times: number | undefined) =>
    times === undefined ? long : `${long}, ${TIMES[times] ?? `${times} times`}`,
  press: (how: string) => `Press: ${lower(how)}`,
}
const TIMES: Readonly<Record<number, string>> = { 1: 'once', 2: 'twice', 4: 'four times' }

/** While the pieces lie flat. */
export const FLAT_WORDS = {
  ready: (cloth: string) => `Make the ${cloth} ready`,
  straighten: says`Straighten both ends along a thread, pull the cloth square, steam it and let it dry flat.`,
  cut: 'Cut and mark',
  lay: says`Lay the pieces by the cutting plan, cut, snip the notches.`,
  mark: says`Mark darts, openings and centre lines on the wrong side before the paper comes off.`,
  blades: 'Scissors, blades and pins: cut away from your hand and count the pins back.',
  stay: 'Stay the edges that stretch',
  stayRow: (outside: Mm, neck: 'round' | 'vee', armholes: boolean) => [
    ...says`One layer, ordinary stitch, ${outside} outside the seam line: `,
    `the neck ${neck === 'vee' ? 'from the point of the V up' : 'from the shoulder to the centre'}${armholes ? ', the armhole from the shoulder down' : ''}.`,
  ],
  machine:
    'At the machine: fingers beside the foot, hair and loose sleeves tied back, switched off to thread it.',
  staySoon: 'As soon as the paper is off, before the piece is hung or handled.',
  interface: 'Interface the facings',
  fuse: says`Lay the interfacing on the wrong side of each facing, without its allowances, and press it on.`,
  joinFacings: says`Join the facings where they meet, press the seams open, neaten the free edge.`,
  tryHeat: 'Try heat and time on a scrap of both first.',
  dart: (dart: AnyDart, piece: PieceId) =>
    `${capital(DART_WORDS[dart])} of the ${PIECE_WORDS[piece]}`,
  fromTheWaist: says`Fold on its middle, sew from the waist to either tip, the last three stitches along the fold.`,
  fromTheEdge: (edge: EdgeName) => [
    `Fold on its middle, sew from the ${EDGE_WORDS[edge]} to the tip, the last three stitches along the fold.`,
  ],
  knot: says`Knot the thread ends, sew no turn back at the tip.`,
  pressTowardsCentreRound: says`Towards the centre, over a rounded cushion, no farther than the tip.`,
  pressTowardsCentre: says`Towards the centre, no farther than the tip.`,
  pressDown: says`Down, over a rounded cushion, no farther than the tip.`,
}

/** What shapes without a dart, and vents. */
export const SHAPED_WORDS = {
  gathers: (piece: PieceId, edge: EdgeName) =>
    `Gathers of the ${PIECE_WORDS[piece]}, ${EDGE_WORDS[edge]}`,
  gatherRows: (beside: Mm) =>
    says`Two rows of the longest stitch between the marks, ${beside} to either side of the seam line.`,
  drawUp: (to: Mm) =>
    says`Draw both up to ${to}, wind the threads round a pin, spread the folds evenly.`,
  gathersOnTop: says`When the seam is sewn the gathers lie on top; take out the row that shows.`,
  pressGathers: says`From the allowance into the gathers with the point of the iron, never across them.`,
  style: (finish: string) => `Style seams over the bust: ${finish}`,
  stayStyle: (outside: Mm) =>
    says`Stay the curve of the middle part ${outside} outside the seam line and clip to the row.`,
  matchStyle: says`Match the notches at the bust tip first, then both ends; sew with the clipped part on top.`,
  pressStyle: says`Over a rounded cushion, the curve first, then the rest flat.`,
  styleEqual:
    'Both lines are equally long: what will not match was cut or stretched, not drafted so.',
  vents: 'Vents at the sides',
  ventPress: says`Press the allowances of the side on down along the vent, on the seam line.`,
  ventSew: says`Turn their raw edges in and sew them down from the hem up, across above the vent, and down again.`,
  ventBar: says`Bar the end by hand or with a short dense stitch across it.`,
  pressVent: says`Both edges meeting, not one over the other.`,
  ventClip:
    'Where the seam is shut in a French seam, clip its allowance to the seam just above the vent.',
}

export const OPENING_WORDS = {
  slit: 'Slit at the back neck',
  slitLay: says`Lay the facing on the right side, middle on the slit line.`,
  slitSew: (beside: Mm) =>
    says`Sew round the line ${beside} from it at the neck, running to its foot in a point, one stitch across.`,
  slitCut: says`Cut along the line to the last thread before the stitches, turn and press.`,
  slitMind: 'Sew first, cut after: a slit cut too early cannot be faced.',
  keyhole: 'Keyhole at the front neck',
  keyholeLay: says`Lay the facing on the right side, its middle on the centre front, and pin the loop between at the neck.`,
  keyholeSew: says`Sew round the drop on its line with a short stitch, from the neck down, round the foot and up again.`,
  keyholeCut: (inside: Mm) =>
    says`Cut the drop out ${inside} inside the stitches, clip the round nearly to them, turn and press.`,
  keyholeMind: 'Sew first, cut after: clip with the points of small scissors, away from your hand.',
  front: 'Front facings',
  pressFront: says`Seam first as it lies, then turned, the front rolled a hair over the facing.`,
  backZip: 'Centre-back seam and its zip',
  centre: (piece: PieceId) => `Centre seam of the ${PIECE_WORDS[piece]}`,
  zipLong: (long: Mm) => says`The opening is ${long} long.`,
  zipTry: 'Try the zip once before the ends are covered.',
  sideZip: 'Zip in the left side',
  sideOpen: (long: Mm) => says`The left side was left open for ${long}.`,
  sideSet: says`Press its allowances under on the seam line and set the zip.`,
  leftOnly: 'Left side only.',
  buttons: 'Buttonholes and buttons',
  tryButtonhole: says`Try one buttonhole on a scrap of the same layers.`,
  placeButtons: says`Buttonholes on the right front, on the centre line; buttons on the left.`,
  pinAcross: 'A pin across the end of each buttonhole stops the blade.',
  keyholeButton: 'Button of the keyhole',
  sewKeyholeButton: says`Sew the button to the neck edge opposite the loop.`,
  loop: 'Loop and button at the back neck',
  sewLoop: says`Sew the loop to one edge at the top and the button to the other.`,
}

export const SEAM_WORDS = {
  seams: (edge: EdgeName, finish: string) => `${capital(EDGE_WORDS[edge])}s: ${finish}`,
  ofPiece: (edge: EdgeName, piece: PieceId) =>
    `${capital(EDGE_WORDS[edge])} of the ${PIECE_WORDS[piece]}`,
  pressOver: says`Towards the back, before anything crosses it.`,
  overarmTape: 'It runs off the straight grain: sew a narrow tape in with it near the neck.',
  neck: (finish: string) => `Neck: ${finish}`,
  neckFacing: 'Neck: shaped facing',
  pressNeck: says`Over a rounded cushion, the edge rolled a hair to the inside.`,
  hangSleeves: 'Let the sleeve edges hang',
  hangADay: says`Hang it on a form or a hanger for a day and a night.`,
  measureSleeveEdge: says`Measure the sleeve edge again from the side neck, mark it to the drafted length and cut what has dropped.`,
  /** @param from where its centre lies; before the side neck where that is less than nothing */
  radius: (piece: PieceId, from: Mm, radius: Mm) => [
    `${capital(PIECE_WORDS[piece])}: `,
    ...(from < 0
      ? says`from a point in line with the overarm seam, ${mm(-from)} before the side neck, `
      : from === 0
        ? says`from the side neck `
        : says`from a point on the overarm seam, ${from} from the side neck, `),
    ...says`the edge was drafted at ${radius} all round, as far as the corner at the underarm.`,
  ],
  cutDropped: says`Measure that radius again at every hand’s width, mark it and cut what has dropped.`,
  drafted: (long: Mm, edge: EdgeName) => [
    ...says`Drafted: ${long} along the `,
    `${EDGE_WORDS[edge]}.`,
  ],
  biasDrops: 'Bias drops unevenly: measure both sleeves at every hand’s width.',
  hangSkirt: 'Let the skirt hang',
  hangByTheWaist: says`Hang it by the waist, on a form or clipped to a hanger, for a day and a night.`,
  measureHem: says`Measure the radius of the hem again from the waist seam, mark it and cut what has dropped.`,
  draftedRound: (long: Mm) => says`Drafted: ${long} from the waist seam, all round.`,
  skirtDrops: 'It drops most half way between centre and side: measure at every hand’s width.',
  sleeveCatches: 'A wide sleeve catches: keep it from flame, hob, turning machine and drill.',
  leaveOpen: (long: Mm) => says`Leave the left side open for ${long}, as marked.`,
  pressSide: says`Along the seam first, then towards the back or open.`,
  sideAndUnderarm: 'Side and underarm in one',
  underarmTight:
    'Where the underarm turns tightly: a second row close by, for a finger’s length on both sides, then clip to it.',
  aboveVent: (open: Mm) =>
    says`Sew down to the mark of the vent and fasten off; the last ${open} stay open.`,
  skirtSides: 'Side seams of the skirt',
  waist: (finish: string) => `Waist seam: ${finish}`,
  pressWaist: says`Towards the bodice.`,
  waistTape:
    'Match centres, sides and darts first. Sew a tape in with it, so that it keeps its length.',
  sleeveSeams: 'Sleeve seams',
  setSleeves: 'Set the sleeves',
  easeRows: (inner: Mm, outer: Mm) =>
    says`Two ease rows over the cap between the notches, ${inner} and ${outer} outside the seam line, longest stitch.`,
  matchCap: says`Match underarm, notches and shoulder, draw the rows up until the cap lies to the armhole, no pleat on the seam line.`,
  tackSleeves: 'Tack and try on before the machine: both sleeves to the same notches.',
  hem: (finish: string) => `Hem: ${finish}`,
  hemAtVents: 'It ends at the vents: turn its ends in flush with their edges and sew them shut.',
  sleeveHems: (finish: string) => `Sleeve hems: ${finish}`,
}

/** Trying on, and the end. */
export const LAST_WORDS = {
  tacked: 'Tack shoulders and sides, try on',
  tackedHow: [
    says`Longest stitch, on the seam lines. Look at it from all sides, lift the arms, sit down.`,
    says`What is changed here is changed on the draft too, before anything is sewn for good.`,
  ],
  hem: 'Try on and mark the hem',
  hemHow: [
    says`Wear what is worn with it, stand straight, have the hem marked from the floor or lay it level on a table.`,
  ],
  pins: 'Pins point away from you, none at the neck or under the arm. Count them when it is off.',
  pinShut: 'Pin the opening shut on its line.',
  press: 'Last press',
  pressHow: [
    says`Take out every tacking thread and count the pins.`,
    says`Press once more, wrong side first.`,
  ],
  iron: 'The iron burns cloth and skin. Try its heat on a scrap.',
}
