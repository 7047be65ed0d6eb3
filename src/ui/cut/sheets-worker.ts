/**
 * Sheets off the main thread: the plan of the tiles and the PDF itself. A round comes in as plain
 * data; its confirmed numbers are made again from their tape readings, so nothing is cut from a
 * number that the tape did not give. Nothing leaves the device.
 */
import type { Draft } from '../../draft/draft.ts'
import { correctedDraft } from '../../fitting/apply.ts'
import { toCut } from '../../draft/to-cut.ts'
import { printRun, type PrintRun, type RunOrder } from '../../layout/print-run.ts'
import { parseConfirmed } from '../../measurements/confirmed.ts'
import { sheetPlan, type PlanWords, type SheetPlan } from '../../output/sheet-plan.ts'
import type { SheetWords } from '../../output/sheet-words.ts'
import { printedFace } from '../parts/printed-face.ts'
import { MAKING_WORDS } from './cut.words.ts'
import type { SheetsAnswer, SheetsOrder } from './sheets.ts'

async function answer(order: SheetsOrder): Promise<SheetsAnswer> {
  const parsed = parseConfirmed(order.body)
  if (!parsed.ok) return { ok: false, reason: parsed.reason }
  const corrected = correctedDraft(order.garment, parsed.body, order.choices, order.corrections)
  const draft = toCut(corrected.draft)
  // What the sheets want of the order; the rest of it has made the draft.
  const { want, run, garment: _, body: __, choices: ___, corrections: ____, ...words } = order
  if (want === 'run') return run ? runOf(corrected.draft, order, words, run) : NOTHING_ASKED
  const laid = laidOut(draft, order, words)
  if (want === 'plan') return laid.ok ? { ok: true, plan: laid.plan } : laid
  const font = await printedFace()
  if (!font) return { ok: false, reason: MAKING_WORDS.noType }
  const { draftPdf } = await import('../../output/pdf.ts')
  const made = await draftPdf(draft, { ...words, font }, laid)
  return made.ok ? { ...made, bytes: new Uint8Array(made.bytes) } : made
}

/** Pieces, cutting plan and sewing plan, or one of the plans alone. */
async function runOf(
  drafted: Draft,
  order: SheetsOrder,
  words: SheetWords,
  run: RunOrder,
): Promise<SheetsAnswer> {
  const laid = run.what === 'whole' ? laidOut(toCut(drafted), order, words) : undefined
  const font = await printedFace()
  if (!font) return { ok: false, reason: MAKING_WORDS.noType }
  const { pagesPdf } = await import('../../output/pdf.ts')
  let made: PrintRun = NOTHING_ASKED
  const bytes = await pagesPdf(
    (face) => {
      made = printRun(drafted, words, run, face, laid)
      return made.ok ? made.pages : []
    },
    font,
    MAKING_WORDS.title(order.garmentName, order.round),
  )
  // Set by the pages just made, which the compiler cannot see.
  const told = made as PrintRun
  if (!told.ok) return told
  return {
    ok: true,
    bytes: new Uint8Array(bytes),
    sheets: told.pages.length,
    parts: told.parts,
    ...(laid?.ok ? { plan: laid.plan } : {}),
  }
}
const NOTHING_ASKED = { ok: false, reason: MAKING_WORDS.nothingAsked } as const

/** The plan she sees on the map, kept for the PDF of the same order. */
let last: { readonly order: string; readonly laid: SheetPlan } | undefined
function laidOut(draft: Draft, order: SheetsOrder, words: PlanWords): SheetPlan {
  const { want: _, run: __, drawings: ___, changes: ____, ...same } = order
  const text = JSON.stringify(same)
  if (last?.order !== text) last = { order: text, laid: sheetPlan(draft, words) }
  return last.laid
}

self.onmessage = ({ data }: MessageEvent<{ id: number; order: SheetsOrder }>) => {
  void answer(data.order).then(
    (result) => self.postMessage({ id: data.id, result }),
    (problem: unknown) => self.postMessage({ id: data.id, problem: String(problem) }),
  )
}
