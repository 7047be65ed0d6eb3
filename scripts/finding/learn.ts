/**
 * A linear ranker learnt from phrases: softmax over the complaints, one weight for each pair of
 * feature and complaint, drawn towards nothing (L2). Steps shrink for a feature the more it has
 * been seen (AdaGrad). The order of the examples is shuffled by a seeded generator, so the same
 * phrases always give the same weights. A phrase that may mean several complaints is right with
 * any of them: the sum of their shares is raised.
 */
export interface Example {
  readonly features: ReadonlyMap<string, number>
  readonly right: readonly string[]
  readonly weight: number
}
export interface Learnt {
  readonly classes: readonly string[]
  readonly names: readonly string[]
  readonly rowOf: ReadonlyMap<string, number>
  /** Row by feature, column by class. */
  readonly weights: Float64Array
}
export interface LearnOptions {
  /** Times every example is gone through. */
  readonly passes: number
  /** How strongly a weight is drawn towards nothing at each sight of its feature. */
  readonly pull: number
  readonly step: number
  /** Share of the features hidden at each sight, so that no single word decides alone. */
  readonly drop: number
}

export function learn(
  examples: readonly Example[],
  classes: readonly string[],
  { passes, pull, step, drop }: LearnOptions,
): Learnt {
  const index = new Map<string, number>()
  for (const { features } of examples)
    for (const name of features.keys()) if (!index.has(name)) index.set(name, index.size)
  const C = classes.length
  const at = new Map(classes.map((c, i) => [c, i]))
  const rows = examples.map((e) => ({
    ids: Int32Array.from([...e.features.keys()].map((n) => index.get(n) ?? 0)),
    xs: Float64Array.from(e.features.values()),
    right: e.right.map((r) => at.get(r) ?? -1).filter((r) => r >= 0),
    weight: e.weight,
  }))
  const weights = new Float64Array(index.size * C)
  const seen = new Float64Array(index.size * C).fill(1e-3)
  const scores = new Float64Array(C)
  const wanted = new Float64Array(C)
  const chance = seeded(1)
  const order = rows.map((_, i) => i)
  for (let pass = 0; pass < passes; pass += 1) {
    shuffle(order, chance)
    for (const n of order) {
      const { right, weight, ...full } = rows[n]!
      const { ids, xs } = drop > 0 ? partOf(full.ids, full.xs, drop, chance) : full
      scores.fill(0)
      for (let k = 0; k < ids.length; k += 1) {
        const from = ids[k]! * C
        for (let c = 0; c < C; c += 1) scores[c]! += xs[k]! * weights[from + c]!
      }
      toShares(scores)
      let rightSum = 0
      for (const r of right) rightSum += scores[r]!
      wanted.fill(0)
      for (const r of right) wanted[r] = scores[r]! / rightSum
      for (let k = 0; k < ids.length; k += 1) {
        const from = ids[k]! * C
        for (let c = 0; c < C; c += 1) {
          const i = from + c
          const g = weight * (xs[k]! * (scores[c]! - wanted[c]!) + pull * weights[i]!)
          seen[i]! += g * g
          weights[i]! -= (step * g) / Math.sqrt(seen[i]!)
        }
      }
    }
  }
  return { classes, names: [...index.keys()], rowOf: index, weights }
}

function partOf(
  ids: Int32Array,
  xs: Float64Array,
  drop: number,
  chance: () => number,
): { readonly ids: Int32Array; readonly xs: Float64Array } {
  const kept = ids.map((_, k) => k).filter(() => chance() >= drop)
  return {
    ids: kept.map((k) => ids[k]!),
    xs: Float64Array.from(kept, (k) => xs[k]! / (1 - drop)),
  }
}

function toShares(scores: Float64Array): void {
  let top = -Infinity
  for (const s of scores) if (s > top) top = s
  let sum = 0
  for (let c = 0; c < scores.length; c += 1) sum += scores[c] = Math.exp(scores[c]! - top)
  for (let c = 0; c < scores.length; c += 1) scores[c]! /= sum
}

/** Marsaglia's xorshift, 32 bit. */
export function seeded(seed: number): () => number {
  let x = seed | 0 || 1
  return () => {
    x ^= x << 13
    x ^= x >>> 17
    x ^= x << 5
    return (x >>> 0) / 2 ** 32
  }
}
function shuffle(order: number[], chance: () => number): void {
  for (let i = order.length - 1; i > 0; i -= 1) {
    const j = Math.floor(chance() * (i + 1))
    ;[order[i], order[j]] = [order[j]!, order[i]!]
  }
}

export function scoresOf(
  learnt: Learnt,
  features: ReadonlyMap<string, number>,
): readonly (readonly [id: string, score: number])[] {
  const C = learnt.classes.length
  const sums = new Float64Array(C)
  for (const [name, x] of features) {
    const row = learnt.rowOf.get(name)
    if (row !== undefined)
      for (let c = 0; c < C; c += 1) sums[c]! += x * learnt.weights[row * C + c]!
  }
  return learnt.classes.map((id, c) => [id, sums[c]!] as const)
}
