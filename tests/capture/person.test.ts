import { expect, it } from 'vitest'
import { mirroredPerson } from '../../src/capture/person.ts'

it('turns a person found in the mirror image back: sides, places and mask', () => {
  const person = {
    score: 0.9,
    joints: {
      nose: { at: { x: 1, y: 5 }, score: 1 },
      left_hip: { at: { x: 2.5, y: 7 }, score: 0.8 },
      mouth_right: { at: { x: 0, y: 6 }, score: 0.7 },
    },
    mask: { width: 4, height: 2, data: Uint8Array.from([1, 2, 3, 4, 5, 6, 7, 8]) },
  }
  const turned = mirroredPerson(person)
  // Mirrored by hand in a picture 4 px wide: x becomes 4 - x, each row is read backwards.
  expect(turned.joints).toEqual({
    nose: { at: { x: 3, y: 5 }, score: 1 },
    right_hip: { at: { x: 1.5, y: 7 }, score: 0.8 },
    mouth_left: { at: { x: 4, y: 6 }, score: 0.7 },
  })
  expect([...turned.mask.data]).toEqual([4, 3, 2, 1, 8, 7, 6, 5])
  expect(mirroredPerson(turned)).toEqual(person)
})
