import type {
  CLOTH_WORDS as EnglishCloth,
  FOLDS_WORDS as EnglishFolds,
  GAP_WORDS as EnglishGaps,
  GapWord,
  saidInFull as englishInFull,
  sentenceParts as englishParts,
  SIDES_WORDS as EnglishSides,
  TOWARDS_WORDS as EnglishTowards,
  WHERE_WORDS as EnglishWhere,
} from './spoken.words.ts'

const word = (name: string, said: string = name): GapWord => ({ name, said })

export const WHERE_WORDS: typeof EnglishWhere = {
  frontNeckEdge: word('vorderer Halsausschnitt', 'am vorderen Halsausschnitt'),
  backNeckEdge: word('hinterer Halsausschnitt', 'am hinteren Halsausschnitt'),
  sideOfNeck: word('seitlich am Hals'),
  shoulderSeam: word('Schulternaht', 'an der Schulternaht'),
  shoulderTip: word('Schulterpunkt', 'am Schulterpunkt'),
  upperChest: word('oberhalb der Brust'),
  bust: word('Brust', 'an der Brust'),
  bustDart: word('Brustabnäher', 'am Brustabnäher'),
  underBust: word('unter der Brust'),
  frontClosing: word('vorderer Verschluss', 'am vorderen Verschluss'),
  frontArmhole: word('Armloch vorn', 'vorn am Armloch'),
  backArmhole: word('Armloch hinten', 'hinten am Armloch'),
  underarm: word('unter dem Arm'),
  upperBack: word('oberer Rücken', 'am oberen Rücken'),
  shoulderBlade: word('Schulterblatt', 'am Schulterblatt'),
  middleBack: word('mitten am Rücken'),
  overarmSeam: word('Oberarmnaht', 'an der Oberarmnaht'),
  frontSleeveEdge: word('Ärmelkante vorn', 'vorn an der Ärmelkante'),
  backSleeveEdge: word('Ärmelkante hinten', 'hinten an der Ärmelkante'),
  sleeveOpening: word('Ärmelöffnung unter dem Arm', 'an der Ärmelöffnung unter dem Arm'),
  sleeveCap: word('Armkugel', 'an der Armkugel'),
  upperArm: word('Oberarm', 'am Oberarm'),
  elbow: word('Ellbogen', 'am Ellbogen'),
  sleeveSeam: word('Ärmelnaht', 'an der Ärmelnaht'),
  sleeveHem: word('Ärmelsaum', 'am Ärmelsaum'),
  sideSeam: word('Seitennaht', 'an der Seitennaht'),
  waistLine: word('Taille', 'in der Taille'),
  backWaist: word('Taille hinten', 'hinten in der Taille'),
  waistDart: word('Taillenabnäher', 'am Taillenabnäher'),
  backWaistDart: word('Taillenabnäher hinten', 'hinten am Taillenabnäher'),
  belowWaistInFront: word('vorn unter der Taille'),
  hip: word('Hüfte', 'an der Hüfte'),
  seat: word('Gesäß', 'am Gesäß'),
  frontHem: word('Saum vorn', 'vorn am Saum'),
  backHem: word('Saum hinten', 'hinten am Saum'),
  hem: word('Saum', 'am Saum'),
  wholeGarment: word('ganzes Stück', 'am ganzen Stück'),
}
export const SIDES_WORDS: typeof EnglishSides = {
  bothSides: word('beide Seiten', 'auf beiden Seiten'),
  leftSide: word('linke Seite', 'auf der linken Seite'),
  rightSide: word('rechte Seite', 'auf der rechten Seite'),
  allRound: word('rundum'),
}
export const CLOTH_WORDS: typeof EnglishCloth = {
  loose: word('lose'),
  tight: word('eng'),
  tooLong: word('zu lang'),
  tooShort: word('zu kurz'),
  tooHigh: word('zu hoch'),
  tooLow: word('zu tief'),
  off: word('abstehend'),
  up: word('hochgezogen'),
  crooked: word('schief'),
  puckered: word('gekräuselt'),
  bulging: word('beulig'),
}
export const FOLDS_WORDS: typeof EnglishFolds = {
  none: word('keine', 'Falten zeigen sich keine'),
  level: word('waagerecht', 'Falten laufen waagerecht'),
  slantwise: word('schräg', 'Falten laufen schräg'),
  upright: word('senkrecht', 'Falten laufen senkrecht'),
}
export const TOWARDS_WORDS: typeof EnglishTowards = {
  bustTip: word('Brustpunkt', 'zum Brustpunkt hin'),
  waist: word('Taille', 'zur Taille hin'),
  underarm: word('Achsel', 'zur Achsel hin'),
  neck: word('Hals', 'zum Hals hin'),
  hem: word('Saum', 'zum Saum hin'),
}

export const GAP_WORDS: typeof EnglishGaps = {
  where: { label: 'Wo', empty: 'wo' },
  sides: { label: 'Auf welcher Seite', empty: 'auf welcher Seite' },
  cloth: { label: 'Wie der Stoff ist', empty: 'wie' },
  folds: { label: 'Wie Falten laufen', empty: 'Falten laufen wie' },
  towards: { label: 'Wohin', empty: 'wohin' },
}

export const sentenceParts: typeof englishParts = (towards) => [
  'Der Stoff ist ',
  { gap: 'where' },
  ' ',
  { gap: 'sides' },
  ' ',
  { gap: 'cloth' },
  ', und ',
  { gap: 'folds' },
  ...(towards ? [', ', { gap: 'towards' } as const] : []),
  '.',
]

export const saidInFull: typeof englishInFull = ({ where, sides, cloth, folds, towards }) => {
  const run = folds && towards ? `${folds}, ${towards}` : folds
  return `Der Stoff ist ${where}${sides ? ` ${sides}` : ''} ${cloth}${run ? `, und ${run}` : ''}.`
}
