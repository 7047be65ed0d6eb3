/**
 * npm run learn:finder   learns the weights of the finder from tests/fitting/phrases/tuned*.json
 * and the ways of saying, and writes src/fitting/finding/weights.words.ts; learn:finder:german
 * does the same for German, from the phrases of its folder. `-- --cross` only prints how well it
 * does on fifths of the phrases it was not shown. Seeded: the same phrases give the same file.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { featuresOf } from '../../src/fitting/finding/features.ts'
import { hear } from '../../src/fitting/finding/hear.ts'
import { tenthsOf, toldWeights } from '../../src/fitting/finding/letters.ts'
import { learn, scoresOf, type Example, type Learnt } from './learn.ts'
import { TAUGHT } from './taught.words.ts'
import { drawnWays } from './ways.ts'

/** Chosen by cross-validation on the tuned phrases alone. */
const OPTIONS = { passes: 20, pull: 0.02, step: 0.15, drop: 0.4 }
const WAYS_EACH = 60
const WAY_WEIGHT = 0.4
/** A pair of concepts or of neighbouring words met less often says nothing yet. */
const LEAST_PAIRS = 5
/** Nor does a word as it stands, or its stem. */
const LEAST_WORDS = 3
const leastOf = (name: string): number =>
  /[&_]/.test(name) ? LEAST_PAIRS : /^[=~]/.test(name) ? LEAST_WORDS : 1
const FIFTHS = 5

interface Row {
  readonly phrase: string
  readonly expect: readonly string[]
  readonly also?: readonly string[]
}
const example = ({ phrase, expect }: Row, weight: number): Example => ({
  features: featuresOf(hear(phrase)),
  right: expect,
  weight,
})
const rows: readonly Row[] = readdirSync(TAUGHT.phrases)
  .filter((name) => name.startsWith('tuned'))
  .sort()
  .flatMap((name) => JSON.parse(readFileSync(new URL(name, TAUGHT.phrases), 'utf8')) as Row[])
  .filter((row) => row.also === undefined)
const classes = [...new Set(rows.flatMap((r) => r.expect))]
const written = rows.map((row) => example(row, 1))
const ways = drawnWays(WAYS_EACH).map((way) => example(way, WAY_WEIGHT))

function thinned(examples: readonly Example[]): readonly Example[] {
  const met = new Map<string, number>()
  for (const { features } of examples)
    for (const name of features.keys()) met.set(name, (met.get(name) ?? 0) + 1)
  return examples.map((e) => ({
    ...e,
    features: new Map([...e.features].filter(([name]) => (met.get(name) ?? 0) >= leastOf(name))),
  }))
}
/** The weights as they are stored: whole tenths. */
const stored = (learnt: Learnt): Learnt => ({
  ...learnt,
  weights: learnt.weights.map((w) => tenthsOf(w) / 10),
})

if (process.argv.includes('--cross')) {
  let first = 0
  let topThree = 0
  for (let fifth = 0; fifth < FIFTHS; fifth += 1) {
    const shown = written.filter((_, i) => i % FIFTHS !== fifth)
    const held = written.filter((_, i) => i % FIFTHS === fifth)
    const learnt = stored(learn(thinned([...shown, ...ways]), classes, OPTIONS))
    for (const { features, right } of held) {
      const best = [...scoresOf(learnt, features)].sort((a, b) => b[1] - a[1]).map(([id]) => id)
      if (right.includes(best[0] ?? '')) first += 1
      if (best.slice(0, 3).some((id) => right.includes(id))) topThree += 1
    }
  }
  const share = (n: number) => Math.round((1000 * n) / written.length) / 10
  console.log(
    `RESULT ${JSON.stringify({ n: written.length, first: share(first), topThree: share(topThree) })}`,
  )
} else {
  const learnt = stored(learn(thinned([...written, ...ways]), classes, OPTIONS))
  const lines = learnt.names.flatMap((name, row) => {
    const own = learnt.weights.subarray(row * classes.length, (row + 1) * classes.length)
    const told = toldWeights([...own].map((w) => Math.round(w * 10)))
    return told === '' ? [] : [`${name} ${told}`]
  })
  writeFileSync(
    TAUGHT.weights,
    `/**
 * Weights of the finder: a feature, then two letters for each complaint it speaks for or against
 * (letters.ts). Written by scripts/finding/learn-weights.ts from our own phrases; not edited by hand.
 */
export const WEIGHTS: string = \`${[classes.join(' '), ...lines.sort()].join('\n')}\n\`
`,
  )
  console.log(`RESULT ${JSON.stringify({ phrases: written.length, features: lines.length })}`)
}
