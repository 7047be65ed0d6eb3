/** What is cut, spread, folded and drawn on paper for an operation, sentence by sentence. */
import { DART_WORDS, EDGE_WORDS } from '../../draft/piece.words.ts'
import type { AnyDart, EdgeName, HalfId } from '../../draft/piece.ts'
import { capital } from '../../units/capital.ts'
import type { Operation } from './operation.ts'

type Turn = Extract<Operation, { op: 'ROT' }>
/** So far, and which way. */
export interface Down {
  readonly by: string
  readonly down: boolean
}
export interface Out {
  readonly by: string
  readonly out: boolean
}
const pivot = ({ piece }: Turn): string => (piece === 'front' ? 'bust tip' : 'blade point')

export const PAPER_WORDS = {
  rule: (op: Turn, along: string) =>
    `Mark P on the ${EDGE_WORDS[op.edge]}, ${along} from ${op.edge === 'neck' ? 'the fold' : 'the underarm'}. Rule P to the ${pivot(op)}. Cut the ${DART_WORDS[op.into]} open to the ${pivot(op)}, not through it.`,
  /** @param loses what the edge loses, where that is not the width of the wedge */
  turn: (op: Turn, across: string, loses: string | undefined) => {
    const act = op.width > 0 ? `Fold out ${across} there` : `Open it by ${across}`
    const slant =
      loses === undefined
        ? ''
        : ` The edge runs slantwise there and ${op.width > 0 ? 'loses' : 'gains'} ${loses} of its length.`
    return `${act}, nothing at the ${pivot(op)}; the ${DART_WORDS[op.into]} takes it up. Tape, and draw the edge smooth.${slant}`
  },
  cutToHinge: (below: string, far: string) =>
    `Cut square from the centre, ${below} below the neck edge, ${far} to the far edge, not through it.`,
  wedge: (longer: boolean, by: string) =>
    `${longer ? 'Spread it' : 'Overlap it'} by ${by} at the centre, nothing at the far edge. Tape. Rule the centre straight again and slide each level back to it, so that the widths stay.`,
  cutAlongDart: (apex: string, along: string | undefined) =>
    `Cut from the centre front square to the bust tip, ${apex}, and on along the axis of the side dart${along === undefined ? '' : `, ${along}`}, to the side.`,
  drop: (longer: boolean, by: string) =>
    `Move the lower part ${longer ? 'down' : 'up'} by ${by}, the centre in one line. Tape paper behind; the side dart is that much ${longer ? 'wider' : 'narrower'}.`,
  cutForBust: (arm: EdgeName) =>
    `Cut up the waist dart to the bust tip and on to the ${EDGE_WORDS[arm]}, a third of it up from the underarm, not through it. Cut along the axis of the side dart to the bust tip.`,
  bust: (fuller: boolean, by: string, arm: EdgeName) =>
    `${fuller ? 'Spread' : 'Overlap'} by ${by} at the bust tip, the two edges of the upright cut even. Cut across from the centre front to the bust tip and move the lower centre until it ends level. Tape, and draw the ${EDGE_WORDS[arm]} smooth.`,
  onPiece: (piece: HalfId, work: string) => `${capital(piece)}: ${work}`,
  swap: (seam: EdgeName, less: HalfId, by: string) =>
    `Mark ${by} below the outer end of the ${EDGE_WORDS[seam]} on the ${less}, and as much above it on the ${less === 'front' ? 'back' : 'front'}. Rule both to the side neck.`,
  strip: (wider: boolean, level: string, across: string, by: string) =>
    `${wider ? 'Tape paper behind the armhole. ' : ''}Rule a level ${level} below the shoulder tip; the armhole meets it ${across} from the centre. Mark ${by} ${wider ? 'outside' : 'inside'} it there.`,
  stripLine:
    'Draw the armhole through the mark, nothing at the shoulder tip and nothing at the underarm.',
  slide: (dart: AnyDart, down: Down | undefined, out: Out | undefined) =>
    `Cut a box round the ${DART_WORDS[dart]} and slide it${down ? ` ${down.by} ${down.down ? 'down' : 'up'}` : ''}${out ? ` ${out.by} ${out.out ? 'out' : 'in'}` : ''}; fill the gap. Draw the seam with the dart folded.`,
  dartTip: (dart: AnyDart, by: string, back: boolean) =>
    `Mark the new tip of the ${DART_WORDS[dart]} ${by} ${back ? 'back from' : 'past'} the old one on its axis. Rule both legs to it.`,
  dartLegs: (dart: AnyDart, by: string, outside: boolean) =>
    `Mark ${by} ${outside ? 'outside' : 'inside'} either leg of the ${DART_WORDS[dart]} at the waist. Rule the legs through the marks to both tips.`,
  split: (width: string) =>
    `Cut the side dart and the waist dart open to the bust tip, not through it. Close the waist dart by ${width} at the waist; the side dart opens. Tape.`,
  /** A place beside the end of a seam: along it, and square to it. */
  alongAndSquare: (seam: EdgeName, out: Out | undefined, down: Down | undefined) =>
    [
      ...(out ? [`${out.by} ${out.out ? 'farther out' : 'in'} along the ${EDGE_WORDS[seam]}`] : []),
      ...(down
        ? [`${down.by} ${down.down ? 'below' : 'above'} it, square to the ${EDGE_WORDS[seam]}`]
        : []),
    ].join(' and '),
  shoulderTip: (seamLong: string, places: string, underarm: Down | undefined, level: string) =>
    `from the shoulder tip, ${seamLong} from the side neck, mark ${places}. Rule the seam to the mark.${
      underarm
        ? ` Mark the underarm ${underarm.by} ${underarm.down ? 'lower' : 'higher'} on the side as well.`
        : ''
    } Draw the armhole from the mark, smooth to the level across, ${level} below the old tip.`,
  sideNeck: (places: string, seamLong: string) =>
    `from the side neck mark ${places}. Rule the seam from there to its other end, ${seamLong} from the old side neck. Draw the neck to the centre, square at the fold.`,
  neckAtCentre: ({ by, down }: Down, neckOut: string) =>
    `on the centre mark ${by} ${down ? 'below' : 'above'} the neck edge. Draw the neck from the mark, square at the centre, to the side neck, ${neckOut} out.`,
  underarm: (
    down: Down | undefined,
    out: Out | undefined,
    fromCentre: string,
    arm: EdgeName,
    level: string,
  ) => {
    const at = [
      ...(down ? [`${down.by} ${down.down ? 'lower' : 'higher'}`] : []),
      ...(out ? [`${out.by} farther ${out.out ? 'out' : 'in'}`] : []),
    ].join(' and ')
    return `mark the underarm ${at}; it lies ${fromCentre} from the centre now. Draw the ${EDGE_WORDS[arm]} from the mark, square to the side, to the level across, ${level} above the old underarm, and the side to the mark.`
  },
}
