/** What she wishes of a garment on the rail: its cutting, cloth, her own work, what is sewn. */
import { NO_OWN_WORK, type OwnWork } from '../../draft/own-work.ts'
import { USUAL_WIDTHS } from '../../layout/cloth.ts'
import { usualCloth, type ClothWishes } from '../../layout/cloth-wishes.ts'
import type { KeptLayout } from '../../layout/kept.ts'
import { USUAL_CUT, type CutWishes } from '../../output/cutting.ts'
import type { PlanStep } from '../../output/plan-step.ts'
import { ticked } from '../../output/sewn.ts'
import type { HungGarment } from '../../storage/schema/garment.ts'
import type { DisplayUnit } from '../../units/format.ts'
import type { RailActs } from './rail-acts.ts'
import type { Work } from './work.svelte.ts'

export class WishActs {
  readonly #work: Work
  readonly #rail: RailActs

  constructor(work: Work, rail: RailActs) {
    this.#work = work
    this.#rail = rail
  }

  /** How it is cut: finishes, allowances, paper, printer. */
  cutWishes = (id: string): CutWishes => this.#work.garment(id)?.cutting ?? USUAL_CUT
  changeCut = (id: string, change: (wishes: CutWishes) => CutWishes): Promise<boolean> =>
    this.#change(id, () => ({ cutting: change(this.cutWishes(id)) }))
  /** Her cloth: widths, folding, print, shrinkage; while she has said nothing, as her unit has it. */
  clothWishes = (id: string, unit: DisplayUnit): ClothWishes =>
    this.#work.garment(id)?.cloth ?? usualCloth(this.#laidIn(id) ?? unit)
  changeCloth = (
    id: string,
    unit: DisplayUnit,
    change: (wishes: ClothWishes) => ClothWishes,
  ): Promise<boolean> => this.#change(id, () => ({ cloth: change(this.clothWishes(id, unit)) }))
  /** A layout that is kept stays in sight: its width stays among the usual ones of its own unit. */
  #laidIn(id: string): DisplayUnit | undefined {
    const kept = this.laid(id).map(({ width }) => width)
    return (['cm', 'inch'] as const).find((unit) =>
      kept.some((width) => USUAL_WIDTHS[unit].includes(width)),
    )
  }
  /** The layouts found for it, one a width. */
  laid = (id: string): readonly KeptLayout[] => this.#work.garment(id)?.laid ?? []
  keepLaid = (id: string, layouts: readonly KeptLayout[]): Promise<boolean> =>
    this.#rail.found(id, { laid: layouts })
  /** Lengths of a piece she drew by hand, and of a garment she likes. */
  ownWork = (id: string): OwnWork => this.#work.garment(id)?.own ?? NO_OWN_WORK
  changeOwn = (id: string, change: (own: OwnWork) => OwnWork): Promise<boolean> =>
    this.#change(id, () => ({ own: change(this.ownWork(id)) }))
  /** A step of the sewing plan is done, or not after all. */
  tickSewn = (
    id: string,
    { id: step, hours }: Pick<PlanStep, 'id' | 'hours'>,
    done: boolean,
  ): Promise<boolean> => {
    const on = hours === undefined ? this.#work.today() : this.#work.now().toISOString()
    return this.#change(id, ({ sewn = {} }) => ({
      sewn: ticked(sewn, step, done ? on : undefined),
    }))
  }
  /** The plan from its beginning: nothing is sewn. */
  sewAnew = (id: string): Promise<boolean> => this.#change(id, () => ({ sewn: {} }))

  #change(id: string, wish: (hung: HungGarment) => Partial<HungGarment>): Promise<boolean> {
    const hung = this.#work.garment(id)
    return hung ? this.#rail.changeGarment({ ...hung, ...wish(hung) }) : Promise.resolve(false)
  }
}
