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
} from '../draft/piece.ts'
import { mm, type Mm } from '../units/length.ts'
import type { Allowances } from './allowance.ts'
import { edgeGroups, pieceEdge, type EdgeGroup, type EdgeKey } from './by-edge.ts'
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
export type EdgeWishes = Readonly<Partial<Record<EdgeKey, EdgeWish>>>

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

/** Edges of one name that are for the same, on all the pieces that have them. */
export interface CutRow extends EdgeGroup {
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
  const usual = usualFinishes(wishes.stuff, draft.pieces)
  return edgeGroups(draft.pieces).map((group) => {
    const { name, role, pieces, keys } = group
    const runs = draft.pieces
      .filter(({ id }) => pieces.includes(id))
      .flatMap((p) => p.edges.filter((e) => e.name === name && e.role === role))
    const edge: Edge = { name, role, path: runs.flatMap((e) => e.path) }
    const drawn = wishes.stuff === 'cloth' ? drawnFinish(draft, edge) : undefined
    return rowOf(group, edge, drawn ?? usual[keys[0] ?? name] ?? usual[name], wishes)
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

function rowOf(group: EdgeGroup, edge: Edge, usually: FinishId, wishes: CutWishes): CutRow {
  const { stuff } = wishes
  const usual = going(edge, usually, stuff)
  const chosen = wishAt(wishes, { ...group, edge })
  const wanted = chosen && finishAs(chosen.finish, chosen.allowance).allowance
  const refused = chosen && refusalAt(edge, chosen.finish, wanted)
  const finish = chosen && !refused ? chosen.finish : (refused?.offer ?? usual)
  return {
    ...group,
    edge,
    usual,
    finish,
    allowance: finishAs(finish, finish === chosen?.finish ? wanted : undefined).allowance,
    ...(chosen && refused ? { given: chosen.finish } : {}),
  }
}

/**
 * Her wish for these edges: for the piece, else for the name, as it is chosen while all edges of
 * the name are for the same. A role that changed (an armhole that takes a sleeve now) leaves the
 * old choice without meaning.
 */
export function wishAt(
  wishes: CutWishes,
  row: Pick<CutRow, 'name' | 'pieces' | 'edge'>,
): EdgeWish | undefined {
  const { stuff, [stuff]: own } = wishes
  const suiting = finishesFor(row.edge, stuff)
  return keysOf(row)
    .map((key) => own[key])
    .find((wish) => wish && suiting.includes(wish.finish))
}
const keysOf = ({ name, pieces }: Pick<EdgeGroup, 'name' | 'pieces'>): EdgeKey[] => [
  ...pieces.map((id) => pieceEdge(id, name)),
  name,
]

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
  const finishes: Finishes = { ...usual, ...byKey(rows, (r) => r.finish) }
  const allowances: Allowances = { ...allowancesFor(finishes), ...byKey(rows, (r) => r.allowance) }
  const hemDepth = hemTurnedTwice(finishes, depthOf(allowances.hem))
  return {
    stuff: wishes.stuff,
    finishes,
    allowances,
    ...(hemDepth === undefined ? {} : { hemDepth }),
  }
}
const byKey = <T>(rows: readonly CutRow[], of: (row: CutRow) => T): Partial<Record<EdgeKey, T>> =>
  Object.fromEntries(rows.flatMap((row) => row.keys.map((key) => [key, of(row)])))

/** Her wish at these edges; undefined puts them back as usual. */
export function withWish(
  wishes: CutWishes,
  row: Pick<CutRow, 'name' | 'pieces' | 'keys' | 'edge'>,
  wish: EdgeWish | undefined,
): CutWishes {
  const { stuff, [stuff]: own } = wishes
  const suiting = finishesFor(row.edge, stuff)
  // What is kept for the name goes too where it was in force here, or it would come back.
  const old = keysOf(row).filter((key) => {
    const kept = own[key]
    return row.keys.includes(key) || (kept && suiting.includes(kept.finish))
  })
  const others = Object.entries(own).filter(([key]) => !old.some((o) => o === key))
  const news = wish ? row.keys.map((key) => [key, wish] as const) : []
  return { ...wishes, [stuff]: Object.fromEntries([...others, ...news]) }
}

/** The piece an edge is shown on: the first that has it open. */
export const pieceWith = (draft: Draft, row: CutRow): Piece | undefined =>
  draft.pieces.find((p) => p.id === row.pieces[0])
