/**
 * From what is too long, too wide or too low on the body to what the muslin shows. Each rule reads
 * the misfit (sewn less needed) and says the complaint, the pin and the cause; under the least
 * amount nothing is seen, unless she was asked to read that place again. Nothing of the engine's
 * rules is used.
 *
 * Least amounts seen: the low end of the usual range in the trade list of complaints (after public
 * bulletins and lessons: shoulder 5 mm, balance and lengths 6, widths 3 a side, apex 6). Strain
 * shows only where the ease that is left is small: 25 mm round bust and hip, 10 round the waist
 * are the least that published tables leave a fitted bodice. Slack shows from 25 mm, a
 * finger-deep fold (own reasoning).
 *
 * How pins are read: a seam is opened or pinched until the muslin has the ease it is meant to
 * have there, so the pin tells the whole misfit and not the strain alone (own reasoning; a strip
 * is pinned in, and the ease is pinched as common practice has it).
 */
import type { Choices } from '../../../src/draft/choices.ts'
import { numberOf, type Numbers } from '../bodies/numbers.ts'
import type { Lengths } from './lengths.ts'
import { shoulderOf } from './needed.ts'
import type { Pin, Sign } from './sign.ts'

export interface Worn {
  /** Sewn less needed. */
  readonly misfit: Lengths
  readonly sewn: Lengths
  readonly needed: Lengths
  readonly body: Numbers
  readonly intent: Choices
  /** Cloth standing away at the front armhole, mm; see `gape.ts`. */
  readonly gape: number
}

export const LEAST = {
  shoulderDrop: 5,
  shoulder: 6,
  length: 6,
  apex: 6,
  apexOut: 3,
  across: 6,
  underarm: 5,
  gape: 6,
  slack: 25,
  neck: 6,
} as const
/** Ease under which cloth strains, mm round the body. */
const STRAIN = { bust: 25, waist: 10, hip: 25 } as const
/** An armhole cuts in where less than this is free under the arm, mm: a finger goes in, about 13 in bulletins. */
const ARMPIT_FREE = 10
/** Front and back of a seam pull alike when what each lacks differs by less than this, mm. */
const ALIKE = 8

/** @param looked complaints whose place she was asked to read again: there she reads what there is */
export function signs(worn: Worn, looked: readonly string[] = []): Sign[] {
  return [
    ...bust(worn),
    ...girth(worn, 'waist'),
    ...girth(worn, 'hip'),
    ...levels(worn),
    ...apex(worn),
    ...across(worn),
    ...shoulder(worn),
    ...armhole(worn),
    ...neck(worn),
  ]
    .filter(({ id, weight, felt }) => weight > 0 && (looked.includes(id) || (felt && weight >= 1)))
    .map(({ felt: _, ...sign }) => sign)
    .sort((a, b) => b.weight - a.weight)
}

/** What the misfit is by itself; `felt` where it would trouble her, unasked. */
type Reading = Sign & { readonly felt: boolean }

/** One sign for a misfit that goes one way. */
function when(
  amount: number,
  least: number,
  make: (amount: number) => Omit<Sign, 'weight'>,
  felt = true,
): Reading[] {
  return amount > 0 ? [{ ...make(amount), weight: amount / least, felt }] : []
}
const pin = (where: Pin['where'], how: Pin['how'], value: number): Pin => ({
  where,
  side: 'both',
  how,
  value,
})

/** Two side seams share what the body lacks, so each opens by half of it. */
const perSeam = (round: number): number => round / 2

function bust({ misfit, sewn, body }: Worn): Reading[] {
  const { bust: m, bustFront: front, bustBack: back } = misfit
  if (m === undefined || front === undefined || back === undefined) return []
  const ease = (sewn.bust ?? NaN) - numberOf(body, 'bustGirth')
  const alike = Math.abs(front - back) < ALIKE
  const lacking = alike ? 2 : front < back ? 1 : 3
  return [
    ...when(
      -m,
      STRAIN.bust / 2,
      (g) => ({ id: 'B1', pin: pin('side', 'slit', perSeam(g)), causes: [lacking] }),
      ease < STRAIN.bust,
    ),
    ...when(m, LEAST.slack, (g) => ({
      id: 'B3',
      pin: pin('side', 'pinch', perSeam(g)),
      causes: [alike ? 2 : 1],
    })),
  ]
}

const TIGHT = { waist: 'W3', hip: 'W9' } as const
function girth({ misfit, sewn, body }: Worn, name: 'waist' | 'hip'): Reading[] {
  const m = misfit[name]
  if (m === undefined) return []
  const ease = (sewn[name] ?? NaN) - numberOf(body, name === 'waist' ? 'waistGirth' : 'hipGirth')
  const slit = (g: number) => ({
    id: TIGHT[name],
    pin: pin('side', 'slit', perSeam(g)),
    causes: [1],
  })
  const loose = (g: number) => ({ id: 'W4', pin: pin('allRound', 'pinch', g), causes: [1] })
  return [
    ...when(-m, STRAIN[name] / 2, slit, ease < STRAIN[name]),
    ...(name === 'waist' ? when(m, LEAST.slack, loose) : []),
  ]
}

/** The waist line against the cord: all round alike, or in front or behind only. */
function levels({ misfit }: Worn): Reading[] {
  const { frontLength: front, backLength: back } = misfit
  if (front === undefined || back === undefined) return []
  const alike = Math.abs(front - back) < LEAST.length
  if (alike)
    return [
      ...when((front + back) / 2, LEAST.length, (d) => ({
        id: 'W2',
        pin: pin('allRound', 'pinch', d),
        causes: [1],
      })),
      ...when(-(front + back) / 2, LEAST.length, (d) => ({
        id: 'W1',
        pin: pin('allRound', 'level', d),
        causes: [1],
      })),
    ]
  const high = { id: 'B2', causes: [1] }
  const low = { id: 'B14', causes: [1] }
  return [
    ...when(-front, LEAST.length, (d) => ({ ...high, pin: pin('cf', 'level', d) })),
    ...when(front, LEAST.length, (d) => ({ ...low, pin: pin('cf', 'level', d) })),
    ...when(-back, LEAST.length, (d) => ({
      id: 'K3',
      pin: pin('cb', 'level', d),
      causes: [3],
    })),
    ...when(back, LEAST.length, (d) => ({ id: 'K2', pin: pin('cb', 'pinch', d), causes: [1] })),
  ]
}

/**
 * The dart against the bust tip. A garment that hangs wrong carries its darts along, by part of the
 * way or all of it; that is told as the hang, and only what goes beyond it as the dart.
 */
function apex({ misfit }: Worn): Reading[] {
  const { apexDown: down, apexOut: out, frontLength: hang = 0 } = misfit
  if (down === undefined || out === undefined) return []
  const carried =
    Math.abs(hang) < LEAST.length ? 0 : within(down, Math.min(0, hang), Math.max(0, hang))
  const own = down - carried
  return [
    ...when(Math.abs(own), LEAST.apex, () => ({
      id: 'B5',
      // Positive: the dart is to go down.
      pin: pin('dart', 'level', -own),
      causes: [1],
    })),
    ...when(Math.abs(out), LEAST.apexOut, () => ({
      id: 'B6',
      // Positive: the dart is to go out, away from the centre.
      pin: pin('dart', 'newLine', -out),
      causes: [1],
    })),
  ]
}
const within = (value: number, least: number, most: number): number =>
  Math.min(most, Math.max(least, value))

function across({ misfit }: Worn): Reading[] {
  const { acrossBack: back, acrossChest: chest } = misfit
  if (back === undefined || chest === undefined) return []
  const row = (id: string, where: Pin['where'], how: Pin['how'], value: number) => ({
    id,
    pin: pin(where, how, value),
    causes: [1],
  })
  return [
    // A slit at the centre back opens by what both halves lack.
    ...when(-back, LEAST.across, (d) => row('K1', 'cb', 'slit', d)),
    ...when(back, LEAST.across, (d) => row('A4', 'armhole', 'pinch', d / 2)),
    // In front the slit runs down from each shoulder.
    ...when(-chest, LEAST.across, (d) => row('B11', 'shoulder', 'slit', d / 2)),
    ...when(chest, LEAST.across, (d) => row('B10', 'armhole', 'pinch', d / 2)),
  ]
}

function shoulder({ misfit, sewn, needed, body }: Worn): Reading[] {
  const { shoulderDrop: drop, shoulder: long } = misfit
  if (drop === undefined || long === undefined) return []
  const swing = swungBy(sewn, needed, shoulderOf(body))
  return [
    // Too flat: the seam is pinned deeper at the tip, as much on front and back.
    ...when(-drop, LEAST.shoulderDrop, () => ({
      id: 'SH1',
      pin: pin('shoulder', 'newLine', swing),
      causes: [1],
    })),
    // Too steep: the opened seam gaps by what front and back lack together.
    ...when(drop, LEAST.shoulderDrop, () => ({
      id: 'SH2',
      pin: pin('shoulder', 'slit', 2 * swing),
      causes: [1],
    })),
    ...when(long, LEAST.shoulder, (d) => ({
      id: 'SH3',
      pin: pin('shoulder', 'newLine', d),
      causes: [1],
    })),
    ...when(-long, LEAST.shoulder, (d) => ({
      id: 'SH4',
      pin: pin('shoulder', 'slit', d),
      causes: [1],
    })),
  ]
}

/**
 * From the seam to where it should lie, at the tip and square to it, as it is pinned: the seam
 * swings about the side neck by the difference of the slopes, and the chord of that is longer than
 * the fall.
 */
function swungBy(sewn: Lengths, needed: Lengths, long: number): number {
  const slope = ({ shoulderDrop = 0 }: Lengths): number => Math.asin(shoulderDrop / long)
  return 2 * long * Math.sin(Math.abs(slope(sewn) - slope(needed)) / 2)
}

function armhole({ misfit, sewn, body, gape }: Worn): Reading[] {
  const { underarm } = misfit
  const free = (sewn.underarm ?? NaN) - numberOf(body, 'napeToArmpitLevel')
  return [
    ...(underarm === undefined
      ? []
      : [
          ...when(
            -underarm,
            LEAST.underarm,
            (d) => ({ id: 'A1', pin: pin('armhole', 'newLine', d), causes: [1] }),
            free < ARMPIT_FREE,
          ),
          ...when(underarm, LEAST.underarm, (d) => ({
            id: 'A2',
            pin: pin('armhole', 'newLine', d),
            causes: [1],
          })),
        ]),
    ...when(gape, LEAST.gape, (w) => ({
      id: 'B8',
      pin: pin('armhole', 'pinch', w),
      causes: [1],
    })),
  ]
}

/** A front neck edge above the hollow of the neck chokes; what a short front brings is told there. */
function neck({ misfit, sewn, needed, body }: Worn): Reading[] {
  const hollow = (needed.frontLength ?? NaN) - numberOf(body, 'frontNeckToWaist')
  const own = (sewn.frontNeck ?? NaN) - hollow - Math.min(0, misfit.frontLength ?? 0)
  return when(-own, LEAST.neck, (d) => ({
    id: 'N2',
    pin: pin('cf', 'newLine', d),
    causes: [1],
  }))
}
