import { describe, expect, test } from 'vitest'
import type { GarmentId } from '../../src/draft/draft.ts'
import type { Choices } from '../../src/draft/choices.ts'
import { GARMENTS, isGarmentId, standardFor } from '../../src/draft/garments.ts'
import { draft } from '../../src/draft/make.ts'
import { sewnLength } from '../../src/draft/piece.ts'
import { toSew } from '../../src/draft/to-cut.ts'
import { correctedDraft } from '../../src/fitting/apply.ts'
import { pathLength } from '../../src/geometry/length.ts'
import { distance } from '../../src/geometry/point.ts'
import { cuttingOf, USUAL_CUT } from '../../src/output/cutting.ts'
import { clothWarning, drapes, type ClothKind } from '../../src/output/cloth-kind.ts'
import { clothOffers } from '../../src/output/cloth-offers.ts'
import { litPaths, litPieces } from '../../src/output/lit-lines.ts'
import { planLines } from '../../src/output/plan-pages.ts'
import { planNumbers, planSentences } from '../../src/output/plan-words.ts'
import type { PlanStep } from '../../src/output/plan-step.ts'
import { sewingPlan } from '../../src/output/sewing-plan.ts'
import { formatLength } from '../../src/units/format.ts'
import { mm } from '../../src/units/length.ts'
import { body, INVENTED_BODIES, MIDDLE } from '../bodies.ts'

const drafted = (garment: GarmentId, choices: Partial<Choices> = {}, numbers = MIDDLE) =>
  draft(garment, body({}, numbers), { ...standardFor(garment), ...choices })
function planned(garment: GarmentId, choices: Partial<Choices> = {}): PlanStep[] {
  const d = drafted(garment, choices)
  return sewingPlan(d, cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' }), { kind: 'lightCotton' })
}
/** As it is sewn: a front with a style seam in its two parts. */
function shaped(garment: GarmentId, choices: Partial<Choices>) {
  const d = toSew(drafted(garment, choices))
  const cutting = cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' })
  return { d, cutting, steps: sewingPlan(d, cutting, { kind: 'lightCotton' }) }
}
const ids = (steps: readonly PlanStep[]): string[] => steps.map((s) => s.id)
/** Do these come one after the other in the plan? */
function inOrder(steps: readonly PlanStep[], ...wanted: readonly string[]): void {
  const places = wanted.map((id) => ids(steps).indexOf(id))
  expect(places, wanted.join(' before ')).toEqual([...places].sort((a, b) => a - b))
  expect(
    Math.min(...places),
    `${wanted.join(', ')} in ${ids(steps).join(', ')}`,
  ).toBeGreaterThanOrEqual(0)
}

describe('kinds of cloth', () => {
  test('silk asks for French seams and a rolled edge where others are chosen', () => {
    // A costume manual of 1922: French seams at shoulder and underarm for silk; see cloth-kind.ts.
    const d = drafted('blouse')
    const plain = { finish: 'plainSeam' } as const
    const wishes = { ...USUAL_CUT, cloth: { overarm: plain, side: plain } }
    const offers = clothOffers(d, wishes, 'silk')
    const told = offers.map(({ row, offer }) => [row.name, row.finish, offer])
    expect(told).toContainEqual(['overarm', 'plainSeam', 'frenchSeam'])
    const taken = { ...wishes, cloth: { overarm: { finish: 'frenchSeam' } as const } }
    expect(clothOffers(d, taken, 'silk').map((o) => o.row.name)).not.toContain('overarm')
    expect(clothOffers(d, wishes, 'lightCotton')).toEqual([])
  })
})

describe('what is lit', () => {
  test('every step that is sewn lights lines that are on its pieces', () => {
    for (const garment of ['blouse', 'sleeve', 'dress'] as const) {
      const d = drafted(garment)
      const steps = sewingPlan(d, cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' }), {
        kind: 'lightCotton',
      }).filter((s) => s.lit.length > 0)
      expect(steps.length).toBeGreaterThan(4)
      for (const s of steps) {
        const pieces = litPieces(s, d.pieces)
        const paths = pieces.flatMap((p) => litPaths(s, p))
        expect(paths.length, `${garment} ${s.id}`).toBeGreaterThanOrEqual(pieces.length)
        expect(pieces.length, `${garment} ${s.id}`).toBeGreaterThan(0)
      }
    }
  })
})

test('a step in numbers and sentences', () => {
  const step: PlanStep = {
    id: 's',
    kind: 'seam',
    title: 'Side',
    lit: [],
    long: mm(395),
    times: 2,
    allowance: mm(16),
    passes: [['Sew ', mm(16), ' from the edge.']],
    press: ['Towards the back.'],
  }
  expect(planNumbers(step, { unit: 'cm', inchStep: 8 })).toBe('39.5 cm, twice; allowance 1.6 cm')
  expect(planSentences(step, { unit: 'inch', inchStep: 8 })).toEqual([
    'Sew 5/8 in from the edge.',
    'Press: towards the back.',
  ])
})

describe('order of sewing', () => {
  test('blouse with sleeves cut in one', () => {
    // Order of a blouse: public dressmaking lessons; stay first: 4-H sewing helper 11.135; bias
    // edges hang before they are hemmed, edges flat before the side: common practice, no source.
    inOrder(
      planned('blouse'),
      'prepare.cut',
      'stay',
      'dart.front.waistDart',
      'opening.slit',
      'tryOn.tacked',
      'seam.overarm',
      'edge.neck',
      'hang.sleeveEdge',
      'edge.sleeveEdge',
      'seam.side',
      'opening.sideZip',
      'tryOn.hem',
      'hem.hem',
      'last.press',
    )
  })

  test('set-in sleeve: shoulder, neck, side, sleeve seam, set', () => {
    // "Seams entering the armhole are finished and pressed first": a handbook of 1925, from memory which.
    inOrder(
      planned('sleeve'),
      'dart.front.bustDart',
      'seam.shoulder',
      'edge.neck',
      'seam.side',
      'sleeve.frontSeam',
      'sleeve.cap',
      'hem.hem',
      'hem.sleeve',
    )
  })

  test('dress: bodice and skirt closed apart, then the waist seam, then the zip', () => {
    // Order of a dress with a waist seam: common practice, no source.
    const steps = planned('dress', { opening: 'sideZip' })
    inOrder(planned('dress', { opening: 'backZip' }), 'seam.waist', 'opening.backZip', 'hem.hem')
    inOrder(
      steps,
      'seam.shoulder',
      'seam.side',
      'seam.skirtSide',
      'seam.waist',
      'opening.sideZip',
      'hem.hem',
    )
  })

  test('no sleeve: the armhole is bound when the side is sewn', () => {
    inOrder(planned('sleeveless'), 'seam.shoulder', 'seam.side', 'edge.armhole', 'hem.hem')
  })

  test.each([
    ['backZip', ['opening.backZip', 'seam.shoulder', 'edge.neck']],
    ['buttonedFront', ['opening.front', 'edge.neck', 'hem.hem', 'shut.buttons']],
  ] as const)('opening: %s', (opening, wanted) => {
    inOrder(planned('sleeveless', { opening }), ...wanted)
  })

  test('gathers are drawn up while the front lies flat, to the length of the seam', () => {
    // Two rows either side of the seam line, the seam sewn with the gathers on top: public lessons.
    const { d, steps } = shaped('sleeveless', { dartAs: 'gathers', dartAt: 'shoulder' })
    inOrder(steps, 'stay', 'gathers.front.shoulder', 'tryOn.tacked', 'seam.shoulder')
    const front = d.pieces.find((p) => p.id === 'front')!
    const gather = steps.find((s) => s.id === 'gathers.front.shoulder')!
    const takes = front.gathers?.[0]?.takes ?? NaN
    // What the gathers take is what the front's shoulder is longer than the back's, which it is sewn to.
    const back = d.pieces.find((p) => p.id === 'back')!
    const shoulder = front.edges.find((e) => e.name === 'shoulder')!
    expect(pathLength(shoulder.path) - takes).toBeCloseTo(sewnLength(back, 'shoulder'), 0)
    const words = planSentences(gather, { unit: 'cm', inchStep: 8 }).join(' ')
    expect(words).toContain(
      `Draw both up to ${formatLength(mm((gather.long ?? 0) - takes), { unit: 'cm', inchStep: 8 })}`,
    )
  })

  test('a style seam is sewn before any seam that crosses it, and no piece of it is forgotten', () => {
    // Curved seams: the inward curve stayed and clipped, sewn uppermost; public sewing lessons.
    const { d, cutting, steps } = shaped('sleeve', { dartAs: 'seam', dartAt: 'armhole' })
    expect(d.pieces.map((p) => p.id)).toContain('sideFront')
    inOrder(steps, 'stay', 'seam.styleSeam', 'seam.shoulder', 'seam.side', 'sleeve.cap', 'hem.hem')
    const style = steps.find((s) => s.id === 'seam.styleSeam')!
    expect(style.lit.map((l) => l.piece)).toEqual(['front', 'sideFront'])
    expect(style.allowance).toBe(cutting.allowances.styleSeam)
    // Both parts are as long as each other, or it could not be sewn.
    const [a, b] = ['front', 'sideFront'].map((id) =>
      sewnLength(
        d.pieces.find((p) => p.id === id)!,
        'styleSeam',
      ),
    )
    expect(a).toBeCloseTo(b ?? NaN, 0)
    const side = steps.find((s) => s.id === 'seam.side')!
    expect(side.lit.map((l) => l.piece)).toEqual(['back', 'sideFront'])
    expect(ids(steps).filter((id) => /sideFront/.test(id))).toEqual([])
  })

  test('vents: the side ends above them, then they are turned in, before the hem', () => {
    // Opening vents left in the side seams: a costume manual of 1922.
    for (const [garment, seam] of [
      ['blouse', 'seam.side'],
      ['dress', 'seam.skirtSide'],
    ] as const) {
      const { steps } = shaped(garment, { ventLength: mm(120), lengthBelowWaist: mm(300) })
      inOrder(steps, seam, 'opening.vent', 'tryOn.hem', 'hem.hem')
      const vent = steps.find((s) => s.id === 'opening.vent')!
      expect([Math.round(vent.long ?? 0), vent.times]).toEqual([120, 4])
      const side = planSentences(
        steps.find((s) => s.id === seam)!,
        { unit: 'cm', inchStep: 8 },
      )
      expect(side.join(' ')).toContain('the last 12.0 cm stay open')
      expect(steps.find((s) => s.id === 'hem.hem')?.mind?.join()).toMatch(/ends at the vents/)
    }
    expect(ids(planned('blouse'))).not.toContain('opening.vent')
  })

  test('keyhole and slit are faced while the piece is flat, before the neck; their buttons come last', () => {
    inOrder(
      planned('blouse', { opening: 'keyhole' }),
      'opening.keyhole',
      'edge.neck',
      'shut.keyhole',
    )
    inOrder(planned('blouse', { opening: 'neckSlit' }), 'opening.slit', 'edge.neck', 'shut.loop')
  })

  test('a skirt cut from a circle hangs a day before its hem, and says how long it was drafted', () => {
    const { d, steps } = shaped('dress', { skirt: 'halfCircle' })
    inOrder(steps, 'seam.waist', 'hang.hem', 'tryOn.hem', 'hem.hem')
    const hang = steps.find((s) => s.id === 'hang.hem')!
    expect(hang.hours).toBe(24)
    const skirt = d.pieces.find((p) => p.id === 'skirtBack')!
    const long = formatLength(mm(sewnLength(skirt, 'centre')), { unit: 'cm', inchStep: 8 })
    expect(planSentences(hang, { unit: 'cm', inchStep: 8 }).join(' ')).toContain(`Drafted: ${long}`)
    expect(ids(planned('dress', { skirt: 'straight' }))).not.toContain('hang.hem')
  })

  test('the edges that hang wait a day and are measured again', () => {
    const hang = planned('blouse').find((s) => s.id === 'hang.sleeveEdge')
    expect(hang?.hours).toBe(24)
  })

  test.each(INVENTED_BODIES)(
    'the radius of the sleeve edge is told as %s drafts it',
    (_, numbers) => {
      // By hand: the step of the draft strikes the edge from its lettered point K, or from S.
      const d = drafted('blouse', {}, numbers)
      const steps = sewingPlan(d, cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' }), { kind: 'rayon' })
      const said = planSentences(
        steps.find((s) => s.id === 'hang.sleeveEdge')!,
        {
          unit: 'cm',
          inchStep: 8,
        },
      )
      for (const id of ['back', 'front'] as const) {
        const { S, K, T } = d.pieces.find((p) => p.id === id)!.points
        const centre = K ?? S!
        const cm = (v: number) => formatLength(mm(v), { unit: 'cm', inchStep: 8 })
        const own = said.find((t) => t.toLowerCase().startsWith(`${id}: `))
        expect(own).toContain(`drafted at ${cm(distance(centre, T!))} all round`)
        expect(own).toContain(cm(distance(centre, S!)))
      }
    },
  )
})

describe('completeness', () => {
  test.each(
    Object.keys(GARMENTS)
      .filter(isGarmentId)
      .flatMap((g) => INVENTED_BODIES.map(([who, numbers]) => [g, who, numbers] as const)),
  )('%s of %s: every seam, edge, hem and dart once, each id once', (garment, _who, numbers) => {
    const d = drafted(garment, {}, numbers)
    const steps = sewingPlan(d, cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' }), { kind: 'rayon' })
    expect(new Set(ids(steps)).size).toBe(steps.length)
    const sewn = steps.filter(
      (s) => s.kind !== 'stay' && s.kind !== 'hang' && s.kind !== 'interface',
    )
    for (const p of d.pieces.filter((q) => !q.cutAsDrawn && !/Facing$/.test(q.id)))
      for (const e of p.edges.filter((x) => x.role !== 'fold')) {
        const here = sewn.filter((s) =>
          s.lit.some((l) => 'edge' in l && l.piece === p.id && l.edge === e.name),
        )
        expect(here.length, `${p.id}.${e.name}`).toBeGreaterThanOrEqual(1)
      }
    for (const p of d.pieces)
      for (const dart of [...p.darts, ...p.edgeDarts])
        expect(steps.filter((s) => s.id === `dart.${p.id}.${dart.name}`)).toHaveLength(1)
  })

  test('lengths and allowances are those of the draft', () => {
    const d = drafted('blouse')
    const cutting = cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' })
    const steps = sewingPlan(d, cutting, { kind: 'silk' })
    const [back, front] = [d.pieces[0]!, d.pieces[1]!]
    const neck = steps.find((s) => s.id === 'edge.neck')!
    expect(neck.long).toBeCloseTo(2 * (sewnLength(back, 'neck') + sewnLength(front, 'neck')), 9)
    const side = steps.find((s) => s.id === 'seam.side')!
    expect([side.long, side.times, side.allowance]).toEqual([
      mm(sewnLength(back, 'side')),
      2,
      cutting.allowances.side,
    ])
  })
})

describe('cloth', () => {
  test('crisp cotton warns before a draped sleeve, and only there', () => {
    expect(clothWarning({ kind: 'crispCotton' }, 'blouse')).toMatch(/drape test/)
    expect(clothWarning({ kind: 'crispCotton' }, 'sleeveless')).toBeUndefined()
    expect(clothWarning({ kind: 'rayon' }, 'blouse')).toBeUndefined()
  })

  test('what her square did goes before what its kind usually does', () => {
    // Common practice, no source: corners 90 mm apart hang, 260 mm stand.
    const read = (kind: ClothKind, apart: number, of = kind) =>
      clothWarning({ kind, drape: { apart: mm(apart), of } }, 'blouse')
    expect(read('rayon', 260)).toMatch(/the cloth stood/)
    expect(read('rayon', 160)).toMatch(/wide folds/)
    expect(read('rayon', 90)).toBeUndefined()
    expect(read('crispCotton', 90)).toBeUndefined()
    expect(read('crispCotton', 260)).toMatch(/the cloth stood/)
    // Of another cloth it says nothing.
    expect(read('rayon', 260, 'silk')).toBeUndefined()
    expect(read('crispCotton', 90, 'silk')).toMatch(/Try the drape test/)
    const drape = { apart: mm(260), of: 'rayon' } as const
    expect(clothWarning({ kind: 'rayon', drape }, 'dress')).toBeUndefined()
    const d = drafted('blouse')
    const cutting = cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' })
    const steps = sewingPlan(d, cutting, { kind: 'rayon', drape })
    const lines = planLines(steps, { unit: 'cm', inchStep: 8 }).map((l) => l.text)
    const first = lines.slice(
      lines.indexOf('☐ 1. Make the rayon or viscose ready'),
      lines.indexOf('☐ 2. Cut and mark'),
    )
    expect(first).toContain(clothWarning({ kind: 'rayon', drape }, 'blouse'))
  })

  test('the drape test on a square of 300 mm', () => {
    // Common practice, no source: corners 90 mm apart hang, 260 mm stand.
    expect([drapes(mm(90)), drapes(mm(160)), drapes(mm(260))]).toEqual([
      'falls',
      'between',
      'stands',
    ])
  })

  test('cautions stand beside their step', () => {
    const steps = planned('blouse')
    expect(steps.find((s) => s.id === 'edge.sleeveEdge')?.mind?.join()).toMatch(/flame/)
    expect(steps.find((s) => s.id === 'prepare.cut')?.mind?.join()).toMatch(
      /cut away from your hand/,
    )
    expect(steps.find((s) => s.id === 'prepare.cloth')?.mind?.join()).toMatch(/iron burns/)
    expect(steps.find((s) => s.id === 'stay')?.mind?.join()).toMatch(/fingers beside the foot/)
    for (const id of ['tryOn.tacked', 'tryOn.hem'])
      expect(steps.find((s) => s.id === id)?.mind?.join()).toMatch(/Pins point away from you/)
  })
})

// Her left shoulder is taped 120 mm, her right 130: the seam is sewn to what each is; the neck, the
// waist and the hem go round both.
test('where left and right are not alike, the plan says both lengths', () => {
  const unlike = body({
    shoulderLengthLeft: 120,
    shoulderLengthRight: 130,
    shoulderSlopeLeft: 34,
    shoulderSlopeRight: 50,
  })
  const { draft: d } = correctedDraft('sleeveless', unlike, standardFor('sleeveless'), [])
  const steps = sewingPlan(toSew(d), cuttingOf(d, { ...USUAL_CUT, stuff: 'cloth' }), {
    kind: 'lightCotton',
  })
  const cm = { unit: 'cm', inchStep: 8 } as const
  const of = (id: string): PlanStep => steps.find((s) => s.id === id)!
  expect(planNumbers(of('seam.shoulder'), cm)).toMatch(/^left 12\.0 cm, right 13\.0 cm; allowance/)
  const halves = (['left', 'right'] as const).flatMap((side) =>
    ['back', 'front'].map((id) => d.sides![side].pieces.find((p) => p.id === id)!),
  )
  const round = halves.reduce((sum, p) => sum + sewnLength(p, 'neck'), 0)
  expect(of('edge.neck').long).toBeCloseTo(round, 6)
  expect(of('edge.neck').sides).toBeUndefined()
})

// Bound flat, closed, then the cuff: the order of a shirt sleeve in public dressmaking lessons.
describe('the end of a sleeve', () => {
  const narrow = { sleeveLength: mm(580), sleeveHem: mm(80), cuffFullness: mm(70) }
  const sentences = (steps: readonly PlanStep[], id: string): string =>
    planSentences(
      steps.find((s) => s.id === id)!,
      { unit: 'cm', inchStep: 8 },
    ).join(' ')
  test('a cuff: slit, sleeve seam, cuff, sleeve, button; no hem of the sleeve', () => {
    const steps = planned('sleeve', { sleeveEnd: 'cuff', ...narrow })
    inOrder(
      steps,
      'interface.cuff',
      'opening.sleeveSlit',
      'sleeve.frontSeam',
      'sleeve.cuff',
      'sleeve.setCuff',
      'sleeve.cap',
      'hem.hem',
      'shut.cuffs',
    )
    expect(ids(steps)).not.toContain('hem.sleeve')
    expect(ids(steps).filter((id) => id.startsWith('seam.cuff'))).toEqual([])
    const set = steps.find((s) => s.id === 'sleeve.setCuff')!
    expect(planNumbers(set, { unit: 'cm', inchStep: 8 })).toBe('19.0 cm, twice; allowance 1.0 cm')
    expect(sentences(steps, 'sleeve.setCuff')).toContain('Draw them up to 19.0 cm')
    expect(steps.find((s) => s.id === 'opening.sleeveSlit')?.mind?.[0]).toMatch(/away from your/)
  })
  test('a wide cuff is a ring without a slit or a button', () => {
    const steps = planned('sleeve', { sleeveEnd: 'cuff' })
    expect(ids(steps)).not.toContain('opening.sleeveSlit')
    expect(ids(steps)).not.toContain('shut.cuffs')
    expect(sentences(steps, 'sleeve.cuff')).toContain('fold the ring')
  })
  test('a hem with a slit ends at it and is closed with a loop', () => {
    const steps = planned('sleeve', { sleeveEnd: 'hemSlit', ...narrow })
    inOrder(steps, 'opening.sleeveSlit', 'sleeve.frontSeam', 'hem.sleeve', 'shut.sleeveSlits')
    expect(steps.find((s) => s.id === 'hem.sleeve')?.mind?.[0]).toMatch(/ends at the slit/)
  })
})
