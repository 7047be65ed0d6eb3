/**
 * The area two or more pieces of a layout share, and the area that lies off the cloth, by a
 * library that knows nothing of the packer (clipper2-ts; integers inside, so that it is exact on
 * its grid of 1e-8).
 */
import { areaPathsD, FillRule, intersectD, type PointD } from 'clipper2-ts'
import type { Layout, Strip } from '../../src/layout/strip.ts'

const DECIMALS = 8

export function commonArea(strip: Strip, layout: Layout): number {
  const lying = layout.placed.map((p) => {
    const { outline } = strip.pieces[p.piece]!.poses[p.pose]!
    const path: PointD[] = []
    for (let i = 0; i < outline.length; i += 2)
      path.push({ x: outline[i]! + p.x, y: outline[i + 1]! + p.y })
    return path
  })
  let sum = 0
  for (const [i, a] of lying.entries())
    for (const b of lying.slice(i + 1))
      sum += areaOf(intersectD([a], [b], FillRule.NonZero, DECIMALS))
  return sum
}

export function areaOffCloth(strip: Strip, layout: Layout): number {
  const [w, l] = [strip.width, layout.length]
  // The grid may round a corner on the edge outward by its own width.
  const by = 1e-8
  const cloth = [
    { x: -by, y: -by },
    { x: l + by, y: -by },
    { x: l + by, y: w + by },
    { x: -by, y: w + by },
  ]
  return layout.placed.reduce((sum, p) => {
    const { outline } = strip.pieces[p.piece]!.poses[p.pose]!
    const path: PointD[] = []
    for (let i = 0; i < outline.length; i += 2)
      path.push({ x: outline[i]! + p.x, y: outline[i + 1]! + p.y })
    const on = areaOf(intersectD([path], [cloth], FillRule.NonZero, DECIMALS))
    return sum + areaOf([path]) - on
  }, 0)
}

const areaOf = (paths: PointD[][]): number => Math.abs(areaPathsD(paths))
