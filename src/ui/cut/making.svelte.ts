/** The sheets as they are being made: the newest plan, a PDF under way, and why there is none. */
import type { RunOrder, RunPart } from '../../layout/print-run.ts'
import type { TilePlan } from '../../output/tiles.ts'
import { MAKING_WORDS } from './cut.words.ts'
import type { SheetMaker, SheetsOrder } from './sheets.ts'

type Order = Omit<SheetsOrder, 'want' | 'run'>

export interface MadePdf {
  readonly bytes: Uint8Array<ArrayBuffer>
  readonly sheets: number
  /** Page one and the sheets; the rest are steps. */
  readonly tiled: number
  readonly plan: TilePlan
}

export interface MadeRun {
  readonly bytes: Uint8Array<ArrayBuffer>
  readonly sheets: number
  readonly parts: readonly RunPart[]
}

export class Making {
  readonly #open: () => SheetMaker
  #maker: SheetMaker | undefined
  #newest = 0
  /** The plan of the order as it stands; while a newer one is made the older stays in sight. */
  planned = $state.raw<TilePlan | undefined>()
  planning = $state.raw(false)
  saving = $state.raw(false)
  refused = $state.raw<string | undefined>()
  /**
   * Why the PDF cannot be saved this moment, for its key; undefined when it can. A plan being made
   * is no reason: the PDF comes after it.
   */
  why = $derived.by(() => {
    if (this.saving) return MAKING_WORDS.drawn
    return this.planned || this.planning ? undefined : this.refused
  })

  constructor(open: () => SheetMaker) {
    this.#open = open
  }

  plan = (order: Order): void => {
    this.#newest += 1
    const mine = this.#newest
    this.planning = true
    void this.#worker.make({ ...order, want: 'plan' }).then((answer) => {
      if (mine !== this.#newest) return
      this.planning = false
      this.planned = answer.ok ? answer.plan : undefined
      this.refused = answer.ok ? undefined : answer.reason
    })
  }

  async pdf(order: Order): Promise<MadePdf | undefined> {
    this.saving = true
    this.refused = undefined
    const answer = await this.#worker.make({ ...order, want: 'pdf' })
    this.saving = false
    if (!answer.ok) {
      this.refused = answer.reason
      return undefined
    }
    const { bytes, sheets, tiled, plan } = answer
    if (!bytes || !plan || sheets === undefined || tiled === undefined)
      throw new Error('cut page: asked for a PDF, got a plan')
    return { bytes, sheets, tiled, plan }
  }

  /** The plans, or everything in one file. */
  async run(order: Order, run: RunOrder): Promise<MadeRun | undefined> {
    this.saving = true
    this.refused = undefined
    const answer = await this.#worker.make({ ...order, want: 'run', run })
    this.saving = false
    if (!answer.ok) {
      this.refused = answer.reason
      return undefined
    }
    const { bytes, sheets, parts } = answer
    if (!bytes || sheets === undefined || !parts)
      throw new Error('cut page: asked for a run, got something else')
    return { bytes, sheets, parts }
  }

  /** Drops what is being made; the next order begins with a fresh worker. */
  stop = (): void => {
    this.#maker?.close()
    this.#maker = undefined
    this.refused = undefined
  }
  close = (): void => {
    this.#newest += 1
    this.#maker?.close()
    this.#maker = undefined
  }

  get #worker(): SheetMaker {
    this.#maker ??= this.#open()
    return this.#maker
  }
}
