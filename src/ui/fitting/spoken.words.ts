/**
 * The spoken sentence in words: the order of its parts, its gaps, and what may fill them. `name`
 * is the word by itself, `said` how it stands in the sentence.
 */
import type { ClothId, FoldsId, GapId, SidesId, Spoken, TowardsId, WhereId } from './spoken.ts'

export interface GapWord {
  readonly name: string
  readonly said: string
}
const plain = <K extends string>(
  words: Readonly<Record<K, string>>,
): Readonly<Record<K, GapWord>> =>
  Object.fromEntries(
    Object.entries<string>(words).map(([id, word]) => [id, { name: word, said: word }]),
  ) as Record<K, GapWord>

export const WHERE_WORDS: Readonly<Record<WhereId, GapWord>> = plain({
  frontNeckEdge: 'front neck edge',
  backNeckEdge: 'back neck edge',
  sideOfNeck: 'side of the neck',
  shoulderSeam: 'shoulder seam',
  shoulderTip: 'shoulder tip',
  upperChest: 'upper chest',
  bust: 'bust',
  bustDart: 'bust dart',
  underBust: 'under the bust',
  frontClosing: 'front closing',
  frontArmhole: 'front armhole',
  backArmhole: 'back armhole',
  underarm: 'underarm',
  upperBack: 'upper back',
  shoulderBlade: 'shoulder blade',
  middleBack: 'middle back',
  overarmSeam: 'overarm seam',
  frontSleeveEdge: 'front sleeve edge',
  backSleeveEdge: 'back sleeve edge',
  sleeveOpening: 'sleeve opening under the arm',
  sleeveCap: 'sleeve cap',
  upperArm: 'upper arm',
  elbow: 'elbow',
  sleeveSeam: 'sleeve seam',
  sleeveHem: 'sleeve hem',
  sideSeam: 'side seam',
  waistLine: 'waist line',
  backWaist: 'back waist',
  waistDart: 'waist dart',
  backWaistDart: 'back waist dart',
  belowWaistInFront: 'below the waist in front',
  hip: 'hip',
  seat: 'seat',
  frontHem: 'front hem',
  backHem: 'back hem',
  hem: 'hem',
  wholeGarment: 'whole garment',
})
export const SIDES_WORDS: Readonly<Record<SidesId, GapWord>> = {
  bothSides: { name: 'both sides', said: 'on both sides' },
  leftSide: { name: 'left side', said: 'on the left side' },
  rightSide: { name: 'right side', said: 'on the right side' },
  allRound: { name: 'all round', said: 'all round' },
}
export const CLOTH_WORDS: Readonly<Record<ClothId, GapWord>> = {
  ...plain({
    loose: 'loose',
    tight: 'tight',
    tooLong: 'too long',
    tooShort: 'too short',
    tooHigh: 'too high',
    tooLow: 'too low',
  }),
  off: { name: 'off', said: 'standing off' },
  up: { name: 'up', said: 'pulled up' },
  ...plain({ crooked: 'crooked', puckered: 'puckered', bulging: 'bulging' }),
}
export const FOLDS_WORDS: Readonly<Record<FoldsId, GapWord>> = {
  none: { name: 'none', said: 'no folds show' },
  level: { name: 'level', said: 'folds run level' },
  slantwise: { name: 'slantwise', said: 'folds run slantwise' },
  upright: { name: 'upright', said: 'folds run upright' },
}
export const TOWARDS_WORDS: Readonly<Record<TowardsId, GapWord>> = plain({
  bustTip: 'the bust tip',
  waist: 'the waist',
  underarm: 'the underarm',
  neck: 'the neck',
  hem: 'the hem',
})

/** Read out as the name of a gap, and shown in it while it is empty. */
export const GAP_WORDS: Readonly<
  Record<GapId, { readonly label: string; readonly empty: string }>
> = {
  where: { label: 'Where', empty: 'where' },
  sides: { label: 'On which side', empty: 'on which side' },
  cloth: { label: 'How the cloth is', empty: 'how' },
  folds: { label: 'How folds run', empty: 'folds run how' },
  towards: { label: 'Towards what', empty: 'what' },
}

export interface Gapped {
  readonly gap: GapId
}
/** The sentence in the order in which it is said. @param towards folds run somewhere */
export const sentenceParts = (towards: boolean): readonly (string | Gapped)[] => [
  'At the ',
  { gap: 'where' },
  ', ',
  { gap: 'sides' },
  ', the cloth is ',
  { gap: 'cloth' },
  ' and ',
  { gap: 'folds' },
  ...(towards ? [', towards ', { gap: 'towards' } as const] : []),
  '.',
]

/** The sentence without what is still open; `where` and `cloth` are said. */
export function saidInFull({
  where,
  sides,
  cloth,
  folds,
  towards,
}: Readonly<Record<'where' | 'cloth', string>> &
  Readonly<Partial<Record<keyof Spoken, string | undefined>>>) {
  const run = folds && towards ? `${folds}, towards ${towards}` : folds
  return `At the ${where},${sides ? ` ${sides},` : ''} the cloth is ${cloth}${run ? ` and ${run}` : ''}.`
}
