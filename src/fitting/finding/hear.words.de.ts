/** Small words that turn what is heard over, or leave it out; dialect is evened out before. */
import type {
  CONTRASTS as EnglishContrasts,
  DENIALS as EnglishDenials,
  ENOUGH as EnglishEnough,
  NOT as EnglishNot,
} from './hear.words.ts'

export const DENIALS: typeof EnglishDenials = new Set([
  'nicht',
  'nichts',
  'nie',
  'kein',
  'keine',
  'keinen',
  'keinem',
  'keiner',
  'keinerlei',
  'ohne',
  'weder',
  'nirgends',
])
export const NOT: typeof EnglishNot = new Set(['nicht'])
export const ENOUGH: typeof EnglishEnough = new Set(['genug'])
export const CONTRASTS: typeof EnglishContrasts = new Set(['aber', 'und', 'nur', 'sondern'])
