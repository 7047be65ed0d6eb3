/**
 * Options: the choices that are words and not amounts. Each has a default that is right without
 * touching it, and says what it is for and what it is not for.
 */
export interface Option<Word extends string> {
  readonly label: string
  readonly does: string
  readonly default: NoInfer<Word>
  readonly words: Readonly<Record<Word, string>>
}

const option = <Word extends string>(o: Option<Word>): Option<Word> => o

export const OPTIONS = {
  overarmRule: option({
    label: 'overarm length',
    does: 'Where the length of the overarm comes from.',
    default: 'auto',
    words: {
      auto: 'the tape when taped, else found from the underarm',
      found: 'found from the underarm',
      struck: 'one compass from the side neck, as in a hand draft',
    },
  }),
  construction: option({
    label: 'construction',
    does: 'The rule a number follows that the tape has not given. What is taped is used in all three.',
    default: 'measured',
    words: {
      measured: 'from your own measurements',
      neckFifths: 'metric, by fifths of the neck',
      bustShares: 'proportional, by shares of the bust',
    },
  }),
  neckShape: option({
    label: 'neck shape',
    does: 'The line of the neck edge. A boat neck wants a wider and shallower neck, a scoop a deeper one.',
    default: 'round',
    words: { round: 'round', square: 'square', vee: 'V', boat: 'boat', scoop: 'scoop' },
  }),
  shaping: option({
    label: 'waist shaping',
    does: 'Darts follow the waist; straight hangs from the bust.',
    default: 'darts',
    words: { darts: 'waist darts', straight: 'straight, no darts' },
  }),
  waistDarts: option({
    label: 'waist darts on each half',
    does: 'Two narrow darts follow a waist more softly than one; not for a small surplus, which one holds.',
    default: 'asNeeded',
    words: { asNeeded: 'one, a second where one would be too wide', two: 'two' },
  }),
  surplus: option({
    label: 'what one dart cannot hold',
    does: 'Where the surplus at the waist goes when one dart would be too wide.',
    default: 'auto',
    words: {
      auto: 'more at the side, then a second dart, then the centre back',
      twoDarts: 'a second dart at once',
      centreBack: 'the centre back before a second dart',
    },
  }),
  dartAt: option({
    label: 'bust dart',
    does: 'Where the dart that shapes the bust lies. Its tip stays off the bust tip wherever it is.',
    default: 'side',
    words: {
      side: 'in the side',
      shoulder: 'in the shoulder',
      neck: 'in the neck',
      armhole: 'in the armhole',
      french: 'low in the side, slanting up',
      waist: 'at the waist',
      centreFront: 'at the centre front',
    },
  }),
  dartSecond: option({
    label: 'second bust dart',
    does: 'A wide dart lies better as two; the amount moved is measured in the side.',
    default: 'none',
    words: {
      none: 'none',
      shoulder: 'in the shoulder',
      neck: 'in the neck',
      armhole: 'in the armhole',
      french: 'low in the side, slanting up',
      waist: 'at the waist',
      centreFront: 'at the centre front',
    },
  }),
  dartAs: option({
    label: 'bust dart sewn as',
    does: 'Gathers draw up what the dart would fold. A style seam parts the front from shoulder or armhole over the bust to the hem.',
    default: 'dart',
    words: { dart: 'a dart', gathers: 'gathers', seam: 'a style seam' },
  }),
  opening: option({
    label: 'opening',
    does: 'How you get in. What neck and waist still need is added by itself.',
    default: 'auto',
    words: {
      auto: 'as needed',
      sideZip: 'zip in the left side',
      backZip: 'zip at the centre back',
      buttonedFront: 'buttoned front',
      neckSlit: 'slit at the back neck with a loop',
      keyhole: 'keyhole at the front neck with a loop',
      none: 'none yet',
    },
  }),
  skirt: option({
    label: 'skirt',
    does: 'What is sewn to the bodice at the waist. A straight skirt wants vents to walk in.',
    default: 'flared',
    words: {
      straight: 'straight, its darts meeting those of the bodice',
      flared: 'flared from the hip, its darts meeting those of the bodice',
      quarterCircle: 'a quarter of a circle',
      halfCircle: 'half a circle',
      fullCircle: 'a whole circle',
    },
  }),
  waistFinish: option({
    label: 'waist seam inside',
    does: 'A facing covers the seam and holds the waist to its length.',
    default: 'seam',
    words: { seam: 'the seam alone', facing: 'shaped facing over the seam' },
  }),
  neckFinish: option({
    label: 'neck finish',
    does: 'A bias strip turns any curve; a shaped facing lies flatter on crisp cloth.',
    default: 'biasStrip',
    words: { biasStrip: 'bias strip', facing: 'shaped facing' },
  }),
} as const

export type OptionId = keyof typeof OPTIONS
export type OptionWord<Id extends OptionId> = keyof (typeof OPTIONS)[Id]['words']
export type Options = { readonly [Id in OptionId]: OptionWord<Id> }

export const OPTION_IDS = Object.keys(OPTIONS) as readonly OptionId[]
export const isOptionId = (name: string): name is OptionId => Object.hasOwn(OPTIONS, name)
export const isOptionWord = <Id extends OptionId>(id: Id, word: unknown): word is OptionWord<Id> =>
  typeof word === 'string' && Object.hasOwn(OPTIONS[id].words, word)

export const standardOptions = (): Options => ({
  overarmRule: OPTIONS.overarmRule.default,
  construction: OPTIONS.construction.default,
  neckShape: OPTIONS.neckShape.default,
  shaping: OPTIONS.shaping.default,
  waistDarts: OPTIONS.waistDarts.default,
  surplus: OPTIONS.surplus.default,
  dartAt: OPTIONS.dartAt.default,
  dartSecond: OPTIONS.dartSecond.default,
  dartAs: OPTIONS.dartAs.default,
  opening: OPTIONS.opening.default,
  skirt: OPTIONS.skirt.default,
  waistFinish: OPTIONS.waistFinish.default,
  neckFinish: OPTIONS.neckFinish.default,
})
