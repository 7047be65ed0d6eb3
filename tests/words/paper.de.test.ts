/**
 * What goes to paper in German: the sewing plan, the lists, the sheets. That sentences are whole and
 * German is common practice, no source; the decimal comma: DIN 1338.
 */
import { describe, expect, it, test } from 'vitest'
import type { Choices } from '../../src/draft/choices.ts'
import type { GarmentId } from '../../src/draft/draft.ts'
import { standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { toCut, toSew } from '../../src/draft/to-cut.ts'
import { arc } from '../../src/geometry/segment.ts'
import { point } from '../../src/geometry/point.ts'
import { amountToBuy, amountWords } from '../../src/layout/amount.ts'
import { clothLines } from '../../src/layout/cloth-lines.ts'
import { clothOf, USUAL_CLOTH } from '../../src/layout/cloth-wishes.ts'
import { cutList, markingList } from '../../src/layout/cut-list.ts'
import { cutParts } from '../../src/layout/cut-part.ts'
import { layOut } from '../../src/layout/lay-out.ts'
import { lay, MANNERS } from '../../src/layout/lay.ts'
import { lying } from '../../src/layout/lying.ts'
import { missedSentence } from '../../src/layout/match.ts'
import { CLOTH_KINDS } from '../../src/output/cloth-kind.ts'
import { coverPage } from '../../src/output/cover-page.ts'
import { coverWords } from '../../src/output/cover-words.ts'
import { cuttingOf, USUAL_CUT } from '../../src/output/cutting.ts'
import { plain } from '../../src/output/dxf-writer.ts'
import { edgeLines, finishLines, pencilLines } from '../../src/output/edge-words.ts'
import { finishRefusal } from '../../src/output/finish-fit.ts'
import { FINISH_IDS, FINISHES } from '../../src/output/finish.ts'
import { PAPERS, paperWords, readRoll } from '../../src/output/paper.ts'
import { passSentence } from '../../src/output/pass.ts'
import { pagesPdf } from '../../src/output/pdf.ts'
import { photoPack } from '../../src/output/photo-pack.ts'
import { planNumbers, planSentences } from '../../src/output/plan-words.ts'
import { binWords, correctedWords, readPrint } from '../../src/output/print-scale.ts'
import { sewingPlan } from '../../src/output/sewing-plan.ts'
import { sheetPlan } from '../../src/output/sheet-plan.ts'
import { SQUARE_MM } from '../../src/output/squares.ts'
import type { Face } from '../../src/output/wrap.ts'
import { fileName } from '../../src/ui/cut/file-name.ts'
import { aboutPages, aboutRun, aboutSaid, aboutSheets } from '../../src/ui/cut/paper-about.ts'
import { mm } from '../../src/units/length.ts'
import { body, MIDDLE } from '../bodies.ts'
import { FONT } from '../output/font.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
/** Words that are English and no German ones. */
const ENGLISH =
  /\b(the|and|of|with|from|to|is|are|on|edge|seam|sew|press|cut|dart|neck|sleeve|waist|front|back|side|cloth|sheet|page|round|allowance)\b/
const isGerman = (text: string, where: string) => {
  expect(text, where).not.toMatch(ENGLISH)
  expect(text, where).not.toMatch(/undefined|NaN| {2}|^\s|\s$|\d\.\d/)
}

const SHAPES: readonly (readonly [GarmentId, Partial<Choices>])[] = [
  ['blouse', {}],
  ['blouse', { opening: 'sideZip' }],
  ['blouse', { opening: 'backZip', neckShape: 'vee', neckFinish: 'facing' }],
  ['block', {}],
  ['sleeveless', { opening: 'keyhole' }],
  ['sleeveless', { dartAs: 'gathers', dartAt: 'shoulder' }],
  ['sleeveless', { opening: 'buttonedFront' }],
  ['sleeve', {}],
  ['sleeve', { sleeveEnd: 'cuff', sleeveHem: mm(140) }],
  ['sleeve', { sleeveEnd: 'hemSlit' }],
  ['sleeve', { dartAs: 'seam', dartAt: 'armhole' }],
  ['dress', {}],
  ['dress', { skirt: 'halfCircle', opening: 'backZip' }],
]
function made(garment: GarmentId, choices: Partial<Choices>) {
  const whole = draft(garment, body({}, MIDDLE), { ...standardFor(garment), ...choices })
  const sewn = toSew(whole)
  const cutting = cuttingOf(sewn, { ...USUAL_CUT, stuff: 'cloth' })
  return { d: toCut(whole), sewn, cutting }
}

describe.each(SHAPES)('%s %j', (garment, choices) => {
  const { d, sewn, cutting } = made(garment, choices)
  const plan = sewingPlan(sewn, cutting, { kind: 'lightCotton' })

  it('is sewn in German sentences', () => {
    for (const step of plan) {
      isGerman(step.title, step.id)
      expect(step.title).toMatch(/^[A-ZÄÖÜ]/)
      for (const sentence of planSentences(step, CM)) {
        isGerman(sentence, step.id)
        expect(sentence, step.id).toMatch(/^[A-ZÄÖÜ].*\.$/)
      }
      for (const said of step.mind ?? []) {
        isGerman(said, step.id)
        expect(said, step.id).toMatch(/^[A-ZÄÖÜ].*\.$/)
      }
      if (step.long !== undefined) expect(planNumbers(step, CM), step.id).toMatch(/^\d+,\d\u00a0cm/)
      if (step.allowance) expect(planNumbers(step, CM)).toMatch(/Nahtzugabe \d+,\d\u00a0cm$/)
    }
  })
  it('keeps its cautions: blades, pins, iron', () => {
    const minded = plan.flatMap((s) => s.mind ?? []).join(' ')
    expect(minded).toMatch(/Scheren, Klingen und Stecknadeln/)
    expect(minded).toMatch(/Das Bügeleisen verbrennt Stoff und Haut/)
    if (plan.some((s) => s.id === 'edge.sleeveEdge')) expect(minded).toMatch(/Flamme, Herd/)
  })
  it('tells its edges, its cut list and its marks in German', () => {
    const told = { ...cutting }
    const lines = [
      ...edgeLines(d.pieces, told, CM),
      ...pencilLines(d.pieces, told, CM),
      ...finishLines(d.pieces, told, CM),
      ...cutList(d.pieces, []).flatMap((r) => [r.words, r.cut]),
      ...markingList(d.pieces, CM).flatMap((r) => r.marks),
    ]
    for (const line of lines) isGerman(line, garment)
  })
})

test('a step in numbers', () => {
  const step = { id: 's', kind: 'seam', title: '', lit: [], passes: [] } as const
  expect(planNumbers({ ...step, long: mm(395), times: 2, allowance: mm(16) }, CM)).toBe(
    '39,5\u00a0cm, zweimal; Nahtzugabe 1,6\u00a0cm',
  )
  expect(planNumbers({ ...step, sides: { left: mm(120), right: mm(130) } }, CM)).toBe(
    'links 12,0\u00a0cm, rechts 13,0\u00a0cm',
  )
  expect(planSentences({ ...step, press: ['zum Rücken hin.'] }, CM)).toEqual([
    'Bügeln: zum Rücken hin.',
  ])
})

test('every finish and every kind of cloth is told in German', () => {
  for (const id of FINISH_IDS) {
    isGerman(FINISHES[id].words, id)
    for (const pass of FINISHES[id].passes) isGerman(passSentence(pass, CM), id)
  }
  for (const { name, prepare, mind } of Object.values(CLOTH_KINDS))
    for (const said of [name, prepare, ...mind]) isGerman(said, name)
})

test('a hem that would not lie flat is refused with article and case', () => {
  const edge = {
    name: 'hem',
    role: 'hem',
    path: [arc(point(0, 0), 200, 0, Math.PI / 2)],
  } as const
  const { reason } = finishRefusal(edge, 'doubleFoldHem', CM) ?? { reason: '' }
  isGerman(reason, 'hem')
  // By hand: 76 / 200 = 38 %; 0.05 × 200 / 2 = 5 mm.
  expect(reason).toMatch(/^Der doppelte Saum schlägt am Saum 7,6\u00a0cm um;.* 38 % länger/)
  expect(reason).toMatch(/höchstens 0,5\u00a0cm Tiefe/)
})

describe('the cutting plan', () => {
  const { d, sewn, cutting } = made('blouse', { opening: 'sideZip' })
  const cut = cutParts(d.pieces, cutting.allowances, cutting.hemDepth)
  if (!cut.ok) throw new Error(cut.reason)
  const wishes = { ...USUAL_CLOTH, repeatAlong: mm(40), oneWay: true }

  it.each(['lengthwise', 'single', 'partly'] as const)('laid %s is told in German', (manner) => {
    const out = layOut(cut.parts, clothOf(wishes), manner, { seed: 1, spent: () => 1 })
    if (!out.ok) throw new Error(out.reason)
    const sections = lying(cut.parts, clothOf(wishes), out.layout)
    const plan = sewingPlan(sewn, cutting, { kind: 'silk' })
    const told = { draft: d, parts: cut.parts, plan, wishes, layout: out.layout, sections }
    const others = [{ width: mm(1150), length: mm(1500) }]
    const lines = clothLines({ ...told, by: 'metre', others }, CM)
    for (const { text } of lines) isGerman(text, manner)
    expect(lines.map((l) => l.text).join(' ')).toMatch(/Zu kaufen: \d,\d\u00a0m/)
  })
  it('says why a manner does not go', () => {
    const narrow = clothOf({ ...USUAL_CLOTH, oneWay: true }, mm(150))
    for (const manner of MANNERS) {
      const how = lay(cut.parts, narrow, manner)
      if (how.ok) throw new Error(`${manner} goes on 15 cm`)
      isGerman(how.reason, manner)
    }
  })
  it('says what is bought', () => {
    const { items, buy } = amountToBuy(mm(1500), clothOf(wishes), 'metre')
    for (const { words } of items) isGerman(words, 'amount')
    expect(amountWords(buy, 'metre')).toMatch(/^\d,\d\u00a0m$/)
  })
  it('says where stripes meet and miss', () => {
    const missed = [
      { at: 'underarm', skirt: false, off: 12 },
      { at: 'waist', skirt: false, off: 0 },
      { at: 'hem', skirt: true, off: 0 },
    ] as const
    expect(missedSentence(missed, CM)).toBe(
      'An der Seite treffen sich die Streifen von Rücken- und Vorderteil in der Taille und am Saum des Rocks. Sie verfehlen sich an der Achsel um 1,2\u00a0cm. Ein Abnäher in der Seite nimmt Streifen weg: Darüber und darunter können sie sich nicht beide treffen. Lass sie sich treffen, wo man es am meisten sieht; die Achsel verdeckt der Arm.',
    )
  })
})

describe('sheets', () => {
  /** The face the sheets are printed in. */
  async function face(): Promise<Face> {
    let found: Face | undefined
    await pagesPdf(
      (printed) => {
        found = printed
        return []
      },
      FONT,
      '',
    )
    if (!found) throw new Error('no face')
    return found
  }

  it('page one: what stands in the square of 100 mm ends in it, and nothing leaves the paper', async () => {
    const { d, cutting } = made('dress', {})
    const order = { paper: 'a4', units: CM, round: 2, date: '2026-11-25', ...cutting } as const
    const laid = sheetPlan(d, order)
    if (!laid.ok) throw new Error(laid.reason)
    const printed = await face()
    const words = coverWords(d, order, 'Leinenkleid', 'mit dem Maßband bestätigt')
    const { layers, width, height } = coverPage(laid.plan, words, printed, PAPERS.a4)
    const marks = layers.flatMap((l) => l.marks)
    const square = marks.find((m) => m.kind === 'rect' && m.id === 'square100mm')
    if (square?.kind !== 'rect') throw new Error('no square')
    const texts = marks.flatMap((m) => (m.kind === 'text' ? [m] : []))
    for (const { text, at, size } of texts) {
      if (text.length > 3) isGerman(text.replace('25.11.2026', 'heute'), 'page one')
      expect(at.x + printed.width(text, size), text).toBeLessThan(width - 5)
      expect(at.y, text).toBeLessThan(height - 5)
    }
    const inSquare = texts.filter(
      ({ at }) => at.x < square.box.right && at.y > square.box.top && at.y < square.box.bottom + 6,
    )
    expect(inSquare.length).toBeGreaterThan(8)
    for (const { text, at, size } of inSquare) {
      expect(at.y, text).toBeLessThan(square.box.bottom - 2)
      expect(at.x + printed.width(text, size), text).toBeLessThan(square.box.right - 2)
    }
    expect(SQUARE_MM).toBe(square.box.right - square.box.left)
  })
  it('the page of dots and pocket card keeps to the paper', async () => {
    const printed = await face()
    for (const paper of ['a4', 'letter'] as const)
      for (const { text, x, size } of photoPack(paper).texts)
        expect(x + printed.width(text, size), text).toBeLessThanOrEqual(PAPERS[paper].width - 10)
  })
  it('paper, rolls and the check of the print are told in German', () => {
    isGerman(paperWords({ ...PAPERS.a4, width: mm(297), height: mm(210) }, CM), 'across')
    const roll = readRoll(2000, CM)
    expect(!roll.ok && roll.reason).toMatch(/^Die Rolle wäre 200,0\u00a0cm breit/)
    const off = readPrint({ mm100: { across: mm(98.5), down: mm(98.5) } }, CM)
    if (!off.ok || !off.correction) throw new Error('98.5 mm for 100 is not true')
    expect(off.words).toContain(
      'Eine Linie von 50,0\u00a0cm wird in beiden Richtungen 7,5 mm zu kurz gedruckt.',
    )
    expect(binWords(off, { tiled: 13, steps: 6 })).toBe(
      'Die Seiten 1 bis 13 kommen ins Altpapier, alle. Auf den Seiten 14 bis 19 stehen Schritte, sie bleiben.',
    )
    // 1 / 0.985 = 1.0152.
    expect(correctedWords(off.correction)).toMatch(/in beiden Richtungen 1,52 % größer gezeichnet/)
    const half = readPrint({ mm100: { across: mm(101) } }, CM)
    if (!half.ok) throw new Error(half.reason)
    for (const said of half.words) isGerman(said, 'print')
  })
})

test('a drawing for a machine knows ASCII only: umlauts are spelt out', () => {
  // DIN 5007-2 sorts and spells ä as ae, ß as ss.
  expect(plain('Ärmel für „Größe“, 1× zuschneiden – Öffnung')).toBe(
    'Aermel fuer "Groesse", 1x zuschneiden - Oeffnung',
  )
})

test('file names are German, and kept paper work is told in either language', () => {
  expect(fileName('Leinenbluse', 2, 'schritte.txt')).toBe('leinenbluse-runde-2-schritte.txt')
  expect(fileName('…', undefined, 'teile.dxf')).toBe('stück-teile.dxf')
  // Kept the same in both, so that a device changes its language and nothing else.
  expect(aboutSheets('a4', 13, 'muslin')).toBe('A4, 13 sheets, muslin')
  expect(aboutSaid(aboutSheets('a4', 13, 'muslin'))).toBe('A4, 13 Blätter, Probeteil')
  expect(aboutSaid(aboutSheets('roll', 1, 'cloth'))).toBe('Rolle, 1 Blatt, Stoff')
  expect(aboutSaid(aboutRun(25))).toBe('alles in einem Druck, 25 Seiten')
  expect(aboutSaid('everything as one run, 1 page')).toBe('alles in einem Druck, 1 Seite')
  expect(aboutSaid(aboutPages(3))).toBe('3 Seiten')
  expect(aboutSaid('what she wrote')).toBe('what she wrote')
})
