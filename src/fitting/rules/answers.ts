/**
 * Her answers read against the causes and tests of a complaint. A key is a number (`1`,
 * `cause 1`, `N1.1`), the number of a test (`test 2`), or a sentence: ours, or words near it.
 */
import { complaintOf } from '../complaints/catalogue.ts'
import { causeId, type Complaint, type ComplaintId } from '../complaints/complaint.ts'
import { SHORTHAND, TEST_SHORTHAND } from '../complaints/shorthand.ts'
import { JUDGE_WORDS } from './judge.words.ts'

export type Answers = Readonly<Record<string, boolean>>

export interface ReadAnswers {
  /** Causes an answer points to, and causes an answer rules out, by number. */
  readonly yes: readonly number[]
  readonly no: readonly number[]
  /** Keys that name nothing of this complaint. */
  readonly unread: readonly string[]
  /** Tests not answered yet that could tell the open causes apart. */
  readonly openTests: readonly number[]
  /** Causes she ruled out by name, not by a test that failed to show them. */
  readonly denied: readonly number[]
  /** What was said to each test that was answered. */
  readonly tested: Readonly<Record<number, boolean>>
}

export function readAnswers(id: ComplaintId, answers: Answers): ReadAnswers {
  const c = complaintOf(id)
  const [direct, tested, no] = [new Set<number>(), new Set<number>(), new Set<number>()]
  const denied = new Set<number>()
  const [unread, answered]: [string[], Record<number, boolean>] = [[], {}]
  for (const [key, said] of Object.entries(answers)) {
    const named = namedBy(c, key)
    if (!named) unread.push(key)
    else if (named.kind === 'cause') {
      ;(said ? direct : no).add(named.number)
      if (!said) denied.add(named.number)
    } else {
      answered[named.number] = said
      for (const n of testCauses(c, named.number)) (said ? tested : no).add(n)
    }
  }
  // A cause named outright tells more than a test that points to several.
  const yes = direct.size > 0 ? direct : new Set([...tested].filter((n) => !no.has(n)))
  const ruledOut = [...no].filter((n) => !yes.has(n))
  const openTests = c.tests.map(({ number }) => number).filter((n) => answered[n] === undefined)
  return {
    yes: sorted(yes),
    no: ruledOut.sort((x, y) => x - y),
    unread,
    openTests,
    denied: sorted(denied),
    tested: answered,
  }
}
const sorted = (set: ReadonlySet<number>): number[] => [...set].sort((a, b) => a - b)

interface Named {
  readonly kind: 'cause' | 'test'
  readonly number: number
}
const testCauses = (c: Complaint, number: number): readonly number[] =>
  c.tests.find((t) => t.number === number)?.yes ?? []

function namedBy(c: Complaint, key: string): Named | undefined {
  const numbered = numberIn(c, key)
  return numbered ?? nearest(c, key)
}

const NUMBER = /^\s*(?:(cause|c)|(test|t|question|q))?\s*[#.:_-]*\s*(\d{1,2})(?:[\s.):-]+(.*))?$/i

function numberIn(c: Complaint, key: string): Named | undefined {
  const own = new RegExp(`^\\s*${c.id}\\s*[.:#_-]?\\s*`, 'i')
  const m = NUMBER.exec(key.replace(own, ''))
  if (!m) return undefined
  const number = Number(m[3])
  const kind = m[2] === undefined ? 'cause' : 'test'
  const list = kind === 'cause' ? c.causes : c.tests
  return list.some((x) => x.number === number) ? { kind, number } : undefined
}

/** This part of the words of the shorter of two sentences must be shared. Judgement. */
const NEAR = 0.6
/** The best must stand out from the next by this. Judgement. */
const CLEAR = 0.1

function nearest(c: Complaint, key: string): Named | undefined {
  const said = stems(key)
  if (said.size === 0) return undefined
  const scored = [
    ...c.causes.map(({ number, name }) => ({
      kind: 'cause' as const,
      number,
      near: Math.max(
        alike(said, stems(name)),
        alike(said, stems(SHORTHAND[c.id][number - 1] ?? '')),
      ),
    })),
    ...c.tests.map(({ number, ask }) => ({
      kind: 'test' as const,
      number,
      near: Math.max(
        alike(said, stems(ask)),
        alike(said, stems(TEST_SHORTHAND[c.id]?.[number - 1] ?? '')),
      ),
    })),
  ].sort((a, b) => b.near - a.near)
  const [best, next] = scored
  if (!best || best.near < NEAR) return undefined
  return next && best.near - next.near < CLEAR && best.near < 1 ? undefined : best
}

/** Shared words over the words of the shorter sentence, when it has at least two or is the whole. */
function alike(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  if (a.size === 0 || b.size === 0) return 0
  const shared = [...a].filter((w) => b.has(w)).length
  const union = a.size + b.size - shared
  return shared === union
    ? 1
    : (0.95 * shared) / Math.min(a.size, b.size) - 0.02 * (union - shared) * 0.1
}

// prettier-ignore
const EMPTY = new Set([
  'a', 'an', 'and', 'at', 'all', 'are', 'as', 'by', 'does', 'do', 'did', 'for', 'from', 'has',
  'have', 'in', 'is', 'it', 'its', 'of', 'on', 'or', 'so', 'that', 'the', 'there', 'this', 'to',
  'was', 'were', 'with', 'when', 'she', 'her', 'i', 'my', 'be', 'been', 'than', 'then', 'which',
])
/** Gapes, gaping and gape are one word. */
const stems = (text: string): ReadonlySet<string> =>
  new Set(
    (text.toLowerCase().match(/[a-z]+/g) ?? [])
      .filter((w) => !EMPTY.has(w))
      .map((w) => (w.length > 4 ? w.replace(/(?:ing|ed|es|s|e|y)$/, '') : w)),
  )

/** "N1.1 bust shaping too small", for reasons. */
export const causeSaid = (id: ComplaintId, number: number): string => {
  const cause = complaintOf(id).causes.find((x) => x.number === number)
  return JUDGE_WORDS.cause(causeId(id, number), cause?.name)
}
