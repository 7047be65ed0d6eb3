/** How a round stands, and what of it left the program for the table. */
import { isAside } from '../../rounds/line.ts'
import type { Round } from '../../rounds/round.ts'
import type { PaperWork } from '../../rounds/worn.ts'
import { DATE_WORDS } from '../../units/dates.words.ts'
import { aboutSaid } from '../cut/paper-about.ts'
import { COMPARE_WORDS } from './compare.words.ts'
import { PAPER_SAID } from './record.words.ts'

/** "on paper 25 Nov 2026", "being drawn", "set aside" */
export const standingSaid = (rounds: readonly Round[], round: Round): string =>
  round.printed
    ? COMPARE_WORDS.onPaper(DATE_WORDS.short(round.printed.on))
    : isAside(rounds, round)
      ? COMPARE_WORDS.aside
      : COMPARE_WORDS.beingDrawn

export const paperSaid = ({ how, on, about }: PaperWork): string =>
  PAPER_SAID(DATE_WORDS.short(on), how, about === undefined ? about : aboutSaid(about))
