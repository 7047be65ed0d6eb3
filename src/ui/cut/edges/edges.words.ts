/** The edges on the Cut page: how each is finished and how much lies beyond it. */
import { capital } from '../../../units/capital.ts'
import type { EdgeName, PairedId } from '../../../draft/piece.ts'
import { EDGE_WORDS, PIECE_WORDS } from '../../../draft/piece.words.ts'
import { FINISH_NAMES } from '../../../output/finish.words.ts'

type FinishId = keyof typeof FINISH_NAMES

export const EDGES_WORDS = {
  title: { muslin: 'Edges of the muslin', cloth: 'Edges of the garment' },
  own: 'your own',
  usual: 'as usual',
  name: (edge: EdgeName) => capital(EDGE_WORDS[edge]),
  /** "back and front"; several facings are said as one. */
  onPieces: (body: readonly PairedId[], rest: readonly PairedId[]) => {
    const names = [
      ...body.map((id) => PIECE_WORDS[id]),
      ...(rest.length > 1 ? ['facings'] : rest.map((id) => PIECE_WORDS[id])),
    ]
    const [last = '', ...first] = names.toReversed()
    return first.length > 0 ? `${first.toReversed().join(', ')} and ${last}` : last
  },
  none: 'none',
  beyond: 'Beyond the seam line. An edge on the fold has no allowance.',
  allUsual: 'Put all edges back as usual',
  drawing: (piece: string, edge: string) => `${piece} with its cutting line, the ${edge} in chalk`,
  finishOf: (edge: string) => `Finish of the ${edge}`,
  notHere: (finish: FinishId) => `${FINISH_NAMES[finish]}, not on this curve`,
  doesNotGo: (finish: FinishId) => `${capital(FINISH_NAMES[finish])} does not go here.`,
  foldTwice: 'Fold it twice, as deep as lies flat',
  take: (finish: FinishId) => `Take the ${FINISH_NAMES[finish]}`,
  depth: 'Finished depth',
  width: 'Beyond the seam line',
  onTheLine: 'Cut along the seam line. Nothing lies beyond it.',
  back: 'Put it back as usual',
}
