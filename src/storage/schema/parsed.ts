/**
 * From a schema to a value or one sentence. A stored or imported record is somebody else's word
 * until it has been through here; nothing in this room casts.
 */
import * as v from 'valibot'

export type Parsed<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly reason: string }

/** The value as the domain knows it, or where and why it is not one: "choices.easeBust: …". */
export function parsed<T>(schema: v.GenericSchema<unknown, T>, stored: unknown): Parsed<T> {
  const result = v.safeParse(schema, stored, { abortEarly: true })
  if (result.success) return { ok: true, value: result.output }
  return { ok: false, reason: issueSentence(result.issues[0]) }
}

/** One issue in words, its place in front. */
export function issueSentence(issue: v.BaseIssue<unknown>): string {
  const place = v.getDotPath(issue)
  return place === null ? issue.message : `${place}: ${issue.message}`
}

export const shown = (value: unknown): string => JSON.stringify(value) ?? String(value)
