/** What a muslin was seen to do, in words. */
import type { Freedom, Movement, Verdict } from './worn.ts'

export const MOVEMENT_WORDS: Readonly<Record<Movement, string>> = {
  armsForward: 'Both arms reach forward',
  armsUp: 'Both arms go up beside the head',
  handsToNeck: 'Both hands go to the nape',
  bend: 'Bend from the hips',
  sit: 'Sit on a chair',
}
export const FREEDOM_WORDS: Readonly<Record<Freedom, string>> = {
  free: 'free',
  pulls: 'pulls',
  cannot: 'cannot be done',
}
export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  anotherMuslin: 'another muslin',
  wearable: 'wearable as it is',
  readyForCloth: 'ready for cloth',
}
