/**
 * What she brings herself to a garment: lengths of a piece she drew by hand, and a garment she
 * likes, laid flat. Kept with the garment; nothing is drawn from it until she says so.
 */
import type { Mm } from '../units/length.ts'

/** Half widths from side seam to side seam, closed and smooth; the length from nape seam to hem. */
export interface Liked {
  readonly bust?: Mm
  readonly waist?: Mm
  readonly highHip?: Mm
  readonly hip?: Mm
  readonly backLength?: Mm
}
export const LIKED_IDS = ['bust', 'waist', 'highHip', 'hip', 'backLength'] as const
export type LikedId = (typeof LIKED_IDS)[number]

export interface OwnWork {
  /** `front.side`: what her paper measures there. */
  readonly drawn: Readonly<Record<string, Mm>>
  readonly liked: Liked
}
export const NO_OWN_WORK: OwnWork = { drawn: {}, liked: {} }

/** One length entered, or taken out where `value` is undefined. */
export function withDrawn(own: OwnWork, name: string, value: Mm | undefined): OwnWork {
  const { [name]: _old, ...others } = own.drawn
  return { ...own, drawn: value === undefined ? others : { ...others, [name]: value } }
}
export function withLiked(own: OwnWork, id: LikedId, value: Mm | undefined): OwnWork {
  const { [id]: _old, ...others } = own.liked
  return { ...own, liked: value === undefined ? others : { ...others, [id]: value } }
}
