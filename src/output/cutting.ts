/**
 * How a garment is cut: for a muslin or from the cloth, which finish each edge has and how much
 * lies beyond its seam line. What she chose is kept with the garment; what she left alone follows
 * the pieces, so a change of the draft finds its own finish. Edges are known by name and role,
 * whichever garment they belong to.
 */
import type { Draft } from '../draft/draft.ts'
import {
  pairedId,
  type Edge,
  type EdgeName,
  type EdgeRole,
  type PairedId,
  type Piece,
  type PieceId,
} from '../draft/piece.ts'
import { mm, type Mm } from '../units/length.ts'
import type { Allowances } from './allowance.ts'
import { finishRefusal, finishesThatSuit } from './finish-fit.ts'
import { FINISH_IDS, finishAs, FINISHES, type FinishId, type Stuff } from './finish.ts'
import { allowancesFor, hemTurnedTwice, usualFinishes, type Finishes } from './finishes.ts'
import type { Stretch } from './page.ts'
import type { PaperChoice } from './paper.ts'

/** What she chose at one edge; the allowance only where the finish leaves it free. */
export interface EdgeWish {
  readonly finish: FinishId
  readonly allowance?: Mm
}
export type EdgeWishes = Readonly<Partial<Record<EdgeName, EdgeWish>>>

/** Kept with the garment. */
export interface CutWishes {
  readonly stuff: Stuff
  /** Only the edges at which she chose; the rest is as usual. */
  readonly muslin: EdgeWishes
  readonly cloth: EdgeWishes
  /** Without it: what her units say. */
  readonly paper?: PaperChoice
  /** What her printer needs to print true, from the squares she measured. */
  readonly scale?: Stretch
}
export const USUAL_CUT: CutWishes = { stuff: 'muslin', muslin: {}, cloth: {} }

/** What every writer of pieces is told. */
export interface Cutting {
  readonly stuff: Stuff
  readonly finishes: Finishes
  readonly allowances: Allowances
  /** Finished depth of a hem that is turned twice. */
  readonly hemDepth?: Mm
}

export type OpenRole = Exclude<EdgeRole, 'fold'>
/** One name of an edge, on all the pieces that have it. */
export interface CutRow {
  readonly name: EdgeName
  readonly role: OpenRole
  readonly pieces: readonly PieceId[]
  /** All its runs as one edge, so that the tightest of them decides. */
  readonly edge: Edge
  readonly usual: FinishId
  readonly finish: FinishId
  readonly allowance: Mm
  /** She chose this one, and the edge as it is drawn now does not take it. */
  readonly given?: FinishId
}

/** The edges beyond which something can lie, in the order of the outlines. */
export function cutRows(draft: Draft, wishes: CutWishes): CutRow[] {
  const open = draft.pieces
    .filter((piece) => !piece.cutAsDrawn)
    .flatMap((piece) => piece.edges.filter((e) => e.role !== 'fold').map((e) => ({ piece, e })))
  const usual = usualFinishes(wishes.stuff, draft.pieces)
  return [...new Set(open.map(({ e }) => e.name))].map((name) => {
    const own = open.filter(({ e }) => e.name === name)
    const edge: Edge = {
      name,
      role: own[0]?.e.role ?? 'seam',
      path: own.flatMap(({ e }) => e.path),
    }
    const pieces = own.map(({ piece }) => piece.id)
    const drawn = wishes.stuff === 'cloth' ? drawnFinish(draft, edge) : undefined
    return rowOf(edge, pieces, drawn ?? usual[name], wishes)
  })
}

/** What the draft itself asks for: the room of a zip, or the facing that is drawn for an edge. */
function drawnFinish(draft: Draft, { name, role }: Edge): FinishId | undefined {
  const zip = draft.openings.some((o) => ZIPS.includes(o.kind) && o.edge === name)
  if (role === 'seam') return zip ? 'zip' : undefined
  return draft.pieces.some(({ id }) => FACES[pairedId(id)] === name) ? 'facing' : undefined
}
const FACES: Partial<Readonly<Record<PairedId, EdgeName>>> = {
  backNeckFacing: 'neck',
  frontNeckFacing: 'neck',
}
const ZIPS: readonly Draft['openings'][number]['kind'][] = ['sideZip', 'backZip']

function rowOf(
  edge: Edge,
  pieces: readonly PieceId[],
  usually: FinishId,
  wishes: CutWishes,
): CutRow {
  const { stuff } = wishes
  const role = edge.role === 'fold' ? 'seam' : edge.role
  const usual = going(edge, usually, stuff)
  const wish = wishes[stuff][edge.name]
  // A role that changed (an armhole that takes a sleeve now) leaves the old choice without meaning.
  const chosen = wish && finishesFor(edge, stuff).includes(wish.finish) ? wish : undefined
  const wanted = chosen && finishAs(chosen.finish, chosen.allowance).allowance
  const refused = chosen && refusalAt(edge, chosen.finish, wanted)
  const finish = chosen && !refused ? chosen.finish : (refused?.offer ?? usual)
  return {
    name: edge.name,
    role,
    pieces,
    edge,
    usual,
    finish,
    allowance: finishAs(finish, finish === chosen?.finish ? wanted : undefined).allowance,
    ...(chosen && refused ? { given: chosen.finish } : {}),
  }
}

/** The usual finish, or the widest that goes where its curve is too tight for it. */
function going(edge: Edge, usual: FinishId, stuff: Stuff): FinishId {
  const refused = refusalAt(edge, usual, undefined)
  if (!refused) return usual
  return refused.offer ?? finishesThatSuit(edge, stuff)[0] ?? usual
}

/** Every finish for the role of this edge in this stuff; whether its curve takes it is asked apart. */
export const finishesFor = (edge: Pick<Edge, 'name' | 'role'>, stuff: Stuff): FinishId[] =>
  FINISH_IDS.filter((id) => {
    const finish = FINISHES[id]
    const only: readonly EdgeName[] | undefined = 'only' in finish ? finish.only : undefined
    return (
      (finish.suits as readonly EdgeRole[]).includes(edge.role) &&
      (only?.includes(edge.name) ?? true) &&
      (finish.stuff as readonly Stuff[]).includes(stuff)
    )
  })

/** A hem folded twice is half as deep as its allowance. */
export const depthOf = (allowance: Mm): Mm => mm(allowance / 2)
/** Units do not matter here: only whether and what instead. */
const refusalAt = (edge: Edge, id: FinishId, allowance: Mm | undefined) =>
  finishRefusal(edge, id, { unit: 'cm', inchStep: 8 }, depthOf(finishAs(id, allowance).allowance))

/** What the writers of the pieces need, from the pieces and what she chose. */
export function cuttingOf(draft: Draft, wishes: CutWishes): Cutting {
  const rows = cutRows(draft, wishes)
  const usual = usualFinishes(wishes.stuff, draft.pieces)
  const finishes: Finishes = { ...usual, ...byName(rows, (r) => r.finish) }
  const allowances: Allowances = { ...allowancesFor(finishes), ...byName(rows, (r) => r.allowance) }
  const hemDepth = hemTurnedTwice(finishes, depthOf(allowances.hem))
  return {
    stuff: wishes.stuff,
    finishes,
    allowances,
    ...(hemDepth === undefined ? {} : { hemDepth }),
  }
}
const byName = <T>(rows: readonly CutRow[], of: (row: CutRow) => T): Partial<Record<EdgeName, T>> =>
  Object.fromEntries(rows.map((row) => [row.name, of(row)]))

/** Her wish at one edge; undefined puts it back as usual. */
export function withWish(wishes: CutWishes, name: EdgeName, wish: EdgeWish | undefined): CutWishes {
  const { [name]: _old, ...others } = wishes[wishes.stuff]
  return { ...wishes, [wishes.stuff]: wish ? { ...others, [name]: wish } : others }
}

/** The piece an edge is shown on: the first that has it open. */
export const pieceWith = (draft: Draft, row: CutRow): Piece | undefined =>
  draft.pieces.find((p) => p.id === row.pieces[0])
