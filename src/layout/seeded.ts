/**
 * A seeded generator, so that the same cloth, pieces and seed give the same layout again.
 * Source: the 32-bit mixer is splitmix32 (Steele, Lea, Flood 2014, "Fast splittable pseudorandom
 * number generators", OOPSLA, in its 32-bit form). Not for secrets.
 */
export interface Chance {
  /** Uniform in [0, 1). */
  readonly next: () => number
  /** Uniform whole number in [0, below). */
  readonly below: (below: number) => number
}

export function seeded(seed: number): Chance {
  let state = seed | 0
  const next = (): number => {
    state = (state + 0x9e3779b9) | 0
    let z = state
    z = Math.imul(z ^ (z >>> 16), 0x21f0aaad)
    z = Math.imul(z ^ (z >>> 15), 0x735a2d97)
    return ((z ^ (z >>> 15)) >>> 0) / 4294967296
  }
  return { next, below: (below) => Math.floor(next() * below) }
}

/** Shuffles the first `count` entries in place (Fisher and Yates). */
export function shuffle(list: Int32Array, count: number, chance: Chance): void {
  for (let i = count - 1; i > 0; i--) {
    const j = chance.below(i + 1)
    const held = list[i] as number
    list[i] = list[j] as number
    list[j] = held
  }
}
