/** The edges of a draft in words: how each is finished, how far its cutting line lies outside. */
import type { Draft } from '../draft/draft.ts'
import { EDGE_WORDS, type EdgeName } from '../draft/piece.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import type { Mm } from '../units/length.ts'
import { MUSLIN_ALLOWANCES, type Allowances } from './allowance.ts'
import { finishAs, passSentence } from './finish.ts'
import type { Finishes } from './finishes.ts'

/** What is told of the edges; without finishes only how wide they are. */
export interface EdgeTold {
  readonly allowances?: Allowances
  readonly finishes?: Finishes
  /** Finished depth of a hem that is turned twice. */
  readonly hemDepth?: Mm
}

/** Each edge of this garment once; what is cut as drawn has none and its fold has none. */
export function openEdges(pieces: Draft['pieces']): readonly EdgeName[] {
  const edges = pieces.flatMap((p) => (p.cutAsDrawn ? [] : p.edges))
  return [...new Set(edges.flatMap((e) => (e.role === 'fold' ? [] : [e.name])))]
}

/** "side seam: French seam, 1.6 cm", one line an edge, for page one. */
export const edgeLines = (
  pieces: Draft['pieces'],
  { allowances = MUSLIN_ALLOWANCES, finishes, hemDepth }: EdgeTold,
  units: UnitChoice,
): string[] =>
  openEdges(pieces).map((name) => {
    const by = allowances[name]
    if (by === 0) return `${EDGE_WORDS[name]}: none, cut on the line`
    const finish = finishes ? `${finishAs(finishes[name], by).words}, ` : ''
    const twice =
      name === 'hem' && hemDepth !== undefined
        ? `, turned twice ${formatLength(hemDepth, units)} deep`
        : ''
    return `${EDGE_WORDS[name]}: ${finish}${formatLength(by, units)}${twice}`
  })

/** The cutting line by ruler and pencil. */
export function pencilLines(
  pieces: Draft['pieces'],
  { allowances = MUSLIN_ALLOWANCES, hemDepth }: EdgeTold,
  units: UnitChoice,
): string[] {
  const edges = openEdges(pieces)
  const some = edges.filter((name) => allowances[name] > 0)
  const none = edges.filter((name) => allowances[name] === 0)
  const turned = hemDepth === undefined ? 'on the hem line' : 'as the hem is turned, twice,'
  return [
    ...some.map(
      (name) =>
        `${capital(EDGE_WORDS[name])}: mark ${formatLength(allowances[name], units)} outside it, square to the line, at every finger’s width, and draw through.`,
    ),
    ...(none.length > 0
      ? [`Cut on the line: ${none.map((name) => EDGE_WORDS[name]).join(', ')}.`]
      : []),
    `At a corner carry both lines on until they meet. Fold the paper up ${turned} and cut the side through all layers, so that the hem lies flat when it is turned. A dart on an edge is folded before its end is cut.`,
  ]
}

/** How each edge is finished, its passes in order. */
export const finishLines = (
  pieces: Draft['pieces'],
  { allowances = MUSLIN_ALLOWANCES, finishes }: EdgeTold,
  units: UnitChoice,
): string[] =>
  openEdges(pieces).flatMap((name) => {
    const finish = finishes && finishAs(finishes[name], allowances[name])
    if (!finish || finish.passes.length === 0) return []
    const passes = finish.passes.map((one) => passSentence(one, units)).join(' ')
    return [`${capital(EDGE_WORDS[name])}, ${finish.words}. ${passes}`]
  })

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)
