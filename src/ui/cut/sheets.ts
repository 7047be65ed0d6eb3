/** The sheet maker as the Cut page sees it: an order in, a plan or a PDF out, in a worker. */
import type { GarmentId } from '../../draft/draft.ts'
import type { Choices } from '../../draft/choices.ts'
import type { Correction } from '../../fitting/correction.ts'
import type { RunOrder, RunPart } from '../../layout/print-run.ts'
import type { Allowances } from '../../output/allowance.ts'
import type { Stuff } from '../../output/finish.ts'
import type { Finishes } from '../../output/finishes.ts'
import type { PaperChange } from '../../output/instruction-page.ts'
import type { Stretch } from '../../output/page.ts'
import type { PaperChoice } from '../../output/paper.ts'
import type { DrawingScale } from '../../output/scaled-drawing.ts'
import type { TilePlan } from '../../output/tiles.ts'
import type { Round } from '../../rounds/round.ts'
import type { Mm } from '../../units/length.ts'
import type { UnitChoice } from '../../units/format.ts'
import { MAKING_WORDS } from './cut.words.ts'

export interface SheetsOrder {
  /** run: the cutting plan, the sewing plan, or all of it as one file. */
  readonly want: 'plan' | 'pdf' | 'run'
  readonly run?: RunOrder
  readonly garment: GarmentId
  /** The round's confirmed numbers as plain data; parsed anew on the other side. */
  readonly body: unknown
  readonly choices: Choices
  readonly corrections: readonly Correction[]
  readonly round: number
  readonly garmentName: string
  /** A size by its name, or a roll by its width. */
  readonly paper: PaperChoice
  readonly allowances: Allowances
  readonly hemDepth?: Mm
  readonly finishes?: Finishes
  readonly stuff?: Stuff
  /** Corrections as work on the paper she has already. */
  readonly changes?: readonly PaperChange[]
  readonly units: UnitChoice
  /** The day the round went on paper: of the round, so the same round gives the same bytes. */
  readonly date: string
  /** For one printer, from the squares she measured. */
  readonly scale?: Stretch
  /** Full sheets, the pieces at a half, small drawings beside the steps; without it full and small. */
  readonly drawings?: readonly DrawingScale[]
}

export type SheetsAnswer =
  | {
      readonly ok: true
      /** How the sheets lie together; a cutting plan by itself has none. */
      readonly plan?: TilePlan
      /** With a PDF: the file, all its pages, and those that must be printed true. */
      readonly bytes?: Uint8Array<ArrayBuffer>
      readonly sheets?: number
      readonly tiled?: number
      /** Of a run: what stands on which pages. */
      readonly parts?: readonly RunPart[]
    }
  | { readonly ok: false; readonly reason: string }

export interface SheetMaker {
  readonly make: (order: SheetsOrder) => Promise<SheetsAnswer>
  /** Drops whatever is being made. */
  readonly close: () => void
}

interface Reply {
  readonly id: number
  readonly result?: SheetsAnswer
  readonly problem?: string
}

const BROKEN: SheetsAnswer = { ok: false, reason: MAKING_WORDS.broken }

export function openSheetMaker(): SheetMaker {
  const worker = new Worker(new URL('./sheets-worker.ts', import.meta.url), { type: 'module' })
  const waiting = new Map<number, (answer: SheetsAnswer) => void>()
  let last = 0
  const fail = () => {
    for (const settle of waiting.values()) settle(BROKEN)
    waiting.clear()
  }
  worker.onerror = fail
  worker.onmessage = ({ data }: MessageEvent<Reply>) => {
    const settle = waiting.get(data.id)
    waiting.delete(data.id)
    settle?.(data.result ?? BROKEN)
  }
  return {
    make: (order) =>
      new Promise((settle) => {
        last += 1
        waiting.set(last, settle)
        worker.postMessage({ id: last, order })
      }),
    close: () => {
      worker.terminate()
      fail()
    },
  }
}

export const orderFor = (
  round: Round,
  more: Pick<
    SheetsOrder,
    | 'paper'
    | 'allowances'
    | 'hemDepth'
    | 'finishes'
    | 'stuff'
    | 'changes'
    | 'units'
    | 'garmentName'
    | 'date'
    | 'scale'
    | 'drawings'
  >,
): Omit<SheetsOrder, 'want' | 'run'> => {
  const { garment, choices, corrections, body } = round
  // Own fields only: a private mark cannot be sent, and is not wanted on the other side.
  return { garment, choices, corrections, body: { ...body }, round: round.number, ...more }
}
