/**
 * What the proof of a draft found, each with its place and its numbers. `stop`: not for cutting.
 * `muslin`: for a muslin only. `note`: good to know.
 */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm, type Mm } from '../units/length.ts'
import { findingOnSide, FINDING_WORDS } from './finding.words.ts'
import type { Side } from './piece.ts'

export type Severity = 'stop' | 'muslin' | 'note'

export type FindingId = keyof typeof FINDING_WORDS

export interface Finding {
  readonly id: FindingId
  readonly severity: Severity
  /** `front.sleeveEdge`, `back.side`: where to look on the drawing. */
  readonly place: string
  readonly value: Mm
  readonly limit: Mm
  /** Of one side of the body only. */
  readonly side?: Side
}

export const say = (
  id: FindingId,
  severity: Severity,
  place: string,
  value = 0,
  limit = 0,
): Finding => ({ id, severity, place, value: mm(value), limit: mm(limit) })

export const findingSentence = (f: Finding, units: UnitChoice): string => {
  const said = FINDING_WORDS[f.id]
    .replace('{value}', formatLength(f.value, units))
    .replace('{limit}', formatLength(f.limit, units))
  return f.side ? findingOnSide(f.side, said) : said
}

export const stopsCutting = (findings: readonly Finding[]): boolean =>
  findings.some((f) => f.severity === 'stop')
