/**
 * What Fit says in German: no English is left in it, cases and lengths stand as they are written.
 * The language itself: school grammar from memory; trade words are common practice, no source.
 */
import { describe, expect, test } from 'vitest'
import { standardFor } from '../../src/draft/garments.ts'
import type { Draft, GarmentId } from '../../src/draft/draft.ts'
import { correctedDraft } from '../../src/fitting/apply.ts'
import { complaintOf } from '../../src/fitting/complaints/catalogue.ts'
import { COMPLAINT_IDS, type ComplaintId } from '../../src/fitting/complaints/complaint.ts'
import type { Because } from '../../src/fitting/correction.ts'
import { fitMuslin } from '../../src/fitting/fit-muslin.ts'
import { onPaper } from '../../src/fitting/on-paper.ts'
import { operationsAtCap } from '../../src/fitting/ops/at-cap.ts'
import { paperWork } from '../../src/fitting/ops/paper-work.ts'
import { operationSaid } from '../../src/fitting/ops/said.ts'
import { NOTE_WORDS } from '../../src/fitting/ops/said.words.ts'
import { refusalSentence, type Why } from '../../src/fitting/refusal.ts'
import { INTERACTION_WORDS } from '../../src/fitting/rules/interactions.words.ts'
import { whysFor } from '../../src/fitting/whys.ts'
import { factsOf } from '../../src/fitting/fit-muslin.ts'
import { asText, changedSaid, correctionSaid } from '../../src/ui/fitting/change-said.ts'
import { GAPS, inFull, type Spoken } from '../../src/ui/fitting/spoken.ts'
import { editSaid, inHers, noMeans, yesMeans } from '../../src/ui/fitting/told-words.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
/** Words that no German sentence has, and lengths with a point. */
const ENGLISH = /\b(the|and|with|of|to|is|are|not|from|by|it|its|at|on|for|mm)\b|\d\.\d/i
const because: Because = {
  complaint: 'W1',
  cause: 'W1.1',
  pinned: { how: 'levelError', read: mm(12), share: 1 },
  watch: mm(0),
  round: 1,
}
const GARMENTS: readonly GarmentId[] = ['blouse', 'block', 'sleeve']
const draftOf = (garment: GarmentId): Draft =>
  correctedDraft(garment, body(), standardFor(garment), []).draft

describe('refusals', () => {
  const WHYS: readonly Why[] = [
    { id: 'choiceOutOfRange', choice: 'easeBust', to: mm(400) },
    { id: 'noDart', piece: 'back' },
    { id: 'noEdge', piece: 'front', edge: 'armhole' },
    { id: 'wedgeTooWide', width: mm(40), reach: mm(35) },
    { id: 'wedgeMissesEdge', edge: 'side' },
    { id: 'edgeSlants', edge: 'sleeveEdge', width: mm(12), most: mm(7.5) },
    { id: 'dartTooWide', to: mm(51), most: mm(44), dart: 'bustDart' },
    { id: 'dartTooWide', to: mm(51), most: mm(44) },
    { id: 'cannotDraw', edge: 'neck' },
    { id: 'noPlace', piece: 'sleeve', edge: 'hem' },
    { id: 'noTip', piece: 'front' },
    { id: 'noSideDart', piece: 'front' },
    { id: 'dartTooSmall', piece: 'skirtFront', to: mm(2) },
    { id: 'sideTooShort', piece: 'back', by: mm(15) },
    { id: 'nothingToWithdraw' },
  ]
  test.each(WHYS)('$id', (why) => {
    const said = refusalSentence(why, CM)
    expect(said).toMatch(/^[A-ZÄÖÜ0-9].*\.$/)
    expect(said).not.toMatch(ENGLISH)
  })
  test('article and case follow the noun', () => {
    const said = (at: number) => refusalSentence(WHYS[at]!, CM)
    expect(said(1)).toContain('Das Rückenteil hat keinen Taillenabnäher')
    expect(said(4)).toContain('das Ende der Seitennaht')
    expect(said(6)).toContain('Der Brustabnäher würde 5,1\u00a0cm breit')
    expect(said(9)).toMatch(/^Im Ärmel ist dafür kein Platz: Zu nah endet der Saum\./)
    expect(said(12)).toMatch(/^Im vorderen Rockteil/)
    expect(said(13)).toContain('der Achselpunkt des Rückenteils')
  })
})

describe('operations', () => {
  test.each(GARMENTS)('%s: words, and work on paper', (garment) => {
    const draft = draftOf(garment)
    for (const { name, operation } of operationsAtCap(garment)) {
      const { words } = operationSaid(operation)
      expect(words, name).not.toMatch(ENGLISH)
      // What this garment refuses has no work on paper.
      const made = [{ v: 1, id: 'c1', kind: 'operate', operation, because } as const]
      if (correctedDraft(garment, body(), standardFor(garment), made).refused.length > 0) continue
      for (const line of paperWork(operation, draft, CM)) {
        expect(line, name).toMatch(/^[A-ZÄÖÜ].*\.$/)
        expect(line, name).not.toMatch(ENGLISH)
        expect(line, name).toMatch(/cm|Armloch durch die Marke|Mittellinie des seitlichen Abnähers/)
      }
    }
  })
  test('a wedge is closed at its edge, into its dart', () => {
    const op = {
      op: 'ROT',
      piece: 'front',
      edge: 'armhole',
      along: 0.4,
      width: mm(10),
      into: 'bustDart',
    } as const
    expect(operationSaid(op).words).toBe(
      'Vorderteil: Keil am Armloch geschlossen, in den Brustabnäher',
    )
    expect(
      asText(
        correctionSaid({ v: 1, id: 'c1', kind: 'operate', operation: op, side: 'left', because }),
        CM,
      ),
    ).toMatch(/: Vorderteil: Keil am Armloch .*Brustabnäher, 1,0\u00a0cm, nur links\.$/)
  })
  test('a turned choice on paper: points go out, in, up and down', () => {
    const [work] = onPaper(
      {
        garment: 'blouse',
        body: body(),
        choices: standardFor('blouse'),
        corrections: [
          { v: 1, id: 'c1', kind: 'turn-choice', choice: 'easeBust', by: mm(12), because },
        ],
      },
      CM,
    )
    expect(work?.lines.join(' ')).toMatch(/: aus \d+,\d\u00a0cm wird \d+,\d\u00a0cm\. .*nach außen/)
    for (const line of work?.lines ?? []) expect(line).not.toMatch(ENGLISH)
  })
  test('every note is a German sentence', () => {
    for (const note of Object.values(NOTE_WORDS)) expect(note).toMatch(/^[A-ZÄÖÜ].*gezeichnet\.$/)
  })
  test('what changed is listed with „und“ before the last', () => {
    const said = changedSaid({ edges: ['armhole', 'side'], dart: true, edgeDarts: [] } as never)
    expect(said).toBe(
      'geändert: Armloch, Seitennaht und Taillenabnäher; die alten Linien bleiben als Heftstich.',
    )
  })
})

describe('what the rules say of every complaint, as she reads it', () => {
  const ID = new RegExp(`\\b(${COMPLAINT_IDS.join('|')})\\b`)
  const reasonsOf = (id: ComplaintId, garment: GarmentId, value: number) => {
    const { decision, besides, notDrawn } = fitMuslin({
      garment,
      body: body(),
      choices: standardFor(garment),
      corrections: [],
      complaints: [
        {
          id,
          answers: { 1: true },
          pin: { how: 'pinch', where: 'side', side: 'one', value: mm(value) },
        },
      ],
      round: 1,
      on: '2026-11-25',
    })
    return [
      ...decision.reasons,
      ...decision.asks.map(({ what }) => what),
      ...decision.choices.map(({ why }) => why),
      ...decision.heldBack.map(({ why }) => why),
      ...besides,
      ...notDrawn.map(({ why }) => why),
    ]
  }
  test.each(COMPLAINT_IDS)('%s', (id) => {
    const garment = /^L/.test(id) ? 'sleeve' : /^D/.test(id) ? 'blouse' : 'block'
    for (const value of [1.5, 12])
      for (const reason of reasonsOf(id, garment, value)) {
        const said = inHers(reason, CM)
        expect(said).not.toMatch(ENGLISH)
        expect(said).not.toMatch(ID)
      }
  })
  test.each(COMPLAINT_IDS)('%s: whys, and what a yes or a no means', (id) => {
    const draft = draftOf('block')
    const c = complaintOf(id)
    const moves = { freedom: 'pulls', rose: mm(40) } as const
    const known = { draft, reaches: factsOf(draft).reaches }
    for (const { said } of whysFor(id, { ...known, armsForward: moves, armsUp: moves, sit: moves }))
      expect(asText(said, CM)).not.toMatch(ENGLISH)
    for (const { number } of c.tests) {
      expect(yesMeans(c, number)).toMatch(/^Dann.*\.$/)
      expect(noMeans(c, number)).toMatch(/^Dann.*\.$/)
    }
  })
  test('names of complaints stand in quotes, lengths in her unit', () => {
    const said = inHers(INTERACTION_WORDS.comesFrom('N1', 'B9'), CM)
    expect(said).toContain(`„${complaintOf('N1').name}“ kommt von „${complaintOf('B9').name}“`)
    expect(inHers('6 mm bis 13 mm, oder 6 bis 13 mm, oder 7,5 mm', CM)).toBe(
      '0,6\u00a0cm bis 1,3\u00a0cm, oder 0,6 bis 1,3\u00a0cm, oder 0,8\u00a0cm',
    )
  })
  test('an edit by line, way and amount', () => {
    const edit = {
      target: 'front.armhole',
      op: 'ROT',
      way: 'in',
      raw: mm(12),
      applied: mm(10.44),
      heldBack: mm(0),
      cap: 15,
      theta: undefined,
      eased: mm(1.56),
    } as const
    expect(asText(editSaid(edit), CM)).toBe('Vorderteil, Armloch: 1,0\u00a0cm nach innen.')
    expect(asText(editSaid({ ...edit, point: 'underarm', side: 'left' }), CM)).toBe(
      'Vorderteil, Achselpunkt am Armloch: 1,0\u00a0cm nach innen, nur links.',
    )
  })
})

describe('the spoken sentence', () => {
  test('has a German order of its own', () => {
    const spoken: Spoken = {
      where: 'frontArmhole',
      sides: 'bothSides',
      cloth: 'loose',
      folds: 'slantwise',
      towards: 'bustTip',
    }
    expect(inFull(spoken)).toBe(
      'Der Stoff ist vorn am Armloch auf beiden Seiten lose, und Falten laufen schräg, zum Brustpunkt hin.',
    )
    expect(inFull({ where: 'hem', cloth: 'tooLong', folds: 'none', towards: 'hem' })).toBe(
      'Der Stoff ist am Saum zu lang, und Falten zeigen sich keine.',
    )
  })
  test('every place stands with its preposition', () => {
    for (const { said } of GAPS.where.words)
      expect(said).toMatch(/^(am|an|in|oberhalb|über|unter|vorn|hinten|seitlich|mitten)\b|^unter /)
  })
})
