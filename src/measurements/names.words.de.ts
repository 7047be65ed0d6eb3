/**
 * What each measurement is called, and how it stands in a sentence: a German one needs its article
 * and its case. `spoken` has no article, as before a number or in arithmetic. Other German words
 * take the cases from here.
 */
import { germanNoun, type Form, type Gender, type GermanNoun } from '../units/german-noun.ts'
import type { MeasurementId } from './catalogue.ts'
import type { MeasureName, MEASURE_NAMES as English } from './names.words.ts'

interface MeasureNoun extends MeasureName, GermanNoun {
  /** miss „ihn“, „sie“, „es“. */
  readonly it: string
}
const IT: Readonly<Record<Gender, string>> = { m: 'ihn', f: 'sie', n: 'es' }

/** `label` where the head of a row is shorter than the noun. */
function noun(
  gender: Gender,
  name: string,
  { label, ...form }: Form & { readonly label?: string } = {},
): MeasureNoun {
  const genitive = gender === 'f' ? name : `${name}s`
  const said = germanNoun(gender, name, { genitive, ...form })
  return { ...said, label: label ?? said.bare, spoken: said.bare, it: IT[gender] }
}
/** A way from here to there is no noun: as a name it stands alone, in a sentence "das Maß …". */
const way = (spoken: string): MeasureNoun => ({
  ...germanNoun('n', 'Maß', { genitive: 'Maßes', after: spoken }),
  label: spoken,
  spoken,
  it: IT.n,
})

/** `${MEASURES[id].den}`: „den Brustumfang“, „die Rückenlänge“, „das Maß Taille bis Boden“. */
export const MEASURES: Readonly<Record<MeasurementId, MeasureNoun>> = {
  bustGirth: noun('m', 'Brustumfang'),
  highBustGirth: noun('m', 'Oberbrustumfang'),
  underbustGirth: noun('m', 'Unterbrustumfang'),
  waistGirth: noun('m', 'Taillenumfang'),
  highHipGirth: noun('m', 'Umfang', {
    after: 'der hohen Hüfte',
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
    after: 'über das Schulterblatt',
    label: 'Rückenlänge über Schulterblatt',
  }),
  sideNeckOverApexToWaist: noun('f', 'Vorderlänge', {
    after: 'über die Brust',
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
    adjectives: ['link'],
    label: 'Schulterlänge, links',
  }),
  shoulderLengthRight: noun('f', 'Schulterlänge', {
    adjectives: ['recht'],
    label: 'Schulterlänge, rechts',
  }),
  shoulderSlopeLeft: noun('m', 'Schulterabfall', {
    adjectives: ['link'],
    label: 'Schulterabfall, links',
  }),
  shoulderSlopeRight: noun('m', 'Schulterabfall', {
    adjectives: ['recht'],
    label: 'Schulterabfall, rechts',
  }),
  sideNeckToSleeveEdge: way('Halspunkt bis Ärmelkante'),
  waistToFloor: way('Taille bis Boden'),
  stature: noun('f', 'Körpergröße'),
  flatBustWidth: noun('f', 'Breite', {
    adjectives: ['flach gemessen'],
    after: 'an der Brust',
    label: 'Breite an der Brust, flach gemessen',
  }),
  flatWaistWidth: noun('f', 'Breite', {
    adjectives: ['flach gemessen'],
    after: 'in der Taille',
    label: 'Breite in der Taille, flach gemessen',
  }),
  flatHemWidth: noun('f', 'Breite', {
    adjectives: ['flach gemessen'],
    after: 'am Saum',
    label: 'Breite am Saum, flach gemessen',
  }),
  flatBackLength: noun('f', 'Rückenlänge', {
    adjectives: ['flach gemessen'],
    label: 'Rückenlänge, flach gemessen',
  }),
}

export const MEASURE_NAMES: typeof English = MEASURES
