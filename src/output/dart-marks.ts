/** Darts as they are drawn: legs, middle, name, and how they run on to the cutting line. */
import { add, between, point, scale, subtract, unit, type Point } from '../geometry/point.ts'
import { line } from '../geometry/segment.ts'
import { partName, type Piece } from '../draft/piece.ts'
import { DART_WORDS } from '../draft/piece.words.ts'
import { dartLegs } from '../draft/sheet.ts'
import type { DartEnd } from './edge-cut.ts'
import { nameOf, SIZE } from './level-marks.ts'
import { pathMark, textMark, type PathMark, type TextMark } from './mark.ts'

export const dartMarks = (piece: Piece): (PathMark | TextMark)[] => [
  ...piece.darts.flatMap((d) => {
    const id = nameOf(piece, partName(d))
    const middle = between(d.inner, d.outer, 0.5)
    const up = unit(subtract(d.upperTip, middle))
    const foot = d.open ? between(d.open.inner, d.open.outer, 0.5) : d.lowerTip
    return [
      pathMark('dart', dartLegs(d), id),
      pathMark('dartMiddle', [line(d.upperTip, middle), line(middle, foot)], `${id}.middle`),
      textMark(DART_WORDS[d.name], add(d.upperTip, scale(up, 6)), SIZE.small, { anchor: 'middle' }),
    ]
  }),
  ...piece.edgeDarts.flatMap((d) => {
    const id = nameOf(piece, partName(d))
    const middle = between(d.upper, d.lower, 0.5)
    return [
      pathMark('dart', [line(d.upper, d.tip), line(d.tip, d.lower)], id),
      pathMark('dartMiddle', [line(d.tip, middle)], `${id}.middle`),
      textMark(DART_WORDS[d.name], aboveLeg(d.tip, d.upper), SIZE.small, { anchor: 'middle' }),
    ]
  }),
]

/** Over the middle of the upper leg, so that it stands clear of tip and mouth. */
const aboveLeg = (tip: Point, upper: Point): Point => add(between(tip, upper, 0.5), point(0, -4))

/** The legs run on to the cutting line; the crease shows which way the fold is pressed. */
export const dartEndMarks = (piece: Piece, ends: readonly DartEnd[]): PathMark[] =>
  ends.flatMap((d) => {
    const [first, second] = d.legs
    const id = nameOf(piece, partName({ name: d.dart, ...(d.side ? { side: d.side } : {}) }))
    const mouth = first[0] && second[0] ? between(first[0].from, second[0].from, 0.5) : d.crease
    return [
      pathMark('dart', [...first, ...second], `${id}.end`),
      pathMark('dartMiddle', [line(mouth, d.crease)], `${id}.crease`),
    ]
  })
