import { beforeAll, describe, expect, test } from 'vitest'
import { preview } from '../../src/measurements/confirmed.ts'
import { standardChoices } from '../../src/draft/choices.ts'
import { draft } from '../../src/draft/make.ts'
import { draftPdf } from '../../src/output/pdf.ts'
import { body, bookOf, MIDDLE } from '../bodies.ts'
import { FONT } from './font.ts'
import { readPdf, type ReadPage, type ReadPdf } from './read-pdf.ts'

const WORDS = { paper: 'a4', units: { unit: 'cm', inchStep: 8 }, round: 2, font: FONT } as const
const MM = 25.4 / 72

let read: ReadPdf
let tiles: readonly ReadPage[]
beforeAll(async () => {
  const made = await draftPdf(draft('blouse', body(), standardChoices()), WORDS)
  if (!made.ok) throw new Error(made.reason)
  read = readPdf(made.bytes)
  tiles = read.pages.slice(1, 1 + made.plan.tiles.length)
})

describe('layers', () => {
  // ISO 32000-1, 8.11.4.2 and 8.11.4.3: every group is listed in OCGs, D says how they begin.
  test('are listed in the catalog, all shown at first', () => {
    const [, groups = '', order = '', shown = ''] =
      read.catalog.match(
        /\/OCProperties <<\s*\/OCGs \[([^\]]*)\]\s*\/D <<.*?\/Order \[([^\]]*)\]\s*\/ON \[([^\]]*)\]/s,
      ) ?? []
    expect(groups.match(/\d+ 0 R/g)).toHaveLength(5)
    expect([order.trim(), shown.trim()]).toEqual([groups.trim(), groups.trim()])
  })
  test('hold the cutting lines, seam lines, darts and levels, words and the help each apart', () => {
    const drawn = tiles.flatMap((page) => page.drawn)
    const layersOf = (width: number, dashed: boolean): Set<string | undefined> =>
      new Set(
        drawn
          .filter(
            (d) =>
              d.clip &&
              d.stroked &&
              Math.abs(d.lineWidth * MM - width) < 1e-3 &&
              d.dash.startsWith('[] ') !== dashed,
          )
          .map((d) => d.layer),
      )
    // Widths and dashes as the drawing on the screen has them: seam 0.6, levels 0.45 dotted.
    expect(layersOf(0.6, false)).toEqual(new Set(['Seam lines']))
    const dotted = drawn.filter((d) => d.clip && /^\[0\.28/.test(d.dash))
    expect(dotted.length).toBeGreaterThan(0)
    for (const d of dotted) expect(d.layer).toBe('Darts and levels')
    const cutting = drawn.filter((d) => d.layer === 'Cutting lines')
    // 16 mm are 45.3543 points: the long dash of the cutting line.
    expect(cutting.some((d) => d.dash.startsWith('[45.3543'))).toBe(true)
    expect(drawn.some((d) => d.layer !== 'Cutting lines' && d.dash.startsWith('[45.3543'))).toBe(
      false,
    )
    for (const page of tiles) {
      const furniture = page.texts.filter((t) => t.layer === 'Sheet names, trim lines and bars')
      expect(furniture.map((t) => t.text)).toContain('100 mm')
      for (const t of page.texts.filter((t) => !furniture.includes(t)))
        expect(t.layer).toBe('Words and grain')
    }
  })
  test('hide nothing of page one and the steps', () => {
    for (const page of [read.pages[0], ...read.pages.slice(1 + tiles.length)])
      for (const t of page?.texts ?? []) expect(t.layer).toBeUndefined()
  })
  test('cannot hide that a preview is not for cutting', async () => {
    const guess = draft('blouse', preview(bookOf(MIDDLE)), standardChoices())
    const made = await draftPdf(guess, WORDS)
    if (!made.ok) throw new Error(made.reason)
    for (const page of readPdf(made.bytes).pages) {
      const stamps = page.texts.filter((t) => t.text.includes('not for cutting') && t.size > 20)
      expect(stamps.length).toBeGreaterThan(0)
      for (const t of stamps) expect(t.layer).toBeUndefined()
    }
  })
})
