/** The cutting plan as lines for a page: amount, layout, places, cut list, marks, what else is bought. */
import type { Draft } from '../draft/draft.ts'
import type { InstructionLine } from '../output/instruction-page.ts'
import type { PlanStep } from '../output/plan-step.ts'
import { formatLength, type UnitChoice } from '../units/format.ts'
import { mm } from '../units/length.ts'
import { amountToBuy, amountWords, type SoldBy } from './amount.ts'
import { clothOf, type ClothWishes } from './cloth-wishes.ts'
import { cutList, interfacing, markingList } from './cut-list.ts'
import type { CutPart } from './cut-part.ts'
import { MANNER_WORDS } from './lay.ts'
import type { ClothLayout } from './lay-out.ts'
import { interfacingSentence, notionSentence } from './list-words.ts'
import type { LyingSection } from './lying.ts'
import { placeSentence, SECTION_WORDS, sectionSentence } from './lying-words.ts'
import { missedAt, missedSentence } from './match.ts'
import { notions } from './notions.ts'

export interface ClothTold {
  readonly draft: Draft
  readonly parts: readonly CutPart[]
  readonly plan: readonly PlanStep[]
  readonly wishes: ClothWishes
  readonly layout: ClothLayout
  readonly sections: readonly LyingSection[]
  readonly by: SoldBy
}

const text = (said: string): InstructionLine => ({ kind: 'text', text: said })
const head = (said: string): InstructionLine => ({ kind: 'head', text: said })

export function layoutFigure(section: number): string {
  return `layout.${section}`
}

const GRAIN_ALONG = ' The grain arrow of every piece runs along the cloth.'

export function clothLines(told: ClothTold, units: UnitChoice): InstructionLine[] {
  const { wishes, layout, sections } = told
  const said = (length: number): string => formatLength(mm(length), units)
  return [
    { kind: 'title', text: 'Cutting plan' },
    text(
      `On a cloth ${said(wishes.width)} wide, ${MANNER_WORDS[layout.manner]}: the pieces lie on ${said(layout.length)}.${wishes.oneWay ? ' All one way.' : ''}`,
    ),
    ...repeatLines(told, units),
    ...sections.map((s, i): InstructionLine => ({
      kind: 'head',
      text: SECTION_WORDS[s.layers],
      figure: layoutFigure(i),
    })),
    head('Where each piece lies'),
    text(`To the nearest edge of each cutting line.${wishes.border ? '' : GRAIN_ALONG}`),
    ...sections.flatMap((s) => [
      text(sectionSentence(s, units)),
      ...s.pieces.map((p) => text(placeSentence(s, p, units))),
    ]),
    ...amountLines(told, units),
    ...listLines(told, units),
  ]
}

function repeatLines({ wishes, parts: cut }: ClothTold, units: UnitChoice): InstructionLine[] {
  const { repeatAlong, repeatAcross } = wishes
  if (repeatAlong === undefined && repeatAcross === undefined) return []
  const parts = [
    ...(repeatAlong === undefined ? [] : [`${formatLength(repeatAlong, units)} along`]),
    ...(repeatAcross === undefined ? [] : [`${formatLength(repeatAcross, units)} across`]),
  ]
  const missed = repeatAlong === undefined ? [] : missedAt(cut, repeatAlong)
  return [text(`Repeat ${parts.join(' and ')}. ${missedSentence(missed, units)}`)]
}

function amountLines({ wishes, layout, by }: ClothTold, units: UnitChoice): InstructionLine[] {
  const amount = amountToBuy(mm(layout.length), clothOf(wishes), by, wishes.spare)
  return [
    head(`To buy: ${amountWords(amount.buy, by)}`),
    ...amount.items.map(({ words, adds }): InstructionLine => ({
      kind: 'number',
      text: `${words}: ${formatLength(adds, units)}`,
    })),
  ]
}

function listLines({ draft, parts, plan, by }: ClothTold, units: UnitChoice): InstructionLine[] {
  const marks = markingList(draft.pieces)
  const stiff = interfacing(parts)
  return [
    head('Cut list'),
    ...cutList(draft.pieces, parts).map((row) =>
      text(
        `☐ ${row.words}: ${row.cut}${row.interfacing > 0 ? `; ${row.interfacing} of interfacing` : ''}.`,
      ),
    ),
    ...(marks.length > 0 ? [head('Marks inside the cutting line')] : []),
    ...marks.map((row) => text(`${row.words}: ${row.marks.join('; ')}.`)),
    head('Besides the cloth'),
    ...notions(draft, plan, by).map((n) => text(`☐ ${notionSentence(n, units)}`)),
    ...(stiff.length > 0 ? [text(`☐ ${interfacingSentence(stiff, by, units)}`)] : []),
  ]
}
