/**
 * How a garment is cut, as it lies in its row. Read entry by entry: one that a program of another
 * day wrote and this one cannot use takes its usual value, so that a finish that is no longer
 * known never keeps a whole garment from the rail.
 */
import * as v from 'valibot'
import type { EdgeName } from '../../draft/piece.ts'
import { EDGE_WORDS, PIECE_WORDS } from '../../draft/piece.words.ts'
import { isRecord } from '../../measurements/stored.ts'
import type { EdgeKey } from '../../output/by-edge.ts'
import { USUAL_CUT, type CutWishes, type EdgeWish, type EdgeWishes } from '../../output/cutting.ts'
import { isFinishId, WIDEST_ALLOWANCE } from '../../output/finish.ts'
import type { Stretch } from '../../output/page.ts'
import { isPaperId, ROLL_WIDTHS, type PaperChoice } from '../../output/paper.ts'
import { mm } from '../../units/length.ts'

/** No printer is off by more than this even after a file was corrected twice. Judgement. */
const STRETCHED = { least: 0.5, most: 2 } as const

export const CutWishesSchema = v.pipe(
  v.unknown(),
  v.transform((stored): CutWishes => readCut(stored)),
)

function readCut(stored: unknown): CutWishes {
  if (!isRecord(stored)) return USUAL_CUT
  const paper = readPaper(stored['paper'])
  const scale = readScale(stored['scale'])
  return {
    stuff: stored['stuff'] === 'cloth' ? 'cloth' : 'muslin',
    muslin: readWishes(stored['muslin']),
    cloth: readWishes(stored['cloth']),
    ...(paper && { paper }),
    ...(scale && { scale }),
  }
}

const isEdgeName = (name: string): name is EdgeName => Object.hasOwn(EDGE_WORDS, name)
/** 'neck', or 'front.centre' for one piece. */
function isEdgeKey(key: string): key is EdgeKey {
  const [piece = '', name, ...more] = key.split('.')
  if (name === undefined) return isEdgeName(key)
  return more.length === 0 && isEdgeName(name) && Object.hasOwn(PIECE_WORDS, piece)
}
const within = (value: unknown, least: number, most: number): value is number =>
  typeof value === 'number' && value >= least && value <= most

function readWishes(stored: unknown): EdgeWishes {
  const wishes: Partial<Record<EdgeKey, EdgeWish>> = {}
  for (const [key, wish] of Object.entries(isRecord(stored) ? stored : {})) {
    if (!isEdgeKey(key) || !isRecord(wish)) continue
    const { finish, allowance } = wish
    if (typeof finish !== 'string' || !isFinishId(finish)) continue
    wishes[key] = {
      finish,
      ...(within(allowance, 0, WIDEST_ALLOWANCE) ? { allowance: mm(allowance) } : {}),
    }
  }
  return wishes
}

function readPaper(stored: unknown): PaperChoice | undefined {
  if (typeof stored === 'string') return isPaperId(stored) ? stored : undefined
  const roll = isRecord(stored) ? stored['roll'] : undefined
  return within(roll, ROLL_WIDTHS.min, ROLL_WIDTHS.max) ? { roll: mm(roll) } : undefined
}

function readScale(stored: unknown): Stretch | undefined {
  if (!isRecord(stored)) return undefined
  const { x, y } = stored
  const { least, most } = STRETCHED
  return within(x, least, most) && within(y, least, most) ? { x, y } : undefined
}
