/** What a change does, in one sentence, and the decisions as they are listed. */
import type { AnyDart, EdgeName, HalfId, PieceId, Side } from '../../draft/piece.ts'
import { DART_WORDS, EDGE_WORDS } from '../../draft/piece.words.ts'
import type { Edit, PieceName, Way } from '../../fitting/complaints/complaint.ts'
import { capital } from '../../units/capital.ts'
import type { Mm } from '../../units/length.ts'
import type { Said } from './change-said.ts'

const WAYS: Readonly<Record<Way, string>> = {
  in: 'comes in by ',
  out: 'goes out by ',
  up: 'goes up by ',
  down: 'goes down by ',
  forward: 'goes forward by ',
  back: 'goes back by ',
  wider: 'is wider by ',
  narrower: 'is narrower by ',
}
const POINTS: Readonly<Record<NonNullable<Edit['point']>, string>> = {
  sideNeck: 'side-neck point',
  shoulderTip: 'shoulder tip',
  underarm: 'underarm point',
  frontNeck: 'front neck point',
  nape: 'nape',
  apex: 'bust tip',
  tip: 'tip of the dart',
}
const only = (side: Side | undefined): string => (side ? `, ${side} side only` : '')

export const CHANGE_WORDS = {
  wedgeClosed: (piece: PieceId, edge: EdgeName, width: Mm): Said => [
    'A wedge of ',
    width,
    ` is closed at the ${piece} ${EDGE_WORDS[edge]}.`,
  ],
  turned: (choice: string, from: Mm, to: Mm): Said => [
    `The ${choice} goes from `,
    from,
    ' to ',
    to,
    ', on back and front alike.',
  ],
  done: (words: string, amount: Mm): Said => [`${capital(words)}, `, amount, '.'],
  takenBack: ['The change is taken back.'] as Said,
  /** @param dart by how much the printed lengths of dart, edge and hem change; 0 where they do not */
  foldedOut: (of: {
    readonly piece: HalfId
    readonly edge: EdgeName
    readonly into: AnyDart
    readonly across: Mm
    readonly dart: Mm
    readonly shorter: Mm
    readonly hem: Mm
  }): Said => [
    'Fold out ',
    of.across,
    ` at the ${of.piece} ${EDGE_WORDS[of.edge]}, down to nothing at the ${of.piece === 'front' ? 'bust tip' : 'blade point'}. The ${DART_WORDS[of.into]} `,
    ...(of.dart === 0 ? ['stays as wide as printed'] : ['opens by ', of.dart]),
    `; the ${EDGE_WORDS[of.edge]} `,
    ...(of.shorter === 0 ? ['prints the same'] : ['is ', of.shorter, ' shorter once drawn smooth']),
    ...(of.hem === 0 ? ['.'] : ['; the hem gains ', of.hem, ' below the dart.']),
  ],
  nothingElsewhere: 'nothing has moved.',
  changed: (edges: readonly EdgeName[], darts: readonly AnyDart[]) => {
    const names = [...edges.map((e) => EDGE_WORDS[e]), ...darts.map((d) => DART_WORDS[d])]
    const [last, ...first] = names.toReversed()
    const list = first.length > 0 ? `${first.toReversed().join(', ')} and ${last}` : last
    return `${list} changed; the old lines stay as running stitch.`
  },
  row: (words: string) => capital(words),

  operation: (name: string, words: string, amount: Mm, side: Side | undefined): Said => [
    `${name}: ${words}, `,
    amount,
    `${only(side)}.`,
  ],
  wedge: (name: string, piece: PieceId, edge: EdgeName, width: Mm): Said => [
    `${name}: a wedge of `,
    width,
    ` at the ${piece} ${EDGE_WORDS[edge]}.`,
  ],
  choice: (name: string, choice: string, by: Mm, more: boolean, side: Side | undefined): Said => [
    `${name}: ${choice}, `,
    more ? 'more ' : 'less ',
    by,
    `${only(side)}.`,
  ],
  share: {
    all: 'all of it',
    half: 'half of it',
    of: (inHundred: number) => `${inHundred} in a hundred`,
  },

  edit: (of: {
    readonly piece: PieceName
    readonly part: EdgeName | AnyDart
    readonly point: Edit['point']
    readonly way: Way
    readonly by: Mm
    readonly side: Side | undefined
    readonly follows: boolean
  }): Said => {
    const line = { ...EDGE_WORDS, ...DART_WORDS }[of.part]
    const what = of.point === undefined ? line : `${POINTS[of.point]} at the ${line}`
    return [
      `The ${of.piece} ${what} ${WAYS[of.way]}`,
      of.by,
      `${only(of.side)}${of.follows ? ', which follows by itself' : ''}.`,
    ]
  },
}
