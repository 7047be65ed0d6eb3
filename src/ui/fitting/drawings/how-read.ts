/** Between which two places a pin is read, drawn on a flat piece of cloth. */
import type { How } from '../../../fitting/half-amount.ts'
import { level, slit, tape, tuck, wedge } from './marks.ts'
import { cloth, framed, sketch, wanted, type Sketch } from './sketch.ts'

const PAPER = framed('paper')
const PIECE = 'M16 24L104 24M16 96L104 96'

export const HOW_DRAWINGS: Readonly<Record<How, Sketch>> = {
  pinch: sketch(PAPER, (at) => [
    cloth(at, PIECE),
    tuck(at(60, 24), at(60, 96), 34),
    tape(at(43, 74), at(77, 74)),
  ]),
  fold: sketch(PAPER, (at) => [
    cloth(at, `${PIECE}M74 24L74 96`),
    wanted(at, 'M44 24L44 96'),
    wedge(at(44, 40), at(46, 40), 1),
    wedge(at(44, 84), at(46, 84), 1),
    tape(at(44, 60), at(74, 60)),
  ]),
  slit: sketch(PAPER, (at) => [
    cloth(at, PIECE),
    slit(at(60, 26), at(60, 94), 26),
    tape(at(47, 76), at(73, 76)),
  ]),
  level: sketch(PAPER, (at) => [
    cloth(at, `${PIECE}M16 44L104 44`),
    level(at(16, 74), at(104, 74)),
    tape(at(60, 44), at(60, 74)),
  ]),
  newLine: sketch(PAPER, (at) => [
    cloth(at, `${PIECE}M86 24L86 96`),
    wanted(at, 'M54 24L60 96'),
    wedge(at(55, 36), at(57, 36), 1),
    wedge(at(59, 84), at(61, 84), 1),
    tape(at(57, 60), at(86, 60)),
  ]),
}
