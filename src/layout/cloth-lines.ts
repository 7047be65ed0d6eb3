/** The cutting plan as lines for a page: amount, layout, places, cut list, marks, what else is bought. */
import type { Draft } from '../draft/draft.ts'
import type { InstructionLine } from '../output/instruction-page.ts'
import type { PlanStep } from '../output/plan-step.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm, type Mm } from '../units/length.ts'
import { amountToBuy, amountWords, type SoldBy } from './amount.ts'
import { clothOf, type ClothWishes } from './cloth-wishes.ts'
import { CLOTH_PLAN, SECTION_WORDS } from './cloth.words.ts'
import { cutList, interfacing, markingList } from './cut-list.ts'
import type { CutPart } from './cut-part.ts'
import { clothUsed, type ClothLayout } from './lay-out.ts'
import { interfacingSentence, notionSentence } from './list-words.ts'
import type { LyingSection } from './lying.ts'
import { placeSentence, sectionSentence } from './lying-words.ts'
import { notions } from './notions.ts'
import { stripesTold } from './stripes.ts'

/** A width beside the one that is drawn, and the length of the layout found on it. */
export interface OtherWidth {
  readonly width: Mm
  readonly length: Mm
}
export interface ClothTold {
  readonly draft: Draft
  readonly parts: readonly CutPart[]
  readonly plan: readonly PlanStep[]
  readonly wishes: ClothWishes
  readonly layout: ClothLayout
  readonly sections: readonly LyingSection[]
  readonly by: SoldBy
  readonly others: readonly OtherWidth[]
}

const text = (said: string): InstructionLine => ({ kind: 'text', text: said })
const head = (said: string): InstructionLine => ({ kind: 'head', text: said })

export function layoutFigure(section: number): string {
  return `layout.${section}`
}

export function clothLines(told: ClothTold, units: UnitChoice): InstructionLine[] {
  const { wishes, layout, sections } = told
  const said = (length: number): string => formatLength(mm(length), units)
  return [
    { kind: 'title', text: CLOTH_PLAN.title },
    text(CLOTH_PLAN.on(said(wishes.width), layout.manner, said(clothUsed(layout)), wishes.oneWay)),
    ...repeatLines(told, units),
    ...sections.map((s, i): InstructionLine => ({
      kind: 'head',
      text: SECTION_WORDS[s.layers],
      figure: layoutFigure(i),
    })),
    head(CLOTH_PLAN.where),
    text(wishes.border ? CLOTH_PLAN.nearest : CLOTH_PLAN.nearestAlong),
    ...sections.flatMap((s) => [
      text(sectionSentence(s, units)),
      ...s.pieces.map((p) => text(placeSentence(s, p, units))),
    ]),
    ...amountLines(told, units),
    ...listLines(told, units),
  ]
}

function repeatLines({ wishes, parts, sections }: ClothTold, units: UnitChoice): InstructionLine[] {
  const { repeatAlong, repeatAcross } = wishes
  if (repeatAlong === undefined && repeatAcross === undefined) return []
  const said = (length: Mm | undefined) =>
    length === undefined ? length : formatLength(length, units)
  return [
    CLOTH_PLAN.repeat(said(repeatAlong), said(repeatAcross)),
    ...stripesTold(parts, clothOf(wishes), wishes.matchAt, sections, units),
  ].map(text)
}

function amountLines(
  { wishes, layout, by, others }: ClothTold,
  units: UnitChoice,
): InstructionLine[] {
  const bought = (length: number, width: Mm, sold: SoldBy) =>
    amountToBuy(mm(length), clothOf(wishes, width), sold, wishes.spare)
  const amount = bought(clothUsed(layout), wishes.width, by)
  return [
    head(CLOTH_PLAN.toBuy(amountWords(amount.buy, by))),
    ...amount.items.map(({ words, adds }): InstructionLine => ({
      kind: 'number',
      text: CLOTH_PLAN.item(words, formatLength(adds, units)),
    })),
    ...(others.length > 0 ? [text(CLOTH_PLAN.otherWidths)] : []),
    ...others.map(({ width, length }): InstructionLine => {
      const [metres, yards] = (['metre', 'yard'] as const).map((sold) =>
        amountWords(bought(length, width, sold).buy, sold),
      )
      return {
        kind: 'number',
        text: CLOTH_PLAN.otherWidth(formatLength(width, units), metres!, yards!),
      }
    }),
  ]
}

function listLines({ draft, parts, plan, by }: ClothTold, units: UnitChoice): InstructionLine[] {
  const marks = markingList(draft.pieces, units)
  const stiff = interfacing(parts, units.unit)
  return [
    head(CLOTH_PLAN.cutList),
    ...cutList(draft.pieces, parts).map((row) =>
      text(`☐ ${CLOTH_PLAN.row(row.words, row.cut, row.interfacing)}`),
    ),
    ...(marks.length > 0 ? [head(CLOTH_PLAN.marks)] : []),
    ...marks.map((row) => text(CLOTH_PLAN.marksOf(row.words, row.marks))),
    head(CLOTH_PLAN.besides),
    ...notions(draft, plan, by).map((n) => text(`☐ ${notionSentence(n, units)}`)),
    ...(stiff.length > 0 ? [text(`☐ ${interfacingSentence(stiff, by, units)}`)] : []),
  ]
}
