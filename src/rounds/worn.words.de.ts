import type {
  FREEDOM_WORDS as EnglishFreedom,
  MOVEMENT_WORDS as EnglishMovement,
  VERDICT_WORDS as EnglishVerdict,
} from './worn.words.ts'

export const MOVEMENT_WORDS: typeof EnglishMovement = {
  armsForward: 'Beide Arme nach vorn strecken',
  armsUp: 'Beide Arme neben den Kopf heben',
  handsToNeck: 'Beide Hände in den Nacken legen',
  bend: 'Aus der Hüfte vorbeugen',
  sit: 'Auf einen Stuhl setzen',
}
export const FREEDOM_WORDS: typeof EnglishFreedom = {
  free: 'frei',
  pulls: 'zieht',
  cannot: 'geht nicht',
}
/** Each stands after „Probeteil 2:“. */
export const VERDICT_WORDS: typeof EnglishVerdict = {
  anotherMuslin: 'noch ein Probeteil',
  wearable: 'tragbar, wie es ist',
  readyForCloth: 'bereit für den Stoff',
}
