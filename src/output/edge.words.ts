/** Edges in words: their names where one name is not enough, what lies beyond them, what goes there. */
import { capital } from '../units/capital.ts'
import type { EdgeName, PairedId } from '../draft/piece.ts'
import { EDGE_WORDS, PIECE_WORDS } from '../draft/piece.words.ts'
import { FINISH_NAMES } from './finish.words.ts'

type FinishId = keyof typeof FINISH_NAMES
/** "centre of the front and side front". */
export const EDGE_OF = {
  pieces: (edge: EdgeName, pieces: readonly PairedId[]) =>
    `${EDGE_WORDS[edge]} of the ${[...new Set(pieces.map((id) => PIECE_WORDS[id]))].join(' and ')}`,
}

/** Lines for page one and the steps; `group` is the edge in words. */
export const EDGE_LINES = {
  none: (group: string) => `${group}: none, cut on the line`,
  /** "side seam: French seam, 1.6 cm"; `twice` is the depth of a hem that is turned twice. */
  width: (
    group: string,
    by: string,
    { finish, twice }: { readonly finish?: string; readonly twice?: string },
  ) =>
    `${group}: ${finish === undefined ? '' : `${finish}, `}${by}${twice === undefined ? '' : `, turned twice ${twice} deep`}`,
  mark: (group: string, by: string) =>
    `${capital(group)}: mark ${by} outside it, square to the line, at every finger’s width, and draw through.`,
  onTheLine: (groups: readonly string[]) => `Cut on the line: ${groups.join(', ')}.`,
  corners: (turnedTwice: boolean) =>
    `At a corner carry both lines on until they meet. Fold the paper up ${turnedTwice ? 'as the hem is turned, twice,' : 'on the hem line'} and cut the side through all layers, so that the hem lies flat when it is turned. A dart on an edge is folded before its end is cut.`,
  finished: (group: string, finish: string, passes: string) =>
    `${capital(group)}, ${finish}. ${passes}`,
}

/** Why an allowance cannot be. */
export const ALLOWANCE_WORDS = {
  noEdge: (name: string, names: readonly string[]) =>
    `"${name}" is no edge of this piece. Name one of ${names.join(', ')}.`,
  noNumber: 'no number',
  outside: (edge: EdgeName, said: string, widest: string) =>
    `The allowance at the ${EDGE_WORDS[edge]} would be ${said}; give 0 to ${widest}.`,
  onFold: (edge: EdgeName) =>
    `The ${EDGE_WORDS[edge]} lies on the fold and has no allowance. Give 0 there.`,
  crosses: (edge: EdgeName) =>
    `The allowance at the ${EDGE_WORDS[edge]} is wider than its curve can take: the cutting line would cross itself. Give less there.`,
}

/** Why a finish does not go on an edge. */
export const MISFIT_WORDS = {
  instead: (finish: FinishId) => `What goes there: ${FINISH_NAMES[finish]}.`,
  tooLong: (
    finish: FinishId,
    edge: EdgeName,
    n: {
      readonly turned: string
      readonly radius: string
      readonly share: string
      readonly most: string
    },
  ) =>
    `The ${FINISH_NAMES[finish]} turns up ${n.turned} at the ${EDGE_WORDS[edge]}, whose tightest curve has a radius of ${n.radius}: its raw edge is ${n.share} longer than the line it is turned to, and more than ${n.most} does not lie flat.`,
  deepest: (depth: string) => `Folded twice, at most ${depth} deep would lie flat.`,
  tooTight: (finish: FinishId, edge: EdgeName, radius: string, least: string) =>
    `The tightest curve of the ${EDGE_WORDS[edge]} has a radius of ${radius}; a ${FINISH_NAMES[finish]} turns only curves of more than ${least}.`,
  tooHollow: (finish: FinishId, edge: EdgeName, turned: string, radius: string) =>
    `The ${FINISH_NAMES[finish]} turns up ${turned} at the ${EDGE_WORDS[edge]}, which is hollow with a radius of ${radius}: nothing is left of its raw edge to lay over.`,
}
