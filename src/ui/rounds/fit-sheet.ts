/** The sheets of a round, or of all rounds of a garment, as one PDF. */
import type { PaperId } from '../../output/paper.ts'
import { PAPERS } from '../../output/paper.ts'
import { pieceDrawing } from '../../output/piece-drawing.ts'
import { photoPages, type PrintedPhoto } from '../../output/photo-pages.ts'
import { smallFigure, type Figure } from '../../output/scaled-drawing.ts'
import { figureRoom, stepsPages } from '../../output/steps-pages.ts'
import type { Page } from '../../output/page.ts'
import type { Face } from '../../output/wrap.ts'
import { pairedId, type PieceId } from '../../draft/piece.ts'
import { redraft } from '../../rounds/redraft.ts'
import type { Round } from '../../rounds/round.ts'
import type { UnitChoice } from '../../units/format.ts'
import { courseLinesSaid, FIGURED, roundLines } from './fit-sheet-lines.ts'
import { SHEET_WORDS } from './record.words.ts'

export interface FitSheetOrder {
  readonly garmentName: string
  /** Those to print, oldest first. */
  readonly rounds: readonly Round[]
  /** All rounds of the garment. */
  readonly all: readonly Round[]
  /** The whole garment: the course stands before the rounds. */
  readonly history: boolean
  readonly paper: PaperId
  readonly units: UnitChoice
  /** By round id; none goes in unless she asked for it. */
  readonly photos: ReadonlyMap<string, readonly PrintedPhoto[]>
  /** DejaVu Sans as a TrueType file. */
  readonly font: Uint8Array
}

export async function fitSheetPdf(order: FitSheetOrder): Promise<Uint8Array> {
  const { pagesPdf } = await import('../../output/pdf.ts')
  const [first] = order.rounds
  const title = order.history
    ? SHEET_WORDS.titleAll(order.garmentName)
    : SHEET_WORDS.titleOne(order.garmentName, first?.number)
  return pagesPdf((face) => fitSheetPages(order, face), order.font, title)
}

export function fitSheetPages(order: FitSheetOrder, face: Face): readonly Page[] {
  const { garmentName, rounds, all, history, units, photos } = order
  const paper = PAPERS[order.paper]
  const last = rounds.at(-1)
  const course = history && last ? courseLinesSaid(garmentName, rounds, last, units) : []
  return [
    ...(course.length > 0 ? stepsPages(course, paper, garmentName, face) : []),
    ...rounds.flatMap((round) => {
      const foot = SHEET_WORDS.foot(garmentName, round.number)
      const room = figureRoom(paper)
      // Two drawings and their words on one page.
      const half = { width: room.width, height: room.height / 2 - 8 }
      const figures: Partial<Record<PieceId, Figure>> = {}
      for (const piece of redraft(round).draft.pieces)
        if (pairedId(piece.id) in FIGURED)
          figures[piece.id] = smallFigure(pieceDrawing(piece, { units }), half, units)
      return [
        ...stepsPages(roundLines(round, all, units), paper, foot, face, figures),
        ...photoPages(photos.get(round.id) ?? [], paper, foot, face),
      ]
    }),
  ]
}
