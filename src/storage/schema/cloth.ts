/**
 * What she said of her cloth, and what is sewn, as they lie in a garment's row. Like the cutting
 * it is read entry by entry: what this program cannot use takes its usual value.
 */
import * as v from 'valibot'
import { isIsoDate } from '../../measurements/book.ts'
import { isRecord } from '../../measurements/stored.ts'
import {
  DRAPE_READINGS,
  isClothKind,
  type ClothKind,
  type DrapeTest,
} from '../../output/cloth-kind.ts'
import type { Sewn } from '../../output/sewn.ts'
import {
  CLOTH_WIDTHS,
  MATCH_ATS,
  MOST_SHRINKAGE,
  MOST_SPARE,
  MOST_WIDTHS,
  REPEATS,
  SELVEDGES,
  USUAL_CLOTH,
  type ClothWishes,
  type MatchAt,
} from '../../layout/cloth-wishes.ts'
import { MANNERS, type Manner } from '../../layout/lay.ts'
import { mm, type Mm } from '../../units/length.ts'
import { FURTHEST } from './length.ts'

export const ClothWishesSchema = v.pipe(
  v.unknown(),
  v.transform((stored): ClothWishes => readCloth(stored)),
)
export const SewnSchema = v.pipe(
  v.unknown(),
  v.transform((stored): Sewn => readSewn(stored)),
)

interface Span {
  readonly min: number
  readonly max: number
}
const within = (value: unknown, { min, max }: Span): value is number =>
  typeof value === 'number' && value >= min && value <= max
const length = (value: unknown, span: Span): Mm | undefined =>
  within(value, span) ? mm(value) : undefined
const BORDERS: Span = { min: 0, max: CLOTH_WIDTHS.max }
const AMOUNTS: Span = { min: 1, max: FURTHEST }
const PRICES: Span = { min: 0, max: 1e9 }

function readCloth(stored: unknown): ClothWishes {
  if (!isRecord(stored)) return USUAL_CLOTH
  const usual = USUAL_CLOTH
  const widths = readWidths(stored['widths'])
  const width = length(stored['width'], CLOTH_WIDTHS) ?? usual.width
  const [along, across] = [stored['repeatAlong'], stored['repeatAcross']].map((r) =>
    length(r, REPEATS),
  )
  const border = readPair(stored['border'], 'depth', 'hemAt', BORDERS, BORDERS)
  const have = readPair(stored['have'], 'length', 'width', AMOUNTS, CLOTH_WIDTHS)
  const drape = readDrape(stored['drape'])
  const { kind, manner, matchAt, soldBy, price } = stored
  const share = (name: string, otherwise: number, most: number): number => {
    const value = stored[name]
    return within(value, { min: 0, max: most }) ? value : otherwise
  }
  return {
    kind: isKind(kind) ? kind : usual.kind,
    ...(drape ? { drape } : {}),
    widths: widths.includes(width) ? widths : [...widths, width].sort((a, b) => a - b),
    width,
    manner: isManner(manner) ? manner : 'shortest',
    oneWay: stored['oneWay'] === true,
    selvedge: length(stored['selvedge'], SELVEDGES) ?? usual.selvedge,
    shrinkAlong: share('shrinkAlong', 0, MOST_SHRINKAGE),
    shrinkAcross: share('shrinkAcross', 0, MOST_SHRINKAGE),
    spare: share('spare', usual.spare, MOST_SPARE),
    ...(along === undefined ? {} : { repeatAlong: along }),
    ...(across === undefined ? {} : { repeatAcross: across }),
    matchAt: isMatchAt(matchAt) ? matchAt : usual.matchAt,
    ...(border ? { border: { depth: border[0], hemAt: border[1] } } : {}),
    ...(soldBy === 'metre' || soldBy === 'yard' ? { soldBy } : {}),
    ...(within(price, PRICES) ? { price } : {}),
    ...(have ? { have: { length: have[0], width: have[1] } } : {}),
  }
}

const isKind = (name: unknown): name is ClothKind => typeof name === 'string' && isClothKind(name)
const isManner = (name: unknown): name is Manner => MANNERS.some((known) => known === name)
const isMatchAt = (name: unknown): name is MatchAt => MATCH_ATS.some((known) => known === name)

function readWidths(stored: unknown): readonly Mm[] {
  const list = (Array.isArray(stored) ? stored : []).flatMap((w: unknown) =>
    within(w, CLOTH_WIDTHS) ? [mm(w)] : [],
  )
  const each = [...new Set(list)].sort((a, b) => a - b).slice(0, MOST_WIDTHS)
  return each.length > 0 ? each : USUAL_CLOTH.widths
}

function readPair(
  stored: unknown,
  first: string,
  second: string,
  spanOfFirst: Span,
  spanOfSecond: Span,
): readonly [Mm, Mm] | undefined {
  if (!isRecord(stored)) return undefined
  const a = length(stored[first], spanOfFirst)
  const b = length(stored[second], spanOfSecond)
  return a === undefined || b === undefined ? undefined : [a, b]
}

function readDrape(stored: unknown): DrapeTest | undefined {
  if (!isRecord(stored)) return undefined
  const apart = length(stored['apart'], DRAPE_READINGS)
  const of = stored['of']
  return apart === undefined || !isKind(of) ? undefined : { apart, of }
}

function readSewn(stored: unknown): Sewn {
  const entries = Object.entries(isRecord(stored) ? stored : {})
  return Object.fromEntries(
    entries.filter((e): e is [string, string] => typeof e[1] === 'string' && isIsoDate(e[1])),
  )
}
