/** Sentences about rounds: what lies between two of them, and what a newer program would print. */
import { isHalf, type EdgeName, type PieceId } from '../../draft/piece.ts'
import { EDGE_WORDS, PIECE_WORDS } from '../../draft/piece.words.ts'
import { causeWords } from '../../fitting/complaints/catalogue.ts'
import { HEADS } from '../../fitting/complaints/heads.ts'
import type { Correction } from '../../fitting/correction.ts'
import { compare, lengthWords, type Change, type Comparison } from '../../rounds/compare.ts'
import { drift } from '../../rounds/drift.ts'
import { redraft } from '../../rounds/redraft.ts'
import type { Round } from '../../rounds/round.ts'
import { printedMm, type UnitChoice } from '../../units/format.ts'
import { capital } from '../../units/capital.ts'
import { shareWords, type Said } from '../fitting/change-said.ts'
import type { ChangeRow } from '../parts/changes.ts'
import { CHANGED_WORDS, SUMMARY } from './compare.words.ts'
import { BECAUSE, DRIFT_WORDS } from './record.words.ts'
import { saidBetween } from './said-between.ts'
import { pickedBetween } from './words-between.ts'

export const betweenRounds = (before: Round, after: Round): Comparison =>
  compare(redraft(before).draft, redraft(after).draft)

/** Rows that print a change, and rows that print the same. */
export function rowsBetween(
  { changes, same }: Comparison,
  units: UnitChoice,
): { readonly changed: readonly ChangeRow[]; readonly same: readonly ChangeRow[] } {
  const rows = [...changes, ...same].filter(told).map((change) => ({
    id: change.name,
    name: capital(rowWords(change)),
    before: change.before,
    after: change.after,
  }))
  const prints = (row: ChangeRow): boolean =>
    printedMm(row.before, units) !== printedMm(row.after, units)
  return { changed: rows.filter(prints), same: rows.filter((row) => !prints(row)) }
}

/** A strip is told by one long and one short side. */
const TWICE: readonly string[] = ['outer', 'end']
/** A piece that came is told in words; a dart that came has grown from nothing. */
function told({ name, before }: Change): boolean {
  const [piece, part] = placeOf(name)
  if (piece === undefined || isHalf(piece)) return true
  return before !== 0 && !(STRIPS.includes(piece) && TWICE.includes(part))
}
const STRIPS: readonly PieceId[] = ['neckStrip', 'armholeStrip', 'slitFacing', 'keyholeFacing']

/** "bias strip of the neck, short end": the name of a finishing piece is long. */
function rowWords({ name, words }: Change): string {
  const [piece, part] = placeOf(name)
  return piece === undefined || isHalf(piece)
    ? words
    : CHANGED_WORDS.partOf(PIECE_WORDS[piece], EDGE_WORDS[part as EdgeName] ?? part)
}

/** `front.side`: the piece and the part; a measurement or a choice has no piece. */
function placeOf(name: string): readonly [piece: PieceId | undefined, part: string] {
  const [piece = '', part = ''] = name.split('.')
  return [Object.hasOwn(PIECE_WORDS, piece) ? (piece as PieceId) : undefined, part]
}

/** The sentence under the heading, of `changed` numbers. */
export function summary(changed: number, before: Round, after: Round): string {
  const lines = saidBetween(before, after)
  const count = (how: string): number => lines.filter((l) => l.how === how).length
  return SUMMARY({
    numbers: changed,
    picked: pickedBetween(before, after).length,
    gone: count('gone'),
    better: count('better'),
    again: count('same') + count('again'),
    worse: count('worse'),
    new: count('new'),
  })
}

/** What the program now draws otherwise than the paper of this round; undefined when nothing. */
export function driftSaid(round: Round): string | undefined {
  const names = drift(round)
  if (names.length === 0) return undefined
  const lengths = names.filter((n) => round.printed && n in round.printed.record.lengths)
  const shown = lengths.slice(0, 3).map(lengthWords)
  return DRIFT_WORDS.numbers(shown, names.length - shown.length, round.number)
}

/** Why a correction was made: the cause, what was read, how much of it was taken. */
export function becauseSaid(c: Decision): Said {
  const { complaint, pinned, watch, round } = c.because
  return BECAUSE({
    round,
    complaint: HEADS[complaint].name,
    cause: causeWords(c.because),
    read: pinned.read,
    how: pinned.how,
    share: shareWords(pinned.share),
    watch,
  })
}

export type Decision = Exclude<Correction, { kind: 'withdraw' }>

/** Every change that was decided up to this round, and whether it was taken back. */
export function decisionsOf(
  round: Round,
): readonly { readonly correction: Decision; readonly takenBack: boolean }[] {
  const back = new Set(
    round.corrections.flatMap((c) => (c.kind === 'withdraw' ? [c.correction] : [])),
  )
  return round.corrections.flatMap((c) =>
    c.kind === 'withdraw' ? [] : [{ correction: c, takenBack: back.has(c.id) }],
  )
}
