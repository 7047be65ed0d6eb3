/** Two drafts side by side: what changed, by how much, largest first. */
import { CHOICE_IDS, CHOICES, type ChoiceId } from '../draft/choices.ts'
import type { Draft } from '../draft/draft.ts'
import {
  sidedId,
  type AnyDart,
  type EdgeName,
  type PairedId,
  type PieceId,
} from '../draft/piece.ts'
import { DART_WORDS, EDGE_WORDS, PIECE_WORDS } from '../draft/piece.words.ts'
import { record } from '../draft/record.ts'
import { measure, MEASUREMENT_IDS, type MeasurementId } from '../measurements/catalogue.ts'
import { mm, type Mm } from '../units/length.ts'
import { LENGTH_WORDS } from './compare.words.ts'

export interface Change {
  /** `front.sleeveEdge`, `napeToWaist`, `lengthAdded`. */
  readonly name: string
  readonly kind: 'length' | 'measurement' | 'choice'
  readonly words: string
  readonly before: Mm
  readonly after: Mm
}

export interface Comparison {
  readonly changes: readonly Change[]
  /** Lengths that stayed, so that "same" can be said of them. */
  readonly same: readonly Change[]
}

/** Differences under this are rounding of the record, not a change. */
const NOISE = 0.015

export function compare(before: Draft, after: Draft): Comparison {
  const [a, b] = [record(before), record(after)]
  const lengths = Object.keys(b.lengths).map((name): Change => ({
    name,
    kind: 'length',
    words: lengthWords(name),
    before: was(a.lengths, name) ?? mm(0),
    after: b.lengths[name] ?? mm(0),
  }))
  const rows = [...measurements(before, after), ...choices(before, after), ...lengths]
  const size = (c: Change): number => Math.abs(c.after - c.before)
  return {
    changes: rows.filter((c) => size(c) > NOISE).sort((x, y) => size(y) - size(x)),
    same: lengths.filter((c) => size(c) <= NOISE),
  }
}

/** A number before, whether or not left and right were told apart then. */
function was<T>(record: Readonly<Record<string, T>>, name: string): T | undefined {
  const ofBoth = name.replace(/(Left|Right)\./, '.')
  const [piece, ...part] = name.split('.')
  const ofRight = [sidedId(piece as PairedId, 'right'), ...part].join('.')
  return record[name] ?? record[ofBoth] ?? record[ofRight]
}

/** "front sleeve edge", "back waist dart, width". */
export function lengthWords(name: string): string {
  const [piece, part] = name.split('.')
  if (!piece || !part) throw new Error(`compare: no length is called ${name}`)
  const whose = PIECE_WORDS[piece as PieceId] ?? piece
  const dart = DART_WORDS[part as AnyDart]
  return dart
    ? LENGTH_WORDS.dart(whose, dart)
    : LENGTH_WORDS.edge(whose, EDGE_WORDS[part as EdgeName] ?? part)
}

/** "front waist dart, upper tip", from the name of a tip in a record. */
export function tipWords(name: string): string {
  const [piece = '', part = '', end] = name.split('.')
  const dart = DART_WORDS[part as AnyDart] ?? part
  return LENGTH_WORDS.tip(PIECE_WORDS[piece as PieceId] ?? piece, dart, end)
}

function measurements(before: Draft, after: Draft): Change[] {
  return MEASUREMENT_IDS.flatMap((id: MeasurementId): Change[] => {
    const [x, y] = [before.body.values[id], after.body.values[id]]
    return x === undefined || y === undefined
      ? []
      : [{ name: id, kind: 'measurement', words: measure(id).label, before: x, after: y }]
  })
}

function choices(before: Draft, after: Draft): Change[] {
  return CHOICE_IDS.map((id: ChoiceId): Change => ({
    name: id,
    kind: 'choice',
    words: CHOICES[id].label,
    before: before.choices[id],
    after: after.choices[id],
  }))
}
