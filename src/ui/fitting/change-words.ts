/**
 * What a change does, in one sentence and in rows: every number is a printed one, and a change
 * is the difference of two printed numbers, so the sentence and the table agree.
 */
import { CHOICES } from '../../draft/choices.ts'
import { pieceOf, type Draft } from '../../draft/draft.ts'
import { DART_WORDS, EDGE_WORDS } from '../../draft/piece.words.ts'
import { record } from '../../draft/record.ts'
import { HEADS } from '../../fitting/complaints/heads.ts'
import { sideOf, type Correction } from '../../fitting/correction.ts'
import { wedgeAt } from '../../fitting/ops/closing.ts'
import type { Operation } from '../../fitting/ops/operation.ts'
import { operationSaid } from '../../fitting/ops/said.ts'
import type { Preview } from '../../fitting/preview.ts'
import type { ChangedLines } from '../../rounds/changed-edges.ts'
import { compare } from '../../rounds/compare.ts'
import { formatChange, formatLength, printedMm, type UnitChoice } from '../../units/format.ts'
import { mm, type Mm } from '../../units/length.ts'
import type { ChangeRow } from '../parts/changes.ts'

/** A sentence with its lengths still lengths, so that each is set in her unit. */
export type Said = readonly (string | Mm)[]

export const asText = (said: Said, units: UnitChoice): string =>
  said.map((part) => (typeof part === 'string' ? part : formatLength(part, units))).join('')

/** The one sentence over the table: both numbers of a wedge, or a choice from and to. */
export function changeSaid(preview: Preview, units: UnitChoice): Said {
  const { correction, before, after } = preview
  switch (correction.kind) {
    case 'close-wedge':
      return [
        'A wedge of ',
        correction.width,
        ` is closed at the ${correction.piece} ${EDGE_WORDS[correction.edge]}.`,
      ]
    case 'turn-choice': {
      const { label } = CHOICES[correction.choice]
      const [from, to] = [before.choices[correction.choice], after.choices[correction.choice]]
      return [`The ${label} goes from `, from, ' to ', to, ', on back and front alike.']
    }
    case 'operate': {
      const { operation } = correction
      if (operation.op === 'ROT' && operation.width > 0) return wedgeSaid(preview, operation, units)
      const { words, amount } = operationSaid(operation)
      return [`${capital(words)}, `, amount, '.']
    }
    case 'withdraw':
      return ['The change is taken back.']
  }
}

function wedgeSaid(
  { before, after }: Preview,
  op: Extract<Operation, { op: 'ROT' }>,
  units: UnitChoice,
): Said {
  const moved = (part: string): Mm => printedChange(before, after, `${op.piece}.${part}`, units)
  const [dart, edge, hem] = [moved(op.into), moved(op.edge), moved('hem')]
  const name = EDGE_WORDS[op.edge]
  const across = wedgeAt(pieceOf(before, op.piece), op)?.across ?? op.width
  return [
    'Fold out ',
    across,
    ` at the ${op.piece} ${name}, down to nothing at the ${op.piece === 'front' ? 'bust tip' : 'blade point'}. The ${DART_WORDS[op.into]} `,
    ...(dart === 0 ? ['stays as wide as printed'] : ['opens by ', dart]),
    `; the ${name} `,
    ...(edge === 0 ? ['prints the same'] : ['is ', edge, ' shorter once drawn smooth']),
    ...(hem === 0 ? ['.'] : ['; the hem gains ', hem, ' below the dart.']),
  ]
}

/** How much two printed lengths differ, without its sign. */
function printedChange(before: Draft, after: Draft, name: string, units: UnitChoice): Mm {
  const [a, b] = [record(before).lengths[name] ?? mm(0), record(after).lengths[name] ?? mm(0)]
  return mm(Math.abs(printedMm(b, units) - printedMm(a, units)))
}

/** "+0.9 cm" of one printed length; "same" where it prints the same. */
export const shortChange = ({ before, after }: Preview, name: string, units: UnitChoice): string =>
  formatChange(record(before).lengths[name] ?? mm(0), record(after).lengths[name] ?? mm(0), units)

/** What is drawn in violet, in words: for those who do not see the drawing. */
export function changedSaid({ edges, dart, edgeDarts }: ChangedLines): string {
  const names = [
    ...edges.map((e) => EDGE_WORDS[e]),
    ...(dart ? ['waist dart'] : []),
    ...edgeDarts.map((name) => DART_WORDS[name]),
  ]
  if (names.length === 0) return 'nothing lies elsewhere.'
  const [last, ...first] = names.toReversed()
  const list = first.length > 0 ? `${first.toReversed().join(', ')} and ${last}` : last
  return `${list} changed; the old lines stay as running stitch.`
}

/** What changed, and the seams that are sewn together and did not: they are what she checks. */
export function rowsOf(before: Draft, after: Draft): readonly ChangeRow[] {
  const { changes, same } = compare(before, after)
  const touched = new Set(changes.map((c) => c.name.split('.')[0]))
  const seams = same.filter(({ name }) => {
    const [piece, part] = name.split('.')
    return touched.has(piece) && (part === 'side' || part === 'overarm')
  })
  return [...changes, ...seams].map(({ name, words, before, after }) => ({
    id: name,
    name: capital(words),
    before,
    after,
  }))
}

/** One line of a list of decisions: "Gaping armhole: a wedge of 1.0 cm at the front sleeve edge." */
export function correctionSaid(c: Exclude<Correction, { kind: 'withdraw' }>): Said {
  const name = `${HEADS[c.because.complaint].name}: `
  const side = sideOf(c)
  const which = side ? `, ${side} side only` : ''
  if (c.kind === 'operate') {
    const { words, amount } = operationSaid(c.operation)
    return [`${name}${words}, `, amount, `${which}.`]
  }
  return c.kind === 'close-wedge'
    ? [name, 'a wedge of ', c.width, ` at the ${c.piece} ${EDGE_WORDS[c.edge]}.`]
    : [
        `${name}${CHOICES[c.choice].label}, `,
        c.by < 0 ? 'less ' : 'more ',
        mm(Math.abs(c.by)),
        `${which}.`,
      ]
}

/** "all of it", "half of it", "87 in a hundred". */
export const shareWords = (share: number): string =>
  share === 1
    ? 'all of it'
    : share === 0.5
      ? 'half of it'
      : `${Math.round(share * 100)} in a hundred`

/** The parts she may choose from: the usual one of this answer, all, three quarters, half. */
export const sharesFor = (usual: number): readonly number[] =>
  [...new Set([1, usual, 0.75, 0.5])].sort((a, b) => b - a)

export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)
