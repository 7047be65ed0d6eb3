/**
 * How a test may come out, as two drawings: what is done on the muslin, and what the cloth then
 * does. Most tests are of four kinds: pinned, cut, eased, looked at.
 */
import { arrow, tape, waves, type Mark } from './marks.ts'
import { framed, sketch, wanted, type Framed, type Sketch } from './sketch.ts'
import { SEES_WORDS as SEES, type Sees } from './sees.words.ts'
import type { At, BaseView, PartOf } from './views.ts'

export interface Shown {
  readonly sketch: Sketch
  /** What she sees. */
  readonly sees: string
}
export interface Asked {
  readonly yes: Shown
  readonly no: Shown
}
export type Draw = (at: At) => readonly Mark[]
export const nothing: Draw = () => []
export const drawn =
  (...all: readonly Draw[]): Draw =>
  (at) =>
    all.flatMap((draw) => draw(at))

/** Looked at: this or that. */
export function looked<V extends BaseView>(
  frame: Framed<V>,
  words: Sees,
  yes: Draw,
  no: Draw,
  without: readonly PartOf<V>[] = [],
): Asked {
  return {
    yes: { sketch: sketch(frame, yes, without), sees: words[0] },
    no: { sketch: sketch(frame, no, without), sees: words[1] },
  }
}
/** Pinned: the folds go, or they stay. */
export const pinned = <V extends BaseView>(
  frame: Framed<V>,
  pins: Draw,
  stays: Draw,
  words: Sees = SEES.itLiesFlatOrItStaysAsItWas,
): Asked => looked(frame, words, pins, drawn(stays, pins))
/** Cut or unpicked: it springs open, or it stays shut. */
export const cut = <V extends BaseView>(
  frame: Framed<V>,
  open: Draw,
  shut: Draw,
  words: Sees = SEES.itSpringsOpen,
): Asked => looked(frame, words, open, shut)
/** Freed somewhere: the strain eases, or it stays. */
export const eased = <V extends BaseView>(
  frame: Framed<V>,
  freed: Draw,
  strain: Draw,
  words: Sees = SEES.itEases,
): Asked => looked(frame, words, freed, drawn(strain, freed))

const PAPER = framed('paper')

/** Is the sewn edge longer than the draft? */
export const EDGE_LONGER: Asked = looked(
  PAPER,
  SEES.longerThanItWasDrawn,
  (at) => [
    wanted(at, 'M14 38C34 52 62 52 84 40'),
    waves(at(14, 76), at(98, 74), 6, 6),
    arrow(at(86, 56), at(98, 56)),
  ],
  (at) => [
    wanted(at, 'M14 38C34 52 62 52 84 40'),
    [{ ink: 'seam', d: 'M14 70C34 84 62 84 84 72' }],
  ],
)
/** The printed test square, with a tape along it that ends before, at or after its corner. */
export const square =
  (more: number): Draw =>
  (at) => [[{ ink: 'seam', d: 'M26 26L86 26L86 86L26 86Z' }], tape(at(26, 98), at(86 + more, 98))]
/** Two lengths taped one above the other, the lower one longer by so much. */
export const twoTapes =
  (more: number): Draw =>
  (at) => [
    tape(at(16, 44), at(78, 44)),
    tape(at(16, 72), at(78 + more, 72)),
    ...(more === 0 ? [] : [arrow(at(78, 58), at(78 + more, 58))]),
  ]
