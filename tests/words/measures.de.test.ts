/**
 * What tape, camera and glossary say in German. Declension from memory of school grammar; the words from
 * common practice, no source. Which sentences there are is held by the types; here stands what types
 * cannot hold: cases, commas, that nothing of an id or of English is left.
 */
import { describe, expect, it } from 'vitest'
import { faultSaid, type FaultId } from '../../src/capture/fault.ts'
import { FAULT_WORDS } from '../../src/capture/fault.words.ts'
import { HINT_WORDS } from '../../src/capture/hints.words.ts'
import { markerSheet } from '../../src/capture/marker-sheet.ts'
import { VIEWS } from '../../src/capture/reading.ts'
import {
  basisOfAll,
  basisSaid,
  noteBasis,
  wayBasis,
  type FromId,
  type NoteId,
  type RunId,
  type ScaleId,
} from '../../src/capture/seen.ts'
import { FROM_WORDS, NOTE_WORDS, RUN_WORDS, SCALE_WORDS } from '../../src/capture/seen.words.ts'
import { whyNotAgreed } from '../../src/measurements/book.ts'
import { measure, MEASUREMENT_IDS } from '../../src/measurements/catalogue.ts'
import { MEASURES } from '../../src/measurements/names.words.de.ts'
import { orderFindings } from '../../src/measurements/order.ts'
import { mm } from '../../src/units/length.ts'
import { GLOSSARY, WORD_IDS } from '../../src/ui/help/glossary.ts'
import { doubtSaid } from '../../src/ui/measure/book/doubt-said.ts'
import { bookGroups } from '../../src/ui/measure/book/groups.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const keysOf = <Id extends string>(words: Readonly<Record<Id, unknown>>): readonly Id[] =>
  Object.keys(words) as Id[]
/** Neither a camel-cased id nor what stands between the parts of a basis. */
const RAW = /[a-zäöüß][A-ZÄÖÜ]|\||undefined/

describe('the names of measurements', () => {
  it('stand in every case with their article', () => {
    const { bustGirth, napeToWaist, waistToFloor, shoulderSlopeLeft } = MEASURES
    expect([bustGirth.der, napeToWaist.der, waistToFloor.der]).toEqual([
      'der Brustumfang',
      'die Rückenlänge',
      'das Maß Taille bis Boden',
    ])
    expect(shoulderSlopeLeft).toMatchObject({
      der: 'der linke Schulterabfall',
      den: 'den linken Schulterabfall',
      dem: 'dem linken Schulterabfall',
      des: 'des linken Schulterabfalls',
      spoken: 'linker Schulterabfall',
    })
    expect([MEASURES.shoulderLengthRight.dem, MEASURES.flatBustWidth.des]).toEqual([
      'der rechten Schulterlänge',
      'der flach gemessenen Breite an der Brust',
    ])
    expect([MEASURES.highHipGirth.des, MEASURES.armpitToWaist.des]).toEqual([
      'des Umfangs der hohen Hüfte',
      'des Maßes Achselhöhe bis Taille',
    ])
    expect([bustGirth.it, napeToWaist.it, waistToFloor.it]).toEqual(['ihn', 'sie', 'es'])
  })

  it.each(MEASUREMENT_IDS)('%s tells how it is taken', (id) => {
    const { label, spoken, words, alone, from: start, to: end, moves } = measure(id)
    // A row of a phone: longer words must be given a place to break.
    for (const part of label.split(/[ \u00ad]/)) expect(part.length).toBeLessThan(17)
    expect(label).toMatch(/^[A-ZÄÖÜ]/)
    expect(spoken).not.toMatch(/^(der|die|das|den|dem) /)
    expect(words).toMatch(/^[A-ZÄÖÜ].*\.$/)
    expect(alone).toMatch(/^[A-ZÄÖÜ].*\.$/)
    for (const place of [start, end])
      expect(place).toMatch(/^(der|die|das|eine|hoch|wo|derselbe|dieselbe|unter) /)
    // Said after „verändert“: an accusative, which a masculine noun shows.
    expect(moves).not.toMatch(/^der /)
    expect(whyNotAgreed(undefined, id)).toMatch(/^(Der|Die|Das) .* ist noch nicht gemessen\.$/)
  })

  it('ask for the tape once more by the right word for it', () => {
    const definition = (id: 'bustGirth' | 'napeToWaist') => measure(id).definition
    const one = (id: 'bustGirth' | 'napeToWaist') => ({
      tape: [{ value: mm(900), on: '2026-11-25', definition: definition(id) }],
    })
    expect(whyNotAgreed(one('bustGirth'), 'bustGirth')).toBe(
      'Für den Brustumfang gibt es erst eine Ablesung. Miss ihn ein zweites Mal.',
    )
    expect(whyNotAgreed(one('napeToWaist'), 'napeToWaist')).toBe(
      'Für die Rückenlänge gibt es erst eine Ablesung. Miss sie ein zweites Mal.',
    )
  })

  it('are held against each other in one case, with a comma in the number', () => {
    const [finding] = orderFindings({ waistGirth: mm(945), bustGirth: mm(930) }, CM)
    expect(finding?.sentence).toBe(
      'Der Taillenumfang 94,5\u00a0cm neben dem Brustumfang 93,0\u00a0cm ist ungewöhnlich, so bei 4 von 1000 Frauen. Miss beide noch einmal.',
    )
  })
})

/** What she is told to do. */
const DO =
  /\b(nimm|stell|tritt|dreh|halte|lass|häng|tipp|leg|binde|komm|prüf|miss|wähl|schalte|vergrößere)\b/i

describe('what the photos say', () => {
  it.each(keysOf<FaultId>(FAULT_WORDS))('the fault %s tells what to do', (fault) => {
    expect(faultSaid(fault)).toMatch(DO)
    expect(faultSaid(fault)).not.toMatch(RAW)
  })

  it('every basis line is German through and through', () => {
    for (const view of VIEWS)
      for (const scale of keysOf<ScaleId>(SCALE_WORDS))
        for (const run of keysOf<RunId>(RUN_WORDS))
          for (const end of keysOf<FromId>(FROM_WORDS)) {
            const ends = run === 'between' ? ([end, 'elastic'] as const) : [end]
            const way = wayBasis(view, scale, run, ...ends)
            const said = basisSaid(basisOfAll(way, way))
            expect(said).toMatch(/^Foto von (vorn|der Seite|hinten), (Bogen|Karte) /)
            expect(said).not.toMatch(RAW)
          }
    for (const note of keysOf<NoteId>(NOTE_WORDS))
      expect(basisSaid(noteBasis(note))).not.toMatch(RAW)
    expect(
      basisSaid(
        basisOfAll(
          wayBasis('side', 'sheetHung', 'between', 'napeInOutline', 'elastic'),
          'thenDown',
        ),
      ),
    ).toBe(
      'Foto von der Seite, Bogen in der Taille, von „Nacken im Umriss“ bis „Gummiband in der Taille“; dann hinunter bis zur Taille',
    )
  })

  it('a sentence kept before there were ids is shown as it stands', () => {
    expect(basisSaid('side photo, sheet hung at the waist, invented')).toBe(
      'side photo, sheet hung at the waist, invented',
    )
    expect(faultSaid('Invented.')).toBe('Invented.')
  })

  it('a hint is one short sentence she can read from the wall', () => {
    for (const words of Object.values(HINT_WORDS)) {
      expect(words).toMatch(/^[A-ZÄÖÜ][^!]*\.$/)
      expect(words.length).toBeLessThan(56)
    }
  })

  // A letter of the printed face is at most 0.62 of the type's height in the mean, as in the English sheet.
  it.each(['a4', 'letter'] as const)('the sheet on %s keeps its words on the paper', (paper) => {
    const { texts, widthMm } = markerSheet(paper)
    for (const { x, text, size } of texts)
      expect(x + text.length * size * 0.62).toBeLessThan(widthMm)
  })
})

describe('the tape book and the glossary', () => {
  it('name the garments for which numbers are needed', () => {
    const [{ about }] = bookGroups(['blouse'])
    expect(about).toMatch(/^Ohne diese gibt es keinen Schnitt für: [A-ZÄÖÜ].*\.$/)
  })

  it('tell a doubt with its day and by how much', () => {
    const { rest } = doubtSaid(
      { by: mm(-12), complaint: 'invented', on: '2026-11-25', readings: 2 },
      (length) => `${length} mm`,
    )
    expect(rest).toMatch(/^„invented“ vom 25\.11\.2026 spricht für 12 mm weniger\./)
  })

  it('hold every word once, in the order of the alphabet', () => {
    expect(GLOSSARY.map(({ id }) => id).sort()).toEqual([...WORD_IDS].sort())
    const words = GLOSSARY.map(({ word }) => word)
    expect(new Set(words).size).toBe(words.length)
    expect(words[0]).toBe('Abgehen')
    expect(words.indexOf('Ablesung')).toBeLessThan(words.indexOf('Abnäher'))
    for (const { says } of GLOSSARY) expect(says).toMatch(/^[A-ZÄÖÜ].*\.$/)
  })
})
