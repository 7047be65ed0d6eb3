/** Which measurements stand first: what a garment needs, then what it uses, then all others. */
import { GARMENTS } from '../../../draft/garments.ts'
import type { GarmentId } from '../../../draft/draft.ts'
import { standing, type Book } from '../../../measurements/book.ts'
import { MEASUREMENT_IDS, type MeasurementId } from '../../../measurements/catalogue.ts'

export interface BookGroup {
  readonly title: string
  readonly about: string
  readonly ids: readonly MeasurementId[]
}

export function bookGroups(garment: GarmentId): readonly [BookGroup, BookGroup, BookGroup] {
  const { needs, uses, name } = GARMENTS[garment]
  const rest = MEASUREMENT_IDS.filter((id) => !needs.includes(id) && !uses.includes(id))
  return [
    { title: 'Needed', about: `Without these the ${name.toLowerCase()} is not drawn.`, ids: needs },
    {
      title: 'Makes it truer',
      about: 'Without these a usual amount stands in, and the proof says so.',
      ids: uses,
    },
    { title: 'All others', about: 'For later garments, and as a check on the rest.', ids: rest },
  ]
}

export const agreedCount = (book: Book, ids: readonly MeasurementId[]): number =>
  ids.filter((id) => standing(book[id], id) === 'agreed').length
