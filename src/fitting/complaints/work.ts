/** Short ways to write the records of the complaints. */
import type { MeasurementId } from '../../measurements/catalogue.ts'
import type { ReachName } from '../reaches.ts'
import {
  COMPLAINT_IDS,
  type Angle,
  type Cause,
  type ComplaintBody,
  type ComplaintId,
  type ComplaintRules,
  type ComplaintWords,
  type Edit,
  type OpName,
  type ReadAs,
  type Remedy,
  type Target,
  type Test,
  type Way,
  type Work,
} from './complaint.ts'

export const edit = (
  op: OpName,
  target: Target,
  way: Way,
  more: Omit<Edit, 'op' | 'target' | 'way'> = {},
): Edit => ({ op, target, way, ...more })

/** A tuck turned about a point, and the dart that takes it up. */
export const turned = (reach: ReachName, target: Target, opens: ReachName): Angle => ({
  kind: 'turn',
  reach,
  opens: { target, reach: opens },
})
export const hinged = (depth: ReachName): Angle => ({ kind: 'hinge', depth })

export const job = (
  moves: Work['moves'],
  readAs: ReadAs,
  cap: number,
  edits: readonly Edit[],
): Work => ({ moves, readAs, cap, edits })

export const takeIn = (
  readAs: ReadAs,
  cap: number,
  edits: readonly Edit[],
  more: Partial<Extract<Remedy, { kind: 'work' }>> = {},
): Remedy => ({ kind: 'work', ...job('in', readAs, cap, edits), ...more })
export const letOut = (
  readAs: ReadAs,
  cap: number,
  edits: readonly Edit[],
  more: Partial<Extract<Remedy, { kind: 'work' }>> = {},
): Remedy => ({ kind: 'work', ...job('out', readAs, cap, edits), ...more })
export const place = (
  readAs: ReadAs,
  cap: number,
  edits: readonly Edit[],
  more: Partial<Extract<Remedy, { kind: 'work' }>> = {},
): Remedy => ({ kind: 'work', ...job('place', readAs, cap, edits), ...more })

export const see = (complaint: ComplaintId, cause?: number): Remedy => ({
  kind: 'see',
  complaint,
  ...(cause === undefined ? {} : { cause }),
})
export const making = (advice: string): Remedy => ({ kind: 'making', advice })
export const tape = (ids: readonly MeasurementId[], advice: string): Remedy => ({
  kind: 'tape',
  ids,
  advice,
})

type Zone<Entry> = Readonly<Partial<Record<ComplaintId, Entry>>>

/** The complaints of one zone: words and rules put together, causes and tests in their order. */
export function zone<W extends Zone<ComplaintWords>>(
  words: W,
  rules: { readonly [Id in keyof W]: ComplaintRules<Extract<W[Id], ComplaintWords>> },
): readonly ComplaintBody[]
export function zone(
  words: Zone<ComplaintWords>,
  rules: Zone<ComplaintRules>,
): readonly ComplaintBody[] {
  return COMPLAINT_IDS.flatMap((id) => {
    const [said, rule] = [words[id], rules[id]]
    return said && rule ? [{ ...rule, ...bodyOf(id, said, rule) }] : []
  })
}

function bodyOf(id: ComplaintId, words: ComplaintWords, rules: ComplaintRules) {
  const { said, where, sign, trueAfter, doNot } = words
  const causes: readonly Cause[] = numbered(words.causes).map(([number, name]) => ({
    number,
    name,
    remedy: ruled(rules.causes, id, number),
  }))
  const tests: readonly Test[] = numbered(words.tests).map(([number, ask]) => {
    const rule = ruled(rules.tests, id, number)
    return { number, ask, ...('yes' in rule ? rule : { yes: rule }) }
  })
  return { id, said, where, sign, causes, tests, trueAfter, doNot }
}
const numbered = (
  words: Readonly<Record<number, string>>,
): readonly (readonly [number, string])[] =>
  Object.entries(words).map(([number, word]) => [Number(number), word])
function ruled<Rule>(rules: Readonly<Record<number, Rule>>, id: ComplaintId, number: number): Rule {
  const rule = rules[number]
  if (rule === undefined) throw new Error(`complaints: ${id}.${number} has words and no rule`)
  return rule
}
