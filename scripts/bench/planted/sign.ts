/**
 * What she would tell of a muslin: a complaint by its id, where and how she pinned it, and which
 * of its causes is the true one. Ids and numbers of causes are those of the trade list of
 * complaints; the list itself is not read here.
 */
export type Place = 'cf' | 'cb' | 'side' | 'allRound' | 'shoulder' | 'armhole' | 'neck' | 'dart'
export type How = 'fold' | 'pinch' | 'slit' | 'level' | 'newLine'

export interface Pin {
  readonly where: Place
  readonly side: 'one' | 'both'
  readonly how: How
  /** As she reads it at that one place, mm; signed only where the complaint leaves the way open. */
  readonly value: number
}

export interface Sign {
  readonly id: string
  readonly pin: Pin
  /** Numbers of the causes that hold; none where the draft is right and the cloth or the day is not. */
  readonly causes: readonly number[]
  /** Fault in the muslin over the least she would see: what weighs most is told first. */
  readonly weight: number
}
