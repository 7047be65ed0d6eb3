/**
 * The draft in words for a dressmaker without a printer: her numbers, the choices, numbered
 * steps for ruler, square and compass, what the proof found, and the cautions. `stepsText` gives
 * plain text; `stepsPages` lays the same lines out on sheets. The wording of a step is
 * `sentence()` and nothing else.
 */
import { formatLength, type UnitChoice } from '../units/format.ts'
import { cuttingSaid } from '../draft/piece.words.ts'
import { CHOICES } from '../draft/choices.ts'
import type { Draft } from '../draft/draft.ts'
import { findingSentence, type Severity } from '../draft/finding.ts'
import { GARMENTS } from '../draft/garments.ts'
import { OPTIONS } from '../draft/options.ts'
import { sentence } from '../draft/sentence.words.ts'
import { stepTitle } from '../draft/step-title.ts'
import { MEASUREMENT_IDS, measure } from '../measurements/catalogue.ts'
import { CAUTIONS } from './cautions.words.ts'
import { finishLines, pencilLines, type EdgeTold } from './edge-words.ts'
import { COVER_WORDS, STEPS_WORDS } from './sheet.words.ts'
import { withoutSoftHyphens } from './wrap.ts'

/** The allowances are told as pencil work when given, the finishes as what is sewn. */
export interface StepsWords extends EdgeTold {
  readonly round?: number
  /** Her own name for the garment; else the garment's. */
  readonly garmentName?: string
  /** Set for demonstrations: the numbers were made up and nobody was measured. */
  readonly invented?: boolean
  /** Corrections as work on the paper she has already. */
  readonly changes?: readonly PaperChange[]
}

/** What one decision does to paper that is drawn already, sentence by sentence. */
export interface PaperChange {
  readonly head: string
  readonly lines: readonly string[]
}

/** One line of the instructions and how it stands on the page. */
export interface InstructionLine {
  readonly kind: 'title' | 'head' | 'text' | 'number' | 'step'
  /** What stands in the margin: the number of a step. */
  readonly mark?: string
  readonly text: string
  /** The name of a small drawing that goes under it: of a piece, of a step of sewing, of a layout. */
  readonly figure?: string
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
    ...(words.round === undefined ? [] : [line('text', STEPS_WORDS.round(words.round))]),
    ...(words.invented ? [line('text', STEPS_WORDS.invented)] : []),
    ...(preview ? [line('text', STEPS_WORDS.preview)] : []),
    line('text', STEPS_WORDS.unit[units.unit]),
    line('head', STEPS_WORDS.numbers),
    ...numberLines(draft, units),
    line('head', STEPS_WORDS.choices),
    ...choiceLines(draft, units),
    ...draft.pieces.flatMap((piece) => [
      { ...line('head', `${piece.words}. ${cuttingSaid(piece.cut)}`), figure: piece.id },
      ...draft.steps
        .filter((step) => step.piece === piece.id)
        .map((step, i) => line('step', titled(stepTitle(step), sentence(step, units)), `${i + 1}`)),
    ]),
    ...(words.changes ?? []).flatMap(({ head, lines }) => [
      line('head', head),
      ...lines.map((text) => line('text', text)),
    ]),
    ...edgeSection(draft, words, units),
    ...findingLines(draft, units),
    line('head', COVER_WORDS.care),
    ...CAUTIONS.map((caution) => line('text', caution)),
  ]
}

/** A step that places no letter has no title: its sentence says it all. */
const titled = (title: string, text: string): string => (title === '·' ? text : `${title}: ${text}`)

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
  return withoutSoftHyphens(`${lines.join('\n')}\n`)
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

/** What lies beyond the seam line, and how each edge is finished once it is sewn. */
function edgeSection(draft: Draft, words: StepsWords, units: UnitChoice): InstructionLine[] {
  if (!words.allowances) return []
  const finishing = finishLines(draft.pieces, words, units)
  return [
    line('head', STEPS_WORDS.beyond),
    ...pencilLines(draft.pieces, words, units).map((text) => line('text', text)),
    ...(finishing.length > 0 ? [line('head', STEPS_WORDS.finished)] : []),
    ...finishing.map((text) => line('text', text)),
  ]
}

function numberLines(draft: Draft, units: UnitChoice): InstructionLine[] {
  const { body } = draft
  return MEASUREMENT_IDS.flatMap((id) => {
    const value = body.values[id]
    if (value === undefined) return []
    const guess = body.standing === 'preview' && body.basis[id] === 'camera'
    const words = `${measure(id).label}: ${formatLength(value, units)}`
    return [line('number', guess ? STEPS_WORDS.fromCamera(words) : words)]
  })
}

/**
 * Findings in order of weight, each with the piece it is about. Sheets with them are printed for a
 * muslin, so none of them may forbid cutting one.
 */
export function findingLines(draft: Draft, units: UnitChoice): InstructionLine[] {
  const order: readonly Severity[] = ['stop', 'muslin', 'note']
  const lines = order.flatMap((severity) =>
    draft.findings
      .filter((f) => f.severity === severity)
      .map((f) => line('text', `${STEPS_WORDS.severity[severity]}. ${findingSentence(f, units)}`)),
  )
  return lines.length > 0 ? [line('head', STEPS_WORDS.found), ...lines] : []
}
