/** Words for what is kept of a round. */
import type { PaperWork } from '../../rounds/worn.ts'

export const PAPER_WORDS: Readonly<Record<PaperWork['how'], string>> = {
  sheets: 'sheets to paste',
  roll: 'one large sheet',
  byHand: 'drawn by hand',
  projector: 'thrown by a projector',
  drawing: 'a drawing for a cutter',
}

/** "2026-11-25: sheets to paste, A4, 14 sheets" */
export const paperSaid = ({ how, on, about }: PaperWork): string =>
  `${on}: ${PAPER_WORDS[how]}${about ? `, ${about}` : ''}`
