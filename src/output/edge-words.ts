/** The edges of a draft in words: how each is finished, how far its cutting line lies outside. */
import type { Draft } from '../draft/draft.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import type { Mm } from '../units/length.ts'
import { atEdge, edgeGroups, type ByEdge, type EdgeGroup } from './by-edge.ts'
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

/** What a group of edges has: all of them have the same. */
function of<T>(all: ByEdge<T>, { name, pieces: [piece] }: EdgeGroup): T {
  return piece ? atEdge(all, piece, name) : all[name]
}

/** "side seam: French seam, 1.6 cm", one line an edge, for page one. */
export const edgeLines = (
  pieces: Draft['pieces'],
  { allowances = MUSLIN_ALLOWANCES, finishes, hemDepth }: EdgeTold,
  units: UnitChoice,
): string[] =>
  edgeGroups(pieces).map((group) => {
    const by = of(allowances, group)
    if (by === 0) return `${group.words}: none, cut on the line`
    const finish = finishes ? `${finishAs(of(finishes, group), by).words}, ` : ''
    const twice =
      group.name === 'hem' && hemDepth !== undefined
        ? `, turned twice ${formatLength(hemDepth, units)} deep`
        : ''
    return `${group.words}: ${finish}${formatLength(by, units)}${twice}`
  })

/** The cutting line by ruler and pencil. */
export function pencilLines(
  pieces: Draft['pieces'],
  { allowances = MUSLIN_ALLOWANCES, hemDepth }: EdgeTold,
  units: UnitChoice,
): string[] {
  const edges = edgeGroups(pieces)
  const some = edges.filter((group) => of(allowances, group) > 0)
  const none = edges.filter((group) => of(allowances, group) === 0)
  const turned = hemDepth === undefined ? 'on the hem line' : 'as the hem is turned, twice,'
  return [
    ...some.map(
      (group) =>
        `${capital(group.words)}: mark ${formatLength(of(allowances, group), units)} outside it, square to the line, at every finger’s width, and draw through.`,
    ),
    ...(none.length > 0 ? [`Cut on the line: ${none.map(({ words }) => words).join(', ')}.`] : []),
    `At a corner carry both lines on until they meet. Fold the paper up ${turned} and cut the side through all layers, so that the hem lies flat when it is turned. A dart on an edge is folded before its end is cut.`,
  ]
}

/** How each edge is finished, its passes in order. */
export const finishLines = (
  pieces: Draft['pieces'],
  { allowances = MUSLIN_ALLOWANCES, finishes }: EdgeTold,
  units: UnitChoice,
): string[] =>
  edgeGroups(pieces).flatMap((group) => {
    const finish = finishes && finishAs(of(finishes, group), of(allowances, group))
    if (!finish || finish.passes.length === 0) return []
    const passes = finish.passes.map((one) => passSentence(one, units)).join(' ')
    return [`${capital(group.words)}, ${finish.words}. ${passes}`]
  })

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)
