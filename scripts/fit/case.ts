/** npm run fit -- --case FILE.json: decides a case, or a list of cases. */
import { readFileSync } from 'node:fs'
import { fitMuslin } from '../../src/fitting/fit-muslin.ts'
import { decideCase, readCase, resultOf, type CaseFile } from '../../src/fitting/rules/case.ts'
import type { Decision } from '../../src/fitting/rules/decide.ts'
import { readDraftInput } from '../../src/storage/read-draft-input.ts'
import { Unusable } from './unusable.ts'

export function runCases([file, ...more]: readonly string[]): void {
  if (file === undefined || more.length > 0)
    throw new Unusable('Name one file: npm run fit -- --case FILE.json')
  const given = fileJson(file)
  const list: readonly unknown[] = Array.isArray(given) ? given : [given]
  const result: Record<string, object> = {}
  for (const [i, one] of list.entries()) {
    const read = readCase(one, i + 1)
    if (!read.ok) throw new Unusable(`${file}: ${read.reason}`)
    const decision = decisionOf(read.value)
    if (read.value.unknown.length > 0)
      say(`${read.value.id}: lengths with no meaning here: ${read.value.unknown.join(', ')}.`)
    for (const reason of [...read.value.unread, ...decision.reasons])
      say(`${read.value.id}: ${reason}`)
    result[read.value.id] = resultOf(decision, read.value.unread)
  }
  say(`RESULT ${JSON.stringify(result)}`)
}

/** A case with whole input is drafted, its lengths are measured on the pieces, and its edits tried on them. */
function decisionOf(c: CaseFile): Decision {
  if (c.input === undefined) return decideCase(c)
  const today = new Date().toISOString().slice(0, 10)
  const given =
    typeof c.input === 'object' && c.input !== null && !('garment' in c.input) && c.garment
      ? { garment: c.garment, ...c.input }
      : c.input
  const order = readDraftInput(JSON.stringify(given), today)
  if (!order.ok) throw new Unusable(`${c.id}: input: ${order.reason}`)
  const { garment, body, choices } = order.value
  const { decision, notDrawn } = fitMuslin({
    garment,
    body,
    choices,
    corrections: [],
    complaints: c.complaints,
    sewn: c.lengths,
    round: 1,
    on: today,
    rules: c.rules,
  })
  const undrawn = notDrawn.map(({ complaint, why }) => `${complaint}: ${why}`)
  return { ...decision, reasons: [...decision.reasons, ...undrawn] }
}

function fileJson(path: string): unknown {
  try {
    return JSON.parse(readFileSync(path, 'utf8').replace(/^\uFEFF/, ''))
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    throw new Unusable(`${path} cannot be read as JSON (${why}).`)
  }
}
const say = (line: string): void => void process.stdout.write(`${line}\n`)
