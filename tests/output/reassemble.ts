/**
 * Printed sheets laid edge to edge again, from the operators of the file alone, and the outlines
 * of the draft beside them. What a printer does to a sheet is given as shares across and down.
 */
import type { Draft } from '../../src/draft/draft.ts'
import { flatten } from '../../src/geometry/path.ts'
import type { TilePlan } from '../../src/output/tiles.ts'
import type { Drawn, ReadPage, Spot } from './read-pdf.ts'

/** A point is 1/72 in (ISO 32000-1, 8.3.2.3) and an inch 25.4 mm (ISO 80000-3). */
const MM = 25.4 / 72
type Chord = readonly Spot[]

/** Seam lines, 0.6 mm wide, as they are printed. */
const isSeam = (d: Drawn): boolean => Math.abs(d.lineWidth * MM - 0.6) < 1e-3

/** Seam lines of one tile in millimetres of the whole, by the name the sheet bears. */
export function onBoard(page: ReadPage, printer = { x: 1, y: 1 }): Chord[] {
  const name = page.texts.find(({ text }) => /^[A-Z]{1,2}\d+$/.test(text))?.text
  if (name === undefined) throw new Error('a sheet without a name')
  const [x, y, width, height] = page.drawn.find((d) => d.clip)?.clip ?? [0, 0, 0, 0]
  const [letters, digits] = [name.replace(/\d/g, ''), name.replace(/\D/g, '')]
  const [row, column] = [letters.charCodeAt(letters.length - 1) - 65, Number(digits) - 1]
  if (letters.length > 1) throw new Error(`${name}: more than 26 rows`)
  const whole = (p: Spot): Spot => ({
    x: (p.x - x + column * width) * MM * printer.x,
    y: (y + height - p.y + row * height) * MM * printer.y,
  })
  return page.drawn
    .filter((d) => d.clip && isSeam(d))
    .flatMap((d) => d.runs.flatMap(chordsOf))
    .flatMap(([a, b]) => {
      const seen = a && b && clipped(a, b, [x, y, width, height])
      return seen ? [seen.map(whole)] : []
    })
}
const chordsOf = (run: readonly Spot[]): Chord[] => run.slice(1).map((b, i) => [run[i] ?? b, b])

/** The part of a chord inside a rectangle; plain and slow. */
function clipped(a: Spot, b: Spot, [x, y, w, h]: readonly number[]): Chord | undefined {
  let [from, to] = [0, 1]
  const room = [
    [a.x - (x ?? 0), b.x - a.x],
    [(x ?? 0) + (w ?? 0) - a.x, a.x - b.x],
    [a.y - (y ?? 0), b.y - a.y],
    [(y ?? 0) + (h ?? 0) - a.y, a.y - b.y],
  ]
  for (const [inside = 0, way = 0] of room) {
    if (way === 0) {
      if (inside < 0) return undefined
    } else if (way > 0) from = Math.max(from, -inside / way)
    else to = Math.min(to, inside / -way)
  }
  const at = (t: number): Spot => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t })
  return from < to ? [at(from), at(to)] : undefined
}

/** Every seam line of the draft as often as the plan lays it, in short chords. */
export const outlines = (draft: Draft, plan: TilePlan): Chord[] =>
  plan.placed.flatMap(({ name, turn, by }) => {
    const piece = draft.pieces.find((p) => p.id === name)
    if (!piece) throw new Error(`${name} is no piece of the draft`)
    const [c, s] = [Math.cos((turn * Math.PI) / 2), Math.sin((turn * Math.PI) / 2)]
    return piece.edges
      .filter((e) => e.role !== 'fold')
      .flatMap((e) =>
        chordsOf(
          flatten(e.path, 0.005).map((p) => ({
            x: p.x * c - p.y * s + by.x,
            y: p.x * s + p.y * c + by.y,
          })),
        ),
      )
  })

/** What is missing (a spot wanted that is not there), what is added, and the difference in length. */
export function compared(got: readonly Chord[], wanted: readonly Chord[]) {
  const spots = wanted.flatMap(([a, b]) =>
    a && b ? [a, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }] : [],
  )
  return {
    missing: Math.max(...spots.map((p) => gapTo(p, got))),
    added: Math.max(...got.flat().map((p) => gapTo(p, wanted))),
    longer: Math.abs(total(got) - total(wanted)),
  }
}
const total = (list: readonly Chord[]): number =>
  list.reduce((sum, [a, b]) => sum + (a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0), 0)

function gapTo(p: Spot, chords: readonly Chord[]): number {
  let least = Infinity
  for (const [a, b] of chords) {
    if (!a || !b) continue
    const [dx, dy] = [b.x - a.x, b.y - a.y]
    const long = dx * dx + dy * dy
    const t = long === 0 ? 0 : ((p.x - a.x) * dx + (p.y - a.y) * dy) / long
    const clamp = Math.min(1, Math.max(0, t))
    least = Math.min(least, Math.hypot(a.x + clamp * dx - p.x, a.y + clamp * dy - p.y))
  }
  return least
}
