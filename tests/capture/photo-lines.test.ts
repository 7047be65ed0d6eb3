/** Where a length was read in a photo: between the points named in its definition (ISO 8559-1). */
import { expect, it } from 'vitest'
import { photoLines } from '../../src/capture/photo-lines.ts'
import type { PlacedPoint, PointName, View } from '../../src/capture/reading.ts'

const placed = (x: number, y: number, by: PlacedPoint['by'] = 'camera'): PlacedPoint => ({
  at: { x, y },
  sdPx: 2,
  from: 'outline',
  by,
})
const reading = (view: View, points: Partial<Record<PointName, PlacedPoint>>) => ({ view, points })

it('nape to waist is shown in the side photo, from the nape to the waist behind', () => {
  const side = reading('side', { nape: placed(10, 20), waistBack: placed(12, 400) })
  expect(photoLines(side, 'napeToWaist')).toEqual([
    [
      { x: 10, y: 20 },
      { x: 12, y: 400 },
    ],
  ])
  expect(photoLines({ ...side, view: 'front' }, 'napeToWaist')).toEqual([])
})

it('no line ends at a point that was only guessed or not seen', () => {
  const front = reading('front', {
    sideNeckLeft: placed(50, 20),
    apexLeft: placed(60, 90, 'guess'),
    sideNeckRight: placed(30, 20),
    apexRight: placed(20, 90),
  })
  expect(photoLines(front, 'sideNeckToApex')).toHaveLength(1)
  expect(photoLines(front, 'apexSpacing')).toEqual([])
  expect(photoLines(front, 'waistGirth')).toEqual([])
})
