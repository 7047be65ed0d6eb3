/**
 * How she gets in. Head through the neck, bust and shoulders through the waist: where one of them
 * fails the draft adds an opening and says which, and she may choose another. Rules: common
 * practice, no source.
 */
import { knows, lengthOf, type Body } from '../measurements/confirmed.ts'
import { pathLength } from '../geometry/length.ts'
import { distance } from '../geometry/point.ts'
import { mm, type Mm } from '../units/length.ts'
import type { Choices } from './choices.ts'
import type { Draft } from './draft.ts'
import type { OptionWord } from './options.ts'
import { edge, sewnLength, type EdgeName, type Piece } from './piece.ts'

/** Room over the head, mm. */
export const HEAD_ROOM = mm(20)
/** A zip in the side begins so far below the underarm, mm. */
const ZIP_BELOW_UNDERARM = 40
/** It ends this far above the hem, or at the hip where the hem lies lower, mm. */
const ZIP_ABOVE_HEM = 40
const ZIP_BELOW_WAIST = 180
/** A neck slit is never shorter, mm, and is cut to whole half centimetres. */
const SLIT_LEAST = 60
const SLIT_STEP = 5

export type OpeningKind = Exclude<OptionWord<'opening'>, 'auto' | 'none'>

export interface Opening {
  readonly kind: OpeningKind
  /** On the left half only for a side zip; both halves of the piece otherwise. */
  readonly piece: 'back' | 'front'
  readonly edge: 'side' | 'centre'
  /** Levels between which it opens, mm below the nape. */
  readonly from: Mm
  readonly to: Mm
  /** Added by the draft, not asked for. */
  readonly added: boolean
}

export interface Through {
  readonly neck: Mm
  /** What the neck must pass; undefined while the head is not taped. */
  readonly head: Mm | undefined
  readonly waist: Mm
  /** What must pass the waist; undefined while it is not taped. */
  readonly slip: Mm | undefined
  /** The hem passes over the shoulders first, closed below a zip that ends above it. */
  readonly hem: Mm
}

/** Neck and waist all round, as sewn and closed. */
export type Together = Pick<Through, 'neck' | 'waist'>

/** A back and a front stand for one side each. */
export function bothRound(sides: readonly (readonly [back: Piece, front: Piece])[]): Together {
  const round = (of: (piece: Piece) => number): Mm =>
    mm((2 * sides.flat().reduce((sum, piece) => sum + of(piece), 0)) / sides.length)
  return { neck: round((p) => sewnLength(p, 'neck')), waist: round(sewnWaist) }
}

/**
 * Neck and waist of the closed garment beside what must pass them.
 * @param together what both sides measure where these halves are those of one side
 */
export function through(back: Piece, front: Piece, body: Body, together?: Together): Through {
  const taped = (id: 'headGirth' | 'slipThroughGirth'): number | undefined =>
    knows(body, id) ? lengthOf(body, id) : undefined
  const [head, slip] = [taped('headGirth'), taped('slipThroughGirth')]
  return {
    ...(together ?? bothRound([[back, front]])),
    head: head === undefined ? undefined : mm(head + HEAD_ROOM),
    slip: slip === undefined ? undefined : mm(slip),
    hem: mm(2 * (sewnHem(back) + sewnHem(front))),
  }
}

/** The hem of a half piece, without what a dart leaves open there, mm; a skirt sewn on is wider than any waist. */
const sewnHem = (piece: Piece): number =>
  hasEdge(piece, 'waist')
    ? Infinity
    : pathLength(edge(piece, 'hem').path) -
      piece.darts.reduce((sum, d) => sum + (d.open ? distance(d.open.inner, d.open.outer) : 0), 0)
const hasEdge = (piece: Piece, name: EdgeName): boolean => piece.edges.some((e) => e.name === name)

/** Width of a half piece at the waist with darts and centre seam sewn, mm. */
export function sewnWaist(piece: Piece): number {
  if (hasEdge(piece, 'waist')) return sewnLength(piece, 'waist')
  const [w, c1] = [piece.points['W'], piece.points['C1']]
  if (!w) throw new Error(`${piece.id}: no point W`)
  const darts = piece.darts.reduce((sum, d) => sum + distance(d.inner, d.outer), 0)
  const centre = c1 ? c1.x : 0
  // A turned side lies off the level; its distance from the outer leg is what was turned.
  const last = piece.darts.at(-1)
  return last ? distance(last.outer, w) + innerWidths(piece) - centre : w.x - darts - centre
}

/** From the fold to the first dart, and between darts, along the waist. */
function innerWidths(piece: Piece): number {
  return piece.darts.reduce(
    (sum, d, i) => sum + (i === 0 ? d.inner.x : distance(piece.darts[i - 1]!.outer, d.inner)),
    0,
  )
}

/** What she chose, and what neck and waist still need beside it; nothing at all for 'none'. */
export function openings(
  back: Piece,
  front: Piece,
  { body, choices, together }: Pick<Draft, 'body' | 'choices' | 'together'>,
): Opening[] {
  const t = through(back, front, body, together)
  const make = (kind: OpeningKind, added: boolean): Opening =>
    placed(kind, back, front, t, added, choices)
  if (choices.opening === 'none') return []
  const chosen = choices.opening === 'auto' ? [] : [make(choices.opening, false)]
  const ok = passes(t, chosen)
  return [
    ...chosen,
    ...(ok.waist ? [] : [make('sideZip', true)]),
    ...(ok.neck ? [] : [make('neckSlit', true)]),
  ]
}

const neckAtCentre = (back: Piece): number => (back.points['A1'] ?? back.points['A'])?.y ?? 0

function placed(
  kind: OpeningKind,
  back: Piece,
  front: Piece,
  t: Through,
  added: boolean,
  choices: Choices,
): Opening {
  const level = (piece: Piece, name: string): number => piece.points[name]?.y ?? 0
  const waist = level(back, 'C')
  // A skirt that is sewn on carries the level of the hem on below its waist seam.
  const below = (piece: Piece): number =>
    piece.points['L']?.y ?? level(piece, 'C') + choices.lengthBelowWaist
  const hem = below(back)
  const foot = Math.min(hem - ZIP_ABOVE_HEM, waist + ZIP_BELOW_WAIST)
  switch (kind) {
    case 'sideZip': {
      const from = level(back, 'U') + ZIP_BELOW_UNDERARM
      // A hem that would not pass over the shoulders is opened too: the zip runs out of it.
      const to = t.slip !== undefined && t.hem < t.slip ? hem : Math.max(foot, from)
      return { kind, piece: 'back', edge: 'side', from: mm(from), to: mm(to), added }
    }
    case 'backZip':
      return {
        kind,
        piece: 'back',
        edge: 'centre',
        from: mm(neckAtCentre(back)),
        to: mm(foot),
        added,
      }
    case 'buttonedFront': {
      const [top, low] = [level(front, 'F'), below(front)]
      return { kind, piece: 'front', edge: 'centre', from: mm(top), to: mm(low), added }
    }
    case 'keyhole': {
      const top = level(front, 'F')
      const to = top + choices.keyholeLength
      return { kind, piece: 'front', edge: 'centre', from: mm(top), to: mm(to), added }
    }
    case 'neckSlit': {
      const lacking = Math.max(0, ((t.head ?? 0) - t.neck) / 2)
      const long = Math.max(SLIT_LEAST, Math.ceil(lacking / SLIT_STEP) * SLIT_STEP)
      const top = neckAtCentre(back)
      return { kind, piece: 'back', edge: 'centre', from: mm(top), to: mm(top + long), added }
    }
  }
}

/** Does the garment pass with these openings? A slit or a keyhole opens the neck by its two edges. */
export function passes(t: Through, list: readonly Opening[]): { neck: boolean; waist: boolean } {
  const kinds = new Set(list.map(({ kind }) => kind))
  const whole = kinds.has('backZip') || kinds.has('buttonedFront')
  const neck = list
    .filter(({ kind }) => kind === 'neckSlit' || kind === 'keyhole')
    .reduce((sum, o) => sum + 2 * (o.to - o.from), Number(t.neck))
  return {
    neck: whole || t.head === undefined || neck >= t.head,
    waist: whole || kinds.has('sideZip') || t.slip === undefined || t.waist >= t.slip,
  }
}
