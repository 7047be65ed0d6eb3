/** Cloth in words: how it lies, where pieces lie on it, what is bought, what is cut and marked. */
import { capital } from '../units/capital.ts'
import type { AnyDart, EdgeName, PieceId } from '../draft/piece.ts'
import { DART_WORDS, EDGE_WORDS } from '../draft/piece.words.ts'

/** A piece by its id, and as it is called on the paper. */
interface PieceSaid {
  readonly id: PieceId
  readonly words: string
}
const named = ({ words }: PieceSaid): string => words.toLowerCase()

/** Ways to lay cloth. */
export const MANNER_WORDS = {
  lengthwise: 'folded lengthwise',
  single: 'single layer',
  crosswise: 'folded crosswise',
  partly: 'partly folded lengthwise',
}

/** Why the garment cannot be laid this way. */
export const LAY_WORDS = {
  aboveBorder: (piece: PieceSaid) =>
    `The ${named(piece)} is longer than there is cloth above the border. Take a wider cloth, or let the hem lie nearer the selvedge.`,
  wider: (piece: PieceSaid) =>
    `The ${named(piece)} is wider than the cloth. Take a wider cloth, or give the piece a seam.`,
  widerSo: (piece: PieceSaid, manner: keyof typeof MANNER_WORDS) =>
    `The ${named(piece)} is wider than the cloth ${MANNER_WORDS[manner]}. Lay the cloth another way.`,
  repeat: (piece: PieceSaid) =>
    `The ${named(piece)} is so wide that it cannot be moved across until its centre meets the repeat. Take a wider cloth, lay it another way, or match the repeat along the cloth only.`,
  crosswiseOneWay:
    'Folded crosswise the upper layer runs the other way. Lay this cloth single or folded lengthwise.',
  nothingTwice: 'Nothing is cut twice, so a crosswise fold gains nothing.',
  nothingOnFold: 'No piece lies on a fold, so the cloth is not folded.',
  allOnFold: 'Every piece lies on the fold, so the cloth is folded whole.',
  foldTakesAll: 'The fold takes the whole width. Fold the cloth lengthwise.',
  bordered: 'A border runs along one selvedge, so this cloth is laid in a single layer.',
  noHem: 'No piece ends in a hem, so nothing lies on the border.',
  hemOverSelvedge:
    'The hem, turned up, would reach over the selvedge. Let the finished hem lie farther in, or choose a narrower hem.',
}

/** A stretch of cloth lying in one way. */
export const SECTION_WORDS = {
  single: 'Single layer, right side up',
  foldedAlong: 'Folded lengthwise, right sides together, selvedge on selvedge',
  foldedAcross: 'Folded crosswise, right sides together, cut end on cut end',
  partlyFolded: 'Folded lengthwise only as far as the half pieces need',
}

/** Where pieces lie, measured with a tape. */
export const PLACE_WORDS = {
  section: (
    layers: keyof typeof SECTION_WORDS,
    from: string,
    to: string,
    { double, border }: { readonly double?: string; readonly border?: string },
  ) =>
    [
      `${SECTION_WORDS[layers]}: from ${from} to ${to} along the cloth.`,
      ...(double === undefined ? [] : [`Double for ${double} from the fold.`]),
      ...(border === undefined
        ? []
        : [
            `The border lies along the selvedge that is measured from, ${border} deep; grain arrows run across the cloth.`,
          ]),
    ].join(' '),
  piece: (p: {
    readonly number: number
    readonly words: string
    readonly cut: 'onFold' | 'opened' | 'bothLayers' | 'once'
    readonly over: boolean
    readonly aslant: boolean
    readonly way?: 'toBorder' | 'away' | 'towards'
    readonly across?: { readonly by: string; readonly from: 'fold' | 'selvedge' }
    readonly begins: string
  }) => {
    const how = [
      HOW_CUT[p.cut],
      ...(p.over ? ['turned over'] : []),
      ...(p.aslant ? ['aslant, its grain arrow along the cloth'] : []),
      ...(p.way ? [WAY[p.way]] : []),
    ].join(', ')
    const across = p.across ? `${p.across.by} from the ${p.across.from}, ` : ''
    return `${p.number} ${p.words}: ${how}; ${across}begins ${p.begins} from the cut end.`
  },
  figure: (across: string, both: boolean) =>
    `${across}. ${both ? 'A selvedge on either side' : 'Fold at the left'}`,
}
const HOW_CUT = {
  onFold: 'centre on the fold, cut through both layers',
  opened: 'opened out, cut once',
  bothLayers: 'cut through both layers',
  once: 'cut once',
}
const WAY = {
  toBorder: 'lower end towards the border',
  away: 'upper end away from the start',
  towards: 'upper end towards the start',
}

/** Where stripes are matched. */
export const MATCH_AT_WORDS = {
  waist: 'waist at the side',
  underarm: 'underarm at the side',
  hem: 'hem at the side',
}
type Level = { readonly at: keyof typeof MATCH_AT_WORDS; readonly skirt: boolean }
const level = ({ at, skirt }: Level): string =>
  `the ${MATCH_AT_WORDS[at]}${skirt ? ' of the skirt' : ''}`

export const MISSED_WORDS = {
  meet: (levels: readonly Level[]) =>
    `Stripes of back and front meet at ${levels.map(level).join(', ')}.`,
  miss: (levels: readonly (Level & { readonly by: string })[]) =>
    `They miss each other ${levels.map((l) => `by ${l.by} at ${level(l)}`).join(', ')}.`,
  /** Where they miss somewhere. */
  choose:
    'A dart in the side takes up stripes: above and below it they cannot both meet. Have them meet where it shows most; an arm covers the underarm.',
}

/** How the cloth is laid for its stripes before the pieces. */
export const STRIPE_WORDS = {
  begin: (at: keyof typeof MATCH_AT_WORDS, sleeve: boolean) =>
    `Begin in the middle of a stripe: back and front then lie in the middle of one too, at the ${MATCH_AT_WORDS[at]}${sleeve ? ', and the underarm of the sleeve lies on the stripe of the underarm it is sewn to' : ''}.`,
  beginMotif: 'Begin in the middle of a motif: the centre of every piece then lies in one too.',
  foldOn:
    'Fold along the middle of a stripe: centres on the fold lie on it, the others on another.',
  fromSelvedge: (selvedge: string) =>
    `Across, the middle of a stripe is reckoned ${selvedge} from the selvedge. Where yours lies elsewhere, give its distance as the selvedge that is not used.`,
  pin: 'Pin stripe on stripe through both layers before you cut.',
}

/** The cutting plan on paper. */
export const CLOTH_PLAN = {
  title: 'Cutting plan',
  on: (width: string, manner: keyof typeof MANNER_WORDS, length: string, oneWay: boolean) =>
    `On a cloth ${width} wide, ${MANNER_WORDS[manner]}: the pieces lie on ${length}.${oneWay ? ' All one way.' : ''}`,
  where: 'Where each piece lies',
  nearest: 'To the nearest edge of each cutting line.',
  nearestAlong:
    'To the nearest edge of each cutting line. The grain arrow of every piece runs along the cloth.',
  repeat: (along: string | undefined, across: string | undefined) =>
    `Repeat ${[
      ...(along === undefined ? [] : [`${along} along`]),
      ...(across === undefined ? [] : [`${across} across`]),
    ].join(' and ')}.`,
  toBuy: (amount: string) => `To buy: ${amount}`,
  item: (words: string, length: string) => `${words}: ${length}`,
  otherWidths: 'On other widths:',
  otherWidth: (width: string, metres: string, yards: string) => `${width}: ${metres} or ${yards}`,
  cutList: 'Cut list',
  row: (piece: string, cut: string, interfacing: number) =>
    `${piece}: ${cut}${interfacing > 0 ? `; ${interfacing} of interfacing` : ''}.`,
  marks: 'Marks inside the cutting line',
  marksOf: (piece: string, marks: readonly string[]) => `${piece}: ${marks.join('; ')}.`,
  besides: 'Besides the cloth',
}

/** What an amount of cloth is made of. */
export const AMOUNT_WORDS = {
  layout: 'the layout',
  shrinkage: 'shrinkage',
  repeat: 'one repeat more, as the bolt may begin anywhere',
  straightening: 'straightening the ends',
  spare: 'to spare',
  upTo: { metre: 'up to the next 0.1 m', yard: 'up to the next ⅛ yd' },
}

/** What is marked inside the cutting line. */
export const MARKING_WORDS = {
  diamond: (dart: AnyDart) => `${DART_WORDS[dart]}: both tips and the mouth on either side`,
  edgeDart: (dart: AnyDart, edge: EdgeName) =>
    `${DART_WORDS[dart]}: the tip, and snip its mouth at the ${EDGE_WORDS[edge]}`,
  apex: 'apex',
  centre: 'centre on the fold: snip both ends',
}

/** What is bought besides cloth. */
export const NOTION_WORDS = {
  zip: (count: number, opening: string, sold: string) =>
    `${count} ${count === 1 ? 'zip' : 'zips'}: the opening is ${opening}, ask for ${sold}.`,
  biasStrip: (length: string, square: string) =>
    `Bias strip, bought or cut from the cloth: ${length}, or a square of ${square} cut round as one strip.`,
  buttons: (count: number) => `${count} buttons, no wider than the overlap.`,
  loopButton: (count: number) =>
    count === 1
      ? `${count} small button and a thread loop.`
      : `${count} small buttons and thread loops.`,
  cuffButtons: (count: number) => `${count} buttons for the cuffs, no wider than their overlap.`,
  thread: (length: string, reels: number, reel: string) =>
    `Sewing thread: about ${length}, ${reels} ${reels === 1 ? 'reel' : 'reels'} of ${reel}.`,
  interfacing: (width: string, amount: string, length: string, of: 'facings' | 'cuffs' | 'both') =>
    `Interfacing ${width} wide: ${amount} for the ${of === 'both' ? 'facings and cuffs' : of}, which lie on ${length}.`,
}

/**
 * What she might give up where the cloth does not suffice: in words of its own, and as a clause of a
 * sentence that names two.
 */
export const WAY_OUT_WORDS = {
  crosswiseFacings: {
    words: 'Lay the facings crosswise; they stretch a little differently there.',
    clause: 'lay the facings crosswise',
  },
  /** @param lengths of which each strip is joined; 0 where there is none to join */
  pieced: (lengths: 0 | 2 | 3, facings: boolean) => {
    const join = `join each bias strip of ${lengths === 2 ? 'two' : 'three'} lengths`
    return {
      words: [
        ...(lengths === 0 ? [] : [`${capital(join)}, seams on a thread.`]),
        ...(facings ? ['Give the facings a seam at their centre.'] : []),
      ].join(' '),
      clause: [
        ...(lengths === 0 ? [] : [join]),
        ...(facings ? ['give the facings a seam at their centre'] : []),
      ].join(', '),
    }
  },
  otherClothFacings: {
    words: 'Cut the facings and strips from another light cloth.',
    clause: 'cut the facings and strips from another light cloth',
  },
  centreBackSeam: {
    words: 'Give the back a seam down its centre.',
    clause: 'give the back a seam down its centre',
  },
}
/** Two ways out in one sentence. */
export const PAIR_WORDS = {
  both: (one: string, other: string) => `${capital(one)}, and ${other}.`,
}

/** The print run. */
export const RUN_WORDS = {
  round: (round: number) => `round ${round}`,
  sewing: 'Sewing plan',
  noLayout: 'No layout was found, so there is nothing to print.',
  cutting: 'Cutting plan, cut list, marks, what is bought',
  pieces: 'Pieces at true scale: measure both squares first',
  steps: 'Steps of the draft, edges and their finishes',
  list: 'This list',
  how: 'Print at 100 %, never fitted to the page. Cut nothing before both squares are measured.',
  pages: 'Pages of this file',
  part: (from: number, to: number, words: string) =>
    `${from === to ? `Page ${from}` : `Pages ${from} to ${to}`}: ${words}.`,
  notLaid: (piece: string, reason: string) => `${piece}: ${reason}`,
}
