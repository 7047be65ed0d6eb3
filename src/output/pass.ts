/** A sentence of work with its lengths standing apart, so that they are said in her units. */
import { formatLength, type UnitChoice } from '../units/format.ts'
import type { Mm } from '../units/length.ts'

export type Pass = readonly (string | Mm)[]

export const says = (texts: TemplateStringsArray, ...lengths: readonly Mm[]): Pass =>
  texts.flatMap((text, i) => [text, ...(lengths[i] === undefined ? [] : [lengths[i]])])

export const passSentence = (pass: Pass, units: UnitChoice): string =>
  pass.map((part) => (typeof part === 'string' ? part : formatLength(part, units))).join('')
