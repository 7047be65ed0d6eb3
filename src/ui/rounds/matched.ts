/** Two kept photos brought over each other, and the sentence that says how well. */
import { bodyFrame } from '../../capture/frame.ts'
import { matchByMarks, matchPhotos, type PhotoMatch } from '../../capture/photo-match.ts'
import type { ViewReading } from '../../capture/reading.ts'
import type { Box } from '../../geometry/box.ts'
import type { PhotoHere } from '../../storage/load.ts'
import { formatLength, type UnitChoice } from '../../units/format.ts'
import type { Mm } from '../../units/length.ts'
import type { PixelSize } from './photo-address.svelte.ts'
import { MATCHED_WORDS } from './photos.words.ts'

export type Matched =
  | { readonly standing: 'unread' }
  | { readonly standing: 'matched'; readonly match: PhotoMatch; readonly by: 'body' | 'marks' }
  | { readonly standing: 'refused'; readonly reason: string }

/** Marks she set by hand in both photos hold before what was read. */
export function matchedPhotos(earlier: PhotoHere, later: PhotoHere): Matched {
  const [a, b] = [earlier.muslin?.marks, later.muslin?.marks]
  if (a && b) return outcome(matchByMarks(a, b), 'marks')
  if (!earlier.reading || !later.reading) return { standing: 'unread' }
  return outcome(matchPhotos(earlier.reading, later.reading), 'body')
}
const outcome = (of: ReturnType<typeof matchPhotos>, by: 'body' | 'marks'): Matched =>
  of.ok ? { standing: 'matched', match: of.match, by } : { standing: 'refused', reason: of.reason }

/** Cards that tell scales this much apart are named: more than a card is read wrong by (bench:card). */
const CARDS_APART = 0.03

/** "Lined up by the cards, shoulders and hips; they lie 5 mm apart at the shoulders, 9 mm at the hips." */
export function matchSaid(
  { match, by }: Extract<Matched, { standing: 'matched' }>,
  rounds: readonly [number, number],
  units: UnitChoice,
): readonly string[] {
  if (by === 'marks') return [MATCHED_WORDS.byMarks]
  const { apart, card, cardsDisagree } = match
  if (!apart) return [MATCHED_WORDS.noCard]
  const withCard = card === 'both' ? undefined : rounds[card === 'later' ? 1 : 0]
  const said = [
    MATCHED_WORDS.linedUp(withCard, small(apart.shoulders, units), small(apart.hips, units)),
  ]
  if (cardsDisagree !== undefined && Math.abs(cardsDisagree - 1) > CARDS_APART)
    said.push(MATCHED_WORDS.cardsDisagree(Math.round(100 * Math.abs(cardsDisagree - 1))))
  return said
}

/** Whole millimetres, which is as fine as it is known; in inches as she reads them. */
const small = (value: Mm, units: UnitChoice): string =>
  units.unit === 'cm' ? `${Math.round(value)} mm` : formatLength(value, units)

/** What is shown of a photo, in torsos above the shoulder joints, below the hip joints, to each side. */
const [ABOVE, BELOW, ASIDE] = [0.7, 0.85, 0.95] as const

/** Chin to mid-thigh, with both arms; all of a photo nobody was found in. Picture px. */
export function muslinPart({ width, height }: PixelSize, reading?: ViewReading): Box {
  const frame = reading?.person.ok ? bodyFrame(reading.person.joints) : undefined
  if (!frame) return { left: 0, top: 0, right: width, bottom: height }
  const { shoulder, hip, torso } = frame
  const middle = (shoulder.x + hip.x) / 2
  return {
    left: Math.max(0, middle - ASIDE * torso),
    right: Math.min(width, middle + ASIDE * torso),
    top: Math.max(0, shoulder.y - ABOVE * torso),
    bottom: Math.min(height, hip.y + BELOW * torso),
  }
}
