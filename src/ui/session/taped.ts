/** Whether the tape book holds what a garment needs. */
import type { GarmentId } from '../../draft/draft.ts'
import { GARMENTS } from '../../draft/garments.ts'
import type { Book } from '../../measurements/book.ts'
import { confirm } from '../../measurements/confirmed.ts'

export function confirmedFor(book: Book, garment: GarmentId) {
  const { needs, uses } = GARMENTS[garment]
  return confirm(book, needs, uses)
}
