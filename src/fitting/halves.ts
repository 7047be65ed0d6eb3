/**
 * The halves of a garment with everything that is in force: choices turned in the order they were
 * decided, the draft made from them, wedges closed and operations done on the fresh pieces. Not
 * yet whole and not proved: `apply.ts` does both, once.
 */
import { CHOICES, type Choices } from '../draft/choices.ts'
import { pieceOf, withPiece, type Draft, type GarmentId } from '../draft/draft.ts'
import { drawn } from '../draft/make.ts'
import { edge, type Side } from '../draft/piece.ts'
import type { Step } from '../draft/step.ts'
import type { Body } from '../measurements/confirmed.ts'
import { fixed } from '../units/amount.ts'
import { capital } from '../units/capital.ts'
import { mm } from '../units/length.ts'
import { HEADS } from './complaints/heads.ts'
import { inForce, sideOf, type Correction } from './correction.ts'
import { operated } from './ops/operate.ts'
import type { Operation } from './ops/operation.ts'
import { operationSaid } from './ops/said.ts'
import type { Refusal } from './refusal.ts'
import { closeWedge, type Wedge } from './wedge.ts'

export interface Corrected {
  readonly draft: Draft
  readonly refused: readonly Refusal[]
  /** What each wedge did, by correction id. */
  readonly wedges: Readonly<Record<string, Wedge>>
  /** Darts that an operation had to draw, by correction id; words in `ops/said.words.ts`. */
  readonly notes: Readonly<Record<string, readonly string[]>>
}

/** @param side corrections of the other side alone are left out; without it, those of one side */
export function correctedHalves(
  garment: GarmentId,
  body: Body,
  choices: Choices,
  corrections: readonly Correction[],
  side?: Side,
): Corrected {
  const list = inForce(corrections).filter((c) => (sideOf(c) ?? side) === side)
  const turned = turnChoices(choices, list)
  const done = carriedOut(drawn(garment, body, turned.choices), list)
  return { ...done, refused: [...turned.refused, ...done.refused] }
}

function turnChoices(
  start: Choices,
  list: readonly Correction[],
): { choices: Choices; refused: Refusal[] } {
  const refused: Refusal[] = []
  let choices = start
  for (const c of list) {
    if (c.kind !== 'turn-choice') continue
    const to = mm(choices[c.choice] + c.by)
    const { min, max } = CHOICES[c.choice]
    if (to < min || to > max)
      refused.push({ correction: c.id, why: { id: 'choiceOutOfRange', choice: c.choice, to } })
    else choices = { ...choices, [c.choice]: to }
  }
  return { choices, refused }
}

/** Operations in their own order, whatever the order in which they were decided. */
const RANK: Readonly<Record<Operation['op'], number>> = {
  DROP: 0,
  WEDGE: 1,
  MOVE: 2,
  SWAP: 3,
  BUST: 4,
  GROUP: 5,
  STRIP: 6,
  ROT: 7,
  SPLIT: 8,
  DARTSHAPE: 9,
  DARTLEN: 10,
}

function inTheirOrder(list: readonly Correction[]): readonly Changing[] {
  const changing = list.filter(
    (c): c is Changing => c.kind === 'close-wedge' || c.kind === 'operate',
  )
  const rank = (c: Changing): number => (c.kind === 'operate' ? RANK[c.operation.op] : RANK.ROT)
  const named = (c: Changing): string => (c.kind === 'operate' ? JSON.stringify(c.operation) : '')
  // Wedges of the first kind keep the order in which they were decided, as printed rounds have it.
  return [...changing].sort((a, b) => rank(a) - rank(b) || named(a).localeCompare(named(b)))
}
type Changing = Extract<Correction, { kind: 'close-wedge' | 'operate' }>

function carriedOut(start: Draft, list: readonly Correction[]): Corrected {
  const refused: Refusal[] = []
  const wedges: Record<string, Wedge> = {}
  const notes: Record<string, readonly string[]> = {}
  let draft = start
  for (const c of inTheirOrder(list)) {
    if (c.kind === 'operate') {
      const done = operated(draft, c.operation)
      if (!done.ok) refused.push({ correction: c.id, why: done.why })
      else {
        draft = { ...done.draft, steps: [...draft.steps, operationStep(c, draft, done.draft)] }
        if (done.notes.length > 0) notes[c.id] = done.notes
      }
      continue
    }
    const outcome = closeWedge(pieceOf(draft, c.piece), c.edge, c.along, c.width)
    if (!outcome.ok) {
      refused.push({ correction: c.id, why: outcome.why })
      continue
    }
    wedges[c.id] = outcome.wedge
    draft = withPiece(
      { ...draft, steps: [...draft.steps, wedgeStep(c, outcome.wedge)] },
      outcome.wedge.piece,
    )
  }
  return { draft, refused, wedges, notes }
}

/** The lines that lie elsewhere light up when the step is walked. */
function operationStep(
  c: Extract<Correction, { kind: 'operate' }>,
  before: Draft,
  after: Draft,
): Step {
  const { words, amount } = operationSaid(c.operation)
  const changed = (['back', 'front'] as const).flatMap((id) => {
    const [a, b] = [pieceOf(before, id), pieceOf(after, id)]
    return b.edges.filter((e, i) => a.edges[i]?.path !== e.path && e.path.length > 0)
  })
  const named = 'piece' in c.operation ? c.operation.piece : 'front'
  return {
    verb: 'change',
    piece: named === 'both' ? 'front' : named,
    words: capital(words),
    amount: fixed(amount),
    why: HEADS[c.because.complaint].name,
    lights: changed.map((e) => e.path),
  }
}

function wedgeStep(c: Extract<Correction, { kind: 'close-wedge' }>, w: Wedge): Step {
  return {
    verb: 'wedge',
    piece: c.piece,
    from: 'U',
    at: fixed(w.from),
    edge: c.edge,
    pivot: 'apex',
    width: fixed(c.width),
    opens: fixed(w.opens),
    shortens: fixed(w.shortens),
    why: HEADS[c.because.complaint].name,
    lights: [edge(w.piece, c.edge).path],
  }
}
