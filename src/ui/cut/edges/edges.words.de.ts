import { capital } from '../../../units/capital.ts'
import { EDGES, PIECES } from '../../../draft/piece.words.de.ts'
import { FINISH_NAMES } from '../../../output/finish.words.de.ts'
import { undListed } from '../../../units/german-noun.ts'
import type { EDGES_WORDS as English } from './edges.words.ts'

export const EDGES_WORDS: typeof English = {
  title: { muslin: 'Kanten des Probeteils', cloth: 'Kanten des Stücks' },
  own: 'nach deiner Wahl',
  usual: 'wie üblich',
  name: (edge) => capital(EDGES[edge].bare),
  onPieces: (body, rest) =>
    undListed([
      ...body.map((id) => PIECES[id].bare),
      ...(rest.length > 1 ? ['Belege'] : rest.map((id) => PIECES[id].bare)),
    ]),
  none: 'keine',
  beyond: 'Außerhalb der Nahtlinie. Eine Kante im Stoffbruch hat keine Zugabe.',
  allUsual: 'Alle Kanten wie üblich',
  drawing: (piece, edge) => `${piece} mit der Schneidelinie; mit Kreide gezeichnet: ${edge}`,
  finishOf: (edge) => `Verarbeitung: ${edge}`,
  notHere: (finish) => `${FINISH_NAMES[finish]}, nicht an dieser Rundung`,
  doesNotGo: (finish) => `${capital(FINISH_NAMES[finish])}: Das geht hier nicht.`,
  foldTwice: 'Zweimal umschlagen, so tief es flach liegt',
  take: (finish) => `Nehmen: ${FINISH_NAMES[finish]}`,
  depth: 'Fertige Tiefe',
  width: 'Außerhalb der Nahtlinie',
  onTheLine: 'Schneide an der Nahtlinie. Außerhalb liegt nichts.',
  back: 'Wie üblich',
}
