/** The cause a correction was made for, by its id; rounds of the first two complaints kept names. */
import type { Because } from '../correction.ts'

const KEPT_AS: Readonly<Record<string, string>> = {
  'B8 bust shaping': 'B8.1',
  'B8 overarm slope': 'B8.4',
  'B8 stretched edge': 'B8.5',
  'W1 short all round': 'W1.1',
}

export const keptCause = ({ complaint, cause }: Pick<Because, 'complaint' | 'cause'>): string =>
  KEPT_AS[`${complaint} ${cause}`] ?? cause
