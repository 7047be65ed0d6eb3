/**
 * An operation as work on paper that is already there: what to cut or fold, from where to where,
 * by how much, then tape and draw anew. Places are measured on the paper as it lies. Source:
 * slash, spread, overlap and pivot of published alterations; common practice.
 */
import { pieceOf, type Draft } from '../../draft/draft.ts'
import { DART_WORDS, EDGE_WORDS, edge, type Piece } from '../../draft/piece.ts'
import { pathLength } from '../../geometry/length.ts'
import { distance } from '../../geometry/point.ts'
import { formatLength, type UnitChoice } from '../../units/format.ts'
import { mm } from '../../units/length.ts'
import { armEdge, onNeck, overEdge, pivotOf, sideMouth } from '../landmarks.ts'
import { hingeAt, levelOf } from './across.ts'
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
      const act = op.width > 0 ? `Fold out ${say(op.width)} there` : `Open it by ${say(op.width)}`
      return [
        `Mark P on the ${EDGE_WORDS[op.edge]}, ${say(long * op.along)} from ${from}. Rule P to the ${pivot}. Cut the ${DART_WORDS[op.into]} open to the ${pivot}, not through it.`,
        `${act}, nothing at the ${pivot}; the ${DART_WORDS[op.into]} takes it up. Tape, and draw the edge smooth.`,
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
      return []
    case 'SWAP': {
      const name = EDGE_WORDS[overEdge(half('front'))]
      const [less, more] = op.by > 0 ? ['front', 'back'] : ['back', 'front']
      return [
        `Mark ${say(op.by)} below the outer end of the ${name} on the ${less}, and as much above it on the ${more}. Rule both to the side neck.`,
      ]
    }
    case 'STRIP':
      return []
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
