import { beforeAll, describe, expect, test } from 'vitest'
import fc from 'fast-check'
import { mm } from '../../src/units/length.ts'
import { standardChoices } from '../../src/draft/choices.ts'
import { draft } from '../../src/draft/make.ts'
import { draftPdf, type PdfMade, type PdfWords } from '../../src/output/pdf.ts'
import { binWords, readPrint, type PrintScale } from '../../src/output/print-scale.ts'
import { body, SMALL } from '../bodies.ts'
import { FONT } from './font.ts'
import { readPdf, type ReadPage } from './read-pdf.ts'
import { compared, onBoard, outlines } from './reassemble.ts'

const CM = { unit: 'cm', inchStep: 8 } as const
const INCH = { unit: 'inch', inchStep: 8 } as const
type Read = Extract<PrintScale, { ok: true }>
function good(scale: PrintScale): Read {
  if (!scale.ok) throw new Error(scale.reason)
  return scale
}
const square = (across: number, down?: number) => ({
  across: mm(across),
  ...(down === undefined ? {} : { down: mm(down) }),
})

describe('what the squares say', () => {
  // Tolerance: half a millimetre on 100 mm, common practice, no source.
  test.each([
    [100, 100, true],
    [99.5, 100.5, true],
    [99.4, 100, false],
    [100, 100.6, false],
  ])('%d × %d for 100: true is %s', (across, down, isTrue) => {
    const read = good(readPrint({ mm100: square(across, down) }, CM))
    expect(read.isTrue).toBe(isTrue)
    expect(read.correction === undefined).toBe(isTrue)
  })
  // By hand: 98.5 for 100 makes 500 mm print 492.5; 100.6 makes it 503.
  test('how far a line of 500 mm is off', () => {
    const read = good(readPrint({ mm100: square(98.5, 100.6) }, CM))
    expect(read.off500.across).toBeCloseTo(-7.5, 9)
    expect(read.off500.down).toBeCloseTo(3, 9)
    expect(read.words.join(' ')).toContain(
      'A line of 50.0 cm, across, is printed 7.5 mm too short.',
    )
    expect(read.words.join(' ')).toContain('A line of 50.0 cm, down, is printed 3.0 mm too long.')
  })
  // By hand: 0.97 of 20 in is 0.6 in short, nearest sixteenth 5/8 (0.625).
  test('speaks inches where she works in inches', () => {
    const read = good(readPrint({ inch4: square(98.552, 98.552) }, INCH))
    expect(read.words.join(' ')).toContain(
      'A line of 20 in, both ways, is printed 5/8 in too short.',
    )
  })
  // By hand: half a percent of 20 in is 0.1 in, nearest sixteenth 1/8; 3.5 in of 4 is past a tenth.
  test('and says in inches how true it is, or what cannot be', () => {
    const read = good(readPrint({ inch4: square(101.6, 101.6) }, INCH))
    expect(read.words[0]).toBe('The print is true: within 1/8 in on 20 in.')
    const absurd = readPrint({ inch4: square(88.9) }, INCH)
    expect(absurd.ok ? '' : absurd.reason).toMatch(
      /4 in square would measure 3 1\/2 in; between 3 5\/8 in and 4 3\/8 in/,
    )
  })
  // 98 of 100 and 100.076 of 101.6 (98.5 %) together: 198.076 of 201.6.
  test('both squares are weighed together', () => {
    const read = good(readPrint({ mm100: square(98), inch4: square(100.076) }, CM))
    expect(read.share.across).toBeCloseTo(198.076 / 201.6, 9)
  })
  test('one way measured stands for the other, and says so', () => {
    const read = good(readPrint({ mm100: square(99) }, CM))
    expect(read.share.down).toBe(read.share.across)
    expect(read.assumed).toBe('down')
    expect(read.words.join(' ')).toContain('Measure it too')
  })
  test.each([
    [{ mm100: square(89.9) }, 'at 100 %'],
    [{ mm100: square(110.1) }, 'at 100 %'],
    [{ inch4: square(3.9) }, 'at 100 %'],
    [{ mm100: square(NaN) }, 'Measure the 100 mm square again'],
    [{ mm100: square(98), inch4: square(101.6) }, 'do not agree'],
    [{}, 'Measure a side'],
  ])('%j is refused with what to do next', (given, words) => {
    const read = readPrint(given, CM)
    expect(read.ok).toBe(false)
    if (!read.ok) expect(read.reason).toContain(words)
  })
  test('says which pages go into the bin', () => {
    const off = readPrint({ mm100: square(98) }, CM)
    expect(binWords(off, { tiled: 13, steps: 6 })).toBe(
      'Pages 1 to 13 go into the bin, all of them. Pages 14 to 19 hold steps and stay.',
    )
    expect(binWords(readPrint({ mm100: square(100) }, CM), { tiled: 13, steps: 6 })).toBe(
      'Every page stays.',
    )
  })
  test('a corrected file measured again is corrected on top of its own stretch', () => {
    const side = fc.double({ min: 95, max: 105, noNaN: true })
    fc.assert(
      fc.property(side, side, side, side, (a, b, c, d) => {
        const first = good(readPrint({ mm100: square(a, b) }, CM)).correction ?? { x: 1, y: 1 }
        const second = readPrint({ mm100: square(c, d) }, CM, first)
        const correction = good(second).correction
        if (!correction) return
        // What that printer makes of a true 100 mm: the file's stretch times its own share.
        expect(correction.x * (c / 100 / first.x)).toBeCloseTo(1, 9)
        expect(correction.y * (d / 100 / first.y)).toBeCloseTo(1, 9)
      }),
    )
  })
})

describe('a corrected file', () => {
  const MM = 25.4 / 72
  /** A printer that prints so much of what it should: 98.5 mm for 100 across, 99.3 down. */
  const PRINTER = { x: 0.985, y: 0.993 }
  const SMALL_DRAFT = draft('blouse', body({}, SMALL), standardChoices())
  type Made = Extract<PdfMade, { ok: true }>
  const made = async (words: Partial<PdfWords>): Promise<Made> => {
    const result = await draftPdf(SMALL_DRAFT, { paper: 'a4', units: CM, font: FONT, ...words })
    if (!result.ok) throw new Error(result.reason)
    return result
  }
  let fixed: Made
  let pages: readonly ReadPage[]
  beforeAll(async () => {
    const read = good(readPrint({ mm100: square(98.5, 99.3) }, CM))
    if (!read.correction) throw new Error('no correction')
    fixed = await made({ scale: read.correction })
    pages = readPdf(fixed.bytes).pages
  })

  test('keeps the paper', () => {
    for (const page of pages) {
      const sides = page.mediaBox.slice(2).map((side) => side * MM)
      expect(Math.min(...sides)).toBeCloseTo(210, 6)
      expect(Math.max(...sides)).toBeCloseTo(297, 6)
    }
  })
  test('comes true from that printer: both squares, both ways', () => {
    const sides = (pages[0]?.drawn ?? []).flatMap(({ rectangle }) =>
      rectangle ? [[rectangle[2] * MM * PRINTER.x, rectangle[3] * MM * PRINTER.y]] : [],
    )
    for (const side of [100, 101.6])
      expect(
        sides.some(([w = 0, h = 0]) => Math.abs(w - side) < 0.001 && Math.abs(h - side) < 0.001),
      ).toBe(true)
    expect(pages[0]?.texts.map((t) => t.text).join(' ')).toContain('Corrected for one printer')
  })
  test('comes true from that printer: all sheets give back the outline of every piece', () => {
    const across = fixed.plan.paper.width > fixed.plan.paper.height
    // The printer knows the sheet, not how the page lies on it.
    const printer = across ? { x: PRINTER.y, y: PRINTER.x } : PRINTER
    const sheets = pages.slice(1, 1 + fixed.plan.tiles.length)
    const chords = sheets.flatMap((page) => onBoard(page, printer))
    const { missing, added, longer } = compared(chords, outlines(SMALL_DRAFT, fixed.plan))
    // Asked for within 0.1 mm.
    expect(missing).toBeLessThan(0.02)
    expect(added).toBeLessThan(0.02)
    expect(longer).toBeLessThan(0.1)
  })
  test('leaves the steps alone', async () => {
    const plain = readPdf((await made({})).bytes)
    const steps = pages.slice(fixed.tiled)
    expect(steps).toEqual(plain.pages.slice(-steps.length))
  })
  test('on sheets that lie across, across and down of page one are exchanged', async () => {
    // A tray that is so much too short that only upright sheets would be short of room.
    const across = await made({ scale: { x: 1, y: 1.06 } })
    const read = readPdf(across.bytes)
    const tile = read.pages[1]
    const lies = (tile?.mediaBox[2] ?? 0) > (tile?.mediaBox[3] ?? 0)
    expect(across.plan.paper.width > across.plan.paper.height).toBe(lies)
    const bars = (tile?.drawn ?? []).flatMap((d) =>
      d.runs.flatMap(([a, b]) => (a && b && a.y === b.y ? [(b.x - a.x) * MM] : [])),
    )
    const long = lies ? 106 : 100
    expect(bars.some((bar) => Math.abs(bar - long) < 0.001)).toBe(true)
  })
})
