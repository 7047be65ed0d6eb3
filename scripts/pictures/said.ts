/**
 * What the page says in another language where the English page says this: the script that takes
 * the pictures knows the English keys and finds the others by the files of words.
 */
import { readdirSync } from 'node:fs'
import type { Language } from '../../src/ui/language.ts'

const SRC = new URL('../../src/', import.meta.url)
/** Stands for what a sentence is given: a number, a name. */
const GIVEN = '…'

export interface Said {
  /** The whole of a text. */
  readonly whole: (english: string) => string
  /** A text with its gaps, `Take back … of round …`, as a pattern. */
  readonly gapped: (english: string) => RegExp
  /** How a text begins, as a pattern from its beginning to the first number or name in it. */
  readonly begins: (english: string) => RegExp
}

const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
const pattern = (text: string): RegExp => new RegExp(`^${literal(text)}`)
const withGaps = (text: string): RegExp =>
  new RegExp(`^${text.split(GIVEN).map(literal).join('.+')}$`)

export async function saidIn(language: Language): Promise<Said> {
  if (language === 'en') return { whole: (english) => english, gapped: withGaps, begins: pattern }
  const pairs = new Map<string, string>()
  for (const name of readdirSync(SRC, { recursive: true, encoding: 'utf8' })) {
    if (!name.endsWith('.words.ts')) continue
    const sister = name.replace(/\.ts$/, `.${language}.ts`)
    const [ours, theirs] = await Promise.all([name, sister].map((n) => import(`${SRC.href}${n}`)))
    pair(ours, theirs, pairs)
  }
  return {
    whole: (english) => found(pairs.get(english), english),
    gapped: (english) => withGaps(found(pairs.get(english), english)),
    begins: (english) => {
      const [, said] = [...pairs].find(([ours]) => ours.startsWith(english)) ?? []
      return pattern(found(said, english).split(GIVEN)[0] ?? '')
    },
  }
}

function found(said: string | undefined, english: string): string {
  if (said === undefined) throw new Error(`said: no file of words has “${english}”`)
  return said
}

/** Every text of one file of words, with its sister’s. Sentences are said with marks in their gaps. */
function pair(ours: unknown, theirs: unknown, into: Map<string, string>): void {
  if (typeof ours === 'string' && typeof theirs === 'string') into.set(ours, theirs)
  else if (typeof ours === 'function' && typeof theirs === 'function') {
    const given = Array.from({ length: ours.length }, () => GIVEN)
    try {
      pair(ours(...given), theirs(...given), into)
    } catch {
      // A sentence of things, not of texts: no picture is found by it.
    }
  } else if (typeof ours === 'object' && ours !== null && typeof theirs === 'object')
    for (const [key, value] of Object.entries(ours))
      pair(value, (theirs as Record<string, unknown> | null)?.[key], into)
}
