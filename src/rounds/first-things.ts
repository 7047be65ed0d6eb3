/**
 * What is looked at once a round, before any fold is read: how the muslin was made ready, and how
 * its level and plumb lines lie. Lines come before folds: a crosswise grain that is not level or a
 * seam that is not plumb says more than a wrinkle (a dressmaking manual of 1921 and a muslin
 * bulletin of 1978, seen in part; trade practice).
 */
import type { ComplaintId } from '../fitting/complaints/complaint.ts'
import type { LineSays } from '../fitting/rules/beside.ts'
import { LIES_WORDS, LINE_READ, LINE_WORDS } from './first-things.words.ts'

export const FIRST_THING_IDS = [
  'pressed',
  'grain',
  'square',
  'underwear',
  'arms',
  'levels',
] as const
export type FirstThing = (typeof FIRST_THING_IDS)[number]

export interface Ticked {
  readonly thing: FirstThing
  readonly done: boolean
  readonly on: string
}

/**
 * The lines drawn on a muslin, and how each may lie: the complaint it then names in our own table,
 * or none where it lies as it should.
 */
const LINES = {
  waist: {
    true: undefined,
    above: 'W1',
    frontUp: 'B2',
    frontDown: 'W5',
    backUp: 'K3',
    oneSide: 'SH8',
  },
  side: { true: undefined, forward: 'W6', backward: 'W7', bows: 'W8' },
  centres: { true: undefined, lean: 'X1' },
  hem: { true: undefined, frontUp: 'W10', backUp: 'K3', uneven: 'W11' },
} as const satisfies Readonly<Record<string, Readonly<Record<string, ComplaintId | undefined>>>>
export type LineId = keyof typeof LINES
/** Words for every way each line may lie. */
export type LiesWords = {
  readonly [L in LineId]: Readonly<Record<keyof (typeof LINES)[L], string>>
}
export const LINE_IDS = Object.keys(LINES) as readonly LineId[]

/** How a line lay; a reading that a line does not have is none. */
export interface LineSeen {
  readonly line: LineId
  readonly reading: string
  readonly on: string
}
interface LineReading {
  readonly word: string
  /** The complaint the line itself names. */
  readonly says: ComplaintId | undefined
}
export function readingsOf(line: LineId): Readonly<Record<string, LineReading>> {
  const words: Readonly<Record<string, string>> = LIES_WORDS[line]
  return Object.fromEntries(
    Object.entries(LINES[line]).map(([id, says]) => [id, { word: words[id] ?? id, says }]),
  )
}

export interface Before {
  readonly firstThings: readonly Ticked[]
  readonly lines: readonly LineSeen[]
}
/** The last word on each thing holds. */
export const tickedOf = ({ firstThings }: Pick<Before, 'firstThings'>): readonly FirstThing[] =>
  FIRST_THING_IDS.filter((id) => firstThings.findLast((t) => t.thing === id)?.done)
export const readingOf = ({ lines }: Pick<Before, 'lines'>, line: LineId): string | undefined =>
  lines.findLast((l) => l.line === line)?.reading

/**
 * What each line that was read says: the complaint it names, and those it speaks against because it
 * lies otherwise. A complaint that another line names is not denied; one shoulder may lie lower
 * (SH8) with every line true.
 */
export function linesSay(before: Pick<Before, 'lines'>): {
  readonly named: readonly LineSays[]
  readonly denied: readonly LineSays[]
} {
  const said = LINE_IDS.flatMap((line) => {
    const reading = readingOf(before, line)
    const lies = reading === undefined ? undefined : readingsOf(line)[reading]
    if (!lies) return []
    const read = LINE_READ(LINE_WORDS[line], lies.word)
    const others = Object.values(readingsOf(line)).flatMap((r) => (r.says ? [r.says] : []))
    return [{ names: lies.says, others, read }]
  })
  const named = said.flatMap(({ names, read }) => (names ? [{ complaint: names, read }] : []))
  const denied = said.flatMap(({ others, read }) =>
    others
      .filter((id) => id !== 'SH8' && !named.some(({ complaint }) => complaint === id))
      .map((complaint) => ({ complaint, read })),
  )
  return { named: onceEach(named), denied: onceEach(denied) }
}
const onceEach = (list: readonly LineSays[]): readonly LineSays[] =>
  list.filter((l, i) => list.findIndex(({ complaint }) => complaint === l.complaint) === i)

/** Complaints that the lines name, in the order of the lines, each once. */
export const saidByLines = (before: Pick<Before, 'lines'>): readonly ComplaintId[] =>
  linesSay(before).named.map(({ complaint }) => complaint)
