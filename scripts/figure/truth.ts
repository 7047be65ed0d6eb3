/**
 * What is true of the figure: landmarks and tape lengths. Conventions, so that they can be judged:
 * nape = on the middle line, where the hollow of the neck turns into the round of the back; apex =
 * most forward place of the bust, its height is the bust level; waist = the cord; hip = where the
 * seat stands out most; side neck and shoulder point = where the ridge of the shoulder falls at 45
 * degrees, at its inner and at its outer end.
 */
import type { Figure } from './body.ts'
import { join, reachOut, type Field, type Vec } from './field.ts'
import {
  apart,
  middleAt,
  overSurface,
  pathLength,
  ringAt,
  shoulderRidge,
  tautOver,
  type Flat,
} from './tape.ts'
import { STATURE, WAIST_LEVEL } from './torso.ts'

export interface Truth {
  readonly landmarks: Readonly<Record<string, Vec>>
  readonly measures: Readonly<Record<string, number>>
}

/**
 * @param outer where a place of the plain figure lies on this one (shape.ts): nape, side neck and
 * shoulder points are the same places on every shape
 */
export function truthOf(figure: Figure, outer: (plain: Vec) => Vec = (p) => p): Truth {
  const plain = figure.plain?.figure ?? figure
  const level = (y: number): number => outer([0, y, 0])[1]
  const waistLevel = level(WAIST_LEVEL)
  const body: Field = join(40, figure.trunk, figure.legs)
  const apexL = apexOf(body, level)
  const hipLevel = best(level(800), level(920), (y) => -ringAt(body, y).back[2])
  const [bust, waist, hip] = [apexL[1], waistLevel, hipLevel].map((y) => ringAt(body, y))
  if (!bust || !waist || !hip) throw new Error('figure: a ring is missing')
  const nape = outer(napeOf(join(40, plain.trunk, plain.legs)))
  const { sideNeckL, shoulderL, shoulderLength } = shoulderOf(plain.all, outer)
  const waistMidBack = middleAt(body, waistLevel, -1)
  const spine: Flat[] = Array.from({ length: 401 }, (_, i) => {
    const y = nape[1] + ((waistLevel - nape[1]) * i) / 400
    return [-middleAt(body, y, -1)[2], y]
  })
  const overBust = overSurface(body, sideNeckL, apexL)
  const mirror = ([x, y, z]: Vec): Vec => [-x, y, z]
  return {
    landmarks: {
      nape,
      apexL,
      apexR: mirror(apexL),
      sideNeckL,
      sideNeckR: mirror(sideNeckL),
      shoulderL,
      shoulderR: mirror(shoulderL),
      waistMidBack,
      waistMidFront: middleAt(body, waistLevel, 1),
      bustL: bust.left,
      bustR: bust.right,
      bustFront: bust.front,
      bustBack: bust.back,
      waistL: waist.left,
      waistR: waist.right,
      waistFront: waist.front,
      waistBack: waist.back,
      hipL: hip.left,
      hipR: hip.right,
      hipFront: hip.front,
      hipBack: hip.back,
    },
    measures: {
      stature: level(STATURE),
      napeToWaistTaut: pathLength(tautOver(spine, -1)),
      napeToWaistContour: pathLength(spine),
      napeToWaistVertical: nape[1] - waistLevel,
      waistToBustVertical: apexL[1] - waistLevel,
      apexSpacing: 2 * apexL[0],
      sideNeckToApexTaut: overBust.taut,
      shoulderLength,
      shoulderLengthChord: apart(sideNeckL, shoulderL),
      shoulderSlopeDeg: slopeOf(sideNeckL, shoulderL),
      shoulderBreadth: 2 * shoulderL[0],
      bustBreadth: bust.breadth,
      bustDepth: bust.depth,
      bustGirth: bust.girth,
      waistBreadth: waist.breadth,
      waistDepth: waist.depth,
      waistGirth: waist.girth,
      hipBreadth: hip.breadth,
      hipDepth: hip.depth,
      hipGirth: hip.girth,
      waistLevel,
      bustLevel: apexL[1],
      hipLevel,
    },
  }
}

/** Fall of the shoulder below the level as the front shows it, degrees. */
const slopeOf = (neck: Vec, bone: Vec): number =>
  (Math.atan2(neck[1] - bone[1], Math.abs(bone[0] - neck[0])) * 180) / Math.PI

/** The x in a range, to 0.1, where f is greatest; f must rise to one top and fall. */
function best(from: number, to: number, f: (v: number) => number): number {
  let [top, at] = [-Infinity, from]
  for (const step of [4, 1, 0.1]) {
    const middle = at
    const [low, high] = step === 4 ? [from, to] : [middle - 5 * step, middle + 5 * step]
    for (let v = low; v <= high + 1e-9; v += step) {
      const value = f(v)
      if (value > top) [top, at] = [value, v]
    }
  }
  return at
}

function apexOf(body: Field, level: (plain: number) => number): Vec {
  const front = (x: number, y: number): number => reachOut(body, [x, y, 20], [0, 0, 1], 300) + 20
  const outAt = (y: number): number => best(45, 130, (x) => front(x, y))
  const y = best(level(1150), level(1250), (v) => front(outAt(v), v))
  const x = outAt(y)
  return [x, y, front(x, y)]
}

function napeOf(body: Field): Vec {
  const span = 8
  const out = (y: number): number => -middleAt(body, y, -1)[2]
  for (let y = 1470; y > 1380; y -= 0.5) {
    const bend = out(y + span) - 2 * out(y) + out(y - span)
    if (bend < 0) return middleAt(body, y, -1)
  }
  throw new Error('figure: the back has no nape between 1380 and 1470 mm')
}

function shoulderOf(
  body: Field,
  outer: (plain: Vec) => Vec,
): { sideNeckL: Vec; shoulderL: Vec; shoulderLength: number } {
  const ridge = shoulderRidge(body, 30, 215)
  const fall = ridge.map((_, i) => {
    const [before, after] = [ridge[i - 2], ridge[i + 2]]
    return before && after ? (after[1] - before[1]) / 4 : 0
  })
  const midway = 75
  let [inner, last] = [midway, midway]
  while (inner > 2 && (fall[inner] ?? 0) > -1) inner--
  while (last < ridge.length - 3 && (fall[last] ?? 0) > -1) last++
  const [sideNeckL, shoulderL] = [ridge[inner], ridge[last]]
  if (!sideNeckL || !shoulderL) throw new Error('figure: the shoulder has no ends')
  const along = ridge.slice(inner, last + 1).map(outer)
  const shoulderLength = along.reduce((sum, p, i) => sum + apart(p, along[i + 1] ?? p), 0)
  return { sideNeckL: outer(sideNeckL), shoulderL: outer(shoulderL), shoulderLength }
}
