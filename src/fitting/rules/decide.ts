/**
 * All complaints of one muslin together: what to change, what to ask, what to leave. The order of
 * entry does not matter. Sources: `interactions.ts`, `half-amount.ts`; at most one group of length,
 * one of shape and one of girth or sleeve in a round is our judgement.
 */
import { complaintOf } from '../complaints/catalogue.ts'
import { COMPLAINT_IDS } from '../complaints/complaint.ts'
import { STANDARD_RULES, type AmountRules, type Pin } from '../half-amount.ts'
import { NOTHING_BESIDE, unsaid, type LineSays } from './beside.ts'
import type { EditAmount } from './edit-amounts.ts'
import { offScale } from './gates.ts'
import { INTERACTION_WORDS } from './interactions.words.ts'
import { judge } from './judge.ts'
import type { Asked, Facts, HeldBack, Judged, Reported } from './judged.ts'
import { JUDGE_WORDS } from './judge.words.ts'
import { apart } from './pins.ts'
import {
  askedInTurn,
  easeKept,
  evenPart,
  explained,
  grouped,
  opposed,
  provedFirst,
  sameSlack,
  waiting,
  type Choice,
} from './together.ts'

export interface Decision {
  readonly decision: 'change' | 'ask' | 'nothing'
  readonly causes: readonly string[]
  readonly edits: readonly EditAmount[]
  readonly heldBack: readonly HeldBack[]
  readonly asks: readonly Asked[]
  readonly choices: readonly Choice[]
  readonly reasons: readonly string[]
  /** The complaints whose edits stand, in the order in which they are made. */
  readonly changes: readonly Judged[]
}

export function decide(
  reported: readonly Reported[],
  facts: Facts,
  rules: AmountRules = STANDARD_RULES,
): Decision {
  if (offScale(facts.reaches)) return none(JUDGE_WORDS.squareOff(facts.reaches.testSquare ?? 0))
  let list = bySides(reported, rules).flatMap((r) =>
    r.map(({ report, pins, side }) => judge(report, pins, side, facts, rules)),
  )
  list = [...list].sort(inOrder)
  const choices: Choice[] = []
  list = provedFirst(list)
  list = explained(list)
  list = opposed(list, choices)
  list = evenPart(list, facts, rules)
  list = sameSlack(list)
  list = waiting(list)
  list = easeKept(list, facts)
  list = grouped(list)
  list = askedInTurn(list)
  const said = reported.map(({ id }) => id)
  return summed(list, choices, unsaid(facts.beside ?? NOTHING_BESIDE, said).map(lineFirst))
}

const none = (why: string): Decision => ({
  decision: 'nothing',
  causes: [],
  edits: [],
  heldBack: [],
  asks: [],
  choices: [],
  reasons: [why],
  changes: [],
})

interface Sided {
  readonly report: Reported
  readonly pins: readonly Pin[]
  readonly side: 'left' | 'right' | undefined
}
/** Reports of one complaint put together; left and right apart only where they differ. */
function bySides(reported: readonly Reported[], rules: AmountRules): Sided[][] {
  const ids = COMPLAINT_IDS.filter((id) => reported.some((r) => r.id === id))
  return ids.map((id) => {
    const all = reported.filter((r) => r.id === id)
    const answers = Object.assign({}, ...all.map((r) => r.answers)) as Reported['answers']
    const cannotTell = all.flatMap((r) => r.cannotTell ?? [])
    const longer = all.findLast((r) => r.longer !== undefined)?.longer
    const report = { id, answers, cannotTell, ...(longer === undefined ? {} : { longer }) }
    const pins = all.flatMap(({ pin }) => (pin ? [pin] : []))
    const on = (side: 'left' | 'right'): Pin[] => pins.filter((p) => p.side === side)
    const [left, right] = [on('left')[0], on('right')[0]]
    const both = pins.find((p) => p.side === 'one' || p.side === 'both')
    if (left && right) {
      if (id !== 'SH8' && apart(left, right) <= rules.sameSides)
        return [{ report, pins: [left, right], side: undefined }]
      return [
        { report, pins: [left], side: 'left' },
        { report, pins: [right], side: 'right' },
      ]
    }
    if (both) return [{ report, pins: [both], side: undefined }]
    if (left) return [{ report, pins: [left], side: 'left' }]
    if (right) return [{ report, pins: [right], side: 'right' }]
    return [{ report, pins: [], side: undefined }]
  })
}

/** A bust over 40 mm short comes before the shoulder, which it drags. */
const SHORT_FIRST = 20
const rank = (j: Judged): number => (j.leads === 'B1' && (j.raw ?? 0) > SHORT_FIRST ? 2.5 : j.order)
const inOrder = (a: Judged, b: Judged): number =>
  rank(a) - rank(b) || COMPLAINT_IDS.indexOf(a.id) - COMPLAINT_IDS.indexOf(b.id)

/** A line that names what was not said is told: it comes before the folds that were. */
const lineFirst = ({ complaint, read }: LineSays): string =>
  JUDGE_WORDS.lineFirst(read, complaintOf(complaint).name)

function summed(
  list: readonly Judged[],
  choices: readonly Choice[],
  lines: readonly string[],
): Decision {
  const changes = list.filter(({ status }) => status === 'change')
  const asks = list.flatMap((j) => (j.status === 'ask' ? j.asks : []))
  // A number in doubt is told even where nothing else is asked.
  const doubts = list.flatMap((j) => (j.status === 'nothing' ? j.asks.filter((a) => a.tape) : []))
  const edits = changes.flatMap((j) => j.edits)
  const gapes = (['N1', 'B8'] as const).every((id) => changes.some((j) => j.id === id))
  return {
    decision: edits.length > 0 ? 'change' : asks.length > 0 ? 'ask' : 'nothing',
    causes: (edits.length > 0
      ? changes
      : // A cause that is found may still want its amount.
        list.filter(({ status, asks: own }) => status === 'nothing' || !own.some((a) => a.test))
    ).flatMap(({ causes }) => causes),
    edits,
    heldBack: list.flatMap((j) => j.heldBack),
    asks: [...asks, ...doubts],
    choices,
    reasons: [
      ...list.flatMap(({ reasons }) => reasons),
      ...(gapes ? [INTERACTION_WORDS.oneCause] : []),
      ...lines,
    ],
    changes,
  }
}
