/** Short ways to write the records of the complaints. */
import type { MeasurementId } from '../../measurements/catalogue.ts'
import type { ReachName } from '../reaches.ts'
import type {
  Angle,
  Cause,
  ComplaintId,
  Edit,
  OpName,
  ReadAs,
  Remedy,
  Target,
  Test,
  Way,
  Work,
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

export const causes = (...list: readonly (readonly [string, Remedy])[]): readonly Cause[] =>
  list.map(([name, remedy], i) => ({ number: i + 1, name, remedy }))
export const tests = (
  ...list: readonly (readonly [string, readonly number[], Test['leaves']?])[]
): readonly Test[] =>
  list.map(([ask, yes, leaves], i) => ({ number: i + 1, ask, yes, ...(leaves ? { leaves } : {}) }))
