/** What a change does besides: a dart that is drawn, an edge at a slant, width below a waist dart. */
import { pieceOf, type Draft } from '../../draft/draft.ts'
import { sewnEase, type EaseLevel } from '../../draft/ease.ts'
import { wedgeAt } from '../ops/closing.ts'
import { NOTE_WORDS } from '../ops/said.words.ts'
import type { NewCorrection } from '../preview.ts'
import type { OnDraft, Tried } from './drawable.ts'
import { DRAWN_WORDS } from './drawn.words.ts'
import { tenth } from './told.ts'

/** The dart a turn goes into, by its piece. */
export const receiverOf = (c: NewCorrection): string | undefined =>
  c.kind === 'operate' && c.operation.op === 'ROT'
    ? `${c.operation.piece}.${c.operation.into}`
    : undefined

/** Ease at a level that is changed by less than this is not told, mm round the body. Judgement. */
const TOLD = 3

/** A turn taken up by the waist dart swings the front below it outwards: the lowest level that grew. */
export function widened(
  before: Draft,
  { draft }: Tried,
): { level: EaseLevel; by: number } | undefined {
  const is = sewnEase(draft)
  return sewnEase(before)
    .flatMap(({ level, sewn }) => {
      const now = is.find((e) => e.level === level)
      return now && now.sewn - sewn > TOLD ? [{ level, by: now.sewn - sewn }] : []
    })
    .at(-1)
}

/** In sentences. */
export function besides(
  on: OnDraft,
  list: readonly NewCorrection[],
  tried: Tried,
): readonly string[] {
  const waist = list.some((c) => receiverOf(c) === 'front.waistDart')
  const wider = waist ? widened(on.tries([]).draft, tried) : undefined
  return [
    ...[...new Set(tried.notes)].map((note) => NOTE_WORDS[note] ?? note),
    ...slanted(on, list),
    ...(wider ? [DRAWN_WORDS.turnsAlong(tenth(wider.by), wider.level)] : []),
  ]
}

/** A wedge is told where it is so many times wider than what the edge loses. Judgement. */
const SLANT_TOLD = 1.15

/** An edge at a slant to the bust tip loses less than the wedge is wide; its dart opens by more. */
function slanted({ tries }: OnDraft, list: readonly NewCorrection[]): readonly string[] {
  return list.flatMap((c) => {
    if (c.kind !== 'operate' || c.operation.op !== 'ROT') return []
    const { piece, edge, width } = c.operation
    const across = wedgeAt(pieceOf(tries([]).draft, piece), c.operation)?.across
    if (across === undefined || across < Math.abs(width) * SLANT_TOLD) return []
    return [
      DRAWN_WORDS.slants({
        piece,
        edge,
        closes: width > 0,
        width: tenth(Math.abs(width)),
        across: tenth(across),
      }),
    ]
  })
}
