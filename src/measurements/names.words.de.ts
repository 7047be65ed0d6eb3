/**
 * What each measurement is called, and how it stands in a sentence: a German one needs its article
 * and its case. `spoken` has no article, as before a number or in arithmetic. Other German words
 * take the cases from here.
 */
import type { MeasurementId } from './catalogue.ts'
import type { MeasureName, MEASURE_NAMES as English } from './names.words.ts'

type Gender = 'm' | 'f' | 'n'

interface Noun extends MeasureName {
  readonly gender: Gender
  /** After the definite article, by case: (der) linke Schulterabfall, (dem) linken Schulterabfall. */
  readonly nominative: string
  readonly accusative: string
  readonly dative: string
  readonly genitive: string
}

const ENDING: Readonly<Record<Gender, string>> = { m: 'er', f: 'e', n: 'es' }

/** `adjective`: by its stem, before the noun; `after`: follows it unchanged. */
function noun(
  gender: Gender,
  name: string,
  parts: { adjective?: string; after?: string; label?: string } = {},
): Noun {
  const { adjective, after = '' } = parts
  const owned = gender === 'f' ? name : `${name}s`
  const said = (ending: string, own = name): string =>
    `${adjective === undefined ? '' : `${adjective}${ending} `}${own}${after}`
  const spoken = said(ENDING[gender])
  return {
    gender,
    label: parts.label ?? spoken,
    spoken,
    nominative: said('e'),
    accusative: said(gender === 'm' ? 'en' : 'e'),
    dative: said('en'),
    genitive: said('en', owned),
  }
}
/** A way from here to there is no noun: as a name it stands alone, in a sentence "das Maß …". */
function way(spoken: string, label = spoken): Noun {
  const named = `Maß ${spoken}`
  const cases = { nominative: named, accusative: named, dative: named }
  return { gender: 'n', label, spoken, ...cases, genitive: `Maßes ${spoken}` }
}

const NOUNS: Readonly<Record<MeasurementId, Noun>> = {
  bustGirth: noun('m', 'Brustumfang'),
  highBustGirth: noun('m', 'Oberbrustumfang'),
  underbustGirth: noun('m', 'Unterbrustumfang'),
  waistGirth: noun('m', 'Taillenumfang'),
  highHipGirth: noun('m', 'Umfang', {
    after: ' der hohen Hüfte',
    label: 'Umfang hohe Hüfte',
  }),
  waistToHighHip: way('Taille bis hohe Hüfte'),
  hipGirth: noun('m', 'Hüftumfang'),
  waistToHip: noun('f', 'Hüfttiefe'),
  neckBaseGirth: noun('m', 'Halsumfang'),
  headGirth: noun('m', 'Kopfumfang'),
  upperArmGirth: noun('m', 'Oberarmumfang'),
  armholeGirth: noun('m', 'Armlochumfang'),
  slipThroughGirth: noun('m', 'Schlupfumfang'),
  napeToWaist: noun('f', 'Rückenlänge'),
  sideNeckOverBladeToWaist: noun('f', 'Rückenlänge', {
    after: ' über das Schulterblatt',
    label: 'Rückenlänge über Schulterblatt',
  }),
  sideNeckOverApexToWaist: noun('f', 'Vorderlänge', {
    after: ' über die Brust',
    label: 'Vorderlänge über Brust',
  }),
  sideNeckToApex: noun('f', 'Brusttiefe'),
  frontNeckToWaist: way('Halsgrube bis Taille'),
  waistToBustLevel: way('Taille bis Brusthöhe'),
  napeToArmpitLevel: noun('f', 'Rückenhöhe'),
  armpitToWaist: way('Achselhöhe bis Taille'),
  apexSpacing: noun('m', 'Brustpunktabstand', { label: 'Brustpunkt\u00adabstand' }),
  acrossBack: noun('f', 'Rückenbreite'),
  acrossChest: noun('f', 'Brustbreite'),
  shoulderLengthLeft: noun('f', 'Schulterlänge', {
    adjective: 'link',
    label: 'Schulterlänge, links',
  }),
  shoulderLengthRight: noun('f', 'Schulterlänge', {
    adjective: 'recht',
    label: 'Schulterlänge, rechts',
  }),
  shoulderSlopeLeft: noun('m', 'Schulterabfall', {
    adjective: 'link',
    label: 'Schulterabfall, links',
  }),
  shoulderSlopeRight: noun('m', 'Schulterabfall', {
    adjective: 'recht',
    label: 'Schulterabfall, rechts',
  }),
  sideNeckToSleeveEdge: way('Halspunkt bis Ärmelkante'),
  waistToFloor: way('Taille bis Boden'),
  stature: noun('f', 'Körpergröße'),
  flatBustWidth: noun('f', 'Breite', {
    adjective: 'flach',
    after: ' an der Brust',
    label: 'Flache Breite an der Brust',
  }),
  flatWaistWidth: noun('f', 'Breite', {
    adjective: 'flach',
    after: ' an der Taille',
    label: 'Flache Breite an der Taille',
  }),
  flatHemWidth: noun('f', 'Breite', {
    adjective: 'flach',
    after: ' am Saum',
    label: 'Flache Breite am Saum',
  }),
  flatBackLength: noun('f', 'Rückenlänge', { adjective: 'flach', label: 'Flache Rückenlänge' }),
}

export const MEASURE_NAMES: typeof English = NOUNS

const ARTICLES = {
  nominative: { m: 'der', f: 'die', n: 'das' },
  accusative: { m: 'den', f: 'die', n: 'das' },
  dative: { m: 'dem', f: 'der', n: 'dem' },
  genitive: { m: 'des', f: 'der', n: 'des' },
} as const
type Case = keyof typeof ARTICLES

function inCase(id: MeasurementId, grammatical: Case): string {
  const named = NOUNS[id]
  return `${ARTICLES[grammatical][named.gender]} ${named[grammatical]}`
}

/** „der Brustumfang“, „die Rückenlänge“, „das Maß Taille bis Boden“. */
export const nominative = (id: MeasurementId): string => inCase(id, 'nominative')
/** „den Brustumfang“ messen. */
export const accusative = (id: MeasurementId): string => inCase(id, 'accusative')
/** neben „dem Brustumfang“. */
export const dative = (id: MeasurementId): string => inCase(id, 'dative')
/** die Ablesungen „des Brustumfangs“. */
export const genitive = (id: MeasurementId): string => inCase(id, 'genitive')
/** miss „ihn“, „sie“, „es“. */
export const itself = (id: MeasurementId): string =>
  ({ m: 'ihn', f: 'sie', n: 'es' })[NOUNS[id].gender]
