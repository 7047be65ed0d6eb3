/**
 * One talk about one muslin: what she says, what she answered, what she pinned, and what follows
 * from it. The class only holds her answers; deciding is done by pure functions.
 */
import { pieceOf } from '../../draft/draft.ts'
import { edge } from '../../draft/piece.ts'
import { COMPLAINTS, type ComplaintId, type Outcome } from '../../fitting/complaints.ts'
import type { HowRead, Pinned } from '../../fitting/pinned.ts'
import { previewOf, propose, type PreviewOutcome, type Proposal } from '../../fitting/propose.ts'
import { pathLength } from '../../geometry/length.ts'
import { redraft } from '../../rounds/redraft.ts'
import type { Round } from '../../rounds/round.ts'
import { mm, type Mm } from '../../units/length.ts'
import type { Fold } from '../parts/folds.ts'
import { foldsOf, knowsPlace, readsAs, sentenceOf, type GapId, type Spoken } from './spoken.ts'

export class FitTalk {
  spoken = $state.raw<Spoken>({})
  /** How slantwise folds lie on the right half of the drawing. */
  slant = $state.raw<Fold>('rising')
  cannotTell = $state.raw(false)
  #named = $state.raw<ComplaintId | undefined>()
  #cause = $state.raw<string | undefined>()
  #how = $state.raw<HowRead | undefined>()
  #read = $state.raw<Mm | undefined>()
  #share = $state.raw<number | undefined>()
  #fromUnderarm = $state.raw<Mm | undefined>()

  readonly #muslin: () => Round
  readonly #base: () => Round

  /** @param muslin the round that is sewn; @param base the round the change would go into */
  constructor(muslin: () => Round, base: () => Round) {
    this.#muslin = muslin
    this.#base = base
  }

  complaint = $derived.by(() => {
    const said = this.#named ?? readsAs(this.spoken)
    return said && knowsPlace(said, this.#muslin().garment) ? said : undefined
  })
  outcome: Outcome | undefined = $derived.by(() => {
    const all = this.complaint && COMPLAINTS[this.complaint].outcomes
    return all?.find((o) => o.cause === this.#cause)
  })
  how: HowRead | undefined = $derived(this.#how ?? this.outcome?.readAs[0])
  share: number = $derived(this.#share ?? this.outcome?.share ?? 1)
  /** 0 until she has read something. */
  read: Mm = $derived(this.#read ?? mm(0))
  /** The pinned edge of the muslin, its length and the place of the pin on it. */
  onEdge: { readonly length: Mm; readonly from: Mm } | undefined = $derived.by(() => {
    const remedy = this.outcome?.remedy
    if (remedy?.kind !== 'close-wedge') return undefined
    const piece = pieceOf(redraft(this.#muslin()).draft, remedy.piece)
    const length = mm(pathLength(edge(piece, remedy.edge).path))
    return { length, from: this.#fromUnderarm ?? mm(length / 2) }
  })
  proposal: Proposal | undefined = $derived.by(() => {
    if (!this.complaint || !this.outcome) return undefined
    const along = this.onEdge ? this.onEdge.from / this.onEdge.length : 0
    const round = this.#muslin().number
    return propose({
      complaint: this.complaint,
      outcome: this.outcome,
      pinned: this.pinned,
      along,
      round,
    })
  })
  outcomeOfChange: PreviewOutcome | undefined = $derived.by(() =>
    this.proposal?.kind === 'change'
      ? previewOf(this.#base(), this.proposal.correction)
      : undefined,
  )
  get pinned(): Pinned | undefined {
    return this.#read === undefined || this.how === undefined
      ? undefined
      : { how: this.how, read: this.#read, share: this.share }
  }

  say = (gap: GapId, word: string): void => {
    this.#named = undefined
    this.#anew({ ...this.spoken, [gap]: word })
  }
  turnDial = (fold: Fold): void => {
    if (fold === 'rising' || fold === 'falling') this.slant = fold
    this.spoken = { ...this.spoken, folds: foldsOf(fold) }
  }
  /** The sentence was filled by naming a complaint, not by her pointing. */
  get named(): boolean {
    return this.#named !== undefined
  }
  /** She says which complaint it is; the sentence takes its words. */
  name = (id: ComplaintId): void => {
    this.#anew(sentenceOf(id))
    this.#named = id
  }
  /** Another complaint is another question; the same one keeps what was answered. */
  #anew(spoken: Spoken): void {
    if (readsAs(spoken) !== this.complaint) this.answer(undefined)
    this.spoken = spoken
  }
  answer = (cause: string | undefined): void => {
    this.#cause = cause
    this.cannotTell = false
    this.#how = this.#read = this.#share = this.#fromUnderarm = undefined
  }
  doubt = (): void => {
    this.answer(undefined)
    this.cannotTell = true
  }
  readAs = (how: HowRead): void => void (this.#how = how)
  reads = (read: Mm): void => void (this.#read = read)
  takes = (share: number): void => void (this.#share = share)
  pinsAt = (fromUnderarm: Mm): void => void (this.#fromUnderarm = fromUnderarm)
  startOver = (): void => {
    this.answer(undefined)
    this.#named = undefined
    this.spoken = {}
  }
}
