/**
 * Complaints ranked by what was heard: the weights of its features added up for each complaint,
 * then turned into shares of one whole (softmax). The weights are learnt by a script of ours from
 * written phrases and committed as text, one feature a line.
 */
import { isComplaintId, type ComplaintId } from '../complaints/complaint.ts'
import type { Features } from './features.ts'
import { readWeights } from './letters.ts'
import { WEIGHTS } from './weights.words.ts'

export interface Share {
  readonly id: ComplaintId
  /** 0 to 1; all shares together are 1. */
  readonly share: number
}

/** The table keeps whole tenths. */
const TENTH = 0.1

interface Table {
  readonly ids: readonly ComplaintId[]
  readonly rows: ReadonlyMap<string, readonly (readonly [at: number, weight: number])[]>
}
function read(text: string): Table {
  const [head = '', ...lines] = text.trim().split('\n')
  const ids = head.split(' ').map((id) => {
    if (!isComplaintId(id)) throw new Error(`weights: ${id} is no complaint`)
    return id
  })
  const rows = lines.map((line) => {
    const [name = '', told = ''] = line.split(' ')
    return [name, readWeights(told).map(([at, tenths]) => [at, tenths * TENTH] as const)] as const
  })
  return { ids, rows: new Map(rows) }
}
let table: Table | undefined
/** Read on first use: only the fitting place needs it. */
const opened = (): Table => (table ??= read(WEIGHTS))

export const rankedIds = (): readonly ComplaintId[] => opened().ids

/** How strongly these features speak for each complaint, in the order of `rankedIds`. */
export function pullsOf(features: Features): readonly number[] {
  const { ids, rows } = opened()
  const sums = ids.map(() => 0)
  for (const [name, much] of features)
    for (const [at, weight] of rows.get(name) ?? []) sums[at] = (sums[at] ?? 0) + much * weight
  return sums
}
export const isKnownFeature = (name: string): boolean => opened().rows.has(name)

/** How much one feature alone speaks for one complaint. */
export function pullOf(name: string, id: ComplaintId): number {
  const { ids, rows } = opened()
  const at = ids.indexOf(id)
  return (rows.get(name) ?? []).find(([column]) => column === at)?.[1] ?? 0
}

/** Best first. @param bias added to the sum of a complaint before shares are made */
export function ranked(features: Features, bias: (id: ComplaintId) => number): readonly Share[] {
  const { ids } = opened()
  const pulls = pullsOf(features)
  const sums = ids.map((id, i) => (pulls[i] ?? 0) + bias(id))
  const top = Math.max(...sums)
  const grown = sums.map((sum) => Math.exp(sum - top))
  const whole = grown.reduce((a, b) => a + b, 0)
  return ids
    .map((id, i) => ({ id, share: (grown[i] ?? 0) / whole }))
    .sort((a, b) => b.share - a.share)
}
