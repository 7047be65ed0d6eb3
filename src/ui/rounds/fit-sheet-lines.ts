/** A round, or the course of all, as lines of a printed sheet. */
import { CHOICE_IDS, CHOICES } from '../../draft/choices.ts'
import { standardFor } from '../../draft/garments.ts'
import { OPTIONS } from '../../draft/options.ts'
import { pairedId } from '../../draft/piece.ts'
import { PIECE_WORDS } from '../../draft/piece.words.ts'
import { HEADS } from '../../fitting/complaints/heads.ts'
import { whole } from '../../fitting/pinned.ts'
import { measure, MEASUREMENT_IDS } from '../../measurements/catalogue.ts'
import type { InstructionLine } from '../../output/instruction-page.ts'
import { courseOf } from '../../rounds/course.ts'
import { isAside, lineOf } from '../../rounds/line.ts'
import { redraft } from '../../rounds/redraft.ts'
import type { Round } from '../../rounds/round.ts'
import { clothOf, freedomOf, MOVEMENTS, noteOf, verdictOf } from '../../rounds/worn.ts'
import { FREEDOM_WORDS, MOVEMENT_WORDS, VERDICT_WORDS } from '../../rounds/worn.words.ts'
import { ZONES } from '../../rounds/zones.ts'
import { ZONE_WORDS } from '../../rounds/zones.words.ts'
import { formatLength, type UnitChoice } from '../../units/format.ts'
import { mm } from '../../units/length.ts'
import { capital } from '../../units/capital.ts'
import { asText, correctionSaid } from '../fitting/change-said.ts'
import { paperSaid } from './record-words.ts'
import { becauseSaid, decisionsOf } from './round-words.ts'
import { answerSaid } from './said-between.ts'
import { optionsOf, optionWord } from './words-between.ts'
import { DATE_WORDS } from '../../units/dates.words.ts'
import { FIT_SHEET_WORDS } from './record.words.ts'

const line = (kind: InstructionLine['kind'], text: string): InstructionLine => ({ kind, text })
const part = (head: string, lines: readonly InstructionLine[]): readonly InstructionLine[] =>
  lines.length === 0 ? [] : [line('head', head), ...lines]
const texts = (list: readonly string[]): readonly InstructionLine[] =>
  list.map((text) => line('text', text))

/**
 * Everything that is kept of one round; heads of pieces carry their drawing.
 * @param all the rounds of the garment: a later one sets aside what was never on paper
 */
export function roundLines(
  round: Round,
  all: readonly Round[],
  units: UnitChoice,
): readonly InstructionLine[] {
  const verdict = verdictOf(round)
  const cloth = clothOf(round)
  const { draft } = redraft(round)
  const length = (value: number): string => formatLength(mm(value), units)
  return [
    line('title', FIT_SHEET_WORDS.round(round.number)),
    line(
      'text',
      FIT_SHEET_WORDS.days(
        DATE_WORDS.day(round.startedOn),
        round.printed && DATE_WORDS.day(round.printed.on),
        isAside(all, round),
        round.from !== undefined,
      ),
    ),
    ...(cloth ? [line('text', FIT_SHEET_WORDS.sewnOf(cloth))] : []),
    ...(verdict ? [line('text', FIT_SHEET_WORDS.verdict(VERDICT_WORDS[verdict]))] : []),
    ...part(
      FIT_SHEET_WORDS.changes,
      decisionsOf(round).flatMap(({ correction, takenBack }) =>
        texts([
          `${asText(correctionSaid(correction), units)}${takenBack ? ` ${FIT_SHEET_WORDS.takenBack}` : ''}`,
          asText(becauseSaid(correction), units),
        ]),
      ),
    ),
    ...part(
      FIT_SHEET_WORDS.seen,
      round.seen.map(({ complaint, answer, pinned, on }) => {
        const read = pinned && length(whole(pinned))
        const settled = answerSaid(complaint, answer)
        const day = DATE_WORDS.short(on)
        return line('text', FIT_SHEET_WORDS.seenLine(day, HEADS[complaint].name, read, settled))
      }),
    ),
    ...part(
      FIT_SHEET_WORDS.movements,
      MOVEMENTS.flatMap((movement) => {
        const freedom = freedomOf(round, movement)
        return freedom ? texts([`${MOVEMENT_WORDS[movement]}: ${FREEDOM_WORDS[freedom]}.`]) : []
      }),
    ),
    ...part(FIT_SHEET_WORDS.notes, [
      ...texts(round.notes.split('\n').filter((text) => text.trim() !== '')),
      ...ZONES.flatMap((zone) => {
        const note = noteOf(round, zone)
        return note ? texts([`${capital(ZONE_WORDS[zone])}: ${note}`]) : []
      }),
    ]),
    ...part(FIT_SHEET_WORDS.putOnPaper, texts(round.paperWork.map(paperSaid))),
    ...part(
      FIT_SHEET_WORDS.numbers,
      MEASUREMENT_IDS.flatMap((id) => {
        const value = round.body.values[id]
        return value === undefined ? [] : [line('number', `${measure(id).label}  ${length(value)}`)]
      }),
    ),
    ...part(FIT_SHEET_WORDS.choices, choiceLines(round, units)),
    ...draft.pieces.flatMap((piece): InstructionLine[] =>
      pairedId(piece.id) in FIGURED
        ? [{ ...line('head', capital(PIECE_WORDS[piece.id])), figure: piece.id }]
        : [],
    ),
  ]
}
/** Pieces whose drawing stands on the sheet; strips and facings follow from them. */
export const FIGURED = { front: true, back: true } as const

function choiceLines(round: Round, units: UnitChoice): readonly InstructionLine[] {
  const standard = standardFor(round.garment)
  return [
    ...optionsOf(round)
      .filter((id) => round.choices[id] !== standard[id])
      .map((id) =>
        line('number', `${capital(OPTIONS[id].label)}  ${optionWord(round.choices, id)}`),
      ),
    ...CHOICE_IDS.filter((id) => round.choices[id] !== standard[id]).map((id) =>
      line('number', `${capital(CHOICES[id].label)}  ${formatLength(round.choices[id], units)}`),
    ),
  ]
}

/** The first page of a history: each round in one line, what it corrected, what stayed open. */
export function courseLinesSaid(
  garmentName: string,
  rounds: readonly Round[],
  last: Round,
  units: UnitChoice,
): readonly InstructionLine[] {
  const steps = courseOf(lineOf(rounds, last))
  return [
    line('title', garmentName),
    line('text', FIT_SHEET_WORDS.upTo(rounds.length, last.number)),
    ...part(
      FIT_SHEET_WORDS.course,
      steps.map(({ round, corrected, open }) => {
        const zones = ZONES.flatMap((zone) => {
          const by = corrected[zone]
          return by === undefined || by === 0
            ? []
            : [`${ZONE_WORDS[zone]} ${by > 0 ? '+' : '−'}${formatLength(mm(Math.abs(by)), units)}`]
        })
        const left = open.map((id) => HEADS[id].name)
        return line('text', FIT_SHEET_WORDS.courseLine(round, zones, left))
      }),
    ),
  ]
}
