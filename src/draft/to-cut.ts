/**
 * The pieces as they are cut: halves stay what corrections, proof and comparison work on; a front
 * with a style seam goes to paper in two pieces.
 */
import type { Draft } from './draft.ts'
import { parted } from './parted.ts'

/** The same draft with the pieces that go to paper and cloth. */
export function toCut(draft: Draft): Draft {
  const made = draft.pieces.map((p) => (p.id === 'front' ? parted(p) : undefined)).find(Boolean)
  if (!made) return draft
  return {
    ...draft,
    pieces: draft.pieces.flatMap((p) => (p.id === 'front' ? [made.front, made.sideFront] : [p])),
    steps: [...draft.steps, ...made.steps],
  }
}
