/** How German words change their ends. Own rules, on evened letters; forms from memory. */
import type {
  BEFORE as EnglishBefore,
  CUTS as EnglishCuts,
  DOUBLED as EnglishDoubled,
  IRREGULAR as EnglishIrregular,
  isNoSuffix as englishIsNoSuffix,
  SHORTEST as EnglishShortest,
  SUFFIXES as EnglishSuffixes,
} from './stem.words.ts'

/** A form, and the word it is a form of; a word that stands for itself is left as it is. */
const FORMS: Readonly<Record<string, string>> = {
  zieh: 'zog gezogen ziehen zieht ziehe zieh zog zogen',
  steh: 'stand standen gestanden steht stehen stehe stehend',
  heb: 'hob gehoben heben hebt hebe hebst',
  geh: 'geht gehen gehe ging gegangen',
  seh: 'sieht sehen sehe sah gesehen seh siehst',
  steig: 'stieg gestiegen',
  kriech: 'kroch gekrochen',
  schieb: 'schob geschoben',
  spring: 'sprang gesprungen',
  reiss: 'riss gerissen reissen reisst reiss',
  schneid: 'geschnitten',
  hang: 'hing gehangen hangen hangt hange',
  sink: 'sank gesunken',
  lieg: 'lag gelegen',
  sitz: 'sitzt sitzen sitze',
  bieg: 'gebogen bog',
  schwimm: 'schwamm geschwommen',
  arm: 'arm arme armen arms',
  eng: 'eng enge enger enges engen engem engste',
  wurg: 'wurgen wurgt wurge',
  brust: 'brust bruste brusten',
  bust: 'bust',
  po: 'po pos popo',
  bh: 'bh bhs',
  kap: 'kappe kappen',
  vorn: 'vorn vorne vorner',
  vorder: 'vordere vorderer vorderes vorderen vorderem',
  hinten: 'hinten',
  hinter: 'hinter',
  hintere: 'hintere hinterer hinteres hinteren hinterem',
  unten: 'unten',
  unter: 'unter',
  unters: 'unters',
  unterm: 'unterm',
  untere: 'untere unterer unteres unteren unterem',
  oben: 'oben',
  ober: 'ober',
  obere: 'obere oberer oberes oberen oberem',
  uber: 'uber',
  oberhalb: 'oberhalb',
  unterhalb: 'unterhalb',
  seitdem: 'seit seitdem',
  hoch: 'hoch hohe hoher hohes hohen hohem',
  neben: 'neben',
  // Not "the hemmed one" and not "the sewn one".
  saum: 'saum saume saumen saums',
  gerade: 'gerade grade gerades gerader geraden grad',
  rund: 'rund runde runder rundes runden',
  gurt: 'gurt gurte',
  genug: 'genug',
  gegen: 'gegen',
  gleich: 'gleich gleiche gleicher gleichen gleiches',
  gesass: 'gesass',
  gehen: 'gehend',
  gelenk: 'gelenk gelenke gelenks',
  gewebe: 'gewebe',
  gestell: 'gestell',
  genick: 'genick',
  ausschnitt: 'ausschnitt ausschnitte ausschnitts ausschnitten',
  abnaher: 'abnaher abnahers abnahern',
  aussen: 'aussen',
  aussere: 'ausserer aussere ausseres ausseren ausserem ausserste aussersten',
  innen: 'innen',
  innere: 'innere innerer inneren inneres',
  anders: 'anders',
  einsatz: 'einsatz',
  nahe: 'nahe naher nahen',
  zuviel: 'zuviel zuviele',
  umfang: 'umfang umfange',
  ansatz: 'ansatz',
  achsel: 'achsel achseln',
  nacken: 'nacken nackens',
  nackt: 'nackt nackte nackten nackter',
  reichlich: 'reichlich',
  sackt: 'sackt sackte',
  sack: 'sack sacke sacken',
  machtig: 'machtig machtige machtigen',
  armelende: 'armelende armelenden',
  armelchen: 'armelchen',
  abnaherende: 'abnaherende abnaherenden',
  schulterende: 'schulterende schulterenden',
  langs: 'langs',
  faltchen: 'faltchen faltli',
  spitze: 'spitze spitzen',
  spitz: 'spitz spitzer spitzes spitzem spitzig spitzige',
  sass: 'sass gesessen sassen',
  bauch: 'bauch bauche bauches',
  bundchen: 'bundchen',
}
export const IRREGULAR: typeof EnglishIrregular = new Map(
  Object.entries(FORMS).flatMap(([word, forms]) => [
    ...forms.split(' ').map((form): readonly [string, string] => [form, word]),
    [word, word] as const,
  ]),
)
export const SUFFIXES: typeof EnglishSuffixes =
  'igkeit lichkeit heit keit ungen ung chen lein lich isch ig nd en em er es e n s t'.split(' ')
/** Until nothing is left to cut: "faltigen", "faltig" and "Falte" are one. */
export const CUTS: typeof EnglishCuts = 8
export const SHORTEST: typeof EnglishShortest = 4
/** "gespannt" is "spannt". */
export const BEFORE: typeof EnglishBefore = /^ge(?=[^aeiouy]\w{4})/

/** "Hand" and "rund" are whole, and so is the ch of "rutschen" and "machen". */
export const isNoSuffix: typeof englishIsNoSuffix = (word, suffix) =>
  (suffix === 'nd' && !/[eir]nd$/.test(word)) ||
  (suffix === 'chen' && !/[bdfgklnprt]chen$/.test(word))
/** One n or two: "dünn" and "dünner" need no rule here. */
export const DOUBLED: typeof EnglishDoubled = /^(?!)/
