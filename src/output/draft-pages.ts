/**
 * All sheets of a draft as plain pages: page one, the tiles, the steps; and the reasons for which
 * none are made. What a PDF is made of, without knowing what a PDF is.
 */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { flatten } from '../geometry/path.ts'
import type { Draft } from '../draft/draft.ts'
import { findingSentence, type Finding, type FindingId } from '../draft/finding.ts'
import { GARMENTS } from '../draft/garments.ts'
import { EDGE_WORDS } from '../draft/piece.ts'
import { EDGE_NAMES, MUSLIN_ALLOWANCES, type Allowances } from './allowance.ts'
import { coverPage } from './cover-page.ts'
import { findingLines, instructionLines } from './instruction-page.ts'
import { stampWords, stamped, type Page, type Purpose } from './page.ts'
import { PAPERS, PRINT_MARGIN, type PaperId } from './paper.ts'
import { pieceDrawing, type PieceDrawing } from './piece-drawing.ts'
import { NOT_CONFIRMED } from './standing.ts'
import { stepsPages } from './steps-pages.ts'
import { placedDrawing, tilePage } from './tile-page.ts'
import { planTiles, type TilePlan } from './tiles.ts'
import type { Face } from './wrap.ts'

export interface SheetWords {
  readonly paper: PaperId
  readonly allowances?: Allowances
  readonly units: UnitChoice
  readonly round?: number
  /** Her own name for it; else the garment's. */
  readonly garmentName?: string
  /** Printed on page one, as she writes it; never taken from a clock. */
  readonly date?: string
  /** `cutting` is refused for a preview body. Without it: what the body allows. */
  readonly kind?: Purpose
  /** White the printer leaves, mm. */
  readonly margin?: number
  /** For demonstrations: says that nobody was measured. */
  readonly invented?: boolean
}

/** Faults of the drawing itself: such pieces cannot be sewn together. */
const UNSEWABLE: readonly FindingId[] = [
  'overarmPair',
  'sidePair',
  'dartLegs',
  'neckJoin',
  'outlineCrosses',
]
const unsewable = (f: Finding): boolean => f.severity === 'stop' && UNSEWABLE.includes(f.id)

export type SheetPlan =
  | {
      readonly ok: true
      readonly plan: TilePlan
      readonly drawings: readonly PieceDrawing[]
    }
  | { readonly ok: false; readonly reason: string }

/** Which sheets a draft takes, without making them: for the map on the screen. */
export function sheetPlan(
  draft: Draft,
  words: Pick<SheetWords, 'paper' | 'allowances' | 'round' | 'garmentName' | 'margin'>,
): SheetPlan {
  const drawings = draft.pieces.map((piece) =>
    pieceDrawing(piece, {
      allowances: words.allowances ?? MUSLIN_ALLOWANCES,
      garmentName: words.garmentName ?? GARMENTS[draft.garment].name,
      ...(words.round === undefined ? {} : { round: words.round }),
    }),
  )
  const refusal = drawings.find((d) => d.refusal !== undefined)?.refusal
  if (refusal !== undefined) return { ok: false, reason: refusal }
  const inputs = drawings.map((d) => ({ name: d.piece.id, ring: flatten(d.cut, RING_ERROR) }))
  const plan = planTiles(inputs, PAPERS[words.paper], words.margin ?? PRINT_MARGIN)
  return { ok: true, plan, drawings }
}
/** The ring only says which sheets are touched; the drawing itself is exact. */
const RING_ERROR = 0.2

export type DraftPages =
  | {
      readonly ok: true
      readonly pages: readonly Page[]
      readonly plan: TilePlan
      /** The name of the whole, for the head of a file. */
      readonly title: string
    }
  | { readonly ok: false; readonly reason: string }

export function draftPages(draft: Draft, words: SheetWords, face: Face): DraftPages {
  const confirmed = draft.body.standing === 'confirmed'
  const kind = words.kind ?? (confirmed ? 'cutting' : 'preview')
  const refusal = kind === 'cutting' ? whyNotCut(draft, words.units) : undefined
  if (refusal !== undefined) return { ok: false, reason: refusal }
  const laid = sheetPlan(draft, words)
  if (!laid.ok) return laid

  const paper = PAPERS[words.paper]
  const stamp = kind === 'preview' ? stampWords(confirmed) : ''
  const garmentName = words.garmentName ?? GARMENTS[draft.garment].name
  const round = words.round === undefined ? {} : { round: words.round }
  const placed = laid.plan.placed.map((p) => {
    const drawing = laid.drawings.find((d) => d.piece.id === p.name)
    if (!drawing) throw new Error(`sheets: no drawing of ${p.name}`)
    return placedDrawing(drawing, p)
  })
  const standing = stamp || 'confirmed by tape'
  const cover = {
    garmentName,
    ...round,
    ...(words.date === undefined ? {} : { date: words.date }),
    standing: words.invented ? `${standing} · invented numbers` : standing,
    pieces: draft.pieces.map((p) => `${p.words}. ${p.cutting}.`),
    allowances: allowanceLines(words.allowances ?? MUSLIN_ALLOWANCES, words.units),
    findings: findingLines(draft, words.units)
      .filter((l) => l.kind === 'text')
      .map((l) => l.text),
  }
  const name = [garmentName, ...(words.round === undefined ? [] : [`round ${words.round}`])]
  const steps = instructionLines(draft, words.units, {
    garmentName,
    ...round,
    ...(words.invented === undefined ? {} : { invented: words.invented }),
  })
  const tileWords = { garmentName, ...round, stamp }
  const pages = [
    coverPage(laid.plan, cover, face),
    ...laid.plan.tiles.map((t) => tilePage(t, laid.plan, placed, tileWords, face)),
    ...stepsPages(steps, paper, name.join(' · '), face),
  ].map((page) => (stamp === '' ? page : stamped(page, paper, stamp)))
  const title = [...name, ...(stamp ? [stamp] : [])].join(', ')
  return { ok: true, pages, plan: laid.plan, title }
}

function whyNotCut(draft: Draft, units: UnitChoice): string | undefined {
  if (draft.body.standing !== 'confirmed')
    return `These numbers are ${NOT_CONFIRMED}, so no sheets for cutting are made. Tape what is missing, twice each, and print again.`
  const faults = draft.findings.filter(unsewable).map((f) => findingSentence(f, units))
  return faults.length > 0 ? `${faults.join(' ')} No sheets for cutting are made.` : undefined
}

const allowanceLines = (allowances: Allowances, units: UnitChoice): string[] =>
  EDGE_NAMES.filter((name) => name !== 'centre').map((name) =>
    allowances[name] > 0
      ? `${EDGE_WORDS[name]}: ${formatLength(allowances[name], units)}`
      : `${EDGE_WORDS[name]}: none, cut on the line`,
  )
