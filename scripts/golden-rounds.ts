/**
 * Writes the golden rounds of tests/rounds/golden: printed rounds of invented bodies with every
 * number to a ten-thousandth of a millimetre. Run it only when a drafting rule changed on purpose,
 * and say in the commit which numbers moved: `npx tsx scripts/golden-rounds.ts`.
 */
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { record } from '../src/draft/record.ts'
import { redraft } from '../src/rounds/redraft.ts'
import { GOLDEN, GOLDEN_STEP } from '../tests/rounds/golden-rounds.ts'

for (const [name, make] of Object.entries(GOLDEN)) {
  const round = make()
  const { draft, refused } = redraft(round)
  if (refused.length > 0) throw new Error(`golden rounds: ${name} has a refused correction`)
  const file = fileURLToPath(new URL(`../tests/rounds/golden/${name}.json`, import.meta.url))
  writeFileSync(file, `${JSON.stringify({ round, exact: record(draft, GOLDEN_STEP) })}\n`)
  console.log(`${name}: ${draft.pieces.length} pieces`)
}
