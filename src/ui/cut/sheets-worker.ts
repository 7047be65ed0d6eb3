/**
 * Sheets off the main thread: the plan of the tiles and the PDF itself. A round comes in as plain
 * data; its confirmed numbers are made again from their tape readings, so nothing is cut from a
 * number that the tape did not give. Nothing leaves the device.
 */
import type { Draft } from '../../draft/draft.ts'
import { correctedDraft } from '../../fitting/apply.ts'
import { parseConfirmed } from '../../measurements/confirmed.ts'
import { sheetPlan, type PlanWords, type SheetPlan } from '../../output/sheet-plan.ts'
import { printedFace } from '../parts/printed-face.ts'
import type { SheetsAnswer, SheetsOrder } from './sheets.ts'

async function answer(order: SheetsOrder): Promise<SheetsAnswer> {
  const parsed = parseConfirmed(order.body)
  if (!parsed.ok) return { ok: false, reason: parsed.reason }
  const { draft } = correctedDraft(order.garment, parsed.body, order.choices, order.corrections)
  // What the sheets want of the order; the rest of it has made the draft.
  const { want: _, garment: __, body: ___, choices: ____, corrections: _____, ...words } = order
  const laid = laidOut(draft, order, words)
  if (order.want === 'plan') return laid.ok ? { ok: true, plan: laid.plan } : laid
  const font = await printedFace()
  if (!font) return { ok: false, reason: NO_TYPE }
  const { draftPdf } = await import('../../output/pdf.ts')
  const made = await draftPdf(draft, { ...words, font }, laid)
  return made.ok ? { ...made, bytes: new Uint8Array(made.bytes) } : made
}

/** The plan she sees on the map, kept for the PDF of the same order. */
let last: { readonly order: string; readonly laid: SheetPlan } | undefined
function laidOut(draft: Draft, order: SheetsOrder, words: PlanWords): SheetPlan {
  const { want: _, drawings: __, changes: ___, ...same } = order
  const text = JSON.stringify(same)
  if (last?.order !== text) last = { order: text, laid: sheetPlan(draft, words) }
  return last.laid
}

const NO_TYPE =
  'The letters for the sheets could not be read. Open this page once with a network, then try again.'

self.onmessage = ({ data }: MessageEvent<{ id: number; order: SheetsOrder }>) => {
  void answer(data.order).then(
    (result) => self.postMessage({ id: data.id, result }),
    (problem: unknown) => self.postMessage({ id: data.id, problem: String(problem) }),
  )
}
