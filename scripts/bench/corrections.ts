/**
 * Every correction at the most of one round on bodies of a survey, garment by garment: are its
 * seams true and its outlines whole, or is it refused by name? Run: npm run bench:corrections;
 * `-- --bodies N` takes N bodies (500 unless told). RESULT {GARMENT: {n, sound, refused, worse:
 * {operation finding: count}}}.
 */
import { GARMENTS, isGarmentId, standardFor } from '../../src/draft/garments.ts'
import type { Draft, GarmentId } from '../../src/draft/draft.ts'
import { correctedDraft } from '../../src/fitting/apply.ts'
import type { Correction } from '../../src/fitting/correction.ts'
import { operationsAtCap } from '../../src/fitting/ops/at-cap.ts'
import type { Confirmed } from '../../src/measurements/confirmed.ts'
import { CHOICES } from '../../src/draft/choices.ts'
import { mm } from '../../src/units/length.ts'
import { ANSUR_1988 } from './bodies/ansur-1988.ts'
import type { Numbers } from './bodies/numbers.ts'
import { readSurvey, surveyPath } from './bodies/survey-file.ts'
import { candidates } from './planted/bodies.ts'
import { confirmedOf } from './planted/muslin.ts'

const BODIES = 500
const SEED = 20261125
/** What soundness is: seams equal, joins smooth, darts closing, outlines whole. */
const SOUND = [
  'overarmPair',
  'shoulderPair',
  'sidePair',
  'neckJoin',
  'armholeJoin',
  'sideJoin',
  'notSquare',
  'dartLegs',
  'outlineCrosses',
  'capPair',
  'sleevePair',
]

const because = {
  complaint: 'B1',
  cause: 'bench',
  pinned: { how: 'wholeFold', read: mm(10), share: 1 },
  watch: mm(0),
  round: 1,
} as const

const unsound = (d: Draft): ReadonlySet<string> =>
  new Set(d.findings.filter((f) => SOUND.includes(f.id)).map((f) => `${f.id} ${f.place}`))

/** Choices that corrections turn, by the most of a round. */
const TURNS = [
  ['lengthAdded', 20],
  ['easeBust', 10],
  ['easeWaist', 10],
  ['easeHip', 15],
  ['frontShare', 10],
  ['underarmDrop', 10],
  ['overarmDrop', 20],
  ['capEase', 15],
  ['sleevePitch', 13],
  ['armRoom', 20],
] as const

function correctionsFor(
  garment: GarmentId,
): readonly { name: string; list: readonly Correction[] }[] {
  const operations = operationsAtCap(garment).map(({ name, operation }) => ({
    name,
    list: [{ v: 1, id: 'c1', kind: 'operate', operation, because } as const],
  }))
  const turns = TURNS.filter(([id]) => GARMENTS[garment].choices.includes(id)).flatMap(
    ([choice, by]) =>
      [by, -by].map((size) => ({
        name: `${CHOICES[choice].label} ${size > 0 ? '+' : ''}${size}`,
        list: [{ v: 1, id: 'c1', kind: 'turn-choice', choice, by: mm(size), because } as const],
      })),
  )
  return [...operations, ...turns]
}

interface Tally {
  n: number
  sound: number
  refused: Record<string, number>
  worse: Record<string, number>
  byName: Record<string, [number, number]>
}

function run(bodies: readonly Numbers[]): void {
  const result: Record<string, Tally> = {}
  for (const garment of Object.keys(GARMENTS).filter(isGarmentId)) {
    const t: Tally = { n: 0, sound: 0, refused: {}, worse: {}, byName: {} }
    for (const numbers of bodies) one(garment, numbers, t)
    result[garment] = t
    const refused = Object.values(t.refused).reduce((a, b) => a + b, 0)
    console.log(
      `${garment}: ${t.n} corrections, ${t.sound} sound, ${refused} refused by name, ${t.n - t.sound - refused} unsound`,
    )
    for (const [why, count] of Object.entries(t.worse)
      .sort((a, b) => b[1] - a[1])
      .slice(0, 40))
      console.log(`  unsound ${count}: ${why}`)
    for (const [why, count] of Object.entries(t.refused)
      .sort((a, b) => b[1] - a[1])
      .slice(0, 40))
      console.log(`  refused ${count}: ${why}`)
  }
  console.log(
    `RESULT ${JSON.stringify(Object.fromEntries(Object.entries(result).map(([g, { byName: _, ...rest }]) => [g, rest])))}`,
  )
}

function one(garment: GarmentId, numbers: Numbers, t: Tally): void {
  const body = confirmed(garment, numbers)
  if (!body) return
  const choices = standardFor(garment)
  let plain: Draft
  try {
    plain = correctedDraft(garment, body, choices, []).draft
  } catch {
    return
  }
  const before = unsound(plain)
  for (const { name, list } of correctionsFor(garment)) {
    t.n += 1
    const count = (at: Record<string, number>, why: string): void =>
      void (at[why] = (at[why] ?? 0) + 1)
    try {
      const made = correctedDraft(garment, body, choices, list)
      const [refusal] = made.refused
      if (refusal) {
        count(t.refused, `${name}: ${refusal.why.id}`)
        continue
      }
      const bad = [...unsound(made.draft)].filter((f) => !before.has(f))
      if (bad.length === 0) t.sound += 1
      else for (const f of bad) count(t.worse, `${name}: ${f}`)
    } catch (error) {
      count(
        t.worse,
        `${name}: throws ${error instanceof Error ? error.message.replace(/[\d.]+/g, '#').slice(0, 80) : ''}`,
      )
    }
  }
}

function confirmed(garment: GarmentId, numbers: Numbers): Confirmed | undefined {
  try {
    return confirmedOf(numbers, garment)
  } catch {
    return undefined
  }
}

const at = process.argv.indexOf('--bodies')
const count = at < 0 ? BODIES : Number(process.argv[at + 1])
const survey = readSurvey(ANSUR_1988, '\t')

if (survey) run(candidates(survey, count, SEED).flatMap((row) => row.slice(0, 1)))
else console.log(`Nothing was corrected: ${surveyPath(ANSUR_1988)} must lie beside the repository.`)
