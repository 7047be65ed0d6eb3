/**
 * A talk about any complaint of the catalogue: which one, what its tests showed, what was pinned,
 * and what all complaints of this muslin together come to. It only holds her answers; hearing,
 * asking and deciding are pure functions.
 */
import { find, type Found, type PutRight, type SleeveKind } from '../../fitting/finding/find.ts'
import type { ConceptId } from '../../fitting/finding/lexicon.ts'
import type { Understood } from '../../fitting/finding/understood.ts'
import { complaintOf } from '../../fitting/complaints/catalogue.ts'
import {
  causeId,
  type ComplaintId,
  type PinPlace,
  type Test,
} from '../../fitting/complaints/complaint.ts'
import {
  STANDARD_RULES,
  type AmountRules,
  type How,
  type Pin,
  type PinSide,
} from '../../fitting/half-amount.ts'
import { factsOf, movedSince, triesOn, type Muslin } from '../../fitting/fit-muslin.ts'
import type { Answers } from '../../fitting/rules/answers.ts'
import { draftedEdge } from '../../fitting/rules/edge-read.ts'
import { besideOf, whysFor, type Known, type Why } from '../../fitting/whys.ts'
import type { Decision } from '../../fitting/rules/decide.ts'
import { decideOn, type Drawable, type Receiver } from '../../fitting/rules/drawable.ts'
import type { Facts, Reported } from '../../fitting/rules/judged.ts'
import type { HowRead } from '../../fitting/pinned.ts'
import {
  previewOf,
  type Base,
  type NewCorrection,
  type PreviewOutcome,
} from '../../fitting/preview.ts'
import { watchedFrom, type Watched } from '../../fitting/rules/watched.ts'
import { proposalsFrom, type TapeProposal } from '../../fitting/rules/tape-proposals.ts'
import type { NotDrawn } from '../../fitting/rules/to-corrections.ts'
import type { MeasurementId } from '../../measurements/catalogue.ts'
import { NOTHING_TO_CHANGE, UNSETTLED, type Seen } from '../../rounds/round.ts'
import { pieceOf, type Draft } from '../../draft/draft.ts'
import { edge, type EdgeName } from '../../draft/piece.ts'
import { pathLength } from '../../geometry/length.ts'
import { mm, type Mm } from '../../units/length.ts'
import { SAY_WORDS } from './say.words.ts'
import { howsFor, usualPlace } from './told-words.ts'

/** What was read off the muslin beside its folds. */
export type SeenBeside = Pick<Muslin, 'linesSay'> & NonNullable<Muslin['moves']>

export class FitTalk {
  id = $state.raw<ComplaintId | undefined>()
  answers = $state.raw<Answers>({})
  /** Tests she could not tell the outcome of. */
  doubted = $state.raw<readonly number[]>([])
  /** The complained-of edge as she measured it sewn, on the half; undefined until then. */
  sewnEdge = $state.raw<Mm | undefined>()
  /** Complaints of this muslin said before the present one. */
  others = $state.raw<readonly Reported[]>([])
  side = $state.raw<PinSide>('both')
  value = $state.raw<Mm>(mm(0))
  #how = $state.raw<How | undefined>()
  #where = $state.raw<PinPlace | undefined>()
  /** Place of the pin on its edge, as `along` of a pin. */
  #along = $state.raw<number | undefined>()
  /** Part of a pinned take-in that is applied, and the most of one round where she set it. */
  share = $state.raw(STANDARD_RULES.takeInShare)
  caps = $state.raw<Readonly<Partial<Record<ComplaintId, number>>>>({})
  /** The dart she chose to take a turn up. */
  into = $state.raw<Receiver | undefined>()
  /** What she said, in the sentence or in her own words; and the words she put right. */
  phrase = $state.raw('')
  putRight = $state.raw<readonly PutRight[]>([])
  readonly #sewn: () => Draft
  readonly #base: () => Base
  readonly #round: () => number
  readonly #pointed: () => readonly ConceptId[]
  readonly #retaped: () => readonly MeasurementId[]
  readonly #seen: () => SeenBeside

  /**
   * @param sewn the draft the muslin was cut from; @param base what the change would go into;
   * @param round the number of the sewn muslin; @param pointed what the sentence and the figure say;
   * @param retaped numbers taped again since, as a muslin asked for
   * @param seen how its lines lay and what it did when she moved
   */
  constructor(
    sewn: () => Draft,
    base: () => Base,
    round: () => number,
    pointed: () => readonly ConceptId[],
    retaped: () => readonly MeasurementId[],
    seen: () => SeenBeside = () => ({}),
  ) {
    this.#sewn = sewn
    this.#base = base
    this.#round = round
    this.#pointed = pointed
    this.#retaped = retaped
    this.#seen = seen
  }

  sleeve: SleeveKind = $derived.by(() => sleeveOf(this.#sewn()))
  /** What is heard in her words and in what she pointed at, together. */
  found: Found | undefined = $derived.by(() => {
    const pointed = this.#pointed()
    return this.phrase === '' && pointed.length === 0
      ? undefined
      : find(this.phrase, { sleeve: this.sleeve, putRight: this.putRight, pointed })
  })
  complaint = $derived(this.id && complaintOf(this.id))
  hows: readonly How[] = $derived(this.id ? howsFor(this.id) : [])
  how: How = $derived(this.#how ?? this.hows[0] ?? 'pinch')
  where: PinPlace = $derived(this.#where ?? (this.id ? usualPlace(this.id) : 'inside'))
  /** The complained-of edge as drawn; undefined where none can have stretched. */
  drawnEdge: Mm | undefined = $derived.by(() => this.id && draftedEdge(this.id, this.#sewn()))
  #longer: Mm | undefined = $derived(
    this.sewnEdge === undefined || this.drawnEdge === undefined
      ? undefined
      : mm(this.sewnEdge - this.drawnEdge),
  )
  #known: Known = $derived.by(() => {
    const { linesSay, ...moves } = this.#seen()
    const draft = this.#sewn()
    return {
      draft,
      reaches: factsOf(draft).reaches,
      ...moves,
      ...(linesSay ? { lines: linesSay.named } : {}),
      ...(this.id && this.#longer !== undefined ? { longer: { [this.id]: this.#longer } } : {}),
    }
  })
  /** One sentence for each cause that lines, movements or numbers speak of. */
  whys: readonly Why[] = $derived(this.id ? whysFor(this.id, this.#known) : [])
  facts: Facts = $derived.by(() => {
    const retaped = this.#retaped()
    const ids = [...this.others.map(({ id }) => id), ...(this.id ? [this.id] : [])]
    return {
      ...factsOf(this.#sewn()),
      beside: besideOf(ids, this.#known, this.#seen().linesSay?.denied),
      ...(retaped.length > 0
        ? { retaped, moved: movedSince(retaped, this.#sewn().body.values, this.#base().body) }
        : {}),
      watched: watchedFrom(this.#base().corrections, this.#round()),
    }
  })
  report: Reported | undefined = $derived.by(() => {
    if (!this.id) return undefined
    const pin: Pin = {
      how: this.how,
      where: this.where,
      side: this.side,
      value: this.value,
      ...(this.#along === undefined ? {} : { along: this.#along }),
    }
    return {
      id: this.id,
      answers: this.answers,
      ...(this.doubted.length > 0 ? { cannotTell: this.doubted } : {}),
      ...(this.value !== 0 ? { pin } : {}),
      ...(this.#longer === undefined ? {} : { longer: this.#longer }),
    }
  })
  #drawable: Drawable | undefined = $derived.by(() => {
    if (!this.report) return undefined
    const rest = this.others.filter(({ id }) => id !== this.id)
    const on = {
      draft: this.#sewn(),
      facts: this.facts,
      round: this.#round(),
      tries: triesOn(this.#base()),
      ...(this.into ? { into: this.into } : {}),
    }
    return decideOn([...rest, this.report], on, this.rules)
  })
  rules: AmountRules = $derived({
    ...STANDARD_RULES,
    takeInShare: this.share,
    caps: this.caps as AmountRules['caps'],
  })
  /** What was left over by the muslin before, to be looked at again. */
  watched: readonly Watched[] = $derived.by(() => this.facts.watched ?? [])
  /** It was left over by the last muslin: the place is read again before anything is asked. */
  rereads: boolean = $derived(this.watched.some(({ complaint }) => complaint === this.id))
  /** The edge a wedge is closed at, its length, and where on it the pin sits. */
  onEdge: OnEdge | undefined = $derived.by(() => {
    const wedge = this.#drawable?.corrections.find(
      (c) => c.kind === 'operate' && c.operation.op === 'ROT' && c.because.complaint === this.id,
    )
    if (wedge?.kind !== 'operate' || wedge.operation.op !== 'ROT') return undefined
    const { piece, edge: name, along } = wedge.operation
    const length = mm(pathLength(edge(pieceOf(this.#sewn(), piece), name).path))
    return { name, length, from: mm(length * along) }
  })
  /** The most of one round for this complaint, in its own unit; undefined before its cause is known. */
  cap: { readonly most: number; readonly degrees: boolean } | undefined = $derived.by(() => {
    const own = this.#drawable?.decision.changes.find(({ id }) => id === this.id)
    return own?.work && { most: own.work.cap, degrees: own.work.capUnit === 'deg' }
  })
  /** What the change does besides: told before she makes it. */
  get besides(): readonly string[] {
    return this.decision?.decision === 'change' ? (this.#drawable?.besides ?? []) : []
  }
  get ways(): Drawable['ways'] {
    return this.decision ? this.#drawable?.ways : undefined
  }
  /** The one test to do now; undefined when none would tell more. */
  test: Test | undefined = $derived.by(() => {
    const asked = this.#drawable?.decision.asks.find(
      ({ complaint, test }) => complaint === this.id && test !== undefined,
    )
    return this.complaint?.tests.find(({ number }) => number === asked?.test)
  })
  decision: Decision | undefined = $derived(this.test ? undefined : this.#drawable?.decision)

  get corrections(): readonly NewCorrection[] {
    return this.decision?.decision === 'change' ? (this.#drawable?.corrections ?? []) : []
  }
  /** What no drawing of this garment carries, each with what to do instead. */
  get notDrawn(): readonly NotDrawn[] {
    return this.decision ? (this.#drawable?.notDrawn ?? []) : []
  }
  /** Numbers that this muslin speaks against, for the book; `on` is the day, ISO. */
  proposals = (on: string): readonly TapeProposal[] =>
    this.decision ? proposalsFrom(this.decision, on) : []
  outcomeOfChange: PreviewOutcome | undefined = $derived.by(() => {
    const [first, ...more] = this.corrections
    return first && previewOf(this.#base(), first, ...more)
  })
  /** Every complaint of this talk as the round keeps it. */
  get seen(): readonly Omit<Seen, 'on'>[] {
    const all = this.report ? [...this.others, this.report] : this.others
    return all.map(({ id, pin }) => ({
      complaint: id,
      answer: this.#answerOf(id),
      ...(pin ? { pinned: { how: HOW_KEPT[pin.how], read: pin.value, share: 1 } } : {}),
    }))
  }
  #answerOf(id: ComplaintId): string {
    const decision = this.decision
    if (!decision || decision.decision === 'ask') return UNSETTLED
    if (decision.decision === 'nothing') return NOTHING_TO_CHANGE
    const own = decision.changes.find((j) => j.id === id)
    const cause = complaintOf(id).causes.find(({ number }) => own?.found.includes(number))
    return cause ? causeId(id, cause.number) : UNSETTLED
  }

  say = (phrase: string): void => {
    this.phrase = phrase
    this.putRight = []
    this.name(undefined)
  }
  /** One word meant another thing, or nothing that matters. */
  correct = ({ from, to }: Understood, concept: ConceptId | undefined): void => {
    const others = this.putRight.filter((p) => p.from !== from || p.to !== to)
    this.putRight = [...others, { from, to, concept }]
  }
  name = (id: ComplaintId | undefined): void => {
    if (id === this.id) return
    this.id = id
    this.answers = {}
    this.doubted = []
    this.sewnEdge = undefined
    this.#how = this.#where = this.#along = this.into = undefined
    this.value = mm(0)
  }
  answer = (test: number, yes: boolean): void => {
    this.answers = { ...this.answers, [`test ${test}`]: yes }
    this.doubted = this.doubted.filter((n) => n !== test)
  }
  doubt = (test: number): void => {
    this.doubted = [...this.doubted, test]
  }
  /** Asks again from this test on. */
  askAgain = (test: number): void => {
    this.sewnEdge = undefined
    const after = (n: number): boolean => n >= test
    this.answers = Object.fromEntries(
      Object.entries(this.answers).filter(([key]) => !after(Number(key.slice('test '.length)))),
    )
    this.doubted = this.doubted.filter((n) => !after(n))
  }
  readAs = (how: How): void => void (this.#how = how)
  pinsAt = (where: PinPlace): void => {
    this.#where = where
    this.#along = undefined
  }
  pinsOnEdge = (from: Mm): void => {
    if (this.onEdge) this.#along = from / this.onEdge.length
  }
  /** @param most of one round for the present complaint; undefined for that of the table */
  allows = (most: number | undefined): void => {
    if (!this.id) return
    const { [this.id]: _own, ...others } = this.caps
    this.caps = most === undefined ? others : { ...others, [this.id]: most }
  }
  /**
   * Lays the present complaint aside, to be decided together with the next one.
   * @returns what she said besides in the same sentence and was not taken up yet
   */
  another = (): string | undefined => {
    if (this.report) this.others = [...this.others.filter((o) => o.id !== this.id), this.report]
    const rest = this.#restSaid()
    this.say('')
    return rest
  }
  #restSaid(): string | undefined {
    const parts = this.found?.parts ?? []
    const taken = this.others.map(({ id }) => id)
    if (parts.length < 2) return undefined
    const rest = parts.filter(({ ranked: [best] }) => best && !taken.includes(best.id))
    return SAY_WORDS.rest(rest.map(({ text }) => text))
  }
  forget = (id: ComplaintId): void => void (this.others = this.others.filter((o) => o.id !== id))
  startOver = (): void => {
    this.others = []
    this.phrase = ''
    this.putRight = []
    this.name(undefined)
  }
}

export interface OnEdge {
  readonly name: EdgeName
  readonly length: Mm
  /** From the fold on a neck, else from the underarm. */
  readonly from: Mm
}

const HOW_KEPT: Readonly<Record<How, HowRead>> = {
  pinch: 'wholeFold',
  fold: 'foldToPin',
  newLine: 'seamToPin',
  level: 'levelError',
  slit: 'slitOpen',
}

function sleeveOf(draft: Draft): SleeveKind {
  if (draft.pieces.some(({ id }) => id === 'sleeve')) return 'setIn'
  const front = draft.pieces.find(({ id }) => id === 'front')
  return front?.edges.some(({ name }) => name === 'overarm') ? 'cutIn' : 'none'
}
