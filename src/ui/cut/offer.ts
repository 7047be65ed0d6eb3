/** What may be cut from a draft now, and which findings stand against cloth. */
import { findingSentence } from '../../draft/finding.ts'
import type { Draft } from '../../draft/draft.ts'
import type { UnitChoice } from '../../units/format.ts'

export interface Offer {
  /** A muslin can always be cut from taped numbers; cloth only when nothing stops it. */
  readonly cloth: boolean
  /** Why not cloth: the findings that stop it, else those that ask for a muslin first. */
  readonly stops: readonly string[]
  readonly asks: readonly string[]
}

export function offerOf(draft: Draft, units: UnitChoice): Offer {
  const of = (severity: 'stop' | 'muslin') =>
    draft.findings.filter((f) => f.severity === severity).map((f) => findingSentence(f, units))
  const [stops, asks] = [of('stop'), of('muslin')]
  return { cloth: stops.length === 0 && asks.length === 0, stops, asks }
}
