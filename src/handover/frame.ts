/**
 * What two joined devices say to each other: short sayings as JSON, and parts of files as bytes.
 * A frame is one message of the data channel. First byte 0: a saying follows; 1: six bytes of
 * where the part begins (big endian), then its bytes. What does not read is no frame; the devices
 * part then, because one of them is not this page.
 */
import * as v from 'valibot'
import { VIEWS } from '../capture/reading.ts'
import { ShaSchema } from '../storage/schema/length.ts'
import { LARGEST_MESSAGE } from './description.ts'
import type { Bytes } from './proof.ts'

const SAYING = 0
const PART = 1
const PART_HEAD = 7
/** Bytes of a file in one frame: small enough that a slow net shows progress. */
export const PART_BYTES = 32_768
/** A file larger than this is no photo and no backup of this page. */
const LARGEST_FILE = 1e9

const CountSchema = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(LARGEST_FILE))
/** Longest name of a thing and longest sentence about it, in letters. */
export const LONGEST_NAME = 200
export const LONGEST_SENTENCE = 600

/** `work`: a backup without pixels; `pixels`: those of a kept photo; `photo`: one that is not kept yet. */
const ThingSchema = v.strictObject({
  kind: v.picklist(['work', 'pixels', 'photo']),
  name: v.pipe(v.string(), v.maxLength(LONGEST_NAME)),
  view: v.exactOptional(v.picklist(VIEWS)),
  bytes: CountSchema,
  sha256: ShaSchema,
})
export type Thing = v.InferOutput<typeof ThingSchema>

const SayingSchema = v.variant('say', [
  /** Hexadecimal digits of the proof. */
  v.strictObject({ say: v.literal('proof'), proof: v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/)) }),
  /** She has compared the words on this device. */
  v.strictObject({ say: v.literal('agreed') }),
  /** The next thing, number `at` of `of`. Its id is in the answers to it: one that comes late is known. */
  v.strictObject({
    say: v.literal('thing'),
    id: CountSchema,
    at: CountSchema,
    of: CountSchema,
    thing: ThingSchema,
  }),
  /** Send it from this byte on; what lies before is here. */
  v.strictObject({ say: v.literal('want'), id: CountSchema, from: CountSchema }),
  /** Whether it was taken in, and what became of it. */
  v.strictObject({
    say: v.literal('taken'),
    id: CountSchema,
    ok: v.boolean(),
    sentence: v.pipe(v.string(), v.maxLength(LONGEST_SENTENCE)),
  }),
  /** Nothing more comes: all was sent, or she stopped it here. */
  v.strictObject({ say: v.literal('end'), stopped: v.boolean() }),
  /** She does not want any more of what is being sent. */
  v.strictObject({ say: v.literal('enough') }),
])
export type Saying = v.InferOutput<typeof SayingSchema>
/** What the receiving device says to a thing. */
export type Answer = Extract<Saying, { readonly say: 'want' | 'taken' }>
export type Frame = Saying | { readonly say: 'part'; readonly from: number; readonly bytes: Bytes }

export function toFrame(frame: Frame): Bytes {
  if (frame.say !== 'part')
    return Uint8Array.from([SAYING, ...new TextEncoder().encode(JSON.stringify(frame))])
  const whole = new Uint8Array(PART_HEAD + frame.bytes.length)
  const view = new DataView(whole.buffer)
  view.setUint8(0, PART)
  view.setUint16(1, Math.floor(frame.from / 2 ** 32))
  view.setUint32(3, frame.from % 2 ** 32)
  whole.set(frame.bytes, PART_HEAD)
  return whole
}

/** undefined when this is no frame of ours. */
export function fromFrame(bytes: Bytes): Frame | undefined {
  if (bytes.length > LARGEST_MESSAGE) return undefined
  if (bytes[0] === PART && bytes.length > PART_HEAD) {
    const view = new DataView(bytes.buffer, bytes.byteOffset)
    const from = view.getUint16(1) * 2 ** 32 + view.getUint32(3)
    return { say: 'part', from, bytes: bytes.subarray(PART_HEAD) }
  }
  if (bytes[0] !== SAYING) return undefined
  try {
    const read = v.safeParse(SayingSchema, JSON.parse(new TextDecoder().decode(bytes.subarray(1))))
    return read.success ? read.output : undefined
  } catch {
    return undefined
  }
}
