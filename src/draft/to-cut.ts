/**
 * The pieces as they are cut: halves stay what corrections, proof and comparison work on; a front
 * with a style seam goes to paper in two pieces.
 */
import { asWorn } from './as-worn.ts'
import type { Draft } from './draft.ts'
import { parted } from './parted.ts'

/** The same draft with the pieces that go to paper and cloth, left and right apart where they differ. */
export function toCut(draft: Draft): Draft {
  const { sides } = draft
  return sides
    ? asWorn({ ...draft, sides: { left: toSew(sides.left), right: toSew(sides.right) } })
    : toSew(draft)
}

/** The draft as it is sewn: parted where it is, and a half stands for both sides of the body. */
export function toSew(draft: Draft): Draft {
  const made = draft.pieces.map((p) => (p.id === 'front' ? parted(p) : undefined)).find(Boolean)
  if (!made) return draft
  return {
    ...draft,
    pieces: draft.pieces.flatMap((p) => (p.id === 'front' ? [made.front, made.sideFront] : [p])),
    steps: [...draft.steps, ...made.steps],
  }
}
