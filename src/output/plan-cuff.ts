/**
 * Slits and cuffs of sleeves: the slit is bound while the sleeve lies flat, the cuff is made by
 * itself and set once the sleeve is a tube. Public dressmaking lessons on a continuous binding and
 * a straight cuff; widths common practice, no source.
 */
import { pathLength } from '../geometry/length.ts'
import { mm } from '../units/length.ts'
import type { Piece } from '../draft/piece.ts'
import { atEdge } from './by-edge.ts'
import { edgeLong, type Planned } from './plan-flat.ts'
import { sewnRows, type PlanStep } from './plan-step.ts'
import { CUFF_PLAN_WORDS as W } from './plan-cuff.words.ts'
import { FLAT_WORDS, OPENING_WORDS } from './sewing-plan.words.ts'

const part = (on: Planned, id: Piece['id']): Piece | undefined =>
  on.draft.pieces.find((p) => p.id === id)
/** One that is buttoned has an end that lies under. */
const laps = (cuff: Piece): boolean => cuff.points['C'] !== undefined
/** What is trimmed inside a cuff, turned in at a binding and sewn from its edge. */
const TURN = mm(6)

export function slitSteps(on: Planned): PlanStep[] {
  const slit = part(on, 'sleeve')?.inner.find((i) => i.name === 'slit')
  if (!slit || !part(on, 'sleeveBinding')) return []
  return [
    {
      id: 'opening.sleeveSlit',
      kind: 'sleeve',
      title: W.slits,
      lit: [
        { piece: 'sleeve', line: 'slit' },
        { piece: 'sleeveBinding', edge: 'sewnOn' },
      ],
      long: mm(2 * pathLength(slit.path)),
      times: 2,
      passes: [W.stitchSlit(mm(3)), W.cutSlit, W.layStrip(TURN), W.turnStrip(TURN), W.foldStrip],
      thread: sewnRows(3),
      press: W.pressSlit,
      mind: [W.sewThenCut, W.mirrored],
    },
  ]
}

export const interfaceCuffs = (on: Planned): PlanStep[] =>
  part(on, 'cuff')
    ? [
        {
          id: 'interface.cuff',
          kind: 'interface',
          title: W.interface,
          lit: (['sleeveEnd', 'end', 'outer', 'start'] as const).map((edge) => ({
            piece: 'cuff',
            edge,
          })),
          passes: [W.fuse],
          mind: [FLAT_WORDS.tryHeat],
        },
      ]
    : []

/** Made, then set to the closed sleeve. */
export function cuffSteps(on: Planned): PlanStep[] {
  const [cuff, sleeve] = [part(on, 'cuff'), part(on, 'sleeve')]
  if (!cuff || !sleeve) return []
  const by = atEdge(on.cutting.allowances, 'sleeve', 'sleeveEnd')
  const long = edgeLong(sleeve, 'sleeveEnd')
  const buttoned = laps(cuff)
  return [
    {
      id: 'sleeve.cuff',
      kind: 'sleeve',
      title: W.make,
      lit: [
        { piece: 'cuff', edge: 'start' },
        { piece: 'cuff', edge: 'end' },
        { piece: 'cuff', edge: 'outer' },
      ],
      long: mm(edgeLong(cuff, 'end') / (buttoned ? 2 : 1)),
      times: buttoned ? 4 : 2,
      allowance: atEdge(on.cutting.allowances, 'cuff', 'end'),
      passes: buttoned ? [W.turnUnder, W.sewEnds, W.turnOut(TURN)] : [W.turnUnder, W.sewRing],
      thread: sewnRows(1),
      press: W.pressCuff,
      mind: [W.iron],
    },
    {
      id: 'sleeve.setCuff',
      kind: 'sleeve',
      title: W.set,
      lit: [
        { piece: 'sleeve', edge: 'sleeveEnd' },
        { piece: 'cuff', edge: 'sleeveEnd' },
      ],
      long,
      times: 2,
      allowance: by,
      passes: [
        // Rows as over a sleeve cap: public sewing lessons.
        ...((sleeve.gathers ?? []).length > 0 ? [W.gatherRows(mm(3), mm(6)), W.drawUp(long)] : []),
        buttoned ? W.matchSlit : W.matchSeam,
        W.sew(by),
        W.sewInside,
      ],
      thread: sewnRows(4),
      press: W.pressSet,
      ...(buttoned ? { mind: [W.mirrored] } : {}),
    },
  ]
}

/** When the hems are done. */
export function shutSleeves(on: Planned): PlanStep[] {
  const cuff = part(on, 'cuff')
  if (cuff)
    return laps(cuff)
      ? [
          {
            id: 'shut.cuffs',
            kind: 'last',
            title: W.buttons,
            lit: [{ piece: 'cuff', edge: 'start' }],
            passes: [OPENING_WORDS.tryButtonhole, W.placeButton],
            mind: [OPENING_WORDS.pinAcross],
          },
        ]
      : []
  return part(on, 'sleeveBinding')
    ? [
        {
          id: 'shut.sleeveSlits',
          kind: 'last',
          title: W.loops,
          lit: [{ piece: 'sleeve', line: 'slit' }],
          passes: [W.sewLoop],
        },
      ]
    : []
}
