/** What joins one thing she says to the next. */
import type { JOINING as English, JOINING_PHRASES as EnglishPhrases } from './apart.words.ts'

export const JOINING: typeof English = new Set(
  (
    'und aber ausserdem zudem auch doch jedoch dazu obwohl wahrend dafur plus sowie weiterhin ' +
    'zusatzlich trotzdem sondern dennoch daneben uberdies'
  ).split(' '),
)
export const JOINING_PHRASES: typeof EnglishPhrases = [
  ['noch', 'dazu'],
  ['dazu', 'noch'],
  ['dazu', 'kommt'],
  ['dann', 'noch'],
  ['und', 'dann'],
  ['sowohl', 'als'],
  ['und', 'auch'],
  ['und', 'ausserdem'],
]
