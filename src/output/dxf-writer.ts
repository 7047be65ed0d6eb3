/**
 * The group codes of a DXF file of release 12 (AC1009), the oldest form that every reader takes:
 * header, layers, blocks and the entities used here. Lengths are millimetres, y runs up; whoever
 * calls has turned it. Source: the published DXF reference, group codes by entity.
 */
import type { Point } from '../geometry/point.ts'

export interface DxfLayer {
  readonly name: string
  /** Number of the usual palette: 7 black, 1 red, 3 green, 5 blue, 8 grey. */
  readonly colour: number
}
export interface DxfBlock {
  readonly name: string
  readonly entities: readonly string[]
  /** Where it lies on the sheet. */
  readonly at: Point
}

type Group = readonly [code: number, value: string | number]

const groups = (list: readonly Group[]): string =>
  list.map(([code, value]) => `${code}\n${value}`).join('\n')
const where = (p: Point, by = 0): Group[] => [
  [10 + by, real(p.x)],
  [20 + by, real(p.y)],
  [30 + by, '0.0'],
]

/** Four decimals of a millimetre; a real is written with its point. */
function real(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`dxf: ${value} is no coordinate`)
  const text = (Math.round(value * 1e4) / 1e4 + 0).toFixed(4).replace(/0+$/, '')
  return text.endsWith('.') ? `${text}0` : text
}

export const dxfPoint = (layer: string, p: Point): string =>
  groups([[0, 'POINT'], [8, layer], ...where(p)])

export const dxfLine = (layer: string, from: Point, to: Point): string =>
  groups([[0, 'LINE'], [8, layer], ...where(from), ...where(to, 1)])

/** POLYLINE with its VERTEX entities: release 12 has no lighter one. */
export const dxfPolyline = (layer: string, points: readonly Point[], closed: boolean): string =>
  groups([
    [0, 'POLYLINE'],
    [8, layer],
    [66, 1],
    ...where({ x: 0, y: 0 }),
    [70, closed ? 1 : 0],
    ...points.flatMap((p): Group[] => [[0, 'VERTEX'], [8, layer], ...where(p)]),
    [0, 'SEQEND'],
    [8, layer],
  ])

export interface DxfText {
  readonly text: string
  readonly at: Point
  readonly size: number
  /** Degrees, counter-clockwise. */
  readonly angle: number
  readonly anchor: 'start' | 'middle' | 'end'
}
/** How a file of pieces says its unit (from memory). */
export const METRIC = 'UNITS: METRIC'
const JUSTIFIED = { start: 0, middle: 1, end: 2 } as const

export const dxfText = (layer: string, t: DxfText): string =>
  groups([
    [0, 'TEXT'],
    [8, layer],
    ...where(t.at),
    [40, real(t.size)],
    [1, plain(t.text)],
    [50, real(t.angle)],
    [72, JUSTIFIED[t.anchor]],
    ...where(t.at, 1),
  ])

/** What German writes instead where there is nothing but ASCII (DIN 5007-2: ä as ae). */
const SPELT: Readonly<Record<string, string>> = {
  ä: 'ae',
  ö: 'oe',
  ü: 'ue',
  Ä: 'Ae',
  Ö: 'Oe',
  Ü: 'Ue',
  ß: 'ss',
  '×': 'x',
}

/** Release 12 knows the printed characters of ASCII, and %%d for a degree. */
export const plain = (text: string): string =>
  text
    .normalize('NFC')
    .replace(/[äöüÄÖÜß×]/g, (letter) => SPELT[letter] ?? letter)
    .normalize('NFKD')
    .replace(/[\u201c-\u201f]/g, '"')
    .replace(/[\u2018\u2019]/g, "'")
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/\u00b0/g, '%%d')
    .replace(/[\u0300-\u036f]|\p{Cc}/gu, '')
    .replace(/[^ -~]/g, '?')

export function dxfFile(
  layers: readonly DxfLayer[],
  blocks: readonly DxfBlock[],
  entities: readonly string[],
  size: { readonly min: Point; readonly max: Point },
): string {
  const header = groups([
    [9, '$ACADVER'],
    [1, 'AC1009'],
    [9, '$EXTMIN'],
    ...where(size.min),
    [9, '$EXTMAX'],
    ...where(size.max),
    [9, '$LUNITS'],
    [70, 2],
    [9, '$LUPREC'],
    [70, 4],
    // Newer than release 12, which names no unit: readers that know it take millimetres from it.
    [9, '$INSUNITS'],
    [70, 4],
  ])
  const inserts = blocks.map((b) => groups([[0, 'INSERT'], [8, '0'], [2, b.name], ...where(b.at)]))
  return [
    section('HEADER', [header]),
    section('TABLES', [lineTypes, layerTable(layers), styles]),
    section('BLOCKS', blocks.map(block)),
    section('ENTITIES', [...inserts, ...entities]),
    groups([[0, 'EOF']]),
    '',
  ].join('\n')
}

const section = (name: string, parts: readonly string[]): string =>
  [
    groups([
      [0, 'SECTION'],
      [2, name],
    ]),
    ...parts,
    groups([[0, 'ENDSEC']]),
  ].join('\n')
const table = (name: string, count: number, entries: readonly Group[]): string =>
  groups([[0, 'TABLE'], [2, name], [70, count], ...entries, [0, 'ENDTAB']])

const lineTypes = table('LTYPE', 1, [
  [0, 'LTYPE'],
  [2, 'CONTINUOUS'],
  [70, 0],
  [3, 'Solid line'],
  [72, 65],
  [73, 0],
  [40, '0.0'],
])
const layerTable = (layers: readonly DxfLayer[]): string =>
  table(
    'LAYER',
    layers.length,
    layers.flatMap((l): Group[] => [
      [0, 'LAYER'],
      [2, l.name],
      [70, 0],
      [62, l.colour],
      [6, 'CONTINUOUS'],
    ]),
  )
const styles = table('STYLE', 1, [
  [0, 'STYLE'],
  [2, 'STANDARD'],
  [70, 0],
  [40, '0.0'],
  [41, '1.0'],
  [50, '0.0'],
  [71, 0],
  [42, '2.5'],
  [3, 'txt'],
  [4, ''],
])

const block = (b: DxfBlock): string =>
  [
    groups([[0, 'BLOCK'], [8, '0'], [2, b.name], [70, 0], ...where({ x: 0, y: 0 }), [3, b.name]]),
    ...b.entities,
    groups([
      [0, 'ENDBLK'],
      [8, '0'],
    ]),
  ].join('\n')
