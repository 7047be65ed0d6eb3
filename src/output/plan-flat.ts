/** What is done while the pieces lie flat: cloth made ready, stay rows, interfacing, darts. */
import { distance } from '../geometry/point.ts'
import { mm } from '../units/length.ts'
import { sewnLength, type Piece } from '../draft/piece.ts'
import { DART_WORDS, EDGE_WORDS, PIECE_WORDS } from '../draft/piece.words.ts'
import type { Draft } from '../draft/draft.ts'
import type { ClothAdvice } from './cloth-kind.ts'
import type { Cutting } from './cutting.ts'
import { says, type PlanStep } from './plan-step.ts'
import { STAY_OUTSIDE } from './stay.ts'

export interface Planned {
  readonly draft: Draft
  readonly cutting: Cutting
}

export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)
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
      title: `Make the ${cloth.words} ready`,
      lit: [],
      passes: [
        [cloth.prepare],
        says`Straighten both ends along a thread, pull the cloth square, steam it and let it dry flat.`,
      ],
      ...(warning || cloth.mind.length > 0
        ? { mind: [...(warning ? [warning] : []), ...cloth.mind] }
        : {}),
    },
    {
      id: 'prepare.cut',
      kind: 'prepare',
      title: 'Cut and mark',
      lit: [],
      passes: [
        says`Lay the pieces by the cutting plan, cut, snip the notches.`,
        says`Mark darts, openings and centre lines on the wrong side before the paper comes off.`,
      ],
      mind: ['Scissors, blades and pins: cut away from your hand and count the pins back.'],
    },
  ]
}

/**
 * Directions of 4-H sewing helper 11.135, Staystitching: neck from shoulder to centre, a V from
 * its point up, armholes from the shoulder down; never a long bias edge.
 */
const DIRECTION = {
  neck: 'from the shoulder to the centre',
  vee: 'from the point of the V up',
  armhole: 'from the shoulder down',
} as const

export function staySteps(on: Planned): PlanStep[] {
  const edges = halvesOf(on).flatMap((p) =>
    p.edges
      .filter((e) => e.name === 'neck' || e.name === 'armhole')
      .map((e) => ({ piece: p.id, edge: e.name })),
  )
  if (edges.length === 0) return []
  const neck = on.draft.choices.neckShape === 'vee' ? DIRECTION.vee : DIRECTION.neck
  const armholes = edges.some((e) => e.edge === 'armhole')
  return [
    {
      id: 'stay',
      kind: 'stay',
      title: 'Stay the edges that stretch',
      lit: edges,
      passes: [
        [
          ...says`One layer, ordinary stitch, ${mm(STAY_OUTSIDE)} outside the seam line: `,
          `the neck ${neck}${armholes ? `, the armhole ${DIRECTION.armhole}` : ''}.`,
        ],
      ],
      mind: ['As soon as the paper is off, before the piece is hung or handled.'],
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
      title: 'Interface the facings',
      lit: facings.flatMap((p) => p.edges.map((e) => ({ piece: p.id, edge: e.name }))),
      passes: [
        says`Lay the interfacing on the wrong side of each facing, without its allowances, and press it on.`,
        says`Join the facings where they meet, press the seams open, neaten the free edge.`,
      ],
      mind: ['Try heat and time on a scrap of both first.'],
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
        title: `${capital(DART_WORDS[d.name])} of the ${PIECE_WORDS[p.id]}`,
        lit: [{ piece: p.id, dart: d.name }],
        long: mm(legs),
        times: 2,
        passes: [
          says`Fold on its middle, sew from the waist to either tip, the last three stitches along the fold.`,
          says`Knot the thread ends, sew no turn back at the tip.`,
        ],
        // Vertical darts towards the centre, slanting ones down: from memory, common practice.
        press: says`Towards the centre, over a rounded cushion, no farther than the tip.`,
      }
    }),
    ...p.edgeDarts.map((d): PlanStep => ({
      id: `dart.${p.id}.${d.name}`,
      kind: 'darts',
      title: `${capital(DART_WORDS[d.name])} of the ${PIECE_WORDS[p.id]}`,
      lit: [{ piece: p.id, dart: d.name }],
      long: mm(distance(d.tip, d.upper)),
      times: 2,
      passes: [
        [
          `Fold on its middle, sew from the ${EDGE_WORDS[d.edge]} to the tip, the last three stitches along the fold.`,
        ],
        says`Knot the thread ends, sew no turn back at the tip.`,
      ],
      press:
        d.edge === 'side'
          ? says`Down, over a rounded cushion, no farther than the tip.`
          : says`Towards the centre, no farther than the tip.`,
    })),
  ])
}

/** Sewn length of an edge; what a dart on it takes is folded away already. */
export const edgeLong = (piece: Piece, name: Parameters<typeof sewnLength>[1]) =>
  mm(sewnLength(piece, name))
