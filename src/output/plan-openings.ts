/** Openings: what is made while the piece is flat, what when the sides are closed, what at the end. */
import { mm, type Mm } from '../units/length.ts'
import type { Opening } from '../draft/opening.ts'
import type { PieceId } from '../draft/piece.ts'
import { atEdge } from './by-edge.ts'
import { finishAs, FINISHES } from './finish.ts'
import { bodyOf, edgeLong, skirtsOf, type Planned } from './plan-flat.ts'
import { sewnRows, type Lit, type PlanStep } from './plan-step.ts'
import { OPENING_WORDS as W } from './sewing-plan.words.ts'

const long = (o: Opening): Mm => mm(o.to - o.from)
const line = (piece: PieceId, name: 'zip' | 'slit' | 'keyhole' | 'centreFront'): Lit => ({
  piece,
  line: name,
})

/** Slit, centre seam with its zip, front facings. */
export function flatOpenings(on: Planned): PlanStep[] {
  const made = on.draft.openings.flatMap((o): PlanStep[] => {
    switch (o.kind) {
      case 'neckSlit':
        return [
          {
            id: 'opening.slit',
            kind: 'opening',
            title: W.slit,
            lit: [line('back', 'slit'), { piece: 'slitFacing', edge: 'outer' }],
            long: long(o),
            passes: [W.slitLay, W.slitSew(mm(3)), W.slitCut],
            thread: sewnRows(1),
            mind: [W.slitMind],
          },
        ]
      case 'keyhole':
        return [
          {
            id: 'opening.keyhole',
            kind: 'opening',
            title: W.keyhole,
            lit: [line('front', 'keyhole'), { piece: 'keyholeFacing', edge: 'outer' }],
            long: long(o),
            passes: [W.keyholeLay, W.keyholeSew, W.keyholeCut(mm(5))],
            thread: sewnRows(1),
            mind: [W.keyholeMind],
          },
        ]
      case 'backZip':
        // One that crosses a waist seam goes in when that is sewn.
        return crossesWaist(on) ? [] : [backZip(on, o)]
      case 'buttonedFront':
        return [
          {
            id: 'opening.front',
            kind: 'opening',
            title: W.front,
            lit: [
              { piece: 'front', edge: 'centre' },
              { piece: 'buttonFacing', edge: 'centre' },
            ],
            long: long(o),
            times: 2,
            allowance: atEdge(on.cutting.allowances, 'front', 'centre'),
            passes: finishAs('facing', atEdge(on.cutting.allowances, 'front', 'centre')).passes,
            thread: FINISHES.facing.thread,
            press: W.pressFront,
          },
        ]
      case 'sideZip':
        return []
    }
  })
  return [...made, ...plainCentres(on)]
}

const crossesWaist = (on: Planned): boolean => skirtsOf(on).length > 0
const backZip = (on: Planned, o: Opening): PlanStep =>
  seamWithZip(on, o, 'opening.backZip', W.backZip)

/** A centre that is a seam without an opening in it. */
function plainCentres(on: Planned): PlanStep[] {
  return bodyOf(on).flatMap((p): PlanStep[] => {
    const centre = p.edges.find((e) => e.name === 'centre')
    const opened =
      on.draft.openings.some((o) => o.kind === 'backZip') &&
      (p.id === 'back' || p.id === 'skirtBack')
    if (centre?.role !== 'seam' || opened) return []
    const by = atEdge(on.cutting.allowances, p.id, 'centre')
    const finish = finishAs(atEdge(on.cutting.finishes, p.id, 'centre'), by)
    return [
      {
        id: `seam.${p.id}.centre`,
        kind: 'seam',
        title: W.centre(p.id),
        lit: [{ piece: p.id, edge: 'centre' }],
        long: edgeLong(p, 'centre'),
        times: 1,
        allowance: by,
        passes: finish.passes,
        thread: finish.thread,
      },
    ]
  })
}

function seamWithZip(on: Planned, o: Opening, id: string, title: string): PlanStep {
  const by = atEdge(on.cutting.allowances, o.piece, o.edge)
  const piece = on.draft.pieces.find((p) => p.id === o.piece)
  return {
    id,
    kind: 'opening',
    title,
    lit: [{ piece: o.piece, edge: o.edge }, line(o.piece, 'zip')],
    ...(piece ? { long: edgeLong(piece, o.edge) } : {}),
    times: 1,
    allowance: by,
    passes: [...finishAs('zip', by).passes, W.zipLong(long(o))],
    thread: FINISHES.zip.thread,
    mind: [W.zipTry],
  }
}

/** A zip in the left side goes in when that side is sewn: its passes without the seam below. */
export const closedSteps = (on: Planned): PlanStep[] => [
  ...on.draft.openings
    .filter((o) => o.kind === 'backZip' && crossesWaist(on))
    .map((o): PlanStep => {
      const made = backZip(on, o)
      const skirt = skirtsOf(on).find((p) => p.id === 'skirtBack')
      const long = mm((made.long ?? 0) + (skirt ? edgeLong(skirt, 'centre') : 0))
      return { ...made, long, lit: [...made.lit, { piece: 'skirtBack', edge: 'centre' }] }
    }),
  ...on.draft.openings
    .filter((o) => o.kind === 'sideZip')
    .map((o): PlanStep => ({
      id: 'opening.sideZip',
      kind: 'opening',
      title: W.sideZip,
      lit: [line(o.piece, 'zip')],
      long: long(o),
      times: 1,
      allowance: atEdge(on.cutting.allowances, o.piece, 'side'),
      passes: [W.sideOpen(long(o)), W.sideSet],
      mind: [W.leftOnly],
    })),
]

/** Buttons and loops, when the hem is done. */
export const shutSteps = (on: Planned): PlanStep[] =>
  on.draft.openings.flatMap((o): PlanStep[] => {
    if (o.kind === 'buttonedFront')
      return [
        {
          id: 'shut.buttons',
          kind: 'last',
          title: W.buttons,
          lit: [line('front', 'centreFront')],
          passes: [W.tryButtonhole, W.placeButtons],
          mind: [W.pinAcross],
        },
      ]
    if (o.kind === 'keyhole')
      return [
        {
          id: 'shut.keyhole',
          kind: 'last',
          title: W.keyholeButton,
          lit: [line('front', 'keyhole')],
          passes: [W.sewKeyholeButton],
        },
      ]
    return o.kind === 'neckSlit'
      ? [
          {
            id: 'shut.loop',
            kind: 'last',
            title: W.loop,
            lit: [line('back', 'slit')],
            passes: [W.sewLoop],
          },
        ]
      : []
  })
