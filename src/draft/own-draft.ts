/**
 * Her own draft beside the tool's: the lengths of both, and where they lie apart what to look at.
 * Every number of the tool is read off its record, so what stands here is what would be printed.
 */
import { mm, type Mm } from '../units/length.ts'
import type { Draft } from './draft.ts'
import { isHalf, isSkirt, pairedId, type AnyDart, type EdgeName, type PieceId } from './piece.ts'
import { OWN_DRAFT_WORDS as W } from './own-draft.words.ts'
import { dartWidthSaid, DART_WORDS, EDGE_WORDS } from './piece.words.ts'
import { record } from './record.ts'

/** Lengths of two drafts count as one up to this, mm: 3 mm on paper is common practice. */
export const OWN_APART = mm(3)

export interface OwnRow {
  /** `front.side` */
  readonly name: string
  readonly piece: PieceId
  readonly words: string
  readonly tool: Mm
  readonly hers?: Mm
  /** Hers less the tool's, where they differ by more than `OWN_APART`. */
  readonly apart?: Mm
  /** What to look at; there where they lie apart. */
  readonly look?: string
}

type Check = 'bustLine' | 'waistLine' | 'hipLine' | 'bustTip'
/** Widths from the centre at points the tool letters. */
const CHECKS: Readonly<Record<Check, string>> = {
  bustLine: 'U',
  waistLine: 'W',
  hipLine: 'X',
  bustTip: 'apex',
}

/** The rows of body, sleeve and skirt pieces, checks before edges before darts. */
export function ownRows(draft: Draft, drawn: Readonly<Record<string, Mm>>): readonly OwnRow[] {
  const { lengths, points } = record(draft)
  const pieces = [...new Set(Object.keys(lengths).map((n) => n.split('.')[0] as PieceId))]
  return pieces.filter(isDrafted).flatMap((piece) => [
    ...(Object.keys(CHECKS) as Check[]).flatMap((check) => {
      const at = isHalf(pairedId(piece)) ? points[`${piece}.${CHECKS[check]}`] : undefined
      return at ? [row(piece, check, W.checks[check], mm(Math.abs(at[0])), drawn)] : []
    }),
    ...Object.entries(lengths).flatMap(([name, tool]) => {
      const [own, part = ''] = name.split('.')
      if (own !== piece) return []
      const words = Object.hasOwn(DART_WORDS, part)
        ? dartWidthSaid(part as AnyDart)
        : EDGE_WORDS[part as EdgeName]
      return [row(piece, part, words, tool, drawn)]
    }),
  ])
}

const isDrafted = (id: PieceId): boolean => {
  const paired = pairedId(id)
  return isHalf(paired) || isSkirt(paired) || paired === 'sleeve'
}

function row(
  piece: PieceId,
  part: string,
  words: string,
  tool: Mm,
  drawn: Readonly<Record<string, Mm>>,
): OwnRow {
  const name = `${piece}.${part}`
  const hers = drawn[name]
  const plain: OwnRow = { name, piece, words, tool }
  if (hers === undefined) return plain
  const apart = mm(hers - tool)
  if (Math.abs(apart) <= OWN_APART) return { ...plain, hers }
  return { ...plain, hers, apart, look: look(part) }
}

const look = (part: string): string =>
  Object.hasOwn(W.look, part) ? W.look[part as keyof typeof W.look] : W.look.bustLine
