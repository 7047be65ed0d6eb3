/**
 * Replay: the halves as everything in force leaves them (`halves.ts`), made whole and proved
 * again. The same list on the same numbers gives the same pieces; what cannot be made is refused
 * with a reason and changes nothing.
 */
import { alike, centresApart } from '../draft/as-worn.ts'
import type { Choices } from '../draft/choices.ts'
import { pieceOf, type Draft, type GarmentId } from '../draft/draft.ts'
import { say, type Finding } from '../draft/finding.ts'
import { madeWhole, proved } from '../draft/make.ts'
import { bothRound } from '../draft/opening.ts'
import { SIDES, type Side } from '../draft/piece.ts'
import { SEAM_EQUAL } from '../draft/proof.ts'
import { bodyOfSide, sidesAgree, type Body } from '../measurements/confirmed.ts'
import { inForce, sideOf, type Correction } from './correction.ts'
import { correctedHalves, type Corrected } from './halves.ts'

export type { Corrected } from './halves.ts'

type Both<T> = Readonly<Record<Side, T>>

/** The draft with everything that is in force; left and right are in it where they are not alike. */
export function correctedDraft(
  garment: GarmentId,
  body: Body,
  choices: Choices,
  corrections: readonly Correction[],
): Corrected {
  const mean = correctedHalves(garment, body, choices, corrections)
  const sides = sidesOf(mean, garment, body, choices, corrections)
  if (!sides) return { ...mean, draft: proved(mean.draft) }
  const { left, right } = sides
  const both = { left: left.draft, right: right.draft }
  const together = left.draft.together
  return {
    draft: {
      ...madeWhole({ ...mean.draft, ...(together ? { together } : {}) }),
      sides: both,
      findings: findingsOfBoth(both),
    },
    refused: [
      ...left.refused,
      ...right.refused.filter((r) => !left.refused.some((l) => l.correction === r.correction)),
    ],
    wedges: { ...right.wedges, ...left.wedges, ...mean.wedges },
    notes: { ...right.notes, ...left.notes, ...mean.notes },
  }
}

/** What both sides say is said once; the rest with its side. */
function findingsOfBoth(sides: Both<Draft>): readonly Finding[] {
  const { left, right } = sides
  const same = (a: Finding) => (b: Finding) =>
    a.id === b.id && a.place === b.place && a.severity === b.severity
  return [
    ...left.findings.map((f): Finding =>
      right.findings.some(same(f)) ? f : { ...f, side: 'left' },
    ),
    ...right.findings
      .filter((f) => !left.findings.some(same(f)))
      .map((f): Finding => ({ ...f, side: 'right' })),
    ...centresApart(sides).map(({ piece, by }) =>
      say('centresApart', 'stop', `${piece}.centre`, by, SEAM_EQUAL),
    ),
  ]
}

/**
 * Left and right apart: where a correction is for one side only, or where the taped shoulders
 * differ and the pieces drawn from them differ by more than `PIECES_ALIKE`. Guesses have no sides.
 * @param mean the halves that stand for both: also those of a side that has nothing of its own
 */
function sidesOf(
  mean: Corrected,
  garment: GarmentId,
  body: Body,
  choices: Choices,
  corrections: readonly Correction[],
): Both<Corrected> | undefined {
  const ofSide = new Set(inForce(corrections).flatMap((c) => sideOf(c) ?? []))
  const apart = body.standing === 'confirmed' && !sidesAgree(body) ? body : undefined
  if (ofSide.size === 0 && !apart) return undefined
  const on = (side: Side): Corrected =>
    apart || ofSide.has(side)
      ? correctedHalves(garment, apart ? bodyOfSide(apart, side) : body, choices, corrections, side)
      : mean
  const halves = { left: on('left'), right: on('right') }
  // What passes through neck and waist passes both sides at once, so a garment opens in one way.
  const together = bothRound(
    SIDES.map((s) => halves[s].draft).map((d) => [pieceOf(d, 'back'), pieceOf(d, 'front')]),
  )
  const whole = (c: Corrected): Corrected => ({ ...c, draft: proved({ ...c.draft, together }) })
  const { left, right } = { left: whole(halves.left), right: whole(halves.right) }
  const same = left.draft.pieces.every((p) => {
    const q = right.draft.pieces.find((o) => o.id === p.id)
    return q !== undefined && alike(p, q, PIECES_ALIKE)
  })
  return ofSide.size === 0 && same ? undefined : { left, right }
}
/** Pieces of left and right that lie within this of each other are cut as one pair, mm. Judgement. */
const PIECES_ALIKE = 3
