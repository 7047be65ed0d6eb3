/** What may change of a stored round: all of an open one; of a printed one only what was seen. */
import type { PhotoRef, Round } from '../rounds/round.ts'
import { sameData, startsWith } from './same.ts'

/** What the printed pages were made from. */
const SETTLED = [
  'garmentId',
  'garment',
  'number',
  'from',
  'startedOn',
  'body',
  'choices',
  'corrections',
  'printed',
] as const satisfies readonly (keyof Round)[]

/** The field of a printed round that `next` would change, or undefined when it may be kept. */
export function printedFieldChanged(stored: Round, next: Round): string | undefined {
  if (!stored.printed) return undefined
  const settled = SETTLED.find((field) => !sameData(stored[field], next[field]))
  if (settled) return settled
  return lost(next, stored)
}

/** Lists that only grow; a photo among them may be marked as removed. */
const GROWING = [
  'seen',
  'zoneNotes',
  'movements',
  'verdicts',
  'paperWork',
  'cloths',
  'firstThings',
  'lines',
] as const satisfies readonly (keyof Round)[]

/** The list that holds less in `later` than in `earlier`, or undefined. */
function lost(later: Round, earlier: Round): string | undefined {
  const grown = GROWING.find((list) => !startsWith(later[list], earlier[list]))
  if (grown) return grown
  const there = (photo: PhotoRef): boolean => later.photos.some((other) => samePhoto(photo, other))
  return earlier.photos.every(there) ? undefined : 'photos'
}

/** Is `later` the same round, only further on? Then `earlier` holds nothing that it lacks. */
export function continues(later: Round, earlier: Round): boolean {
  if (later.id !== earlier.id) return false
  const asMade = earlier.printed
    ? printedFieldChanged(earlier, later) === undefined
    : sameStart(later, earlier)
  return (
    asMade &&
    lost(later, earlier) === undefined &&
    (earlier.notes === '' || earlier.notes === later.notes)
  )
}

/** An open round goes on from where it was when corrections were only added. */
const sameStart = (later: Round, earlier: Round): boolean =>
  SETTLED.every(
    (field) =>
      field === 'printed' || field === 'corrections' || sameData(later[field], earlier[field]),
  ) && startsWith(later.corrections, earlier.corrections)

const samePhoto = (a: PhotoRef, b: PhotoRef): boolean => a.view === b.view && a.sha256 === b.sha256
