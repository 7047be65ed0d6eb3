/**
 * What she is looking at on the Draft page, a step, a finding or a number, and what that lights
 * on the drawing. One thing at a time, so the drawing never lights two answers.
 */
import { movedBy, pieceOf, type Draft } from '../../draft/draft.ts'
import type { Finding } from '../../draft/finding.ts'
import {
  pairedId,
  sidedId,
  sideOfId,
  type AnyDart,
  type EdgeName,
  type Piece,
  type PieceId,
  type Side,
} from '../../draft/piece.ts'
import { DART_WORDS, EDGE_WORDS, PIECE_WORDS, placeSaid } from '../../draft/piece.words.ts'
import type { Direction, Guide, Step } from '../../draft/step.ts'
import { dartLegs, edgeDartLegs } from '../../draft/sheet.ts'
import type { Path } from '../../geometry/path.ts'
import { add, point, scale, type Point } from '../../geometry/point.ts'
import { line } from '../../geometry/segment.ts'

export type Attention =
  /** Index into the steps of the whole draft. */
  | { readonly on: 'step'; readonly index: number }
  | { readonly on: 'finding'; readonly finding: Finding }
  /** A line or a width of a piece: `front.side`. */
  | { readonly on: 'line'; readonly place: string }
  /** A measurement or a choice by its id: "what does this number move?" */
  | { readonly on: 'number'; readonly name: string }

export interface Light {
  readonly lit: readonly Path[]
  /** Letters that stand bold and ringed. */
  readonly named: readonly string[]
  /** Guide points of a curve. */
  readonly spots: readonly Point[]
}
const DARK: Light = { lit: [], named: [], spots: [] }

export function lightOf(draft: Draft, piece: PieceId, attention: Attention): Light {
  switch (attention.on) {
    case 'step': {
      const step = draft.steps[attention.index]
      if (!step || step.piece !== piece) return DARK
      const shown = pieceOf(draft, piece)
      const named = lettersOf(step).filter((name) => name in shown.points)
      return { lit: step.lights, named, spots: guideSpots(step, shown) }
    }
    case 'finding': {
      const { part } = placeOf(attention.finding.place)
      return pieceFor(draft, attention) === piece
        ? { ...DARK, lit: linesOf(pieceOf(draft, piece), part, attention.finding.side) }
        : DARK
    }
    case 'line': {
      const { piece: id, part } = placeOf(attention.place)
      return pieceFor(draft, attention) === piece
        ? { ...DARK, lit: linesOf(pieceOf(draft, piece), part, sideOfId(id)) }
        : DARK
    }
    case 'number':
      return { ...DARK, named: movedBy(draft, attention.name).flatMap(onPiece(piece)) }
  }
}

/** The piece that has to lie on the table for this to be seen; undefined when either will do. */
export function pieceFor(draft: Draft, attention: Attention): PieceId | undefined {
  switch (attention.on) {
    case 'step':
      return draft.steps[attention.index]?.piece
    case 'finding':
      return lyingFor(draft, placeOf(attention.finding.place).piece, attention.finding.side)
    case 'line': {
      const { piece } = placeOf(attention.place)
      return lyingFor(draft, pairedId(piece), sideOfId(piece))
    }
    case 'number':
      return undefined
  }
}

/** A finding names the half; on the table may lie the piece of its side only. */
function lyingFor(draft: Draft, id: PieceId, side: Side | undefined): PieceId {
  const has = (one: PieceId): boolean => draft.pieces.some((p) => p.id === one)
  return has(id) ? id : sidedId(pairedId(id), side ?? 'right')
}

/** "back: C, D, U. front: C, D." of the points a number moves, or undefined when it moves none. */
export function movesWords(draft: Draft, name: string): string | undefined {
  const places = movedBy(draft, name)
  if (places.length === 0) return undefined
  return draft.pieces
    .map((piece) => ({ id: piece.id, letters: places.flatMap(onPiece(piece.id)) }))
    .filter(({ letters }) => letters.length > 0)
    .map(({ id, letters }) => `${PIECE_WORDS[id]} ${letters.join(', ')}`)
    .join('; ')
}

const onPiece = (piece: PieceId) => (place: string) =>
  place.startsWith(`${piece}.`) ? [place.slice(piece.length + 1)] : []

/** `front.sleeveEdge`: which piece, and an edge of it or its waist dart. */
export function placeOf(place: string): { piece: PieceId; part: string } {
  const [piece, part] = place.split('.')
  if (!piece || !part || !Object.hasOwn(PIECE_WORDS, piece))
    throw new Error(`draft page: a finding lies at "${place}", which is no place of a piece`)
  return { piece: piece as PieceId, part }
}

/** Widths from the centre to a lettered point, as the bench of her own draft names them. */
const WIDTHS: Readonly<Record<string, string>> = {
  bustLine: 'U',
  waistLine: 'W',
  hipLine: 'X',
  bustTip: 'apex',
}

export const isWidth = (part: string): boolean => Object.hasOwn(WIDTHS, part)

export function linesOf(piece: Piece, part: string, side: Side | undefined): readonly Path[] {
  const far = WIDTHS[part]
  if (far !== undefined) {
    const at = piece.points[far]
    return at ? [[line(point(0, at.y), at)]] : []
  }
  const asked = (x: { name: string; side?: Side }): boolean =>
    x.name === part && (side === undefined || x.side === undefined || x.side === side)
  const legs = [
    ...piece.darts.filter(asked).flatMap((d) => dartLegs(d).map((leg) => [leg])),
    ...piece.edgeDarts.filter(asked).flatMap((d) => edgeDartLegs(d).map((leg) => [leg])),
  ]
  return legs.length > 0 ? legs : piece.edges.filter(asked).map((e) => e.path)
}

/** "back, sleeve edge": where to look, in words. */
export function placeWords(place: string): string {
  const { piece, part } = placeOf(place)
  const words = DART_WORDS[part as AnyDart] ?? EDGE_WORDS[part as EdgeName] ?? part
  return placeSaid(piece, words)
}

export function lettersOf(step: Step): readonly string[] {
  switch (step.verb) {
    case 'start':
    case 'dart':
    case 'cutOff':
    case 'moveDart':
      return [step.at]
    case 'measure':
    case 'spot':
    case 'slide':
    case 'join':
    case 'curve':
      return [step.from, step.to]
    case 'compass':
      return [step.centre, step.to]
    case 'arc':
      return [step.centre, step.from, step.to]
    case 'edgeDart':
      return [step.upper, step.lower, step.tip]
    case 'trace':
    case 'parallel':
    case 'rectangle':
    case 'mitre':
    case 'open':
    case 'change':
    case 'asWorn':
      return []
    case 'part':
      return [step.over]
    case 'keyhole':
      return [step.from]
    case 'wedge':
      return [step.from, step.pivot]
  }
}

const WAY: Readonly<Record<Direction, Point>> = {
  down: point(0, 1),
  up: point(0, -1),
  right: point(1, 0),
  left: point(-1, 0),
}

/** Where the guide points of a curve lie: so far square from the base, then so far aside. */
export function guideSpots(step: Step, piece: Piece): readonly Point[] {
  if (step.verb !== 'curve') return []
  const base = piece.points[step.base]
  if (!base) return []
  const over = (p: Point): Point => (step.turned ? point(-p.x, p.y) : p)
  return step.guides.map((g: Guide) =>
    add(base, over(add(scale(WAY[step.along], g.out.mm), scale(WAY[g.then], g.by.mm)))),
  )
}
