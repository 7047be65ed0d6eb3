/**
 * Replay: choices turned in the order they were decided, the draft made from them, wedges closed
 * in order on the fresh pieces, every seam proved again. The same list on the same numbers gives
 * the same pieces; what cannot be made is refused with a reason and changes nothing.
 */
import { CHOICES, type Choices } from '../draft/choices.ts'
import { pieceOf, withPiece, type Draft, type GarmentId } from '../draft/draft.ts'
import { drawn, proved } from '../draft/garments.ts'
import { edge } from '../draft/piece.ts'
import type { Step } from '../draft/step.ts'
import type { Body } from '../measurements/confirmed.ts'
import { fixed } from '../units/amount.ts'
import { mm } from '../units/length.ts'
import { COMPLAINTS } from './complaints.ts'
import { inForce, type Correction } from './correction.ts'
import type { Refusal } from './refusal.ts'
import { closeWedge, type Wedge } from './wedge.ts'

export interface Corrected {
  readonly draft: Draft
  readonly refused: readonly Refusal[]
  /** What each wedge did, by correction id. */
  readonly wedges: Readonly<Record<string, Wedge>>
}

export function correctedDraft(
  garment: GarmentId,
  body: Body,
  choices: Choices,
  corrections: readonly Correction[],
): Corrected {
  const list = inForce(corrections)
  const turned = turnChoices(choices, list)
  const fresh = drawn(garment, body, turned.choices)
  const closed = closeWedges(fresh, list)
  return { ...closed, draft: proved(closed.draft), refused: [...turned.refused, ...closed.refused] }
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

function closeWedges(start: Draft, list: readonly Correction[]): Corrected {
  const refused: Refusal[] = []
  const wedges: Record<string, Wedge> = {}
  let draft = start
  for (const c of list) {
    if (c.kind !== 'close-wedge') continue
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
  return { draft, refused, wedges }
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
    why: COMPLAINTS[c.because.complaint].name,
    lights: [edge(w.piece, c.edge).path],
  }
}
