/** The six places on the tape, in the order work goes, and where each one lies. */
export const PLACE_IDS = ['rail', 'measure', 'draft', 'fit', 'compare', 'cut'] as const
export type PlaceId = (typeof PLACE_IDS)[number]

/**
 * The hash of a place. Rail and Measure belong to her; the other four belong to one garment, and
 * without one their page says what will lie there.
 */
export function placeHref(place: PlaceId, garment: string | undefined): string {
  if (place === 'rail') return '#/'
  if (place === 'measure') return '#/measure'
  return garment === undefined ? `#/${place}` : `#/g/${encodeURIComponent(garment)}/${place}`
}

export interface Location {
  readonly place: PlaceId
  readonly garment: string | undefined
}

/** Reads a path such as `/g/blouse/fit`; the leaves of Cut and what is thrown belong to Cut. Else undefined. */
export function placeAt(path: string): Location | undefined {
  if (path === '/' || path === '') return { place: 'rail', garment: undefined }
  const own = path.replace(/^(\/g\/[^/]+\/cut)\/(?:throw|cloth|plan)(?=\/?$)/, '$1')
  const [, garment, word] = /^(?:\/g\/([^/]+))?\/([a-z]+)\/?$/.exec(own) ?? []
  const place = PLACE_IDS.find((id) => id === word)
  if (place === undefined || place === 'rail') return undefined
  if (place === 'measure' && garment !== undefined) return undefined
  return { place, garment: garment === undefined ? undefined : decoded(garment) }
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text)
  } catch {
    return text // a lone % typed by hand: take it as it stands
  }
}

/** The place a key leads to from `from`, or undefined when the key means nothing here. */
export function placeForArrow(key: string, from: PlaceId): PlaceId | undefined {
  const at = PLACE_IDS.indexOf(from)
  if (key === 'ArrowDown' || key === 'ArrowRight') return PLACE_IDS[at + 1] ?? PLACE_IDS[0]
  if (key === 'ArrowUp' || key === 'ArrowLeft') return PLACE_IDS.at(at - 1)
  if (key === 'Home') return PLACE_IDS[0]
  if (key === 'End') return PLACE_IDS.at(-1)
  return undefined
}

/** Keys 1 to 6 are the places from the top of the tape. */
export function placeForDigit(key: string): PlaceId | undefined {
  return /^[1-6]$/.test(key) ? PLACE_IDS[Number(key) - 1] : undefined
}
