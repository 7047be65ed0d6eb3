/**
 * A Sheet is the drafting paper. Each verb places one named point or line and, in the same act,
 * writes one Step, so the drawing, the numbers and the written instructions cannot disagree.
 * A class, because the order of calls is the subject.
 */
import { arcBetween, line } from '../geometry/segment.ts'
import { pathLength } from '../geometry/length.ts'
import { pathStart, type Path } from '../geometry/path.ts'
import { add, distance, point, scale, subtract, unit, type Point } from '../geometry/point.ts'
import { found, sources, type Amount } from '../units/amount.ts'
import { mm } from '../units/length.ts'
import type {
  Dart,
  Edge,
  EdgeDart,
  EdgeName,
  EdgeRole,
  Level,
  LevelName,
  PieceId,
} from './piece.ts'
import type { Act, Direction, Guide, Step } from './step.ts'
import { SHEET_WORDS } from './sheet.words.ts'

const WAY: Readonly<Record<Direction, Point>> = {
  down: point(0, 1),
  up: point(0, -1),
  right: point(1, 0),
  left: point(-1, 0),
}
/** How far level lines run past the piece: construction lines overshoot, as a pencil does. */
const OVERSHOOT = 9

export class Sheet {
  private readonly places = new Map<string, Point>()
  private readonly rests = new Map<string, readonly string[]>()
  private readonly written: Step[] = []
  private readonly drawnEdges: Edge[] = []
  private readonly drawnDarts: Dart[] = []
  private readonly drawnEdgeDarts: EdgeDart[] = []
  private readonly drawnLevels: Level[] = []

  constructor(readonly piece: PieceId) {}

  at(name: string): Point {
    const p = this.places.get(name)
    if (!p) throw new Error(`${this.piece}: step refers to point ${name} before it is placed`)
    return p
  }

  start(at: string, why: string): void {
    this.place(at, point(0, 0), [])
    this.write({ verb: 'start', at, why }, [])
  }

  /** Places `to` at `amount` from `from`, squared in `direction`; with `level`, a line is squared out there. */
  measure(
    to: string,
    from: string,
    direction: Direction,
    amount: Amount,
    why: string,
    level?: LevelName,
  ): void {
    const p = add(this.at(from), scale(WAY[direction], amount.mm))
    this.place(to, p, [...this.restsOf(from), ...sources(amount)])
    const act: Act = { verb: 'measure', to, from, direction, amount, why }
    this.write(level ? { ...act, level } : act, [[line(this.at(from), p)]])
    if (level) this.drawnLevels.push({ name: level, from: p, to: p })
  }

  /** Places `to` so far out and so far down from `from`; negative is in and up. */
  spot(to: string, from: string, across: Amount, upright: Amount, why: string): void {
    const p = add(this.at(from), point(across.mm, upright.mm))
    this.place(to, p, [...this.restsOf(from), ...sources(across), ...sources(upright)])
    const size = (a: Amount): Amount => ({ ...a, mm: mm(Math.abs(a.mm)) })
    this.write(
      {
        verb: 'spot',
        to,
        from,
        across: size(across),
        right: across.mm >= 0,
        upright: size(upright),
        down: upright.mm >= 0,
        why,
      },
      [[line(this.at(from), p)]],
    )
  }

  /** Compass in `centre`, opened to `amount`: `to` lies where it meets the level of `level`, on the right. */
  compass(to: string, centre: string, amount: Amount, level: string, why: string): void {
    const [c, y] = [this.at(centre), this.at(level).y]
    const drop = y - c.y
    if (amount.mm <= Math.abs(drop))
      throw new Error(
        `${this.piece}: compass of ${amount.mm} mm from ${centre} misses the level of ${level}`,
      )
    this.place(to, point(c.x + Math.sqrt(amount.mm ** 2 - drop ** 2), y), [
      ...this.restsOf(centre),
      ...this.restsOf(level),
      ...sources(amount),
    ])
    this.write({ verb: 'compass', to, centre, amount, level, why }, [[line(c, this.at(to))]])
  }

  /** Slides from `from` along the line towards `along`, or away from it when the amount is negative. */
  slide(to: string, from: string, along: string, amount: Amount, why: string): void {
    const way = unit(subtract(this.at(along), this.at(from)))
    const p = add(this.at(from), scale(way, amount.mm))
    this.place(to, p, [...this.restsOf(from), ...this.restsOf(along), ...sources(amount)])
    const said = { ...amount, mm: mm(Math.abs(amount.mm)) }
    this.write({ verb: 'slide', to, from, along, away: amount.mm < 0, amount: said, why }, [
      [line(this.at(from), p)],
    ])
  }

  join(from: string, to: string, edge: EdgeName, role: EdgeRole, why: string): void {
    const path = [line(this.at(from), this.at(to))]
    this.draw(edge, role, path)
    this.write({ verb: 'join', from, to, edge, why }, [path])
  }

  arc(centre: string, from: string, to: string, edge: EdgeName, role: EdgeRole, why: string): void {
    const c = this.at(centre)
    const path = [arcBetween(c, this.at(from), this.at(to))]
    this.draw(edge, role, path)
    const amount = found(`${centre}–${to}`, mm(distance(c, this.at(to))), this.restsOf(to))
    this.write({ verb: 'arc', centre, from, to, amount, edge, why }, [path])
  }

  /** A curve told by ruler: guides are measured square from `base`, first `along`, then aside. */
  curve(
    from: string,
    to: string,
    path: Path,
    how: { base: string; along: Direction; guides: readonly Point[] },
    edge: EdgeName,
    role: EdgeRole,
    why: string,
  ): void {
    this.draw(edge, role, path)
    const origin = this.at(how.base)
    const guides = how.guides.map((g): Guide => {
      const d = subtract(g, origin)
      const upright = how.along === 'down' || how.along === 'up'
      const [out, aside] = upright ? [Math.abs(d.y), d.x] : [Math.abs(d.x), d.y]
      const then: Direction = upright ? (aside < 0 ? 'left' : 'right') : aside < 0 ? 'up' : 'down'
      return { out: found('', mm(out)), then, by: found('', mm(Math.abs(aside))) }
    })
    this.write({ verb: 'curve', from, to, base: how.base, along: how.along, guides, edge, why }, [
      path,
    ])
  }

  /** A diamond dart about `at`, `width` wide there, tips `up` and `down` of it; cut off by a hem nearer than that. */
  dart(at: string, width: Amount, up: Amount, down: Amount, hem: number): void {
    const m = this.at(at)
    const half = width.mm / 2
    const left = 1 - (hem - m.y) / down.mm
    const name = this.drawnDarts.length === 0 ? 'waistDart' : 'waistDart2'
    const dart: Dart = {
      name,
      upperTip: point(m.x, m.y - up.mm),
      inner: point(m.x - half, m.y),
      outer: point(m.x + half, m.y),
      lowerTip: point(m.x, m.y + down.mm),
      ...(left > 0
        ? { open: { inner: point(m.x - half * left, hem), outer: point(m.x + half * left, hem) } }
        : {}),
    }
    this.drawnDarts.push(dart)
    const atHem = found('', mm(Math.max(0, width.mm * left)))
    this.write({ verb: 'dart', at, width, up, down, atHem, why: SHEET_WORDS.legsEqual }, [
      ...dartLegs(dart).map((leg) => [leg]),
    ])
  }

  /** A dart from `tip` to a mouth on an edge. */
  edgeDart(
    dart: Pick<EdgeDart, 'name' | 'edge'>,
    at: { upper: string; lower: string; tip: string },
    width: Amount,
    why: string,
  ): void {
    const [u, l, t] = [this.at(at.upper), this.at(at.lower), this.at(at.tip)]
    this.drawnEdgeDarts.push({ ...dart, tip: t, upper: u, lower: l })
    this.write({ verb: 'edgeDart', ...dart, ...at, width, why }, [[line(t, u)], [line(t, l)]])
  }

  /** A straight distance read off the paper. */
  across(from: string, to: string): Amount {
    return found(SHEET_WORDS.distance(from, to), mm(distance(this.at(from), this.at(to))), [
      ...this.restsOf(from),
      ...this.restsOf(to),
    ])
  }
  has(name: string): boolean {
    return this.places.has(name)
  }
  restsOf(name: string): readonly string[] {
    return this.rests.get(name) ?? []
  }

  get edges(): readonly Edge[] {
    return this.drawnEdges
  }
  get darts(): readonly Dart[] {
    return this.drawnDarts
  }
  get edgeDarts(): readonly EdgeDart[] {
    return this.drawnEdgeDarts
  }
  get steps(): readonly Step[] {
    return this.written
  }
  get points(): Readonly<Record<string, Point>> {
    return Object.fromEntries(this.places)
  }
  /** Level lines squared out from the fold past the widest point of the piece. */
  levels(right: number): readonly Level[] {
    return this.drawnLevels.map((l) => ({ ...l, to: point(right + OVERSHOOT, l.from.y) }))
  }
  /** Which measurements and choices each point rests on. */
  get provenance(): Readonly<Record<string, readonly string[]>> {
    return Object.fromEntries([...this.rests].map(([name, list]) => [name, [...new Set(list)]]))
  }

  private place(name: string, p: Point, rests: readonly string[]): void {
    if (this.places.has(name)) throw new Error(`${this.piece}: point ${name} is placed twice`)
    this.places.set(name, p)
    this.rests.set(name, rests)
  }
  private draw(name: EdgeName, role: EdgeRole, path: Path): void {
    if (pathLength(path) === 0)
      throw new Error(
        `${this.piece}: edge ${name} has no length at ${JSON.stringify(pathStart(path))}`,
      )
    const begun = this.drawnEdges.findIndex((e) => e.name === name)
    if (begun < 0) this.drawnEdges.push({ name, role, path })
    else this.drawnEdges[begun] = { name, role, path: [...this.drawnEdges[begun]!.path, ...path] }
  }
  private write(act: Act, lights: readonly Path[]): void {
    this.written.push({ ...act, piece: this.piece, lights })
  }
}

export const edgeDartLegs = (d: EdgeDart) => [line(d.tip, d.upper), line(d.tip, d.lower)]

/** The lines that are sewn: two upper and two lower legs, the lower ones cut off at an open hem. */
export const dartLegs = (d: Dart) => [
  line(d.upperTip, d.inner),
  line(d.inner, d.open?.inner ?? d.lowerTip),
  line(d.open?.outer ?? d.lowerTip, d.outer),
  line(d.outer, d.upperTip),
]
