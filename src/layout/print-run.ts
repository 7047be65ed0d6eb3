/**
 * Everything for the garment as one print run: a list of the pages, the pieces with the finishes
 * that were chosen and their steps, the cutting plan with its lists, the sewing plan. Or the
 * cutting plan or the sewing plan by itself.
 */
import type { Draft } from '../draft/draft.ts'
import { GARMENTS } from '../draft/garments.ts'
import { toCut, toSew } from '../draft/to-cut.ts'
import type { Cutting } from '../output/cutting.ts'
import { draftPages, onReadingSheets } from '../output/draft-pages.ts'
import type { InstructionLine } from '../output/instruction-page.ts'
import type { Page } from '../output/page.ts'
import { readingPaper } from '../output/paper.ts'
import { planFigures, planLines } from '../output/plan-pages.ts'
import type { SheetPlan } from '../output/sheet-plan.ts'
import type { SheetWords } from '../output/sheet-words.ts'
import { sewingPlan } from '../output/sewing-plan.ts'
import { figureRoom, stepsPages } from '../output/steps-pages.ts'
import type { Face } from '../output/wrap.ts'
import type { SoldBy } from './amount.ts'
import { clothOf, type ClothWishes } from './cloth-wishes.ts'
import { RUN_WORDS } from './cloth.words.ts'
import { clothFigure } from './cloth-figure.ts'
import { clothLines, layoutFigure, type OtherWidth } from './cloth-lines.ts'
import { cutParts } from './cut-part.ts'
import type { ClothLayout } from './lay-out.ts'
import { lying } from './lying.ts'

export interface RunOrder {
  readonly what: 'cuttingPlan' | 'sewingPlan' | 'whole'
  readonly cutting: Cutting
  readonly cloth: ClothWishes
  readonly by: SoldBy
  /** As it was found and shown; the sewing plan by itself needs none. */
  readonly layout?: ClothLayout
  /** How long the layouts on her other widths are, for the shop. */
  readonly others?: readonly OtherWidth[]
}
/** A part of the run: from which page to which, counted from 1. */
export interface RunPart {
  readonly words: string
  readonly from: number
  readonly to: number
}
export type PrintRun =
  | {
      readonly ok: true
      readonly pages: readonly Page[]
      readonly parts: readonly RunPart[]
      readonly title: string
    }
  | { readonly ok: false; readonly reason: string }

/**
 * @param drafted as the corrections left it: it is cut with left and right apart where they differ,
 * and sewn with a half that stands for both
 * @param laid the sheets of the same draft and words, where they were laid out before
 */
export function printRun(
  drafted: Draft,
  words: SheetWords,
  order: RunOrder,
  face: Face,
  laid?: SheetPlan,
): PrintRun {
  const [draft, sewn] = [toCut(drafted), toSew(drafted)]
  const name = words.garmentName ?? GARMENTS[draft.garment].name
  const title = [name, ...(words.round === undefined ? [] : [RUN_WORDS.round(words.round)])].join(
    ' · ',
  )
  const set = (lines: readonly InstructionLine[], figures: Parameters<typeof stepsPages>[4]) => {
    const paper = readingPaper(words.paper, words.units)
    return onReadingSheets(words.paper, stepsPages(lines, paper, title, face, figures))
  }
  const plan = sewingPlan(sewn, order.cutting, order.cloth)
  const sewing: Part = {
    words: RUN_WORDS.sewing,
    pages: set(planLines(plan, words.units), planFigures(plan, sewn.pieces)),
  }
  if (order.what === 'sewingPlan') return { ok: true, ...run([sewing]), title }

  const { allowances, hemDepth } = order.cutting
  const cut = cutParts(draft.pieces, allowances, hemDepth, order.cloth.matchAt)
  if (!cut.ok) return cut
  if (!order.layout) return { ok: false, reason: RUN_WORDS.noLayout }
  const { layout, cloth, by, others = [] } = order
  const sections = lying(cut.parts, clothOf(cloth), layout)
  const paper = readingPaper(words.paper, words.units)
  const room = figureRoom(paper)
  const figures = Object.fromEntries(
    sections.map((s, i) => {
      const half = { ...room, height: room.height - 40 }
      return [layoutFigure(i), clothFigure(s, half, words.units)] as const
    }),
  )
  const told = { draft, parts: cut.parts, plan, wishes: cloth, layout, sections, by, others }
  const cutting: Part = {
    words: RUN_WORDS.cutting,
    pages: set(clothLines(told, words.units), figures),
  }
  if (order.what === 'cuttingPlan') return { ok: true, ...run([cutting]), title }

  const sheets = draftPages(draft, words, face, laid)
  if (!sheets.ok) return sheets
  const parts: readonly Part[] = [
    {
      words: RUN_WORDS.pieces,
      pages: sheets.pages.slice(0, sheets.tiled),
    },
    {
      words: RUN_WORDS.steps,
      pages: sheets.pages.slice(sheets.tiled),
    },
    cutting,
    sewing,
  ]
  const first = run([{ words: RUN_WORDS.list, pages: set([], {}) }, ...parts])
  const list = set(listLines(title, first.parts), {})
  return { ok: true, ...run([{ words: RUN_WORDS.list, pages: list }, ...parts]), title }
}

interface Part {
  readonly words: string
  readonly pages: readonly Page[]
}

function run(parts: readonly Part[]): { pages: readonly Page[]; parts: readonly RunPart[] } {
  let before = 0
  const told = parts.map(({ words, pages }): RunPart => {
    const from = before + 1
    before += pages.length
    return { words, from, to: before }
  })
  return { pages: parts.flatMap((p) => p.pages), parts: told }
}

const listLines = (title: string, parts: readonly RunPart[]): InstructionLine[] => [
  { kind: 'title', text: title },
  { kind: 'text', text: RUN_WORDS.how },
  { kind: 'head', text: RUN_WORDS.pages },
  ...parts.map(({ words, from, to }): InstructionLine => ({
    kind: 'text',
    text: RUN_WORDS.part(from, to, words),
  })),
]
