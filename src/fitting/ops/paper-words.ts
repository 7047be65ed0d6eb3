/**
 * An operation as work on paper that is already there: what to cut or fold, from where to where,
 * by how much, then tape and draw anew. Places are measured on the paper as it lies. Source:
 * slash, spread, overlap and pivot of published alterations; common practice.
 */
import { pieceOf, type Draft } from '../../draft/draft.ts'
import { edge, type Piece } from '../../draft/piece.ts'
import { DART_WORDS, EDGE_WORDS } from '../../draft/piece.words.ts'
import { pathLength } from '../../geometry/length.ts'
import { pathEnd, pathStart } from '../../geometry/path.ts'
import { distance } from '../../geometry/point.ts'
import { formatLength, type UnitChoice } from '../../units/format.ts'
import { mm } from '../../units/length.ts'
import { armEdge, onNeck, overEdge, pivotOf, sideMouth } from '../landmarks.ts'
import { hingeAt, levelOf } from './across.ts'
import { wedgeAt } from './closing.ts'
import { acrossPoint } from './moves.ts'
import type { Operation } from './operation.ts'

export function paperWords(op: Operation, before: Draft, units: UnitChoice): readonly string[] {
  const say = (x: number): string => formatLength(mm(Math.abs(x)), units)
  const half = (id: 'back' | 'front'): Piece => pieceOf(before, id)
  switch (op.op) {
    case 'ROT': {
      const piece = half(op.piece)
      const long = pathLength(edge(piece, op.edge).path)
      const from = op.edge === 'neck' ? 'the fold' : 'the underarm'
      const pivot = op.piece === 'front' ? 'bust tip' : 'blade point'
      const across = wedgeAt(piece, op)?.across ?? op.width
      const slant = Math.abs(across - Math.abs(op.width)) > SLANT_TOLD
      const loses = slant
        ? ` The edge runs slantwise there and ${op.width > 0 ? 'loses' : 'gains'} ${say(op.width)} of its length.`
        : ''
      const act = op.width > 0 ? `Fold out ${say(across)} there` : `Open it by ${say(across)}`
      return [
        `Mark P on the ${EDGE_WORDS[op.edge]}, ${say(long * op.along)} from ${from}. Rule P to the ${pivot}. Cut the ${DART_WORDS[op.into]} open to the ${pivot}, not through it.`,
        `${act}, nothing at the ${pivot}; the ${DART_WORDS[op.into]} takes it up. Tape, and draw the edge smooth.${loses}`,
      ]
    }
    case 'WEDGE': {
      const piece = half(op.piece)
      const y = levelOf(piece, op.level)
      const far = y === undefined ? undefined : hingeAt(piece, y, op.level)
      if (y === undefined || far === undefined) return []
      const act = op.by > 0 ? `Spread it by ${say(op.by)}` : `Overlap it by ${say(op.by)}`
      return [
        `Cut square from the centre, ${say(y - onNeck(piece, 0).y)} below the neck edge, ${say(far)} to the far edge, not through it.`,
        `${act} at the centre, nothing at the far edge. Tape. Rule the centre straight again and slide each level back to it, so that the widths stay.`,
      ]
    }
    case 'DROP': {
      const front = half('front')
      const mouth = sideMouth(front)
      const apex = pivotOf(front)
      return [
        `Cut from the centre front square to the bust tip, ${say(apex.x)}, and on along the axis of the side dart${mouth ? `, ${say(distance(apex, mouth))}` : ''}, to the side.`,
        `Move the lower part ${op.by > 0 ? 'down' : 'up'} by ${say(op.by)}, the centre in one line. Tape paper behind; the side dart is that much ${op.by > 0 ? 'wider' : 'narrower'}.`,
      ]
    }
    case 'BUST': {
      const front = half('front')
      const arm = EDGE_WORDS[armEdge(front)]
      const act = op.by > 0 ? 'Spread' : 'Overlap'
      return [
        `Cut up the waist dart to the bust tip and on to the ${arm}, a third of it up from the underarm, not through it. Cut along the axis of the side dart to the bust tip.`,
        `${act} by ${say(op.by)} at the bust tip, the two edges of the upright cut even. Cut across from the centre front to the bust tip and move the lower centre until it ends level. Tape, and draw the ${arm} smooth.`,
      ]
    }
    case 'MOVE':
      return (op.piece === 'both' ? (['front', 'back'] as const) : [op.piece]).map(
        (id) => `${capital(id)}: ${movedWords(op, half(id), say)}`,
      )
    case 'SWAP': {
      const name = EDGE_WORDS[overEdge(half('front'))]
      const [less, more] = op.by > 0 ? ['front', 'back'] : ['back', 'front']
      return [
        `Mark ${say(op.by)} below the outer end of the ${name} on the ${less}, and as much above it on the ${more}. Rule both to the side neck.`,
      ]
    }
    case 'STRIP': {
      const piece = half(op.piece)
      const [tip, across] = [pathStart(edge(piece, 'armhole').path), acrossPoint(piece)]
      const paper = op.by > 0 ? 'Tape paper behind the armhole. ' : ''
      return [
        `${paper}Rule a level ${say(across.y - tip.y)} below the shoulder tip; the armhole meets it ${say(across.x)} from the centre. Mark ${say(op.by)} ${op.by > 0 ? 'outside' : 'inside'} it there.`,
        'Draw the armhole through the mark, nothing at the shoulder tip and nothing at the underarm.',
      ]
    }
    case 'GROUP':
      return [
        `Cut a box round the ${DART_WORDS[op.dart]} and slide it${op.down === 0 ? '' : ` ${say(op.down)} ${op.down > 0 ? 'down' : 'up'}`}${op.out === 0 ? '' : ` ${say(op.out)} ${op.out > 0 ? 'out' : 'in'}`}; fill the gap. Draw the seam with the dart folded.`,
      ]
    case 'DARTLEN':
      return [
        `Mark the new tip of the ${DART_WORDS[op.dart]} ${say(op.by)} ${op.by > 0 ? 'back from' : 'past'} the old one on its axis. Rule both legs to it.`,
      ]
    case 'DARTSHAPE':
      return [
        `Mark ${say(op.by / 2)} ${op.by > 0 ? 'outside' : 'inside'} either leg of the ${DART_WORDS[op.dart]} at the waist. Rule the legs through the marks to both tips.`,
      ]
    case 'SPLIT':
      return [
        `Cut the side dart and the waist dart open to the bust tip, not through it. Close the waist dart by ${say(op.width)} at the waist; the side dart opens. Tape.`,
      ]
  }
}

/** A wedge so much wider than what the edge loses is told, mm. Judgement. */
const SLANT_TOLD = 1

/** A named point: where it is now, how it goes, and which lines are drawn to it. */
function movedWords(
  { point, out, down, carries }: Extract<Operation, { op: 'MOVE' }>,
  piece: Piece,
  say: (x: number) => string,
): string {
  const over = edge(piece, overEdge(piece)).path
  const [neck, tip] = [pathStart(over), pathEnd(over)]
  const seam = EDGE_WORDS[overEdge(piece)]
  const places = [
    ...(out === 0 ? [] : [`${say(out)} ${out > 0 ? 'farther out' : 'in'} along the ${seam}`]),
    ...(down === 0
      ? []
      : [`${say(down)} ${down > 0 ? 'below' : 'above'} it, square to the ${seam}`]),
  ].join(' and ')
  switch (point) {
    case 'shoulderTip': {
      const under = carries
        ? ` Mark the underarm ${say(down)} ${down > 0 ? 'lower' : 'higher'} on the side as well.`
        : ''
      return `from the shoulder tip, ${say(distance(neck, tip))} from the side neck, mark ${places}. Rule the seam to the mark.${under} Draw the armhole from the mark, smooth to the level across, ${say(acrossPoint(piece).y - tip.y)} below the old tip.`
    }
    case 'sideNeck':
      return `from the side neck mark ${places}. Rule the seam from there to its other end, ${say(distance(neck, tip))} from the old side neck. Draw the neck to the centre, square at the fold.`
    case 'neckAtCentre':
      return `on the centre mark ${say(down)} ${down > 0 ? 'below' : 'above'} the neck edge. Draw the neck from the mark, square at the centre, to the side neck, ${say(neck.x)} out.`
    case 'underarm': {
      const at = [
        ...(down === 0 ? [] : [`${say(down)} ${down > 0 ? 'lower' : 'higher'}`]),
        ...(out === 0 ? [] : [`${say(out)} farther ${out > 0 ? 'out' : 'in'}`]),
      ].join(' and ')
      const arm = EDGE_WORDS[armEdge(piece)]
      const corner = pathEnd(edge(piece, armEdge(piece)).path)
      return `mark the underarm ${at}; it lies ${say(corner.x)} from the centre now. Draw the ${arm} from the mark, square to the side, to the level across, ${say(corner.y - acrossPoint(piece).y)} above the old underarm, and the side to the mark.`
    }
  }
}
const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1)
