/** Seams and edges of the body and the sleeve, in the order of the plan. */
import { mm } from '../units/length.ts'
import type { EdgeName, Piece } from '../draft/piece.ts'
import { EDGE_WORDS, PIECE_WORDS } from '../draft/piece.words.ts'
import { atEdge } from './by-edge.ts'
import { finishAs, type FinishId, type Pass } from './finish.ts'
import { bodyOf, capital, edgeLong, halvesOf, skirtsOf, type Planned } from './plan-flat.ts'
import { ventLong } from './plan-shaped.ts'
import { says, type Lit, type PlanKind, type PlanStep } from './plan-step.ts'

const has = (p: Piece, name: EdgeName): boolean =>
  p.edges.some((e) => e.name === name && e.role !== 'fold')
const onHalves = (on: Planned, name: EdgeName): readonly Piece[] =>
  halvesOf(on).filter((p) => has(p, name))

interface Extra {
  readonly kind?: PlanKind
  readonly title?: string
  readonly before?: readonly Pass[]
  readonly press?: Pass
  readonly mind?: readonly string[]
  readonly times?: number
  /** Where the edge is finished by another than its own: beside a zip. */
  readonly finish?: FinishId
}

/** One edge of all the pieces given, finished as it was chosen. */
function step(
  on: Planned,
  name: EdgeName,
  pieces: readonly Piece[],
  extra: Extra = {},
): PlanStep[] {
  const [first] = pieces
  if (!first) return []
  const by = atEdge(on.cutting.allowances, first.id, name)
  const finish = finishAs(extra.finish ?? atEdge(on.cutting.finishes, first.id, name), by)
  /** A finish that says which way it is pressed is not told another. */
  const pressed = finish.passes.some(([first]) => /^Press /.test(`${first}`))
  return [
    {
      id: `${extra.kind ?? 'seam'}.${name}`,
      kind: extra.kind ?? 'seam',
      title: extra.title ?? `${capital(EDGE_WORDS[name])}s: ${finish.words}`,
      lit: pieces.map((p): Lit => ({ piece: p.id, edge: name })),
      long: edgeLong(first, name),
      times: extra.times ?? 2,
      allowance: by,
      passes: [...(extra.before ?? []), ...finish.passes],
      ...(extra.press && !pressed ? { press: extra.press } : {}),
      ...(extra.mind ? { mind: extra.mind } : {}),
    },
  ]
}

/** Shoulder or overarm, the first seams: front and back become one. */
export const overSteps = (on: Planned): PlanStep[] =>
  (['shoulder', 'overarm'] as const).flatMap((name) =>
    step(on, name, onHalves(on, name), {
      press: says`Towards the back, before anything crosses it.`,
      ...(name === 'overarm'
        ? { mind: ['It runs off the straight grain: sew a narrow tape in with it near the neck.'] }
        : {}),
    }),
  )

/** By the piece that finishes it, whatever the finish of a bare edge would be. */
export function neckSteps(on: Planned): PlanStep[] {
  const neck = onHalves(on, 'neck')
  const strip = on.draft.pieces.find((p) => p.id === 'neckStrip')
  const facings = on.draft.pieces.filter((p) => /NeckFacing$/.test(p.id))
  const whole = mm(2 * neck.reduce((sum, p) => sum + edgeLong(p, 'neck'), 0))
  const [made] = step(on, 'neck', neck, { kind: 'edge', times: 1 })
  if (!made) return []
  const lit: Lit[] = [
    ...made.lit,
    ...facings.map((p): Lit => ({ piece: p.id, edge: 'neck' })),
    ...(strip ? [{ piece: strip.id, edge: 'neck' } as const] : []),
  ]
  return [
    {
      ...made,
      title: facings.length > 0 ? 'Neck: shaped facing' : made.title.replace('Neck edges', 'Neck'),
      lit,
      long: whole,
      press: says`Over a rounded cushion, the edge rolled a hair to the inside.`,
    },
  ]
}

/** A wide sleeve edge off the grain drops: it hangs, is measured again and cut again. */
export function hangSteps(on: Planned): PlanStep[] {
  const pieces = onHalves(on, 'sleeveEdge')
  const [half] = pieces
  if (!half) return []
  const over = half.edges.find((e) => e.name === 'overarm' || e.name === 'shoulder')
  return [
    {
      id: 'hang.sleeveEdge',
      kind: 'hang',
      title: 'Let the sleeve edges hang',
      lit: pieces.map((p): Lit => ({ piece: p.id, edge: 'sleeveEdge' })),
      passes: [
        says`Hang it on a form or a hanger for a day and a night.`,
        says`Measure the sleeve edge again from the side neck, mark it to the drafted length and cut what has dropped.`,
        ...(over
          ? [
              [
                ...says`Drafted: ${edgeLong(half, over.name)} along the `,
                `${EDGE_WORDS[over.name]}.`,
              ],
            ]
          : []),
      ],
      hours: 24,
      mind: ['Bias drops unevenly: measure both sleeves at every hand’s width.'],
    },
  ]
}

/** A skirt cut from a circle drops where it hangs on the bias; its radius is measured again. */
export function hangHemSteps(on: Planned): PlanStep[] {
  const skirts = skirtsOf(on).filter((p) => has(p, 'hem'))
  const [skirt] = skirts
  if (!skirt || !/Circle$/.test(on.draft.choices.skirt)) return []
  return [
    {
      id: 'hang.hem',
      kind: 'hang',
      title: 'Let the skirt hang',
      lit: skirts.map((p): Lit => ({ piece: p.id, edge: 'hem' })),
      passes: [
        says`Hang it by the waist, on a form or clipped to a hanger, for a day and a night.`,
        says`Measure the radius of the hem again from the waist seam, mark it and cut what has dropped.`,
        says`Drafted: ${edgeLong(skirt, 'centre')} from the waist seam, all round.`,
      ],
      hours: 24,
      mind: ['It drops most half way between centre and side: measure at every hand’s width.'],
    },
  ]
}

/** Easier flat, before the side closes the sleeve. */
export const sleeveEdgeSteps = (on: Planned): PlanStep[] =>
  step(on, 'sleeveEdge', onHalves(on, 'sleeveEdge'), {
    kind: 'edge',
    mind: ['A wide sleeve catches: keep it from flame, hob, turning machine and drill.'],
  })

export function sideSteps(on: Planned): PlanStep[] {
  const zip = on.draft.openings.find((o) => o.kind === 'sideZip')
  const inOne = onHalves(on, 'sleeveEdge').length > 0
  const open = aboveVent(on, onHalves(on, 'side'))
  return step(on, 'side', onHalves(on, 'side'), {
    // The zip is a step of its own; the seam round it is pressed open to take it.
    ...(zip
      ? {
          finish: 'plainSeam',
          before: [
            says`Leave the left side open for ${mm(zip.to - zip.from)}, as marked.`,
            ...open,
          ],
        }
      : { before: open }),
    press: says`Along the seam first, then towards the back or open.`,
    ...(inOne
      ? {
          title: 'Side and underarm in one',
          mind: [
            'Where the underarm turns tightly: a second row close by, for a finger’s length on both sides, then clip to it.',
          ],
        }
      : {}),
  })
}

/** The seam ends above a vent that its own pieces carry. */
const aboveVent = (on: Planned, pieces: readonly Piece[]): readonly Pass[] =>
  pieces.some((p) => p.inner.some((i) => i.name === 'vent'))
    ? [
        says`Sew down to the mark of the vent and fasten off; the last ${mm(ventLong(on))} stay open.`,
      ]
    : []

/** The skirt closed, then sewn to the bodice: the seams that run into the waist are pressed first. */
export function skirtSteps(on: Planned): PlanStep[] {
  const skirts = skirtsOf(on)
  const waist = bodyOf(on).filter((p) => has(p, 'waist'))
  const long = mm(
    2 * skirts.filter((p) => has(p, 'waist')).reduce((s, p) => s + edgeLong(p, 'waist'), 0),
  )
  return [
    ...step(
      on,
      'side',
      skirts.filter((p) => has(p, 'side')),
      {
        title: `Side seams of the skirt`,
        before: aboveVent(on, skirts),
        press: says`Along the seam first, then towards the back or open.`,
      },
    ).map((s) => ({ ...s, id: 'seam.skirtSide' })),
    ...step(on, 'waist', waist, {
      title: `Waist seam: ${finishAs(on.cutting.finishes.waist, on.cutting.allowances.waist).words}`,
      times: 1,
      press: says`Towards the bodice.`,
      mind: [
        'Match centres, sides and darts first. Sew a tape in with it, so that it keeps its length.',
      ],
    }).map((s) => ({ ...s, long })),
  ]
}

/** An armhole without a sleeve, in the round. */
export function armholeSteps(on: Planned): PlanStep[] {
  const pieces = onHalves(on, 'armhole').filter((p) =>
    p.edges.some((e) => e.name === 'armhole' && e.role === 'edge'),
  )
  const strip = on.draft.pieces.find((p) => p.id === 'armholeStrip')
  const [made] = step(on, 'armhole', pieces, { kind: 'edge' })
  if (!made) return []
  return [
    {
      ...made,
      long: mm(pieces.reduce((sum, p) => sum + edgeLong(p, 'armhole'), 0)),
      lit: [...made.lit, ...(strip ? [{ piece: strip.id, edge: 'neck' } as const] : [])],
    },
  ]
}

/** The sleeve closed, then set: the seams that run into the armhole are finished and pressed. */
export function sleeveSteps(on: Planned): PlanStep[] {
  const sleeve = on.draft.pieces.find((p) => p.id === 'sleeve')
  if (!sleeve) return []
  const armholes = onHalves(on, 'armhole')
  const [closed] = step(on, 'frontSeam', [sleeve], { kind: 'sleeve', title: 'Sleeve seams' })
  const [set] = step(on, 'cap', [sleeve], {
    kind: 'sleeve',
    title: 'Set the sleeves',
    before: [
      // Two rows 3 and 6 mm inside the allowance: public sewing lessons.
      says`Two ease rows over the cap between the notches, ${mm(3)} and ${mm(6)} outside the seam line, longest stitch.`,
      says`Match underarm, notches and shoulder, draw the rows up until the cap lies to the armhole, no pleat on the seam line.`,
    ],
    mind: ['Tack and try on before the machine: both sleeves to the same notches.'],
  })
  return [
    ...(closed
      ? [
          {
            ...closed,
            lit: [...closed.lit, { piece: 'sleeve', edge: 'backSeam' } as const],
          },
        ]
      : []),
    ...(set
      ? [
          {
            ...set,
            lit: [...set.lit, ...armholes.map((p): Lit => ({ piece: p.id, edge: 'armhole' }))],
          },
        ]
      : []),
  ]
}

export function hemSteps(on: Planned): PlanStep[] {
  const halves = bodyOf(on).filter((p) => has(p, 'hem'))
  const sleeve = on.draft.pieces.filter((p) => p.id === 'sleeve' && has(p, 'hem'))
  const [made] = step(on, 'hem', halves, { kind: 'hem', times: 1 })
  const around = mm(2 * halves.reduce((sum, p) => sum + edgeLong(p, 'hem'), 0))
  const finish = finishAs(on.cutting.finishes.hem, on.cutting.allowances.hem)
  const mind =
    ventLong(on) > 0
      ? ['It ends at the vents: turn its ends in flush with their edges and sew them shut.']
      : undefined
  return [
    ...(made
      ? [{ ...made, title: `Hem: ${finish.words}`, long: around, ...(mind ? { mind } : {}) }]
      : []),
    ...step(on, 'hem', sleeve, { kind: 'hem', title: `Sleeve hems: ${finish.words}` }).map((s) => ({
      ...s,
      id: 'hem.sleeve',
    })),
  ]
}

/** What the order above does not know by name: sewn before the hem, never left out. */
export function otherSeams(on: Planned, done: readonly PlanStep[]): PlanStep[] {
  const lit = new Set(
    done.flatMap((s) => s.lit.flatMap((l) => ('edge' in l ? [`${l.piece}.${l.edge}`] : []))),
  )
  return on.draft.pieces
    .filter((p) => !p.cutAsDrawn && !/Facing$/.test(p.id))
    .flatMap((p) =>
      p.edges
        .filter((e) => e.role !== 'fold' && e.role !== 'hem' && !lit.has(`${p.id}.${e.name}`))
        .flatMap((e) =>
          step(on, e.name, [p]).map((s) => ({
            ...s,
            id: `seam.${p.id}.${e.name}`,
            title: `${capital(EDGE_WORDS[e.name])} of the ${PIECE_WORDS[p.id]}`,
          })),
        ),
    )
}
