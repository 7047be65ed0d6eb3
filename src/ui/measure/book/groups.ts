/** Which measurements stand first: what a garment needs, then what it uses, then all others. */
import { GARMENTS } from '../../../draft/garments.ts'
import type { GarmentId } from '../../../draft/draft.ts'
import { standing, type Book } from '../../../measurements/book.ts'
import { MEASUREMENT_IDS, type MeasurementId } from '../../../measurements/catalogue.ts'
import { GROUP_WORDS as W } from './tape-book.words.ts'

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
  return [
    { title: W.needed, about: W.neededAbout(hung.map(({ name }) => name)), ids: needs },
    { title: W.truer, about: W.truerAbout, ids: uses },
    { title: W.others, about: W.othersAbout, ids: rest },
  ]
}

export const agreedCount = (book: Book, ids: readonly MeasurementId[]): number =>
  ids.filter((id) => standing(book[id], id) === 'agreed').length
