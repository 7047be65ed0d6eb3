/**
 * Each photograph with what the other two say of its depth: how far forward her places lie, and how
 * far her card hangs or is held before the middle of the trunk.
 */
import type { Card } from './card.ts'
import { centreOf } from './card-shape.ts'
import { VIEWS, type Readings, type View, type ViewReading } from './reading.ts'
import { hungAtFrontOrBack, hungAtSide, reliefOf, type Extent, type Reach } from './relief.ts'
import { behindIn, cardPlace, scaleAt } from './scale.ts'

/** Paper round the black square's middle: our sheet is folded across (marker-sheet.ts). A plain card ends at its edges. */
const SHEET: Extent = { above: 80, below: 90 }
const extentOf = ({ kind, heightMm }: Card): Extent =>
  kind === 'sheet' ? SHEET : { above: heightMm / 2, below: heightMm / 2 }
/**
 * A card in the hand that hangs beside the hip: further out than half her hips by this, mm. 16 rendered
 * bodies, truth alone, two cards each: mean 158, sd 12; a living arm hangs as it likes, hence half more.
 */
const HELD_BESIDE_HIP: Reach = { mm: 158, sd: 18 }

export function withRelief(readings: Readings): Readings {
  const { side } = readings
  const own = side && scaleAt(side, 0, 0)
  const relief = reliefOf(side, own?.mmPerPx)
  const known = VIEWS.flatMap((view) => {
    const reading = readings[view]
    if (!reading) return []
    const { cardBefore: _, ...rest } = reading
    const before = cardBefore(view, rest, readings)
    return [[view, { ...rest, relief, ...(before ? { cardBefore: before } : {}) }] as const]
  })
  return Object.fromEntries(known)
}

function cardBefore(view: View, reading: ViewReading, readings: Readings): Reach | undefined {
  if (!reading.card.ok) return undefined
  const { card } = reading.card
  const { corners, mmPerPx } = card
  const { side } = readings
  const across = [readings.front, readings.back].find((other) => other?.card.ok)
  if (cardPlace(reading) === 'hand')
    return view === 'side' && across ? besideHip(across) : undefined
  const waist = reading.points[view === 'back' ? 'waistBack' : 'waistFront']
  if (!waist) return undefined
  const down = (centreOf(corners).y - waist.at.y) * mmPerPx
  if (view === 'side') {
    const scale = across && scaleAt(across, 0, 0)
    return across && scale && hungAtSide(across, scale.mmPerPx, down, extentOf(card))
  }
  const scale = side && scaleAt(side, 0, 0)
  return side && scale && hungAtFrontOrBack(side, scale.mmPerPx, view, down, extentOf(card))
}

function besideHip(across: ViewReading): Reach | undefined {
  const half = halfHip(across)
  return half === undefined ? undefined : { mm: half + HELD_BESIDE_HIP.mm, sd: HELD_BESIDE_HIP.sd }
}

/** Half the breadth of the hips in a front or back photo, mm. */
export function halfHip(across: ViewReading): number | undefined {
  const { hipLeft, hipRight } = across.points
  const plane = behindIn(across, 'hipEdge')
  const scale = scaleAt(across, plane.mm, plane.sd)
  if (!hipLeft || !hipRight || !scale) return undefined
  return (Math.abs(hipLeft.at.x - hipRight.at.x) * scale.mmPerPx) / 2
}
