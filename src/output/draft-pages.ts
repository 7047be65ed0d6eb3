/**
 * All pages of a draft: page one, the tiles, the steps; and the reasons for which none are made.
 * What a PDF is made of, without knowing what a PDF is.
 */
import type { UnitChoice } from '../units/format.ts'
import type { Draft } from '../draft/draft.ts'
import { findingSentence, type Finding, type FindingId } from '../draft/finding.ts'
import { GARMENTS } from '../draft/garments.ts'
import type { PieceId } from '../draft/piece.ts'
import { coverWords, standingSentence } from './cover-words.ts'
import type { Stuff } from './finish.ts'
import { instructionLines } from './instruction-page.ts'
import { stampWords, stamped, twoOnOne, type Page } from './page.ts'
import { readingPaper, type PaperChoice } from './paper.ts'
import { keyFigure } from './line-key.ts'
import { pieceDrawing, type PieceDrawing } from './piece-drawing.ts'
import { smallFigure, type DrawingScale, type Figure } from './scaled-drawing.ts'
import { sheetPlan, type SheetPlan } from './sheet-plan.ts'
import type { SheetWords } from './sheet-words.ts'
import { TILE_WORDS } from './sheet.words.ts'
import { NO_SHEETS } from './standing.words.ts'
import { figureRoom, stepsPages } from './steps-pages.ts'
import { tilePages, withPageOne } from './tiled-pages.ts'
import type { TilePlan } from './tiles.ts'
import type { Face } from './wrap.ts'

/** Faults of the drawing itself: such pieces cannot be sewn together. */
const UNSEWABLE: readonly FindingId[] = [
  'overarmPair',
  'sidePair',
  'dartLegs',
  'neckJoin',
  'outlineCrosses',
]
const unsewable = (f: Finding): boolean => f.severity === 'stop' && UNSEWABLE.includes(f.id)

const USUAL_DRAWINGS: readonly DrawingScale[] = ['full', 'quarter']

export type DraftPages =
  | {
      readonly ok: true
      readonly pages: readonly Page[]
      readonly plan: TilePlan
      /** Pages that must be printed true, page one among them: they come first. */
      readonly tiled: number
      /** The name of the whole, for the head of a file. */
      readonly title: string
    }
  | { readonly ok: false; readonly reason: string }

/** `plan` is what `sheetPlan` gave for the same draft and words, where it was asked before. */
export function draftPages(
  draft: Draft,
  words: SheetWords,
  face: Face,
  plan?: SheetPlan,
): DraftPages {
  const confirmed = draft.body.standing === 'confirmed'
  const kind = words.kind ?? (confirmed ? 'cutting' : 'preview')
  const refusal = kind === 'cutting' ? whyNotCut(draft, words.units, words.stuff) : undefined
  if (refusal !== undefined) return { ok: false, reason: refusal }
  const wanted = words.drawings ?? USUAL_DRAWINGS
  const laid = plan ?? sheetPlan(draft, words)
  if (!laid.ok) return laid
  const halves = wanted.includes('half') ? sheetPlan(draft, words, 2) : undefined
  if (halves?.ok === false) return halves

  const stamp = kind === 'preview' ? stampWords(confirmed) : ''
  const garmentName = words.garmentName ?? GARMENTS[draft.garment].name
  const round = words.round === undefined ? {} : { round: words.round }
  const { scale, margin } = words
  const tileWords = { garmentName, ...round, stamp }
  const cover = coverWords(draft, words, garmentName, stamp || standingSentence(draft, words.stuff))
  const full = wanted.includes('full')
    ? withPageOne(tilePages(laid, tileWords, face, scale), laid.plan, cover, face, scale, margin)
    : []
  const half = halves ? tilePages(halves, { ...tileWords, size: TILE_WORDS.half }, face, scale) : []
  const name = [garmentName, ...(words.round === undefined ? [] : [TILE_WORDS.round(words.round)])]
  const steps = readingPages(
    draft,
    words,
    name.join(' · '),
    wanted.includes('quarter'),
    halves?.drawings ?? [],
    face,
  )
  const pages = [...full, ...half, ...steps]
  return {
    ok: true,
    pages: stamp === '' ? pages : pages.map((page) => stamped(page, stamp)),
    plan: laid.plan,
    tiled: full.length + half.length,
    title: [...name, ...(stamp ? [stamp] : [])].join(', '),
  }
}

/**
 * The steps on sheets she reads. The key of the half-size sheets stands here, where it costs them
 * no room.
 */
function readingPages(
  draft: Draft,
  words: SheetWords,
  foot: string,
  drawn: boolean,
  halves: readonly PieceDrawing[],
  face: Face,
): Page[] {
  const paper = readingPaper(words.paper, words.units)
  const lines = instructionLines(draft, words.units, {
    ...(words.garmentName === undefined ? {} : { garmentName: words.garmentName }),
    ...(words.round === undefined ? {} : { round: words.round }),
    ...(words.invented === undefined ? {} : { invented: words.invented }),
    ...(words.changes === undefined ? {} : { changes: words.changes }),
    ...(words.finishes === undefined ? {} : { finishes: words.finishes }),
    ...(words.hemDepth === undefined ? {} : { hemDepth: words.hemDepth }),
    ...(words.allowances === undefined ? {} : { allowances: words.allowances }),
  })
  const figures: Partial<Record<PieceId, Figure>> = {}
  if (drawn)
    for (const piece of draft.pieces)
      figures[piece.id] = smallFigure(
        pieceDrawing(piece, { units: words.units }),
        figureRoom(paper),
        words.units,
      )
  const marks = halves.flatMap((d) => d.marks)
  const key = marks.length > 0 ? keyFigure(marks, figureRoom(paper).width) : undefined
  return onReadingSheets(words.paper, stepsPages(lines, paper, foot, face, figures, key))
}
/** As she reads them: A3 and Tabloid hold two such pages side by side. */
export const onReadingSheets = (paper: PaperChoice, pages: Page[]): Page[] =>
  paper === 'a3' || paper === 'tabloid' ? twoOnOne(pages) : pages

/** Why no sheet of this draft may be cut from; undefined where it may. */
export function whyNotCut(
  draft: Draft,
  units: UnitChoice,
  stuff: Stuff = 'muslin',
): string | undefined {
  if (draft.body.standing !== 'confirmed') return NO_SHEETS.notConfirmed
  const faults = draft.findings.filter(unsewable).map((f) => findingSentence(f, units))
  if (faults.length > 0) return NO_SHEETS.unsewable(faults.join(' '))
  const waits = draft.findings.filter(({ severity }) => severity !== 'note')
  return stuff === 'cloth' && waits.length > 0
    ? NO_SHEETS.notForCloth(waits.map((f) => findingSentence(f, units)).join(' '))
    : undefined
}
