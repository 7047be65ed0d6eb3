/**
 * Her own lengths as they lie in a garment's row, read entry by entry: a length that this program
 * cannot use is left out, the others stay.
 */
import * as v from 'valibot'
import { isRecord } from '../../measurements/stored.ts'
import { LIKED_IDS, type OwnWork } from '../../draft/own-work.ts'
import { mm, type Mm } from '../../units/length.ts'
import { FURTHEST } from './length.ts'

/** A piece and a part of it; what else a name may hold is no place of a draft. */
const PLACE = /^[A-Za-z]{1,40}\.[A-Za-z0-9]{1,40}$/
/** More places than any garment has. */
const MOST = 400

const isLength = (value: unknown): value is Mm =>
  typeof value === 'number' && value > 0 && value <= FURTHEST

function readOwn(stored: unknown): OwnWork {
  const { drawn, liked } = isRecord(stored) ? stored : {}
  const entries = (from: unknown): [string, Mm][] =>
    isRecord(from)
      ? Object.entries(from).flatMap(([name, value]): [string, Mm][] =>
          isLength(value) ? [[name, mm(value)]] : [],
        )
      : []
  const flat = entries(liked).filter(([id]) => LIKED_IDS.some((known) => known === id))
  return {
    drawn: Object.fromEntries(
      entries(drawn)
        .filter(([name]) => PLACE.test(name))
        .slice(0, MOST),
    ),
    liked: Object.fromEntries(flat),
  }
}

export const OwnWorkSchema = v.pipe(
  v.unknown(),
  v.transform((stored): OwnWork => readOwn(stored)),
)
