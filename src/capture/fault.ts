/**
 * Why a photo, or a point in it, cannot be measured. A reading keeps the id of the fault; readings kept
 * before there were ids have the sentence itself, which is shown as it stands.
 */
import { FAULT_WORDS } from './fault.words.ts'

export type FaultId = keyof typeof FAULT_WORDS

export interface Refused {
  readonly ok: false
  /** A FaultId, or a sentence of before. */
  readonly reason: string
}
export const refused = (reason: FaultId): Refused => ({ ok: false, reason })

const isFault = (reason: string): reason is FaultId => Object.hasOwn(FAULT_WORDS, reason)

/** The sentence for her. */
export const faultSaid = (reason: string): string =>
  isFault(reason) ? FAULT_WORDS[reason] : reason
