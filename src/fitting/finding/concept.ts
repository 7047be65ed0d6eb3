/** A concept is one thing she can mean, however she says it. */
export type ConceptKind =
  'place' | 'part' | 'sign' | 'direction' | 'side' | 'movement' | 'figure' | 'relation'

/**
 * `words` is every way to say it that we thought of, parted by commas; forms and misspellings are
 * dealt with elsewhere. From memory and common speech unless a line says otherwise.
 */
export interface Saying {
  /** How it is said back to her. */
  readonly said: string
  readonly words: string
}
export type Sayings = Readonly<Record<string, Saying>>
