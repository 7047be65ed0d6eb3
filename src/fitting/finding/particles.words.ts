/**
 * Particles that stand before a verb and leave it in the sentence, and what may come between the
 * two. English has none that matter here: what goes up stands after its verb for good.
 */

/** Longest first where one begins with another. */
export const PARTICLES: readonly string[] = []
export const INFIXES: readonly string[] = []
/** These are also prepositions: a particle only where nothing depends on them. */
export const TWOFOLD: ReadonlySet<string> = new Set()
/** What may follow a particle, where the sentence goes on. */
export const GOES_ON: ReadonlySet<string> = new Set()
