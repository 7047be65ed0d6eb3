import { describe, expect, it } from 'vitest'
import { measure, MEASUREMENT_IDS, type MeasurementId } from '../../src/measurements/catalogue.ts'
import { FIGURE_HEIGHT, FIGURE_WIDTH, figureOutline } from '../../src/measurements/figure.ts'
import { tapePath } from '../../src/measurements/tape-path.ts'

/** All coordinates of a path of absolute M, L and C, in pairs. */
function coordinates(path: string): readonly (readonly [number, number])[] {
  expect(path).toMatch(/^M[-\d. MLC]+$/)
  const numbers = (path.match(/-?\d+(\.\d+)?/g) ?? []).map(Number)
  expect(numbers.length % 2).toBe(0)
  return numbers.flatMap((x, i) => (i % 2 === 0 ? [[x, numbers[i + 1] ?? NaN] as const] : []))
}
const inBox = ([x, y]: readonly [number, number]): boolean =>
  x >= 0 && x <= FIGURE_WIDTH && y >= 0 && y <= FIGURE_HEIGHT
/** True length of a path of straight pieces; the figure is a diagram, so only order is compared. */
const height = (id: MeasurementId): number => Math.abs(tapePath(id).to.y - tapePath(id).from.y)

describe('the tape on the figure', () => {
  it.each(MEASUREMENT_IDS)('%s runs inside the box, from landmark to landmark', (id) => {
    const { view, path, behind, from, to } = tapePath(id)
    const points = coordinates(path)
    for (const place of [...points, ...(behind ? coordinates(behind) : [])])
      expect(inBox(place)).toBe(true)
    const has = (p: { x: number; y: number }) => points.some(([x, y]) => x === p.x && y === p.y)
    expect(has(from)).toBe(true)
    expect(has(to)).toBe(true)
    const { kind } = measure(id)
    expect(view === 'flat').toBe(kind === 'flat')
    if (kind === 'girth') {
      expect(from).toEqual(to)
      expect(behind).toBeDefined()
    } else {
      expect(from).not.toEqual(to)
      expect([points[0], points.at(-1)]).toEqual([
        [from.x, from.y],
        [to.x, to.y],
      ])
    }
  })

  it('keeps the levels in the order they have on a person', () => {
    const levels: readonly MeasurementId[] = [
      'headGirth',
      'neckBaseGirth',
      'highBustGirth',
      'bustGirth',
      'underbustGirth',
      'waistGirth',
      'highHipGirth',
      'hipGirth',
    ]
    const heights = levels.map((id) => tapePath(id).from.y)
    expect([...heights].sort((a, b) => a - b)).toEqual(heights)
    expect(height('waistToHighHip')).toBeLessThan(height('waistToHip'))
    expect(height('napeToArmpitLevel')).toBeLessThan(height('napeToWaist'))
    expect(height('waistToFloor')).toBeLessThan(height('stature'))
  })

  it('shows her left on the right of the front view', () => {
    for (const name of ['shoulderLength', 'shoulderSlope'] as const) {
      const [left, right] = [tapePath(`${name}Left`), tapePath(`${name}Right`)]
      expect(left.view).toBe('front')
      expect(left.to.x).toBe(FIGURE_WIDTH - right.to.x)
      expect(left.to.x).toBeGreaterThan(FIGURE_WIDTH / 2)
    }
  })

  it.each(['front', 'back', 'side', 'flat'] as const)('draws the %s inside the box', (view) => {
    const strokes = figureOutline(view)
    expect(strokes.length).toBeGreaterThan(1)
    for (const stroke of strokes)
      for (const place of coordinates(stroke)) expect(inBox(place)).toBe(true)
  })
})
