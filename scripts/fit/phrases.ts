/**
 * Judges the finder on a file of phrases. First: the first answer is one of `expect`. Top three:
 * one of `expect` is among the first three. Answers in `also` are passed over.
 */
import { readFileSync } from 'node:fs'
import * as v from 'valibot'
import { find } from '../../src/fitting/finding/find.ts'
import { Unusable } from './unusable.ts'

const FileSchema = v.array(
  v.object({
    phrase: v.string(),
    expect: v.pipe(v.array(v.string()), v.minLength(1)),
    also: v.optional(v.array(v.string())),
  }),
)
export interface Judged {
  readonly n: number
  /** Shares of all phrases, 0 to 1, in thousandths. */
  readonly first: number
  readonly topThree: number
  readonly misses: readonly {
    readonly phrase: string
    readonly expect: readonly string[]
    readonly got: readonly string[]
  }[]
}
const SHOWN = 3

export function judge(rows: v.InferOutput<typeof FileSchema>): Judged {
  const judged = rows.map(({ phrase, expect, also }) => {
    const got = find(phrase)
      .ranked.map((answer) => answer.id)
      .filter((id) => expect.includes(id) || !also?.includes(id))
      .slice(0, SHOWN)
    return { phrase, expect, got }
  })
  const share = (count: number): number =>
    Math.round((1000 * count) / Math.max(1, rows.length)) / 1000
  const isRight = (row: (typeof judged)[number], most: number): boolean =>
    row.got.slice(0, most).some((id) => row.expect.includes(id))
  return {
    n: rows.length,
    first: share(judged.filter((row) => isRight(row, 1)).length),
    topThree: share(judged.filter((row) => isRight(row, SHOWN)).length),
    misses: judged.filter((row) => !isRight(row, 1)),
  }
}

export function judgePhrases([file, ...more]: readonly string[]): void {
  if (file === undefined || more.length > 0)
    throw new Unusable('Name one file: npm run fit -- --phrases FILE.json')
  const read = v.safeParse(FileSchema, jsonOf(file))
  if (!read.success) {
    const [issue] = read.issues
    const path = issue.path?.map((p) => String(p.key)).join('.') ?? 'the file'
    throw new Unusable(
      `${path}: ${issue.message}. Use [{ "phrase", "expect": [ids], "also": [ids] }].`,
    )
  }
  process.stdout.write(`RESULT ${JSON.stringify(judge(read.output))}\n`)
}
function jsonOf(file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, 'utf8').replace(/^\uFEFF/, ''))
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    throw new Unusable(`${file} cannot be read as JSON (${why}).`)
  }
}
