/** What is done while the pieces lie flat: cloth made ready, stay rows, interfacing, darts. */
import { distance } from '../geometry/point.ts'
import { mm } from '../units/length.ts'
import { sewnLength, type Piece } from '../draft/piece.ts'
import type { Draft } from '../draft/draft.ts'
import type { ClothAdvice } from './cloth-kind.ts'
import type { Cutting } from './cutting.ts'
import { sewnRows, type PlanStep } from './plan-step.ts'
import { FLAT_WORDS as W, LAST_WORDS } from './sewing-plan.words.ts'
import { STAY_OUTSIDE } from './stay.ts'

export interface Planned {
  readonly draft: Draft
  readonly cutting: Cutting
}

export const halvesOf = ({ draft }: Planned): readonly Piece[] =>
  draft.pieces.filter((p) => p.id === 'back' || p.id === 'front' || p.id === 'sideFront')

/** Halves and skirt parts: everything of the body that darts, sides and hems are on. */
export const bodyOf = (on: Planned): readonly Piece[] => [...halvesOf(on), ...skirtsOf(on)]
export const skirtsOf = ({ draft }: Planned): readonly Piece[] =>
  draft.pieces.filter((p) => p.id === 'skirtBack' || p.id === 'skirtFront')

export function prepareSteps(cloth: ClothAdvice, warning: string | undefined): PlanStep[] {
  return [
    {
      id: 'prepare.cloth',
      kind: 'prepare',
      title: W.ready(cloth.name),
      lit: [],
      passes: [[cloth.prepare], W.straighten],
      mind: [...(warning ? [warning] : []), ...cloth.mind, LAST_WORDS.iron],
    },
    {
      id: 'prepare.cut',
      kind: 'prepare',
      title: W.cut,
      lit: [],
      passes: [W.lay, W.mark],
      mind: [W.blades],
    },
  ]
}

/**
 * Directions of 4-H sewing helper 11.135, Staystitching: neck from shoulder to centre, a V from
 * its point up, armholes from the shoulder down; never a long bias edge.
 */
export function staySteps(on: Planned): PlanStep[] {
  const edges = halvesOf(on).flatMap((p) =>
    p.edges
      .filter((e) => e.name === 'neck' || e.name === 'armhole')
      .map((e) => ({ piece: p.id, edge: e.name })),
  )
  if (edges.length === 0) return []
  const neck = on.draft.choices.neckShape === 'vee' ? 'vee' : 'round'
  const armholes = edges.some((e) => e.edge === 'armhole')
  return [
    {
      id: 'stay',
      kind: 'stay',
      title: W.stay,
      lit: edges,
      passes: [W.stayRow(mm(STAY_OUTSIDE), neck, armholes)],
      mind: [W.staySoon, W.machine],
    },
  ]
}

export function interfaceSteps({ draft }: Planned): PlanStep[] {
  const facings = draft.pieces.filter((p) => /Facing$/.test(p.id))
  if (facings.length === 0) return []
  return [
    {
      id: 'interface',
      kind: 'interface',
      title: W.interface,
      lit: facings.flatMap((p) => p.edges.map((e) => ({ piece: p.id, edge: e.name }))),
      passes: [W.fuse, W.joinFacings],
      mind: [W.tryHeat],
    },
  ]
}

export function dartSteps(on: Planned): PlanStep[] {
  return bodyOf(on).flatMap((p): PlanStep[] => [
    ...p.darts.map((d): PlanStep => {
      const legs = distance(d.upperTip, d.inner) + distance(d.inner, d.open?.inner ?? d.lowerTip)
      return {
        id: `dart.${p.id}.${d.name}`,
        kind: 'darts',
        title: W.dart(d.name, p.id),
        lit: [{ piece: p.id, dart: d.name }],
        long: mm(legs),
        times: 2,
        passes: [W.fromTheWaist, W.knot],
        thread: sewnRows(1),
        // Vertical darts towards the centre, slanting ones down: from memory, common practice.
        press: W.pressTowardsCentreRound,
      }
    }),
    ...p.edgeDarts.map((d): PlanStep => ({
      id: `dart.${p.id}.${d.name}`,
      kind: 'darts',
      title: W.dart(d.name, p.id),
      lit: [{ piece: p.id, dart: d.name }],
      long: mm(distance(d.tip, d.upper)),
      times: 2,
      passes: [W.fromTheEdge(d.edge), W.knot],
      thread: sewnRows(1),
      press: d.edge === 'side' ? W.pressDown : W.pressTowardsCentre,
    })),
  ])
}

/** Sewn length of an edge; what a dart on it takes is folded away already. */
export const edgeLong = (piece: Piece, name: Parameters<typeof sewnLength>[1]) =>
  mm(sewnLength(piece, name))
