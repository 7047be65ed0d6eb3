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

/** For the garments on the rail together: one tape book serves them all. */
export function bookGroups(
  garments: readonly GarmentId[],
): readonly [BookGroup, BookGroup, BookGroup] {
  const hung = [...new Set(garments)].map((id) => GARMENTS[id])
  const needs = MEASUREMENT_IDS.filter((id) => hung.some((g) => g.needs.includes(id)))
  const uses = MEASUREMENT_IDS.filter(
    (id) => !needs.includes(id) && hung.some((g) => g.uses.includes(id)),
  )
  const rest = MEASUREMENT_IDS.filter((id) => !needs.includes(id) && !uses.includes(id))
  const names = hung.map(({ name }) => `the ${name.toLowerCase()}`)
  const drawn = names.length === 1 ? 'is not drawn' : 'are not drawn'
  return [
    { title: 'Needed', about: `Without these ${listed(names)} ${drawn}.`, ids: needs },
    {
      title: 'Makes it truer',
      about: 'Without these a usual amount stands in, and the proof says so.',
      ids: uses,
    },
    { title: 'All others', about: 'For later garments, and as a check on the rest.', ids: rest },
  ]
}

const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`

export const agreedCount = (book: Book, ids: readonly MeasurementId[]): number =>
  ids.filter((id) => standing(book[id], id) === 'agreed').length
