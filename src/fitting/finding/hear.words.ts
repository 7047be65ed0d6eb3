/** Small words that turn what is heard over, or leave it out. */

export const DENIALS: ReadonlySet<string> = new Set([
  'not',
  'no',
  'never',
  'without',
  'none',
  'nor',
])
/** "…, not at the back" leaves a place out. */
export const NOT: ReadonlySet<string> = new Set(['not'])
/** "not tight enough" says it is loose. */
export const ENOUGH: ReadonlySet<string> = new Set(['enough'])
/** Before a denial they set one place against another. */
export const CONTRASTS: ReadonlySet<string> = new Set(['but', 'and', 'only'])
