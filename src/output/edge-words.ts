/** The edges of a draft in words: how each is finished, how far its cutting line lies outside. */
import type { Draft } from '../draft/draft.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import type { Mm } from '../units/length.ts'
import { atEdge, edgeGroups, type ByEdge, type EdgeGroup } from './by-edge.ts'
import { MUSLIN_ALLOWANCES, type Allowances } from './allowance.ts'
import { EDGE_LINES } from './edge.words.ts'
import { finishAs } from './finish.ts'
import type { Finishes } from './finishes.ts'
import { passSentence } from './pass.ts'

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
    if (by === 0) return EDGE_LINES.none(group.words)
    return EDGE_LINES.width(group.words, formatLength(by, units), {
      ...(finishes && { finish: finishAs(of(finishes, group), by).words }),
      ...(group.name === 'hem' &&
        hemDepth !== undefined && { twice: formatLength(hemDepth, units) }),
    })
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
  return [
    ...some.map((group) =>
      EDGE_LINES.mark(group.words, formatLength(of(allowances, group), units)),
    ),
    ...(none.length > 0 ? [EDGE_LINES.onTheLine(none.map(({ words }) => words))] : []),
    EDGE_LINES.corners(hemDepth !== undefined),
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
    return [EDGE_LINES.finished(group.words, finish.words, passes)]
  })
