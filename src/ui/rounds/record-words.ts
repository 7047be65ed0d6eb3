/** Words for what is kept of a round. */
import { isAside } from '../../rounds/line.ts'
import type { Round } from '../../rounds/round.ts'
import type { PaperWork } from '../../rounds/worn.ts'

export const PAPER_WORDS: Readonly<Record<PaperWork['how'], string>> = {
  sheets: 'sheets to paste',
  roll: 'one large sheet',
  byHand: 'drawn by hand',
  projector: 'thrown by a projector',
  drawing: 'a drawing for a cutter',
  cuttingPlan: 'the cutting plan',
  sewingPlan: 'the sewing plan',
}

/** "on paper 2026-11-25", "being drawn", "set aside" */
export const standingSaid = (rounds: readonly Round[], round: Round): string =>
  round.printed
    ? `on paper ${round.printed.on}`
    : isAside(rounds, round)
      ? 'set aside'
      : 'being drawn'

/** "2026-11-25: sheets to paste, A4, 14 sheets" */
export const paperSaid = ({ how, on, about }: PaperWork): string =>
  `${on}: ${PAPER_WORDS[how]}${about ? `, ${about}` : ''}`
