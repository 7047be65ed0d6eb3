/**
 * One word for all its forms: gapes, gaping, gaped and gape are one, so are wrinkle and wrinkled.
 * Light and rough on purpose: the same cut is made on the lexicon and on what she types, so it
 * need not be a word, only the same for both. Own rules, English only.
 */

/** Forms that no rule brings together. From memory. */
const IRREGULAR: ReadonlyMap<string, string> = new Map(
  Object.entries({
    stood: 'stand',
    hung: 'hang',
    fell: 'fall',
    fallen: 'fall',
    rode: 'ride',
    ridden: 'ride',
    dug: 'dig',
    stuck: 'stick',
    slid: 'slide',
    bent: 'bend',
    sat: 'sit',
    tore: 'tear',
    torn: 'tear',
    rose: 'rise',
    risen: 'rise',
    shown: 'show',
    seen: 'see',
    saw: 'see',
    went: 'go',
    gone: 'go',
    going: 'go',
    does: 'do',
    goes: 'go',
    came: 'come',
    swung: 'swing',
    sewn: 'sew',
    shrank: 'shrink',
    shrunk: 'shrink',
    shrunken: 'shrink',
    sunk: 'sink',
    sunken: 'sink',
    blew: 'blow',
    grew: 'grow',
    grown: 'grow',
    caught: 'catch',
    blousing: 'blousing',
    bloused: 'blousing',
    blousy: 'blousing',
    busty: 'busty',
    busting: 'busting',
    busted: 'busting',
    bit: 'bit',
    bite: 'biting',
    bites: 'biting',
    biting: 'biting',
    bitten: 'biting',
    fore: 'fore',
    spine: 'spine',
    spines: 'spine',
    fine: 'fine',
    huge: 'huge',
    fanny: 'fanny',
    eyeful: 'eyeful',
    hinder: 'hinder',
    hinders: 'hinder',
    lungs: 'lungs',
    lung: 'lungs',
    jagged: 'jagged',
    pointed: 'pointed',
    pointy: 'pointy',
    pointing: 'pointing',
    sitting: 'sitting',
    crooked: 'crooked',
    squinty: 'squint',
    stingy: 'stingy',
    chesty: 'chesty',
    bare: 'bare',
    bared: 'bare',
    bares: 'bare',
    baring: 'bare',
    barely: 'barely',
    seated: 'seated',
    upstairs: 'upstairs',
    boxy: 'boxy',
    hippy: 'hippy',
    collared: 'collared',
    hugs: 'hug',
    overflow: 'overflow',
    suffocate: 'suffocate',
    bending: 'bend',
    knotted: 'knot',
    tumbling: 'tumble',
    sagging: 'sag',
    heavy: 'heavy',
    heavily: 'heavy',
    raised: 'raise',
    shorten: 'shorten',
    shortens: 'shorten',
    shortening: 'shorten',
    lengthen: 'lengthen',
    shortened: 'shorten',
    breath: 'breathe',
    higher: 'high',
    highest: 'high',
    lower: 'low',
    lowered: 'low',
    lowering: 'low',
    longer: 'long',
    longest: 'long',
    shorter: 'short',
    wider: 'wide',
    widest: 'wide',
    tighter: 'tight',
    tightness: 'tight',
    looser: 'loose',
    looseness: 'loose',
    narrower: 'narrow',
    larger: 'large',
    smaller: 'small',
    deeper: 'deep',
    flatter: 'flat',
    fuller: 'full',
    straighter: 'straight',
    steeper: 'steep',
    closer: 'close',
    broader: 'broad',
  }),
)
const SUFFIXES = ['ness', 'ily', 'ing', 'ies', 'ed', 'es', 'ly', 's', 'y', 'e'] as const
/** Wrinkly and bubbly are made from words in -le: only the y goes. */
const LE_WORD = /[bkpz]ly$/
/** A stem shorter than this says nothing any more. */
const SHORTEST = 3

export function stem(word: string): string {
  const known = IRREGULAR.get(word)
  if (known !== undefined) return IRREGULAR.get(known) === known ? known : cutDown(known)
  return cutDown(word)
}
function cutDown(word: string): string {
  let cut = word
  // Twice, so that "wrinkles" and "wrinkly" both come down to "wrinkl".
  for (let round = 0; round < 2; round += 1) {
    const suffix = SUFFIXES.find(
      (s) =>
        cut.endsWith(s) && cut.length - s.length >= SHORTEST && !(s === 'ly' && LE_WORD.test(cut)),
    )
    if (suffix === undefined || (suffix === 's' && cut.endsWith('ss'))) break
    cut = undoubled(cut.slice(0, -suffix.length))
  }
  return cut
}

/** "gapp" of gapping is "gap"; "ll" and "ss" stay, for pull and press. */
const undoubled = (cut: string): string =>
  /([bdgmnprt])\1$/.test(cut) && cut.length > SHORTEST ? cut.slice(0, -1) : cut
