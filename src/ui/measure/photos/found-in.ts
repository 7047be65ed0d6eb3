/** What was found in one photo: card and person first, then every point that was not seen. */
import { faultSaid } from '../../../capture/fault.ts'
import { POINT_NAMES, type ViewReading } from '../../../capture/reading.ts'
import { POINT_WORDS } from './names.words.ts'
import { VIEW_TABLE_WORDS as W } from './photos.words.ts'

export interface Sentence {
  readonly stop: boolean
  readonly text: string
}

export function foundIn({ card, person, missing }: ViewReading): readonly Sentence[] {
  const cardWord = card.ok && card.card.kind === 'sheet' ? W.sheetFound : W.cardFound
  const first: readonly Sentence[] = [
    card.ok ? { stop: false, text: cardWord } : { stop: true, text: faultSaid(card.reason) },
    person.ok
      ? { stop: false, text: W.personFound }
      : { stop: true, text: faultSaid(person.reason) },
  ]
  if (!person.ok) return first
  const unseen = POINT_NAMES.flatMap((name) => {
    const reason = missing[name]
    if (reason === undefined) return []
    return [{ stop: false, text: W.missing(POINT_WORDS[name], faultSaid(reason)) }]
  })
  return [...first, ...unseen]
}
