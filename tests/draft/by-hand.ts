/**
 * A pattern drawn from the written steps alone by someone who owns a ruler, a square, a compass
 * and a pencil. It reads the sentences of the printed instructions and knows nothing else: no
 * code of the draft, no numbers but those on the page. Centimetres on the page, millimetres out.
 */
export interface Spot {
  readonly x: number
  readonly y: number
}
export interface HandDrawn {
  readonly points: ReadonlyMap<string, Spot>
  /** Ends and centre of every arc swung, to see whether the compass closes on its end. */
  readonly arcs: readonly { centre: Spot; from: Spot; to: Spot; radius: number }[]
  readonly darts: readonly { up: Spot; down: Spot; inner: Spot; outer: Spot }[]
  /** Guide points of each curve, by the edge it draws. */
  readonly guides: ReadonlyMap<string, readonly Spot[]>
}

const NUMBER = String.raw`(\d+(?:\.\d+)?) cm`
const WAY: Readonly<Record<string, Spot>> = {
  Down: { x: 0, y: 1 },
  Up: { x: 0, y: -1 },
  'Square out': { x: 1, y: 0 },
  'Square in': { x: -1, y: 0 },
  down: { x: 0, y: 1 },
  up: { x: 0, y: -1 },
  out: { x: 1, y: 0 },
  in: { x: -1, y: 0 },
}

/** The numbered steps under one heading of the instructions, without their numbers. */
export function stepsUnder(text: string, heading: string): string[] {
  const lines = text.split('\n')
  const start = lines.findIndex((l) => l.startsWith(heading))
  if (start < 0) throw new Error(`no heading "${heading}" on the page`)
  const steps: string[] = []
  for (const line of lines.slice(start + 1)) {
    const step = /^\d+\. (.*)$/.exec(line)?.[1]
    if (step !== undefined) steps.push(step)
    else if (steps.length > 0 && line.trim() !== '') break
  }
  return steps
}

export function drawByHand(steps: readonly string[]): HandDrawn {
  const points = new Map<string, Spot>()
  const arcs: HandDrawn['arcs'][number][] = []
  const darts: HandDrawn['darts'][number][] = []
  const guides = new Map<string, readonly Spot[]>()
  const at = (name: string): Spot => {
    const p = points.get(name)
    if (!p) throw new Error(`the page uses ${name} before it says where ${name} is`)
    return p
  }
  const go = (from: Spot, way: Spot, by: number): Spot => ({
    x: from.x + way.x * by,
    y: from.y + way.y * by,
  })
  for (const step of steps) {
    // A title is one word, "S–T"; a step that places no letter has none.
    const [, title = '', said = ''] = /^(?:(\S+): )?(.*)$/.exec(step) ?? []
    const to = title.split('–').at(-1) ?? ''
    const first = (pattern: string): string[] | undefined =>
      new RegExp(pattern).exec(said)?.slice(1)
    const numbers = (part: string): number[] =>
      [...part.matchAll(new RegExp(NUMBER, 'g'))].map((m) => Number(m[1]) * 10)
    const last = (part: string): number => {
      const n = numbers(part).at(-1)
      if (n === undefined) throw new Error(`no length in "${part}"`)
      return n
    }
    const square = first('^(Down|Up|Square out|Square in) from ([\\w′]+), (.*)$')
    const compass = first(
      '^Compass in ([\\w′]+), open to (.*?)\\. Mark ([\\w′]+) where it meets the level of ([\\w′]+)',
    )
    const swing = first('^Compass in ([\\w′]+), open to (.*?)\\. Swing from ([\\w′]+) to ([\\w′]+)')
    const spot = first('^From ([\\w′]+), (.*?) (out|in) and (.*?) (up|down): ')
    const towards = first('^From ([\\w′]+) towards ([\\w′]+), (.*?):')
    const past = first('^Lengthen the line ([\\w′]+)–([\\w′]+) past [\\w′]+ by (.*?):')
    const dart = first(
      `^The dart: ${NUMBER} wide at ([\\w′]+), half on either side\\. Upper tip ${NUMBER} above`,
    )
    const curve = first(
      '^Draw the (.*?) from ([\\w′]+) to ([\\w′]+),.*Guide points from ([\\w′]+): (.*)\\.$',
    )
    if (/^Mark [\w′]+:/.test(said)) points.set(to, { x: 0, y: 0 })
    else if (square) {
      const [way = '', from = '', rest = ''] = square
      // The length stands before the reason and before the level that is squared out.
      points.set(to, go(at(from), WAY[way]!, last(/^[^:]*?cm(?=[:.]|$)/.exec(rest)?.[0] ?? rest)))
    } else if (compass) {
      const [centre = '', open = '', mark = '', level = ''] = compass
      const [c, y, r] = [at(centre), at(level).y, last(open)]
      points.set(mark, { x: c.x + Math.sqrt(r ** 2 - (y - c.y) ** 2), y })
    } else if (swing) {
      const [centre = '', open = '', from = '', end = ''] = swing
      arcs.push({ centre: at(centre), from: at(from), to: at(end), radius: last(open) })
    } else if (spot) {
      const [from = '', across = '', way = '', upright = '', fall = ''] = spot
      points.set(to, go(go(at(from), WAY[way]!, last(across)), WAY[fall]!, last(upright)))
    } else if (towards) {
      const [from = '', along = '', by = ''] = towards
      points.set(to, slid(at(from), at(along), last(by)))
    } else if (past) {
      const [along = '', from = '', by = ''] = past
      points.set(to, slid(at(from), at(along), -last(by)))
    } else if (dart) {
      const [width = '', name = '', up = ''] = dart
      const m = at(name)
      const down = first(`(?:Lower tip ${NUMBER} below|tip ${NUMBER} down)`)
      const half = (Number(width) * 10) / 2
      darts.push({
        up: go(m, WAY['up']!, Number(up) * 10),
        down: go(m, WAY['down']!, Number(down?.find((d) => d !== undefined) ?? NaN) * 10),
        inner: { x: m.x - half, y: m.y },
        outer: { x: m.x + half, y: m.y },
      })
    } else if (curve) {
      const [edge = '', , , base = '', list = ''] = curve
      guides.set(
        edge,
        list
          .split('; ')
          .map((spot) =>
            [...spot.matchAll(new RegExp(`${NUMBER} (down|up|out|in)`, 'g'))].reduce(
              (p, m) => go(p, WAY[m[2]!]!, Number(m[1]) * 10),
              at(base),
            ),
          ),
      )
    } else if (!/^(Rule|Mark the|Lay paper|Measure|First the|Turn the paper) /.test(said))
      throw new Error(`cannot follow: ${said}`)
  }
  return { points, arcs, darts, guides }
}

function slid(from: Spot, towards: Spot, by: number): Spot {
  const [dx, dy] = [towards.x - from.x, towards.y - from.y]
  const far = Math.hypot(dx, dy)
  return { x: from.x + (dx / far) * by, y: from.y + (dy / far) * by }
}
