/**
 * Numbers that speak against a complaint, before anything is changed: ease that is there or is
 * not, an edge that stretched, a sheet printed at another size. Ease limits: published tables
 * (a public metric reference for woven bodices, a costume textbook for the least); shares stated.
 */
import type { ComplaintId, Work } from '../complaints/complaint.ts'
import type { ReachName, Reaches } from '../reaches.ts'
import type { EditAmount } from './edit-amounts.ts'
import { GATE_WORDS } from './gates.words.ts'
import { tenth } from './told.ts'

export type Level = 'bust' | 'waist' | 'hip'
const EASE: Readonly<Record<Level, readonly [ReachName, ReachName, ReachName]>> = {
  bust: ['bustEase', 'bustDraft', 'bustBody'],
  waist: ['waistEase', 'waistDraft', 'waistBody'],
  hip: ['hipEase', 'hipDraft', 'hipBody'],
}
/** With so much ease round the body by the numbers a place is not tight, mm. */
export const EASE_ENOUGH: Readonly<Record<Level, number>> = { bust: 60, waist: 40, hip: 60 }
/** Ease that stays round the body after any taking in, mm. */
export const EASE_LEAST: Readonly<Record<Level, number>> = { bust: 38, waist: 19, hip: 13 }

export function easeAt(level: Level, reaches: Reaches): number | undefined {
  const [ease, draft, body] = EASE[level]
  const [given, round, by] = [reaches[ease], reaches[draft], reaches[body]]
  return given ?? (round !== undefined && by !== undefined ? round - by : undefined)
}

const TIGHT: Partial<Record<ComplaintId, Level>> = {
  B1: 'bust',
  B12: 'bust',
  X2: 'bust',
  W3: 'waist',
  W9: 'hip',
}
const LOOSE: Partial<Record<ComplaintId, Level>> = {
  B3: 'bust',
  X3: 'bust',
  A2: 'bust',
  W4: 'waist',
  K6: 'waist',
  B13: 'waist',
}
export const TAPE_AT: Readonly<Record<Level, 'bustGirth' | 'waistGirth' | 'hipGirth'>> = {
  bust: 'bustGirth',
  waist: 'waistGirth',
  hip: 'hipGirth',
}

export interface Contradiction {
  readonly level: Level
  readonly why: string
}

/** Tight with room to spare, or loose with none: a number is wrong, not the draft. */
export function contradicted(id: ComplaintId, reaches: Reaches): Contradiction | undefined {
  const [tight, loose] = [TIGHT[id], LOOSE[id]]
  if (tight) {
    const ease = easeAt(tight, reaches)
    if (ease !== undefined && ease >= EASE_ENOUGH[tight])
      return {
        level: tight,
        why: GATE_WORDS.notTight(tight, Math.round(ease), EASE_ENOUGH[tight]),
      }
  }
  if (loose && id !== 'A2') {
    const ease = easeAt(loose, reaches)
    if (ease !== undefined && ease <= EASE_LEAST[loose])
      return {
        level: loose,
        why: GATE_WORDS.notLoose(loose, Math.round(ease), EASE_LEAST[loose]),
      }
  }
  return undefined
}

/** What is taken in would leave less than the least ease there. */
export function leavesTooLittle(
  id: ComplaintId,
  leads: ComplaintId,
  work: Work | undefined,
  edits: readonly EditAmount[],
  reaches: Reaches,
): Contradiction | undefined {
  const level = LOOSE[leads]
  const ease = level && easeAt(level, reaches)
  if (!level || ease === undefined || work?.moves !== 'in') return undefined
  const round = 2 * edits.filter((e) => e.follows === undefined).reduce((s, e) => s + e.applied, 0)
  if (round <= ease - EASE_LEAST[level]) return undefined
  return {
    level,
    why: GATE_WORDS.tooLittle(id, level, tenth(round), tenth(ease - round), EASE_LEAST[level]),
  }
}
/** Cloth that can be pinned away is there: the number by tape may be what is wrong. */
export const tapeAgain = (level: Level): string => GATE_WORDS.tapeAgain(level)

/** An edge sewn longer than drafted by more than this is stretched: sewing, not the draft, mm. */
export const STRETCHED = 3
const EDGE_COMPLAINTS: readonly ComplaintId[] = ['N1', 'N3', 'B8', 'A3']

export function stretchedBy(id: ComplaintId, reaches: Reaches): number | undefined {
  if (!EDGE_COMPLAINTS.includes(id)) return undefined
  const { edgeSewn, edgeDrafted, sewnLonger } = reaches
  const by =
    sewnLonger ?? (edgeSewn !== undefined && edgeDrafted !== undefined ? edgeSewn - edgeDrafted : 0)
  return by > STRETCHED ? by : undefined
}

/** The printed square may be off by so much, mm in 100. Common practice, no source. */
const SQUARE = { side: 100, within: 1 } as const
export const offScale = ({ testSquare }: Reaches): boolean =>
  testSquare !== undefined && Math.abs(testSquare - SQUARE.side) > SQUARE.within
