/** The movements of the check, drawn. */
import type { SleeveKind } from '../../../fitting/finding/find.ts'
import type { Tried } from '../../../rounds/moved.ts'
import { arrow, level } from './marks.ts'
import { BACK_TOP } from './frames.ts'
import { both, cloth, framed, sketch, type Sketch } from './sketch.ts'

const forward = sketch(
  BACK_TOP,
  both((at) => [arrow(at(95, 40), at(98, 60))]),
)
const up = sketch(
  framed('lifted'),
  (at) => [
    level(at(24, 112), at(104, 112)),
    cloth(at, 'M27 112C56 112 76 112 92 104'),
    arrow(at(104, 112), at(104, 103)),
  ],
  ['hem'],
)
const wingUp = sketch(framed('wingLifted'), (at) => [
  level(at(10, 112), at(66, 112)),
  arrow(at(72, 112), at(72, 96)),
])
const sit = sketch(framed('seated'), (at) => [arrow(at(24, 96), at(24, 84))])

export const MOVING: Readonly<Record<Tried, (sleeve: SleeveKind) => Sketch>> = {
  armsForward: () => forward,
  armsUp: (sleeve) => (sleeve === 'cutIn' ? wingUp : up),
  sit: () => sit,
}
