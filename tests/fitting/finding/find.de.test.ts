/** What the finder hears and says back in German. Right readings: common sense, no source. */
import { expect, test } from 'vitest'
import { takenApart } from '../../../src/fitting/finding/compounds.ts'
import { find } from '../../../src/fitting/finding/find.ts'
import { wordsOf } from '../../../src/fitting/finding/hear.ts'
import { mended } from '../../../src/fitting/finding/spelling.ts'
import { stem } from '../../../src/fitting/finding/stem.ts'
import { tokensOf } from '../../../src/fitting/finding/tokens.ts'
import { wordsOfKind } from '../../../src/fitting/finding/understood.ts'
import { ALL_COMPLAINTS } from '../../../src/fitting/complaints/catalogue.ts'

const first = (phrase: string) => find(phrase).ranked[0]?.id
const saidOf = (phrase: string) => find(phrase).understood.map((u) => u.said)
const words = (typed: string) => wordsOf(typed).map((w) => w.word)
const tokens = (typed: string) => tokensOf(typed).map((t) => t.word)

test('forms of one word are one stem', () => {
  for (const forms of [
    'falte falten faltig faltige',
    'spannt spannen spannung gespannt',
    'naht nahte nahten',
    'absteht abstehen abstehend abgestanden',
    'hochrutscht hochgerutscht hochzurutschen',
  ])
    expect(new Set(forms.split(' ').map(stem)).size, forms).toBe(1)
})
test('umlauts typed in any way are one letter', () => {
  expect(tokens('Ärmel')).toEqual(tokens('Aermel'))
  expect(tokens('Hüfte groß')).toEqual(tokens('Huefte gross'))
  // Here the e belongs to the next sound.
  expect(tokens('neue Frauen')).toEqual(['neue', 'frauen'])
  expect(first('die Aermelkante ist gewellt')).toBe(first('die Ärmelkante ist gewellt'))
})
test('a verb and its particle are one word, wherever the particle stands', () => {
  expect(words('das Armloch steht vorn weit ab')).toContain('absteht')
  expect(words('der Kragen liegt im Nacken nicht an')).toEqual(
    expect.arrayContaining(['nicht', 'anliegt']),
  )
  // A preposition with its noun is no particle.
  expect(words('es steht an der Seite')).not.toContain('ansteht')
  expect(first('das Armloch steht vorn weit ab')).toBe('B8')
  expect(first('der Kragen liegt im Nacken nicht an')).toBe('N3')
})
test('compounds that the lexicon does not have are taken apart', () => {
  expect(takenApart('armlochfalten')).toEqual(['armloch', 'falten'])
  expect(takenApart('vorderteilkante')).toEqual(['vorderteil', 'kante'])
  expect(takenApart('halsausschnitt')).toEqual(['halsausschnitt'])
  expect(saidOf('der Rückenteilsaum steigt')).toContain('Saum hinten')
})
test('misspelt trade words are mended, everyday words are left', () => {
  expect(mended('halsauschnitt')).toBe('halsausschnitt')
  expect(mended('schultenaht')).toBe('schulternaht')
  expect(mended('mutter')).toBe('mutter')
  expect(mended('freundin')).toBe('freundin')
})
test('Swiss, Austrian and high German find the same complaint', () => {
  expect(first('d Bluse isch z wiit überall')).toBe('X3')
  expect(first('de Saum isch schräg')).toBe('W11')
  expect(first('unterm Oam zwickts')).toBe('A1')
  expect(first('unter dem Arm zwickt es')).toBe('A1')
})
test('says back the finest place, the sign and the direction in German', () => {
  expect(saidOf('waagerechte Falten hinten in der Taille')).toEqual(
    expect.arrayContaining(['Taille hinten', 'Falten', 'quer, waagerecht']),
  )
  expect(saidOf('hinten am Hals klafft es')).toContain('Nacken')
})
test('the reason names her own words', () => {
  expect(find('Das Armloch klafft').ranked[0]?.because).toBe('Wegen „Armloch“ und „klafft“.')
})
test('one word put right changes the answer', () => {
  const phrase = 'vorderes Armloch klafft'
  const [place] = find(phrase).understood
  expect(place?.said).toBe('Armloch vorn')
  const right = { from: place?.from ?? 0, to: place?.to ?? 0, concept: 'backArmhole' as const }
  expect(find(phrase, { putRight: [right] }).ranked[0]?.id).toBe('A3')
})
test('pointing alone finds, and completes what she says', () => {
  expect(find('', { pointed: ['lowerBack', 'loose', 'fold', 'across'] }).ranked[0]?.id).toBe('K2')
  expect(find('es steht ab', { pointed: ['nape'] }).ranked[0]?.id).toBe('N3')
})
test('two complaints in one sentence are taken apart', () => {
  const { parts, ranked } = find('der Abnäher sitzt zu tief und der Ärmelsaum ist zu eng')
  expect(parts.map((p) => p.ranked[0]?.id)).toEqual(['B5', 'D7'])
  expect(new Set(ranked.slice(0, 2).map((a) => a.id))).toEqual(new Set(['B5', 'D7']))
})
test('a wish means its opposite is seen', () => {
  expect(first('das Armloch müsste höher')).toBe(first('das Armloch ist zu tief'))
  expect(first('die Taille müsste tiefer sitzen')).toBe('W1')
})
test('the sleeve of the garment decides between look-alikes', () => {
  expect(find('ich kann den Arm nicht heben', { sleeve: 'cutIn' }).ranked[0]?.id).toBe('D3')
  expect(find('ich kann den Arm nicht heben', { sleeve: 'setIn' }).ranked[0]?.id).toBe('L5')
})
test('words about nothing here find nothing and are named', () => {
  const { ranked, unknown } = find('Xylophon Quarzuhr')
  expect(ranked).toEqual([])
  expect(unknown).toEqual(['Xylophon', 'Quarzuhr'])
})
test('the name of every complaint finds it', () => {
  const missed = ALL_COMPLAINTS.filter(
    ({ id, name }) =>
      !find(name)
        .ranked.slice(0, 2)
        .some((answer) => answer.id === id),
  )
  expect(missed.map(({ id }) => id)).toEqual([])
})
test('every kind of word has others to choose from', () => {
  for (const kind of ['place', 'sign', 'direction', 'side', 'movement'] as const)
    expect(wordsOfKind(kind).length).toBeGreaterThan(1)
})
