/**
 * What a muslin says beside its folds: how its level and plumb lines lie, what it did when she
 * moved, and what the numbers say of each cause. Lines outrank folds (a dressmaking manual of 1921
 * and a muslin bulletin of 1978, seen in part; trade practice); the rest only leans.
 */
import type { MeasurementId } from '../../measurements/catalogue.ts'
import {
  causeId,
  type Cause,
  type Complaint,
  type ComplaintId,
  type Test,
} from '../complaints/complaint.ts'
import { JUDGE_WORDS } from './judge.words.ts'

export type Lean = 'for' | 'against' | 'open'
/** A line as it was read, and the complaint that it names or speaks against. */
export interface LineSays {
  readonly complaint: ComplaintId
  /** "waist line: up at the centre front" */
  readonly read: string
}
export interface Beside {
  readonly named: readonly LineSays[]
  readonly denied: readonly LineSays[]
  /** By cause, "K1.2". */
  readonly leans: Readonly<Partial<Record<string, Lean>>>
  /** Causes that the muslin itself shows, by a line, a movement or a measured edge. */
  readonly shown: readonly string[]
  /** Numbers that contradict a complaint: they are taped again before anything is changed. */
  readonly doubts: readonly Doubt[]
}
export interface Doubt {
  readonly complaint: ComplaintId
  readonly why: string
  readonly tape: MeasurementId
}
export const NOTHING_BESIDE: Beside = { named: [], denied: [], leans: {}, shown: [], doubts: [] }

/** The line that speaks against a complaint, as a sentence that says what to do first. */
export function deniedByLine(id: ComplaintId, { denied }: Beside): string | undefined {
  const line = denied.find(({ complaint }) => complaint === id)
  return line && JUDGE_WORDS.lineDenies(line.read)
}

/** The one open cause that a line proves: it is another complaint, and the line names that. */
export function provedByLine(
  c: Complaint,
  open: readonly number[],
  { named }: Beside,
): { readonly cause: Cause; readonly read: string } | undefined {
  const proved = c.causes.flatMap((cause) => {
    const { number, remedy } = cause
    const line =
      open.includes(number) && remedy.kind === 'see'
        ? named.find(({ complaint }) => complaint === remedy.complaint)
        : undefined
    return line ? [{ cause, read: line.read }] : []
  })
  return proved.length === 1 ? proved[0] : undefined
}

/** What lines name and nobody has said yet. */
export const unsaid = ({ named }: Beside, said: readonly ComplaintId[]): readonly LineSays[] =>
  named.filter(({ complaint }) => !said.includes(complaint))

/**
 * Tests of what the muslin shows first, of what is only spoken against last. A number that speaks
 * for a cause does not bring its test forward: on planted errors that asked more, not less.
 */
export function byLean(
  c: Complaint,
  tests: readonly Test[],
  open: readonly number[],
  beside: Beside,
): readonly Test[] {
  const place = ({ yes }: Test): number => {
    const own = yes.filter((n) => open.includes(n))
    if (own.some((n) => isShown(c.id, n, beside))) return 0
    const against = own.length > 0 && own.every((n) => leanOf(c.id, n, beside) === 'against')
    return against ? 2 : 1
  }
  return [...tests].sort((a, b) => place(a) - place(b))
}
export const isShown = (id: ComplaintId, number: number, { shown }: Beside): boolean =>
  shown.includes(causeId(id, number))
export const leanOf = (id: ComplaintId, number: number, { leans }: Beside): Lean =>
  leans[causeId(id, number)] ?? 'open'
