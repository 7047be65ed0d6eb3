/** A garment on the rail: its name, when it was hung there, and its place in the order. */
import * as v from 'valibot'
import type { GarmentId } from '../../draft/draft.ts'
import type { OwnWork } from '../../draft/own-work.ts'
import type { Correction } from '../../fitting/correction.ts'
import type { ClothWishes } from '../../layout/cloth-wishes.ts'
import type { KeptLayout } from '../../layout/kept.ts'
import type { CutWishes } from '../../output/cutting.ts'
import type { Sewn } from '../../output/sewn.ts'
import { ClothWishesSchema, SewnSchema } from './cloth.ts'
import { CorrectionsSchema } from './correction.ts'
import { CutWishesSchema } from './cutting.ts'
import { LaidSchema } from './laid.ts'
import { DateSchema, FiniteSchema, IdSchema, NameSchema } from './length.ts'
import { ONCE_KEPT_AS } from '../migrations/standard-names.ts'
import { OwnWorkSchema } from './own-work.ts'
import { GarmentIdSchema } from './round.ts'

/** She has named it nothing: it goes by what it is, see garment-name.ts. */
export const NO_NAME = ''

export interface HungGarment {
  readonly v: 1
  readonly id: string
  readonly garment: GarmentId
  /** Hers; NO_NAME until she gives it one. */
  readonly name: string
  readonly hungOn: string
  /** Smaller hangs further left. */
  readonly order: number
  /** Taken off the rail; it is kept with all its rounds and can be hung again. */
  readonly takenOffOn?: string
  /** Finishes, allowances and paper; absent while she has chosen none. */
  readonly cutting?: CutWishes
  /** Widths, folding, print and shrinkage; absent while she has said nothing of her cloth. */
  readonly cloth?: ClothWishes
  /** The last best layout on each width she wished for. */
  readonly laid?: readonly KeptLayout[]
  /** Steps of the sewing plan that are done. */
  readonly sewn?: Sewn
  /** Lengths of a piece she drew by hand, and of a garment she likes. */
  readonly own?: OwnWork
  /** Corrections of another garment that come from the body: the first round begins with them. */
  readonly carried?: readonly Correction[]
}

const HungSchema = v.strictObject({
  v: v.literal(1),
  id: IdSchema,
  garment: GarmentIdSchema,
  name: NameSchema,
  hungOn: DateSchema,
  order: FiniteSchema,
  takenOffOn: v.exactOptional(DateSchema),
  cutting: v.exactOptional(CutWishesSchema),
  cloth: v.exactOptional(ClothWishesSchema),
  laid: v.exactOptional(LaidSchema),
  sewn: v.exactOptional(SewnSchema),
  own: v.exactOptional(OwnWorkSchema),
  carried: v.exactOptional(CorrectionsSchema),
})
export const HungGarmentSchema = v.pipe(
  HungSchema,
  v.transform((hung): HungGarment =>
    ONCE_KEPT_AS[hung.garment].includes(hung.name) ? { ...hung, name: NO_NAME } : hung,
  ),
)
