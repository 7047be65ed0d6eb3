/** Finishes the kind of cloth asks for, where she has another and the edge takes them. */
import type { Draft } from '../draft/draft.ts'
import { CLOTH_KINDS, type ClothKind } from './cloth-kind.ts'
import { cutRows, finishesFor, type CutRow, type CutWishes } from './cutting.ts'
import { finishRefusal } from './finish-fit.ts'
import type { FinishId } from './finish.ts'

export interface FinishOffer {
  readonly row: CutRow
  readonly offer: FinishId
}

export function clothOffers(draft: Draft, wishes: CutWishes, kind: ClothKind): FinishOffer[] {
  const asked = CLOTH_KINDS[kind].finishes
  return cutRows(draft, { ...wishes, stuff: 'cloth' }).flatMap((row): FinishOffer[] => {
    const offer = asked[row.name]
    if (!offer || offer === row.finish || row.finish === 'zip') return []
    if (!finishesFor(row.edge, 'cloth').includes(offer)) return []
    // Only whether it goes is asked; the units of its sentence do not matter.
    if (finishRefusal(row.edge, offer, { unit: 'cm', inchStep: 8 })) return []
    return [{ row, offer }]
  })
}
