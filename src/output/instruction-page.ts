/**
 * The draft in words for a dressmaker without a printer: her numbers, the choices, numbered
 * steps for ruler, square and compass, what the proof found, and the cautions. `stepsText` gives
 * plain text; `stepsPages` lays the same lines out on sheets. The wording of a step is
 * `sentence()` and nothing else.
 */
import { formatLength, unitMark, type UnitChoice } from '../units/format.ts'
import { CHOICES, CHOICE_IDS } from '../draft/choices.ts'
import type { Draft } from '../draft/draft.ts'
import { findingSentence, type Severity } from '../draft/finding.ts'
import { GARMENTS } from '../draft/garments.ts'
import type { PieceId } from '../draft/piece.ts'
import { sentence, stepTitle } from '../draft/sentence.ts'
import { MEASUREMENT_IDS, measure } from '../measurements/catalogue.ts'
import { CAUTIONS } from './cautions.ts'
import { NOT_CONFIRMED } from './standing.ts'

export interface StepsWords {
  readonly round?: number
  /** Her own name for the garment; else the garment's. */
  readonly garmentName?: string
  /** Set for demonstrations: the numbers were made up and nobody was measured. */
  readonly invented?: boolean
}

/** One line of the instructions and how it stands on the page. */
export interface InstructionLine {
  readonly kind: 'title' | 'head' | 'text' | 'number' | 'step'
  /** What stands in the margin: the number of a step. */
  readonly mark?: string
  readonly text: string
  /** The head of this piece's steps: its small drawing goes under it. */
  readonly piece?: PieceId
}

const line = (kind: InstructionLine['kind'], text: string, mark?: string): InstructionLine =>
  mark === undefined ? { kind, text } : { kind, text, mark }

export function instructionLines(
  draft: Draft,
  units: UnitChoice,
  words: StepsWords = {},
): InstructionLine[] {
  const preview = draft.body.standing === 'preview'
  return [
    line('title', words.garmentName ?? GARMENTS[draft.garment].name),
    ...(words.round === undefined ? [] : [line('text', `Round ${words.round}.`)]),
    ...(words.invented ? [line('text', 'Invented numbers: nobody was measured.')] : []),
    ...(preview ? [line('text', `These numbers are ${NOT_CONFIRMED}. Do not cut from them.`)] : []),
    line('text', `All lengths in ${unitMark(units) === 'cm' ? 'centimetres' : 'inches'}.`),
    line('head', 'Numbers'),
    ...numberLines(draft, units),
    line('head', 'Choices'),
    ...CHOICE_IDS.map((id) =>
      line('number', `${CHOICES[id].label}: ${formatLength(draft.choices[id], units)}`),
    ),
    ...draft.pieces.flatMap((piece) => [
      { ...line('head', `${piece.words}. ${piece.cutting}`), piece: piece.id },
      ...draft.steps
        .filter((step) => step.piece === piece.id)
        .map((step, i) => line('step', `${stepTitle(step)}: ${sentence(step, units)}`, `${i + 1}`)),
    ]),
    ...findingLines(draft, units),
    line('head', 'Take care'),
    ...CAUTIONS.map((caution) => line('text', caution)),
  ]
}

/** The instructions as plain text, one line a step; ends with a line end. */
export function stepsText(draft: Draft, units: UnitChoice, words: StepsWords = {}): string {
  const lines = instructionLines(draft, units, words).map((l) => {
    switch (l.kind) {
      case 'title':
        return `${l.text}\n`
      case 'head':
        return `\n${l.text}\n`
      case 'number':
        return `  ${l.text}`
      case 'step':
        return `${l.mark ?? ''}. ${l.text}`
      case 'text':
        return l.text
    }
  })
  return `${lines.join('\n')}\n`
}

function numberLines(draft: Draft, units: UnitChoice): InstructionLine[] {
  const { body } = draft
  return MEASUREMENT_IDS.flatMap((id) => {
    const value = body.values[id]
    if (value === undefined) return []
    const guess = body.standing === 'preview' && body.basis[id] === 'camera'
    const words = `${measure(id).label}: ${formatLength(value, units)}`
    return [line('number', guess ? `${words}, from the camera, tape it` : words)]
  })
}

const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  stop: 'Not for cutting',
  muslin: 'For a muslin only',
  note: 'Good to know',
}

/** Findings in order of weight, each with the piece it is about. */
export function findingLines(draft: Draft, units: UnitChoice): InstructionLine[] {
  const order: readonly Severity[] = ['stop', 'muslin', 'note']
  const lines = order.flatMap((severity) =>
    draft.findings
      .filter((f) => f.severity === severity)
      .map((f) => line('text', `${SEVERITY_WORDS[severity]}. ${findingSentence(f, units)}`)),
  )
  return lines.length > 0 ? [line('head', 'What the proof found'), ...lines] : []
}
