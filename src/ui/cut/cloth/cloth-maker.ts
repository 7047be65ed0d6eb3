/** The layout worker as the cloth page sees it. Closing it stops whatever is being laid out. */
import { proxy, wrap } from 'comlink'
import type { ClothLayout } from '../../../layout/lay-out.ts'
import type { WidthFound } from '../../../layout/search-widths.ts'
import type { Answer } from '../../../layout/what-i-have.ts'
import type { ClothRoad, HaveOrder, SearchOrder } from './cloth-worker.ts'

export interface ClothMaker {
  /** Rejects when the worker breaks; never settles once it is closed. */
  readonly search: (
    order: SearchOrder,
    onBetter: (layout: ClothLayout) => void,
    onSpent: (share: number) => void,
  ) => Promise<WidthFound>
  readonly have: (order: HaveOrder, onSpent: (share: number) => void) => Promise<Answer>
  readonly close: () => void
}

export function openClothMaker(): ClothMaker {
  const worker = new Worker(new URL('./cloth-worker.ts', import.meta.url), { type: 'module' })
  const road = wrap<ClothRoad>(worker)
  const broken = new Promise<never>((_, reject) => {
    worker.onerror = (event) => {
      event.preventDefault()
      reject(new Error(`cloth worker: ${event.message || 'did not start'}`))
    }
  })
  // Heard only where something is being asked.
  broken.catch(() => undefined)
  return {
    search: (order, onBetter, onSpent) =>
      Promise.race([road.search(order, proxy(onBetter), proxy(onSpent)), broken]),
    have: (order, onSpent) => Promise.race([road.have(order, proxy(onSpent)), broken]),
    close: () => worker.terminate(),
  }
}
