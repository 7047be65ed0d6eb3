/** Where two drawings of a piece can be pinned on each other. */
import type { Anchor } from './lay-over.ts'

export const ANCHOR_WORDS: Readonly<Record<Anchor, string>> = {
  sideNeck: 'side neck',
  apex: 'bust tip',
  waistFold: 'waist',
  nape: 'nape',
  grain: 'grain line',
}
