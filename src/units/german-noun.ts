/**
 * A German noun with its article in every case, for the words files. The keys are the articles
 * of a masculine noun and stand for the case: `den` is the accusative whatever the gender, so
 * that `${EDGE[e].den}` gives "den Saum", "die Seitennaht" or "das Armloch".
 */
export type Gender = 'm' | 'f' | 'n'

export interface GermanNoun {
  /** Without article: "zweiter Abnäher". */
  readonly bare: string
  readonly der: string
  readonly den: string
  readonly dem: string
  readonly des: string
  readonly ein: string
  readonly einen: string
  readonly einem: string
  readonly eines: string
  /** "am Saum", "an der Seitennaht"; so with the others. */
  readonly am: string
  readonly im: string
  readonly vom: string
  readonly zum: string
  /** Several, without article: "zweite Abnäher". */
  readonly many: string
}

export interface Form {
  /** Where it is not the noun itself: "Armlochs". */
  readonly genitive?: string
  /** Where it is not the noun itself. */
  readonly plural?: string
  /** Stems before it, declined alike: ['link', 'vorder']. */
  readonly adjectives?: readonly string[]
  /** What follows and is not declined: "des Armlochs". */
  readonly after?: string
}

/** One row for each gender: nominative, accusative, dative, genitive. */
const DEFINITE = {
  m: ['der', 'den', 'dem', 'des'],
  f: ['die', 'die', 'der', 'der'],
  n: ['das', 'das', 'dem', 'des'],
} as const
const INDEFINITE = {
  m: ['ein', 'einen', 'einem', 'eines'],
  f: ['eine', 'eine', 'einer', 'einer'],
  n: ['ein', 'ein', 'einem', 'eines'],
} as const
/** Endings of an adjective after "der", and after "ein" or nothing. */
const WEAK = { m: ['e', 'en', 'en', 'en'], f: ['e', 'e', 'en', 'en'], n: ['e', 'e', 'en', 'en'] }
const MIXED = {
  m: ['er', 'en', 'en', 'en'],
  f: ['e', 'e', 'en', 'en'],
  n: ['es', 'es', 'en', 'en'],
}
const GENITIVE = 3

export function germanNoun(gender: Gender, noun: string, form: Form = {}): GermanNoun {
  const { genitive = noun, plural = noun, adjectives = [], after: tail } = form
  const joined = (ending: string, word: string): string =>
    [...adjectives.map((stem) => `${stem}${ending}`), word, ...(tail ? [tail] : [])].join(' ')
  const inCase = (articles: readonly string[], endings: readonly string[], at: number): string =>
    `${articles[at]} ${joined(endings[at] ?? '', at === GENITIVE ? genitive : noun)}`
  const [der, den, dem, des] = [0, 1, 2, 3].map((at) => inCase(DEFINITE[gender], WEAK[gender], at))
  const [ein, einen, einem, eines] = [0, 1, 2, 3].map((at) =>
    inCase(INDEFINITE[gender], MIXED[gender], at),
  )
  const after = (...before: readonly string[]): string => [...before, joined('en', noun)].join(' ')
  const she = gender === 'f'
  return {
    bare: joined(MIXED[gender][0] ?? '', noun),
    der: der ?? '',
    den: den ?? '',
    dem: dem ?? '',
    des: des ?? '',
    ein: ein ?? '',
    einen: einen ?? '',
    einem: einem ?? '',
    eines: eines ?? '',
    am: she ? after('an', 'der') : after('am'),
    im: she ? after('in', 'der') : after('im'),
    vom: she ? after('von', 'der') : after('vom'),
    zum: after(she ? 'zur' : 'zum'),
    many: joined('e', plural),
  }
}

/** "a, b und c". */
export const undListed = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} und ${parts.at(-1)}`
