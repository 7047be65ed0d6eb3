/**
 * Her own draft beside the tool's: the lengths of both, and where they lie apart what to look at.
 * Every number of the tool is read off its record, so what stands here is what would be printed.
 */
import { mm, type Mm } from '../units/length.ts'
import type { Draft } from './draft.ts'
import { isHalf, isSkirt, pairedId, type AnyDart, type EdgeName, type PieceId } from './piece.ts'
import { DART_WORDS, EDGE_WORDS } from './piece.words.ts'
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
const CHECKS: Readonly<Record<Check, { readonly point: string; readonly words: string }>> = {
  bustLine: { point: 'U', words: 'underarm line, centre to side' },
  waistLine: { point: 'W', words: 'waist line, centre to side' },
  hipLine: { point: 'X', words: 'hip line, centre to side' },
  bustTip: { point: 'apex', words: 'bust tip, from the centre' },
}

const WIDTH = 'Look at the quarter girth and its ease, and that the line is square to the centre.'
const LOOK: Readonly<Partial<Record<EdgeName | AnyDart | Check, string>>> = {
  centre: 'Lay the ruler along the centre again: nape to waist first, then waist to hem.',
  neck: 'Look at the width and depth of the neck, then that the curve leaves the centre square.',
  overarm: 'Measure from the side neck; look at the level on which the overarm ends.',
  shoulder: 'Measure from the side neck; look at the level of the shoulder bone.',
  sleeveEdge: 'Look at the compass: its centre, how far it is open, and that the arc ends at U.',
  armhole: 'Look at the across point Z and the underarm line; a flatter curve is shorter.',
  side: 'Look at U, W and X, then at the depth of the underarm; the curve comes last.',
  hem: 'Look at the width on the hip line, and that the hem is square to the centre.',
  waist: 'Look at the widths of the darts, then at the width on the waist line.',
  cap: 'Look at the height of the cap and its width; a rounder curve is longer.',
  frontSeam: 'Look at the length of the sleeve and at what is taken off at its hem.',
  backSeam: 'Look at the length of the sleeve and at what is taken off at its hem.',
  waistDart: 'Look at the width of the dart at the waist and that half lies on either side.',
  waistDart2: 'Look at the width of the dart at the waist and that half lies on either side.',
  bustDart: 'Look at the front length over the bust less the back length over the blade.',
  bustDart2: 'Look at how much of the bust dart went to its second place.',
  shoulderDart: 'Look at the width of the shoulder dart; the shoulder is longer by it.',
  bustLine: WIDTH,
  waistLine: WIDTH,
  hipLine: WIDTH,
  bustTip: 'Look at the bust span; half of it is laid out from the centre.',
}

/** The rows of body, sleeve and skirt pieces, checks before edges before darts. */
export function ownRows(draft: Draft, drawn: Readonly<Record<string, Mm>>): readonly OwnRow[] {
  const { lengths, points } = record(draft)
  const pieces = [...new Set(Object.keys(lengths).map((n) => n.split('.')[0] as PieceId))]
  return pieces.filter(isDrafted).flatMap((piece) => [
    ...(Object.keys(CHECKS) as Check[]).flatMap((check) => {
      const at = isHalf(pairedId(piece)) ? points[`${piece}.${CHECKS[check].point}`] : undefined
      return at ? [row(piece, check, CHECKS[check].words, mm(Math.abs(at[0])), drawn)] : []
    }),
    ...Object.entries(lengths).flatMap(([name, tool]) => {
      const [own, part = ''] = name.split('.')
      if (own !== piece) return []
      const dart = DART_WORDS[part as AnyDart]
      const words = dart ? `${dart}, width` : EDGE_WORDS[part as EdgeName]
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
  return { ...plain, hers, apart, look: LOOK[part as Check] ?? WIDTH }
}
