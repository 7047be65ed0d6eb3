/** Openings: what is made while the piece is flat, what when the sides are closed, what at the end. */
import { mm, type Mm } from '../units/length.ts'
import type { Opening } from '../draft/opening.ts'
import type { PieceId } from '../draft/piece.ts'
import { PIECE_WORDS } from '../draft/piece.words.ts'
import { atEdge } from './by-edge.ts'
import { finishAs } from './finish.ts'
import { bodyOf, edgeLong, skirtsOf, type Planned } from './plan-flat.ts'
import { says, type Lit, type PlanStep } from './plan-step.ts'

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
            title: 'Slit at the back neck',
            lit: [line('back', 'slit'), { piece: 'slitFacing', edge: 'outer' }],
            long: long(o),
            passes: [
              says`Lay the facing on the right side, middle on the slit line.`,
              says`Sew round the line ${mm(3)} from it at the neck, running to its foot in a point, one stitch across.`,
              says`Cut along the line to the last thread before the stitches, turn and press.`,
            ],
            mind: ['Sew first, cut after: a slit cut too early cannot be faced.'],
          },
        ]
      case 'keyhole':
        return [
          {
            id: 'opening.keyhole',
            kind: 'opening',
            title: 'Keyhole at the front neck',
            lit: [line('front', 'keyhole'), { piece: 'keyholeFacing', edge: 'outer' }],
            long: long(o),
            passes: [
              says`Lay the facing on the right side, its middle on the centre front, and pin the loop between at the neck.`,
              says`Sew round the drop on its line with a short stitch, from the neck down, round the foot and up again.`,
              says`Cut the drop out ${mm(5)} inside the stitches, clip the round nearly to them, turn and press.`,
            ],
            mind: [
              'Sew first, cut after: clip with the points of small scissors, away from your hand.',
            ],
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
            title: 'Front facings',
            lit: [
              { piece: 'front', edge: 'centre' },
              { piece: 'buttonFacing', edge: 'centre' },
            ],
            long: long(o),
            times: 2,
            allowance: atEdge(on.cutting.allowances, 'front', 'centre'),
            passes: finishAs('facing', atEdge(on.cutting.allowances, 'front', 'centre')).passes,
            press: says`Seam first as it lies, then turned, the front rolled a hair over the facing.`,
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
  seamWithZip(on, o, 'opening.backZip', 'Centre-back seam and its zip')

/** A centre that is a seam without an opening in it. */
function plainCentres(on: Planned): PlanStep[] {
  return bodyOf(on).flatMap((p): PlanStep[] => {
    const centre = p.edges.find((e) => e.name === 'centre')
    const opened =
      on.draft.openings.some((o) => o.kind === 'backZip') &&
      (p.id === 'back' || p.id === 'skirtBack')
    if (centre?.role !== 'seam' || opened) return []
    const by = atEdge(on.cutting.allowances, p.id, 'centre')
    return [
      {
        id: `seam.${p.id}.centre`,
        kind: 'seam',
        title: `Centre seam of the ${PIECE_WORDS[p.id]}`,
        lit: [{ piece: p.id, edge: 'centre' }],
        long: edgeLong(p, 'centre'),
        times: 1,
        allowance: by,
        passes: finishAs(atEdge(on.cutting.finishes, p.id, 'centre'), by).passes,
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
    passes: [...finishAs('zip', by).passes, says`The opening is ${long(o)} long.`],
    mind: ['Try the zip once before the ends are covered.'],
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
      title: 'Zip in the left side',
      lit: [line(o.piece, 'zip')],
      long: long(o),
      times: 1,
      allowance: atEdge(on.cutting.allowances, o.piece, 'side'),
      passes: [
        says`The left side was left open for ${long(o)}.`,
        says`Press its allowances under on the seam line and set the zip.`,
      ],
      mind: ['Left side only.'],
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
          title: 'Buttonholes and buttons',
          lit: [line('front', 'centreFront')],
          passes: [
            says`Try one buttonhole on a scrap of the same layers.`,
            says`Buttonholes on the right front, on the centre line; buttons on the left.`,
          ],
          mind: ['A pin across the end of each buttonhole stops the blade.'],
        },
      ]
    if (o.kind === 'keyhole')
      return [
        {
          id: 'shut.keyhole',
          kind: 'last',
          title: 'Button of the keyhole',
          lit: [line('front', 'keyhole')],
          passes: [says`Sew the button to the neck edge opposite the loop.`],
        },
      ]
    return o.kind === 'neckSlit'
      ? [
          {
            id: 'shut.loop',
            kind: 'last',
            title: 'Loop and button at the back neck',
            lit: [line('back', 'slit')],
            passes: [says`Sew the loop to one edge at the top and the button to the other.`],
          },
        ]
      : []
  })
