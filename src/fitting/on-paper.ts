/**
 * A correction as work on the paper she already has: what to cut, spread, overlap or fold, which
 * points to move and which lines to draw anew. The same numbers as the new drawing, so that paper
 * altered by hand and paper drawn afresh are one. Source: slash, spread and overlap are common
 * practice, no source.
 */
import { CHOICES, type ChoiceId } from '../draft/choices.ts'
import { pieceOf, type Draft } from '../draft/draft.ts'
import { dartTips } from '../draft/dart-tips.ts'
import type { AnyDart, HalfId, Piece } from '../draft/piece.ts'
import { record } from '../draft/record.ts'
import { sentence } from '../draft/sentence.words.ts'
import { flatten } from '../geometry/path.ts'
import { distance, type Point } from '../geometry/point.ts'
import { project } from '../geometry/project.ts'
import { formatLength, printedMm, type UnitChoice } from '../units/format.ts'
import { mm, type Mm } from '../units/length.ts'
import { correctedDraft } from './apply.ts'
import { inForce, type Correction } from './correction.ts'
import { ON_PAPER_WORDS } from './on-paper.words.ts'
import type { Operation } from './ops/operation.ts'
import { paperWork } from './ops/paper-work.ts'
import { operationSaid } from './ops/said.ts'
import type { Base } from './preview.ts'

/** Closer than a pencil line is wide two lines are one, mm. Common practice, no source. */
const PENCIL = 0.3

export interface PaperWork {
  readonly correction: string
  /** Sentences in the order in which they are done; empty when nothing on paper moves. */
  readonly lines: readonly string[]
}

/** For each correction in force, in order, what it does to paper that has the ones before it. */
export function onPaper(base: Base, units: UnitChoice): PaperWork[] {
  const { garment, body, choices } = base
  const list = inForce(base.corrections)
  const drafts = [[], ...list.map((_, i) => list.slice(0, i + 1))].map(
    (part: readonly Correction[]) => correctedDraft(garment, body, choices, part).draft,
  )
  return list.flatMap((c, i) => {
    const [before, after] = [drafts[i], drafts[i + 1]]
    return before && after ? [{ correction: c.id, lines: workFor(c, before, after, units) }] : []
  })
}

/** What one correction does to the paper of `before`. */
export function workFor(
  c: Pick<Correction, 'kind'> & { readonly choice?: ChoiceId; readonly operation?: Operation },
  before: Draft,
  after: Draft,
  units: UnitChoice,
): readonly string[] {
  if (c.kind === 'close-wedge')
    return after.steps
      .filter((s) => s.verb === 'wedge' && !before.steps.some((old) => same(old, s)))
      .map((s) => ON_PAPER_WORDS.stepOf(s.piece, sentence(s, units)))
  if (c.kind === 'withdraw') return []
  if (c.choice === 'lengthAdded') return lengthened(before, after, units)
  const cut = c.operation ? operationWork(c.operation, before, units) : []
  return [
    ...cut,
    ...(c.choice ? [turned(c.choice, before, after, units)] : []),
    ...(['back', 'front'] as const).flatMap((half) =>
      moved(half, before, after, units, cut.length > 1),
    ),
    ...finishing(before, after, units),
  ]
}
/** What the operation is, and then, where it has words of its own, what is cut and taped. */
const operationWork = (op: Operation, before: Draft, units: UnitChoice): readonly string[] => {
  const { words, amount } = operationSaid(op)
  return [ON_PAPER_WORDS.does(words, formatLength(amount, units)), ...paperWork(op, before, units)]
}
const same = (a: object, b: object): boolean =>
  JSON.stringify({ ...a, lights: 0 }) === JSON.stringify({ ...b, lights: 0 })

const turned = (id: ChoiceId, before: Draft, after: Draft, units: UnitChoice): string =>
  ON_PAPER_WORDS.turned(
    CHOICES[id].label,
    formatLength(before.choices[id], units),
    formatLength(after.choices[id], units),
  )

/** Cut across between bust line and waist line: everything below moves as one. */
function lengthened(before: Draft, after: Draft, units: UnitChoice): string[] {
  const by =
    printedMm(after.choices.lengthAdded, units) - printedMm(before.choices.lengthAdded, units)
  const say = formatLength(mm(Math.abs(by)), units)
  return [
    ON_PAPER_WORDS.cutAcross,
    by > 0 ? ON_PAPER_WORDS.spread(say) : ON_PAPER_WORDS.overlap(say),
    ON_PAPER_WORDS.smoothAcross,
  ]
}

/** @param taped the paper was cut and taped already: its points have gone along, and are a check */
function moved(
  half: HalfId,
  before: Draft,
  after: Draft,
  units: UnitChoice,
  taped: boolean,
): string[] {
  const [a, b] = [record(before).points, record(after).points]
  const spots = Object.keys(b).flatMap((name) => {
    const [p, q] = [a[name], b[name]]
    if (!name.startsWith(`${half}.`) || !q) return []
    const letter = name.slice(half.length + 1)
    if (!p) return [ON_PAPER_WORDS.markAnew(letter)]
    const way = ways(mm(q[0] - p[0]), mm(q[1] - p[1]), units)
    return way === '' ? [] : [ON_PAPER_WORDS.letter(letter, way)]
  })
  const [old, now] = [pieceOf(before, half), pieceOf(after, half)]
  spots.push(...tipsMoved(old, now, units))
  const lines = changedLines(old, now)
  return [
    ...(spots.length > 0 ? [ON_PAPER_WORDS.move(half, spots, taped)] : []),
    ...(lines.length > 0 ? [ON_PAPER_WORDS.drawAnew(half, lines)] : []),
  ]
}

/** Tips of darts have no letter; they are named by their dart. */
function tipsMoved(before: Piece, after: Piece, units: UnitChoice): string[] {
  const old = new Map(dartTips(before).map(({ name, at }) => [name, at]))
  return dartTips(after).flatMap(({ name, words, at }) => {
    const was = old.get(name)
    const way = was ? ways(mm(at.x - was.x), mm(at.y - was.y), units) : ''
    return way === '' ? [] : [ON_PAPER_WORDS.tip(words, way)]
  })
}

/** "0.5 cm out and 1.2 cm down"; empty where the printed place is the same. */
function ways(across: Mm, down: Mm, units: UnitChoice): string {
  const part = (by: Mm, plus: Way, minus: Way): string[] => {
    const size = mm(Math.abs(printedMm(by, units)))
    const say = ON_PAPER_WORDS[by > 0 ? plus : minus]
    return size === 0 ? [] : [say(formatLength(size, units))]
  }
  return ON_PAPER_WORDS.ways([...part(across, 'out', 'in'), ...part(down, 'down', 'up')])
}
type Way = 'out' | 'in' | 'down' | 'up'

function changedLines(before: Piece, after: Piece): string[] {
  const edges = after.edges.filter((e) => {
    const old = before.edges.find((o) => o.name === e.name)
    if (!old) return true
    const far = (from: typeof e, to: typeof e): number =>
      Math.max(...flatten(from.path, 0.05).map((p) => project(to.path, p).distance))
    return Math.max(far(e, old), far(old, e)) > PENCIL
  })
  return [
    ...edges.map((e) => ON_PAPER_WORDS.edge(e.name)),
    ...movedDarts(before.darts, after.darts, ['upperTip', 'inner', 'outer', 'lowerTip']),
    ...movedDarts(before.edgeDarts, after.edgeDarts, ['tip', 'upper', 'lower']),
  ]
}

/** "the side bust dart": the darts of which any of these corners lies elsewhere. */
function movedDarts<K extends string>(
  before: readonly DartWith<K>[],
  after: readonly DartWith<K>[],
  corners: readonly K[],
): string[] {
  const moved = after.filter((d) => {
    const old = before.find((o) => o.name === d.name)
    return !old || corners.some((k) => distance(d[k], old[k]) > PENCIL)
  })
  return moved.map((d) => ON_PAPER_WORDS.dart(d.name))
}
type DartWith<K extends string> = { readonly name: AnyDart } & Readonly<Record<K, Point>>

/** Strips and facings are cut anew when their length changed. */
function finishing(before: Draft, after: Draft, units: UnitChoice): string[] {
  const [a, b] = [record(before).lengths, record(after).lengths]
  return after.pieces.slice(2).flatMap((piece) => {
    const name = `${piece.id}.neck`
    const [old, now] = [a[name], b[name]]
    if (now === undefined || (old !== undefined && printedMm(old, units) === printedMm(now, units)))
      return []
    return [ON_PAPER_WORDS.cutAnew(piece.words, formatLength(now, units))]
  })
}
