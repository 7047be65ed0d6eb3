/**
 * What she typed, as plain lower-case words: quotes and accents evened out, contractions opened,
 * dialect and American spelling brought to one form, numbers and units told from words.
 */

export interface Token {
  /** The word after spelling is evened out. */
  readonly word: string
  /** Where it stood in what she typed: [from, to). */
  readonly from: number
  readonly to: number
  /** A comma, full stop or the like stood before it. */
  readonly afterStop: boolean
}

/**
 * One spelling for many: Scots and other dialect, American, contractions without their mark, and
 * the short forms of the trade. Several words may stand for one. From memory.
 */
const ONE_FORM: ReadonlyMap<string, string> = new Map(
  Object.entries({
    center: 'centre',
    centered: 'centre',
    grey: 'gray',
    mold: 'mould',
    cf: 'centre front',
    cb: 'centre back',
    ss: 'side seam',
    snp: 'neck point',
    hps: 'neck point',
    sp: 'shoulder point',
    bp: 'bust point',
    bn: 'back neck',
    fn: 'front neck',
    fba: 'full bust adjustment',
    sba: 'small bust adjustment',
    ma: 'my',
    mah: 'my',
    me: 'my',
    o: 'of',
    tae: 'to',
    fae: 'from',
    frae: 'from',
    doon: 'down',
    oot: 'out',
    roon: 'round',
    roond: 'round',
    aroon: 'around',
    aboot: 'about',
    aw: 'all',
    nae: 'no',
    wi: 'with',
    ower: 'over',
    ticht: 'tight',
    richt: 'right',
    airm: 'arm',
    airms: 'arms',
    shooder: 'shoulder',
    shooders: 'shoulders',
    shoother: 'shoulder',
    hing: 'hang',
    hings: 'hangs',
    hingin: 'hanging',
    wey: 'way',
    awa: 'away',
    jist: 'just',
    cannae: 'can not',
    cannot: 'can not',
    cant: 'can not',
    couldnt: 'can not',
    dinnae: 'do not',
    doesnae: 'do not',
    isnae: 'is not',
    wont: 'will not',
    winnae: 'will not',
    dont: 'do not',
    doesnt: 'do not',
    didnt: 'do not',
    isnt: 'is not',
    arent: 'is not',
    wasnt: 'is not',
    shouldnt: 'should not',
    heid: 'head',
    hale: 'whole',
    yin: 'one',
    wan: 'one',
    ablow: 'below',
    abune: 'above',
    aboon: 'above',
    keek: 'peek',
    keeks: 'peek',
    keekin: 'peek',
    taps: 'top',
    tap: 'top',
    bahookie: 'bum',
    boak: 'gag',
    baith: 'both',
    ain: 'own',
    gonna: 'going to',
    wanna: 'want to',
    gotta: 'must',
    kinda: '',
    sorta: '',
    dunno: '',
    thru: 'through',
    u: 'you',
    ur: 'your',
    ya: 'you',
    accross: 'across',
    lose: 'loose',
    tite: 'tight',
    rinkle: 'wrinkle',
    rinkles: 'wrinkles',
    bak: 'back',
    smal: 'small',
    stiks: 'sticks',
    wast: 'waist',
    sleve: 'sleeve',
    sleves: 'sleeves',
    hipps: 'hips',
    frunt: 'front',
    tigt: 'tight',
    coller: 'collar',
    then: 'than',
    till: 'to',
    until: 'to',
    til: 'to',
    onto: 'on to',
    into: 'in to',
    towards: 'toward',
    upwards: 'up',
    upward: 'up',
    downwards: 'down',
    downward: 'down',
    forwards: 'forward',
    backwards: 'backward',
    sidewards: 'sideways',
    afterwards: 'after',
    beneath: 'below',
    underneath: 'under',
    amongst: 'among',
    whilst: 'while',
  }),
)
/** A number with its unit tells how much, not what. */
const NUMBER = /^[0-9]+([.,/][0-9]+)*(mm|cm|in|inch|inches|m|ft|°|%|"|″)?$/
const UNITS = new Set(
  'mm cm inch inches in. centimetre centimetres millimetre millimetres centimeter centimeters degrees degree percent approx'.split(
    ' ',
  ),
)
const STOP = /[,;:.!?()\n–—]/

export function tokensOf(typed: string): readonly Token[] {
  const even = typed
    .toLowerCase()
    .replace(/[’‘`´]/g, "'")
    .replace(/[“”]/g, '"')
  const found: Token[] = []
  let last = 0
  for (const match of even.matchAll(
    /[0-9]+(?:[.,/][0-9]+)*(?:\s?(?:mm|cm|in\.|inch(?:es)?|"|″|%|°))?|[\p{L}']+/gu,
  )) {
    const from = match.index
    const to = from + match[0].length
    const afterStop = STOP.test(even.slice(last, from))
    last = to
    const words = wordsOf(match[0])
    words.forEach((word, i) => found.push({ word, from, to, afterStop: afterStop && i === 0 }))
  }
  return found
}

function wordsOf(raw: string): readonly string[] {
  if (/^[0-9]/.test(raw) || NUMBER.test(raw) || UNITS.has(raw)) return ['#']
  const bare = raw
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/^'+|'+$/g, '')
  const opened = bare
    .replace(/^can't$/, 'can not')
    .replace(/^won't$/, 'will not')
    .replace(/n't$/, ' not')
    .replace(/'(s|re|ve|ll|d|m)$/, '')
    .replace(/'/g, '')
  return opened
    .split(' ')
    .flatMap((word) => (ONE_FORM.get(word) ?? word).split(' '))
    .filter((word) => word !== '')
}
