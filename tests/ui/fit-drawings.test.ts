/**
 * The small drawings of the Fit screen: one for every sign and every test, told apart where the
 * complaints are, and drawn inside their pictures. What is right to show: from the words of the
 * signs and tests, which have their own sources; common practice for how folds are drawn.
 */
import { expect, test } from 'vitest'
import { ALL_COMPLAINTS } from '../../src/fitting/complaints/catalogue.ts'
import { HOWS } from '../../src/fitting/half-amount.ts'
import { HOW_DRAWINGS } from '../../src/ui/fitting/drawings/how-read.ts'
import type { Line } from '../../src/ui/fitting/drawings/marks.ts'
import { SIGNS } from '../../src/ui/fitting/drawings/signs.ts'
import { linesOfSketch, type Sketch } from '../../src/ui/fitting/drawings/sketch.ts'
import { testDrawing, TEST_DRAWINGS } from '../../src/ui/fitting/drawings/tests.ts'
import { SIZE } from '../../src/ui/fitting/drawings/views.ts'

const pointsOf = ({ d }: Line) =>
  [...d.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const)
const outside = (sketch: Sketch) =>
  sketch.marks
    .flat()
    // A wash may fade over the edge of a close-up, and a line of the cloth run on beyond it.
    .filter((line) => line.ink !== 'here' && line.ink !== 'seam')
    .flatMap(pointsOf)
    .filter(([x, y]) => x < 0 || y < 0 || x > SIZE || y > SIZE)
const asked = Object.entries(TEST_DRAWINGS).flatMap(([id, tests]) =>
  tests.map((drawing, i) => ({ name: `${id} test ${i + 1}`, ...drawing })),
)
const picture = (sketch: Sketch) => JSON.stringify(linesOfSketch(sketch))

test('every complaint has a drawing of its sign, and every test one of each way it may come out', () => {
  for (const { id, tests } of ALL_COMPLAINTS) {
    expect(SIGNS[id].marks.length, id).toBeGreaterThan(0)
    expect(TEST_DRAWINGS[id].length, id).toBe(tests.length)
    for (const { number } of tests) expect(testDrawing(id, number), id).toBeDefined()
  }
  expect(ALL_COMPLAINTS).toHaveLength(76)
})
test('no two signs look alike', () => {
  const seen = new Map<string, string>()
  for (const [id, sketch] of Object.entries(SIGNS)) {
    const same = seen.get(picture(sketch))
    expect(same, `${id} looks like ${same}`).toBeUndefined()
    seen.set(picture(sketch), id)
  }
})
test('yes and no of a test look different and are said differently', () => {
  for (const { name, yes, no } of asked) {
    expect(picture(yes.sketch), name).not.toBe(picture(no.sketch))
    expect(yes.sees, name).not.toBe(no.sees)
  }
})
test('a fold that is taut is drawn taut, and a loose one loose', () => {
  // From the words of the signs: strain, tension, taut against slack and loose.
  const inks = (id: keyof typeof SIGNS) => new Set(SIGNS[id].marks.flat().map((l) => l.ink))
  for (const { id, sign } of ALL_COMPLAINTS) {
    const said = sign.replaceAll(/\b(no|nothing|empty)\b[^.;,]*/gi, '')
    const tautSaid = /\b(taut|strain)/i.test(said)
    const looseSaid = /\b(slack|loose folds|soft fold|level folds)/i.test(said)
    if (tautSaid && !looseSaid) expect(inks(id).has('taut'), `${id}: ${sign}`).toBe(true)
    if (looseSaid && !tautSaid) expect(inks(id).has('slack'), `${id}: ${sign}`).toBe(true)
  }
})
test('all marks lie inside their pictures', () => {
  for (const [id, sketch] of Object.entries(SIGNS)) expect(outside(sketch), id).toEqual([])
  for (const { name, yes, no } of asked) {
    expect(outside(yes.sketch), `${name}, yes`).toEqual([])
    expect(outside(no.sketch), `${name}, no`).toEqual([])
  }
})
test('every way to read a pin has a drawing', () => {
  for (const how of HOWS) expect(HOW_DRAWINGS[how].marks.length, how).toBeGreaterThan(0)
})
