/**
 * The draft in words for a dressmaker without a printer: her numbers, the choices, numbered
 * steps for ruler, square and compass, what the proof found, and the cautions. `stepsText` gives
 * plain text; `stepsPages` lays the same lines out on sheets. The wording of a step is
 * `sentence()` and nothing else.
 */
import { formatLength, unitMark, type UnitChoice } from '../units/format.ts'
import { CHOICES } from '../draft/choices.ts'
import type { Draft } from '../draft/draft.ts'
import { findingSentence, type Severity } from '../draft/finding.ts'
import { GARMENTS } from '../draft/garments.ts'
import { OPTIONS } from '../draft/options.ts'
import { EDGE_WORDS, type EdgeName, type PieceId } from '../draft/piece.ts'
import { sentence, stepTitle } from '../draft/sentence.ts'
import { MEASUREMENT_IDS, measure } from '../measurements/catalogue.ts'
import type { Allowances } from './allowance.ts'
import { CAUTIONS } from './cautions.ts'
import { NOT_CONFIRMED } from './standing.ts'

export interface StepsWords {
  readonly round?: number
  /** Her own name for the garment; else the garment's. */
  readonly garmentName?: string
  /** Set for demonstrations: the numbers were made up and nobody was measured. */
  readonly invented?: boolean
  /** Told as pencil work beyond the seam line when given. */
  readonly allowances?: Allowances
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
    ...choiceLines(draft, units),
    ...draft.pieces.flatMap((piece) => [
      { ...line('head', `${piece.words}. ${piece.cutting}`), piece: piece.id },
      ...draft.steps
        .filter((step) => step.piece === piece.id)
        .map((step, i) => line('step', `${stepTitle(step)}: ${sentence(step, units)}`, `${i + 1}`)),
    ]),
    ...(words.allowances ? allowanceLines(draft, words.allowances, units) : []),
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

/** The choices this garment reads: amounts in her unit, options in words. */
function choiceLines(draft: Draft, units: UnitChoice): InstructionLine[] {
  const { choices, options } = GARMENTS[draft.garment]
  return [
    ...choices.map((id) =>
      line('number', `${CHOICES[id].label}: ${formatLength(draft.choices[id], units)}`),
    ),
    ...options.map((id) => {
      const words: Readonly<Record<string, string>> = OPTIONS[id].words
      return line('number', `${OPTIONS[id].label}: ${words[draft.choices[id]] ?? ''}`)
    }),
  ]
}

/** The cutting line by ruler and pencil: which edge has how much beyond its seam line. */
function allowanceLines(
  draft: Draft,
  allowances: Allowances,
  units: UnitChoice,
): InstructionLine[] {
  const open = draft.pieces
    .filter((piece) => !piece.cutAsDrawn)
    .flatMap((piece) => piece.edges.filter((e) => e.role !== 'fold').map((e) => e.name))
  const edges = [...new Set<EdgeName>(open)]
  const some = edges.filter((name) => allowances[name] > 0)
  const none = edges.filter((name) => allowances[name] === 0)
  return [
    line('head', 'Beyond the seam line'),
    ...some.map((name) =>
      line(
        'text',
        `${capital(EDGE_WORDS[name])}: mark ${formatLength(allowances[name], units)} outside it, square to the line, at every finger’s width, and draw through.`,
      ),
    ),
    ...(none.length > 0
      ? [line('text', `Cut on the line: ${none.map((name) => EDGE_WORDS[name]).join(', ')}.`)]
      : []),
    line(
      'text',
      'At a corner carry both lines on until they meet. Fold the paper up on the hem line and cut the side through both layers, so that the hem lies flat when it is turned. A dart on an edge is folded before its end is cut.',
    ),
  ]
}
const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

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
