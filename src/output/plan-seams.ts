/** Seams and edges of the body and the sleeve, in the order of the plan. */
import { mm } from '../units/length.ts'
import { CHOICES } from '../draft/choices.ts'
import { edge, type EdgeName, type Piece } from '../draft/piece.ts'
import { pathEnd, pathStart } from '../geometry/path.ts'
import { cross, dot, subtract, unit, type Point } from '../geometry/point.ts'
import { atEdge } from './by-edge.ts'
import { finishAs, type FinishId } from './finish.ts'
import type { Pass } from './pass.ts'
import { bodyOf, edgeLong, halvesOf, skirtsOf, type Planned } from './plan-flat.ts'
import { cuffSteps, slitSteps } from './plan-cuff.ts'
import { CUFF_PLAN_WORDS } from './plan-cuff.words.ts'
import { ventLong } from './plan-shaped.ts'
import type { Lit, PlanKind, PlanStep } from './plan-step.ts'
import { SEAM_WORDS as W } from './sewing-plan.words.ts'

const has = (p: Piece, name: EdgeName): boolean =>
  p.edges.some((e) => e.name === name && e.role !== 'fold')
const onHalves = (on: Planned, name: EdgeName): readonly Piece[] =>
  halvesOf(on).filter((p) => has(p, name))

interface Extra {
  readonly kind?: PlanKind
  readonly title?: (finish: string) => string
  readonly before?: readonly Pass[]
  /** Sewn along all of it beside what the finish asks for. */
  readonly rows?: number
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
  return [
    {
      id: `${extra.kind ?? 'seam'}.${name}`,
      kind: extra.kind ?? 'seam',
      title: extra.title?.(finish.words) ?? W.seams(name, finish.words),
      lit: pieces.map((p): Lit => ({ piece: p.id, edge: name })),
      long: edgeLong(first, name),
      times: extra.times ?? 2,
      allowance: by,
      passes: [...(extra.before ?? []), ...finish.passes],
      thread: { ...finish.thread, rows: finish.thread.rows + (extra.rows ?? 0) },
      ...(extra.press && !finish.pressed ? { press: extra.press } : {}),
      ...(extra.mind ? { mind: extra.mind } : {}),
    },
  ]
}

/** Shoulder or overarm, the first seams: front and back become one. */
export const overSteps = (on: Planned): PlanStep[] =>
  (['shoulder', 'overarm'] as const).flatMap((name) =>
    step(on, name, onHalves(on, name), {
      press: W.pressOver,
      ...(name === 'overarm' ? { mind: [W.overarmTape] } : {}),
    }),
  )

/** By the piece that finishes it, whatever the finish of a bare edge would be. */
export function neckSteps(on: Planned): PlanStep[] {
  const neck = onHalves(on, 'neck')
  const strip = on.draft.pieces.find((p) => p.id === 'neckStrip')
  const facings = on.draft.pieces.filter((p) => /NeckFacing$/.test(p.id))
  const whole = mm(2 * neck.reduce((sum, p) => sum + edgeLong(p, 'neck'), 0))
  const [made] = step(on, 'neck', neck, { kind: 'edge', title: W.neck, times: 1 })
  if (!made) return []
  const lit: Lit[] = [
    ...made.lit,
    ...facings.map((p): Lit => ({ piece: p.id, edge: 'neck' })),
    ...(strip ? [{ piece: strip.id, edge: 'neck' } as const] : []),
  ]
  return [
    {
      ...made,
      title: facings.length > 0 ? W.neckFacing : made.title,
      lit,
      long: whole,
      press: W.pressNeck,
    },
  ]
}

/** A wide sleeve edge off the grain drops: it hangs, is measured again and cut again. */
export function hangSteps(on: Planned): PlanStep[] {
  const pieces = onHalves(on, 'sleeveEdge')
  const [half] = pieces
  if (!half) return []
  const over = half.edges.find((e) => e.name === 'overarm' || e.name === 'shoulder')
  const struck = pieces.map(sleeveRadius).filter((s) => s !== undefined)
  return [
    {
      id: 'hang.sleeveEdge',
      kind: 'hang',
      title: W.hangSleeves,
      lit: pieces.map((p): Lit => ({ piece: p.id, edge: 'sleeveEdge' })),
      passes: [
        W.hangADay,
        ...(struck.length === pieces.length ? [...struck, W.cutDropped] : [W.measureSleeveEdge]),
        ...(over ? [W.drafted(edgeLong(half, over.name), over.name)] : []),
      ],
      hours: 24,
      mind: [W.biasDrops],
    },
  ]
}

/**
 * How its arc was struck: its centre lies on the overarm, in the drafting of a sleeve cut in one. An
 * edge that a correction drew anew has none that she could measure from.
 */
function sleeveRadius(half: Piece): Pass | undefined {
  const over = half.edges.find((e) => e.name === 'overarm')
  const [arc, other] = edge(half, 'sleeveEdge').path.flatMap((s) =>
    s.kind === 'arc' && s.radius > ROUNDED_CORNER ? [s] : [],
  )
  if (!over || !arc || other) return undefined
  const [neck, end] = [pathStart(over.path), pathEnd(over.path)].sort((a, b) => a.x - b.x) as [
    Point,
    Point,
  ]
  const way = unit(subtract(end, neck))
  const to = subtract(arc.centre, neck)
  if (Math.abs(cross(way, to)) > OFF_THE_SEAM) return undefined
  const from = dot(way, to)
  return W.radius(half.id, mm(Math.abs(from) < OFF_THE_SEAM ? 0 : from), mm(arc.radius))
}
/** A smaller arc is the rounded corner of the underarm: its choice ends there. */
const ROUNDED_CORNER = CHOICES.cornerRadius.max
/** Less cannot be seen on a tape, mm. */
const OFF_THE_SEAM = 1

/** A skirt cut from a circle drops where it hangs on the bias; its radius is measured again. */
export function hangHemSteps(on: Planned): PlanStep[] {
  const skirts = skirtsOf(on).filter((p) => has(p, 'hem'))
  const [skirt] = skirts
  if (!skirt || !/Circle$/.test(on.draft.choices.skirt)) return []
  return [
    {
      id: 'hang.hem',
      kind: 'hang',
      title: W.hangSkirt,
      lit: skirts.map((p): Lit => ({ piece: p.id, edge: 'hem' })),
      passes: [W.hangByTheWaist, W.measureHem, W.draftedRound(edgeLong(skirt, 'centre'))],
      hours: 24,
      mind: [W.skirtDrops],
    },
  ]
}

/** Easier flat, before the side closes the sleeve. */
export const sleeveEdgeSteps = (on: Planned): PlanStep[] =>
  step(on, 'sleeveEdge', onHalves(on, 'sleeveEdge'), {
    kind: 'edge',
    mind: [W.sleeveCatches],
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
          before: [W.leaveOpen(mm(zip.to - zip.from)), ...open],
        }
      : { before: open }),
    press: W.pressSide,
    ...(inOne
      ? {
          title: () => W.sideAndUnderarm,
          mind: [W.underarmTight],
        }
      : {}),
  })
}

/** The seam ends above a vent that its own pieces carry. */
const aboveVent = (on: Planned, pieces: readonly Piece[]): readonly Pass[] =>
  pieces.some((p) => p.inner.some((i) => i.name === 'vent')) ? [W.aboveVent(mm(ventLong(on)))] : []

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
        title: () => W.skirtSides,
        before: aboveVent(on, skirts),
        press: W.pressSide,
      },
    ).map((s) => ({ ...s, id: 'seam.skirtSide' })),
    ...step(on, 'waist', waist, {
      title: () => W.waist(finishAs(on.cutting.finishes.waist, on.cutting.allowances.waist).words),
      times: 1,
      press: W.pressWaist,
      mind: [W.waistTape],
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
  const [closed] = step(on, 'frontSeam', [sleeve], { kind: 'sleeve', title: () => W.sleeveSeams })
  const [set] = step(on, 'cap', [sleeve], {
    kind: 'sleeve',
    title: () => W.setSleeves,
    before: [
      // Two rows 3 and 6 mm inside the allowance: public sewing lessons.
      W.easeRows(mm(3), mm(6)),
      W.matchCap,
    ],
    rows: 2,
    mind: [W.tackSleeves],
  })
  return [
    ...slitSteps(on),
    ...(closed
      ? [
          {
            ...closed,
            lit: [...closed.lit, { piece: 'sleeve', edge: 'backSeam' } as const],
          },
        ]
      : []),
    ...cuffSteps(on),
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
  const mind = ventLong(on) > 0 ? [W.hemAtVents] : undefined
  return [
    ...(made
      ? [{ ...made, title: W.hem(finish.words), long: around, ...(mind ? { mind } : {}) }]
      : []),
    ...step(on, 'hem', sleeve, { kind: 'hem', title: () => W.sleeveHems(finish.words) }).map(
      (s) => ({
        ...s,
        id: 'hem.sleeve',
        ...(sleeve.some((p) => p.inner.some((i) => i.name === 'slit'))
          ? { mind: [CUFF_PLAN_WORDS.hemAtSlit] }
          : {}),
      }),
    ),
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
            title: W.ofPiece(e.name, p.id),
          })),
        ),
    )
}
