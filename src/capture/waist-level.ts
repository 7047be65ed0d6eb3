/**
 * The waist as the narrowest level of the trunk's outline from front or back. In 3183 women of the
 * Korean survey the body is narrower at the waist than at the navel in all but 1.8 %, but 4.5 %
 * (12.8 % at BMI 26 and above) have no visible indentation; there the outline must not guess.
 * Heights are px, y down; the answer is refused, never clamped.
 */
import { refused, type Refused } from './fault.ts'
import type { OutlineRow } from './reading.ts'

export type WaistLevel = { readonly ok: true; readonly y: number; readonly sdMm: number } | Refused

/** Least difference of the widest and the narrowest level of the zone (same survey, see header). */
export const LEAST_INDENT_MM = 5
/** Half the height of the parabola laid through the narrowest rows, mm. */
const FIT_HALF_MM = 36
/**
 * The narrowest level seen from front or back lies this much above the level of the least girth:
 * mean over 8 rendered bodies with an indented waist (models-notes/blazepose.md), sd 8 mm.
 */
const GIRTH_BELOW_MM = 8
/** The spread of that mean; a parabola over 36 mm strays by as much for 1.5 mm of outline error. */
const FIT_SD_MM = 8

/**
 * @param trunk outline without arms
 * @param from row a hand below the bust; @param to row above the hips: the zone searched
 */
export function narrowestLevel(
  trunk: readonly OutlineRow[],
  from: number,
  to: number,
  mmPerPx: number,
): WaistLevel {
  const first = trunk[0]?.y ?? 0
  const zone = trunk.slice(Math.max(0, Math.round(from - first)), Math.round(to - first) + 1)
  const width = (row: OutlineRow): number => row.right - row.left
  if (zone.length < 5) return refused('noIndent')
  const smooth = zone.map((_, k) => {
    const near = zone.slice(Math.max(0, k - 2), k + 3)
    return near.reduce((sum, row) => sum + width(row), 0) / near.length
  })
  const least = Math.min(...smooth)
  const at = smooth.indexOf(least)
  const rise = (part: readonly number[]): number => (Math.max(...part) - least) * mmPerPx
  // Both sides must widen: a least at the end of the zone is a slope, not a waist.
  if (rise(smooth.slice(0, at + 1)) < LEAST_INDENT_MM || rise(smooth.slice(at)) < LEAST_INDENT_MM)
    return refused('noIndent')
  const reach = Math.max(3, Math.round(FIT_HALF_MM / mmPerPx))
  const near = smooth.slice(Math.max(0, at - reach), at + reach + 1)
  const start = Math.max(0, at - reach)
  const bottom = lowestOfParabola(near) ?? at - start
  const y =
    (zone[0]?.y ?? 0) +
    start +
    Math.min(near.length - 1, Math.max(0, bottom)) +
    0.5 +
    GIRTH_BELOW_MM / mmPerPx
  return { ok: true, y, sdMm: FIT_SD_MM }
}

/** Index (not whole) of the lowest place of a least-squares parabola; undefined when it has none. */
function lowestOfParabola(values: readonly number[]): number | undefined {
  const half = (values.length - 1) / 2
  let [s2, s4, sy, sxy, sx2y] = [0, 0, 0, 0, 0]
  values.forEach((value, k) => {
    const x = k - half
    s2 += x * x
    s4 += x ** 4
    sy += value
    sxy += x * value
    sx2y += x * x * value
  })
  const n = values.length
  const bend = (n * sx2y - s2 * sy) / (n * s4 - s2 * s2)
  return bend > 0 ? half - sxy / s2 / (2 * bend) : undefined
}
