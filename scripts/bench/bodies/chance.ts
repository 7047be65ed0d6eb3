/**
 * Chance that comes out the same every time: a run of the bench can be repeated to the last body.
 * Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8 (2003), no. 14, the triple
 * (13, 17, 5) on 32 bits; normal deviates after Box & Muller, Ann. Math. Statist. 29 (1958) 610.
 */
export type Chance = () => number

/** Whole numbers from 1 to 2³² − 1, each once a period; `seed` is any of them. */
export function whole(seed: number): Chance {
  let state = seed >>> 0
  if (state === 0) throw new Error('chance: a seed of 0 gives nothing but 0')
  return () => {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    state >>>= 0
    return state
  }
}

/** Normal deviates, mean 0 and standard deviation 1. */
export function normal(seed: number): Chance {
  const next = whole(seed)
  const share = (): number => next() / 2 ** 32
  let kept: number | undefined
  return () => {
    if (kept !== undefined) {
      const value = kept
      kept = undefined
      return value
    }
    const [radius, turn] = [Math.sqrt(-2 * Math.log(share())), 2 * Math.PI * share()]
    kept = radius * Math.sin(turn)
    return radius * Math.cos(turn)
  }
}
