/**
 * Our own garments on cloth: layouts drawn by lot from garments, invented bodies, widths, manners
 * of folding, nap and repeats. RESULT {from, n, refused, medianFirstMs, worstFirstMs, overlaps, short,
 * unexplained, long: {n, worst, median}}: overlaps by an independent library on the cutting lines
 * themselves; short: amounts that do not cover the layout; unexplained: amounts over
 * length / (1 − shrinkage) by more than their items say; long: the length of `--again` of them
 * over the best of a run `--longer` times as long. Times are of one core.
 */
import { GARMENTS, isGarmentId, standardFor } from '../../../src/draft/garments.ts'
import { draft } from '../../../src/draft/make.ts'
import { amountToBuy } from '../../../src/layout/amount.ts'
import { SELVEDGE, type Cloth } from '../../../src/layout/cloth.ts'
import { cutParts, type CutPart } from '../../../src/layout/cut-part.ts'
import { layOut, type ClothLayout } from '../../../src/layout/lay-out.ts'
import { MANNER_WORDS } from '../../../src/layout/cloth.words.ts'
import { lay, MANNERS, type Manner } from '../../../src/layout/lay.ts'
import { seeded, type Chance } from '../../../src/layout/seeded.ts'
import { allowancesFor, hemTurnedTwice, usualFinishes } from '../../../src/output/finishes.ts'
import { mm } from '../../../src/units/length.ts'
import { body, INVENTED_BODIES } from '../../../tests/bodies.ts'
import { commonArea } from '../../../tests/layout/common-area.ts'
import { coreSeconds } from './published.ts'

export interface OwnOptions {
  readonly n: number
  /** So many of the draw are passed over, to go on where another run ended. */
  readonly from: number
  readonly seconds: number
  readonly again: number
  readonly longer: number
  readonly seed: number
}

interface Case {
  readonly name: string
  readonly parts: readonly CutPart[]
  readonly cloth: Cloth
  readonly manner: Manner
}

const WIDTHS = [900, 1000, 1120, 1150, 1300, 1400, 1500]

export function own(options: OwnOptions): void {
  const chance = seeded(options.seed)
  const made: { readonly one: Case; readonly layout: ClothLayout }[] = []
  const firsts: number[] = []
  let [drawn, refused, overlaps, short, unexplained] = [0, 0, 0, 0, 0]
  while (made.length < options.n) {
    const one = drawnByLot(chance)
    if (!lay(one.parts, one.cloth, one.manner).ok) {
      refused++
      continue
    }
    drawn++
    if (drawn <= options.from) continue
    const ran = timed(one, options.seconds, drawn)
    if (!ran) throw new Error(`${one.name}: a lay that goes was not laid out`)
    made.push({ one, layout: ran.layout })
    firsts.push(ran.firstMs)
    const shared = sharedArea(one, ran.layout)
    if (shared > 0) overlaps++
    const { falls, extra } = amountFaults(ran.layout.length, one.cloth)
    if (falls) short++
    if (extra) unexplained++
    console.log(
      `${drawn}. ${one.name}: ${Math.round(ran.layout.length)} mm, first ${Math.round(ran.first)} mm in ${Math.round(ran.firstMs)} ms${shared > 0 ? `, OVERLAP ${shared} mm²` : ''}`,
    )
  }
  // A draw of its own, so that which are packed anew does not depend on how many were.
  const lot = seeded(options.seed + 1)
  const ratios: number[] = []
  for (let k = 0; k < Math.min(options.again, made.length); k++) {
    const { one, layout } = made[lot.below(made.length)]!
    const best = Math.min(
      layout.length,
      timed(one, options.seconds * options.longer, 1000 + k)!.layout.length,
    )
    ratios.push(layout.length / best)
    console.log(`again, longer: ${one.name}: ${(layout.length / best).toFixed(4)}`)
  }
  const sorted = (list: readonly number[]): readonly number[] => [...list].sort((a, b) => a - b)
  const middle = (list: readonly number[]): number => sorted(list)[list.length >> 1] ?? NaN
  const round = (v: number, digits: number): number => Number(v.toFixed(digits))
  console.log(
    `RESULT ${JSON.stringify({
      from: options.from,
      n: made.length,
      refused,
      medianFirstMs: round(middle(firsts), 0),
      worstFirstMs: round(Math.max(...firsts), 0),
      overlaps,
      short,
      unexplained,
      long: {
        n: ratios.length,
        worst: round(Math.max(...ratios), 4),
        median: round(middle(ratios), 4),
      },
    })}`,
  )
}

function drawnByLot(chance: Chance): Case {
  const pick = <T>(list: readonly T[]): T => list[chance.below(list.length)]!
  const garment = pick(Object.keys(GARMENTS).filter(isGarmentId))
  const [who, numbers] = pick(INVENTED_BODIES)
  const whole = draft(garment, body({}, numbers), standardFor(garment))
  const finishes = usualFinishes('cloth', whole.pieces)
  const cut = cutParts(whole.pieces, allowancesFor(finishes), hemTurnedTwice(finishes))
  if (!cut.ok) throw new Error(cut.reason)
  const [width, manner] = [pick(WIDTHS), pick(MANNERS)]
  const oneWay = chance.next() < 0.4
  const matched = chance.next()
  const along = mm(20 + 10 * chance.below(29))
  const across = mm(20 + 10 * chance.below(19))
  const shrink = pick([0, 0.02, 0.04])
  const cloth: Cloth = {
    width: mm(width),
    selvedge: SELVEDGE,
    shrinkAlong: shrink,
    shrinkAcross: shrink / 2,
    oneWay,
    ...(matched < 0.2 ? { repeat: { along } } : matched < 0.4 ? { repeat: { along, across } } : {}),
  }
  const repeat = cloth.repeat
    ? `, repeat ${along}${cloth.repeat.across === undefined ? '' : ` by ${across}`}`
    : ''
  return {
    name: `${garment} of ${who}, ${width} wide, ${MANNER_WORDS[manner]}${oneWay ? ', one way' : ''}${repeat}`,
    parts: cut.parts,
    cloth,
    manner,
  }
}

function timed(
  one: Case,
  seconds: number,
  seed: number,
): { layout: ClothLayout; firstMs: number; first: number } | undefined {
  const used = coreSeconds()
  let [firstMs, first] = [NaN, NaN]
  const out = layOut(one.parts, one.cloth, one.manner, {
    seed,
    spent: () => used() / seconds,
    onBetter: (l) => {
      if (Number.isNaN(firstMs)) [firstMs, first] = [1000 * used(), l.length]
    },
  })
  return out.ok ? { layout: out.layout, firstMs, first } : undefined
}

/** By the independent library, on the cutting lines in chords and not the outlines laid out. */
function sharedArea(one: Case, layout: ClothLayout): number {
  const exact = one.parts.map((p) => ({ ...p, outline: p.exact }))
  const how = lay(exact, one.cloth, one.manner)
  if (!how.ok) throw new Error(how.reason)
  return layout.sections.reduce(
    (sum, s, i) => sum + commonArea(how.sections[i]!.strip, s.layout),
    0,
  )
}

/** Said here once more and not read from the items, so that an item left out is found. */
function amountFaults(length: number, cloth: Cloth): { falls: boolean; extra: boolean } {
  const { buy } = amountToBuy(mm(length), cloth, 'metre')
  const before = length / (1 - cloth.shrinkAlong)
  const repeat = cloth.repeat?.along ?? 0
  const allowed = repeat + 50 + Math.max(100, before * 0.05) + 100
  return { falls: buy - repeat < before, extra: buy - before > allowed + 1e-6 }
}
