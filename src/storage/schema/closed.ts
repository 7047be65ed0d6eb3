/** Something closed with the key of the photos: AES-256-GCM with a nonce of its own. */
import * as v from 'valibot'
import { SCHEMA_WORDS } from './schema.words.ts'

export interface Closed {
  /** The nonce, 96 bits; never used twice with one key. */
  readonly iv: ArrayBuffer
  readonly bytes: ArrayBuffer
}

/** Not `instanceof`: a buffer that comes out of another realm is still a buffer. */
export const isBuffer = (value: unknown): value is ArrayBuffer =>
  Object.prototype.toString.call(value) === '[object ArrayBuffer]'

const BufferSchema = v.custom<ArrayBuffer>(isBuffer, SCHEMA_WORDS.lostBytes)
export const ClosedSchema = v.strictObject({ iv: BufferSchema, bytes: BufferSchema })
