/**
 * What a change does, in one sentence and in rows: every number is a printed one, and a change
 * is the difference of two printed numbers, so the sentence and the table agree.
 */
import { CHOICES } from '../../draft/choices.ts'
import { pieceOf, type Draft } from '../../draft/draft.ts'
import type { AnyDart } from '../../draft/piece.ts'
import { record } from '../../draft/record.ts'
import { HEADS } from '../../fitting/complaints/heads.ts'
import { sideOf, type Correction } from '../../fitting/correction.ts'
import { wedgeAt } from '../../fitting/ops/closing.ts'
import type { Operation } from '../../fitting/ops/operation.ts'
import { operationSaid } from '../../fitting/ops/said.ts'
import type { Preview } from '../../fitting/preview.ts'
import type { ChangedLines } from '../../rounds/changed-edges.ts'
import { compare } from '../../rounds/compare.ts'
import { formatChange, formatLength, printedMm, type UnitChoice } from '../../units/format.ts'
import { mm, type Mm } from '../../units/length.ts'
import type { ChangeRow } from '../parts/changes.ts'
import { CHANGE_WORDS } from './change.words.ts'

/** A sentence with its lengths still lengths, so that each is set in her unit. */
export type Said = readonly (string | Mm)[]

export const asText = (said: Said, units: UnitChoice): string =>
  said.map((part) => (typeof part === 'string' ? part : formatLength(part, units))).join('')

/** The one sentence over the table: both numbers of a wedge, or a choice from and to. */
export function changeSaid(preview: Preview, units: UnitChoice): Said {
  const { correction, before, after } = preview
  switch (correction.kind) {
    case 'close-wedge':
      return CHANGE_WORDS.wedgeClosed(correction.piece, correction.edge, correction.width)
    case 'turn-choice': {
      const { choice } = correction
      return CHANGE_WORDS.turned(
        CHOICES[choice].label,
        before.choices[choice],
        after.choices[choice],
      )
    }
    case 'operate': {
      const { operation } = correction
      if (operation.op === 'ROT' && operation.width > 0) return wedgeSaid(preview, operation, units)
      const { words, amount } = operationSaid(operation)
      return CHANGE_WORDS.done(words, amount)
    }
    case 'withdraw':
      return CHANGE_WORDS.takenBack
  }
}

function wedgeSaid(
  { before, after }: Preview,
  op: Extract<Operation, { op: 'ROT' }>,
  units: UnitChoice,
): Said {
  const { piece, edge, into } = op
  const moved = (part: string): Mm => printedChange(before, after, `${piece}.${part}`, units)
  return CHANGE_WORDS.foldedOut({
    ...{ piece, edge, into },
    across: mm(wedgeAt(pieceOf(before, piece), op)?.across ?? op.width),
    dart: moved(into),
    shorter: moved(edge),
    hem: moved('hem'),
  })
}

/** How much two printed lengths differ, without its sign. */
function printedChange(before: Draft, after: Draft, name: string, units: UnitChoice): Mm {
  const [a, b] = [record(before).lengths[name] ?? mm(0), record(after).lengths[name] ?? mm(0)]
  return mm(Math.abs(printedMm(b, units) - printedMm(a, units)))
}

/** "+0.9 cm" of one printed length; "same" where it prints the same. */
export const shortChange = ({ before, after }: Preview, name: string, units: UnitChoice): string =>
  formatChange(record(before).lengths[name] ?? mm(0), record(after).lengths[name] ?? mm(0), units)

/** What is drawn in violet, in words: for those who do not see the drawing. */
export function changedSaid({ edges, dart, edgeDarts }: ChangedLines): string {
  const darts: readonly AnyDart[] = [...(dart ? (['waistDart'] as const) : []), ...edgeDarts]
  return edges.length + darts.length === 0
    ? CHANGE_WORDS.nothingElsewhere
    : CHANGE_WORDS.changed(edges, darts)
}

/** What changed, and the seams that are sewn together and did not: they are what she checks. */
export function rowsOf(before: Draft, after: Draft): readonly ChangeRow[] {
  const { changes, same } = compare(before, after)
  const touched = new Set(changes.map((c) => c.name.split('.')[0]))
  const seams = same.filter(({ name }) => {
    const [piece, part] = name.split('.')
    return touched.has(piece) && (part === 'side' || part === 'overarm')
  })
  return [...changes, ...seams].map(({ name, words, before, after }) => ({
    id: name,
    name: CHANGE_WORDS.row(words),
    before,
    after,
  }))
}

/** One line of a list of decisions: "Gaping armhole: a wedge of 1.0 cm at the front sleeve edge." */
export function correctionSaid(c: Exclude<Correction, { kind: 'withdraw' }>): Said {
  const { name } = HEADS[c.because.complaint]
  const side = sideOf(c)
  if (c.kind === 'operate') {
    const { words, amount } = operationSaid(c.operation)
    return CHANGE_WORDS.operation(name, words, amount, side)
  }
  return c.kind === 'close-wedge'
    ? CHANGE_WORDS.wedge(name, c.piece, c.edge, c.width)
    : CHANGE_WORDS.choice(name, CHOICES[c.choice].label, mm(Math.abs(c.by)), c.by >= 0, side)
}

/** "all of it", "half of it", "87 in a hundred". */
export function shareWords(share: number): string {
  const { all, half, of } = CHANGE_WORDS.share
  return share === 1 ? all : share === 0.5 ? half : of(Math.round(share * 100))
}

/** The parts she may choose from: the usual one of this answer, all, three quarters, half. */
export const sharesFor = (usual: number): readonly number[] =>
  [...new Set([1, usual, 0.75, 0.5])].sort((a, b) => b - a)
