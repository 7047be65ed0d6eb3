/**
 * What is looked at once a round, before any fold is read: how the muslin was made ready, and how
 * its level and plumb lines lie. Lines come before folds: a crosswise grain that is not level or a
 * seam that is not plumb says more than a wrinkle (a dressmaking manual of 1921 and a muslin
 * bulletin of 1978, seen in part; trade practice).
 */
import type { ComplaintId } from '../fitting/complaints/complaint.ts'
import type { LineSays } from '../fitting/rules/beside.ts'

export const FIRST_THINGS = {
  pressed: 'The muslin is pressed, allowances pressed the way they will lie.',
  grain: 'The grain was laid as marked: along the centres, and down the sleeve.',
  square: 'The printed square measured right, or the pieces were drawn by hand.',
  underwear: 'Under it is what will be worn under the garment.',
  arms: 'Arms hang down, weight on both feet, eyes on a mirror or a camera.',
  levels: 'Bust, waist and hip lines and both centres are drawn on the cloth.',
} as const
export type FirstThing = keyof typeof FIRST_THINGS
export const FIRST_THING_IDS = Object.keys(FIRST_THINGS) as readonly FirstThing[]

export interface Ticked {
  readonly thing: FirstThing
  readonly done: boolean
  readonly on: string
}

interface LineReading {
  readonly word: string
  /** The complaint the line itself names. */
  readonly says: ComplaintId | undefined
}
interface MuslinLine {
  readonly word: string
  readonly readings: Readonly<Record<string, LineReading>>
}
const right = (word: string): LineReading => ({ word, says: undefined })
const says = (word: string, complaint: ComplaintId): LineReading => ({ word, says: complaint })

/** The lines drawn on a muslin, and how each may lie; what it then says is in our own table. */
export const LINES = {
  waist: {
    word: 'Waist line',
    readings: {
      true: right('level, on the waist'),
      above: says('above the waist all round', 'W1'),
      frontUp: says('up at the centre front', 'B2'),
      frontDown: says('down at the centre front', 'W5'),
      backUp: says('up at the centre back', 'K3'),
      oneSide: says('lower on one side', 'SH8'),
    },
  },
  side: {
    word: 'Side seam',
    readings: {
      true: right('plumb'),
      forward: says('its lower end swings forward', 'W6'),
      backward: says('its lower end swings back', 'W7'),
      bows: says('it bows', 'W8'),
    },
  },
  centres: {
    word: 'Centre front and back',
    readings: {
      true: right('plumb'),
      lean: says('they lean', 'X1'),
    },
  },
  hem: {
    word: 'Hem',
    readings: {
      true: right('level with the floor'),
      frontUp: says('up at the centre front', 'W10'),
      backUp: says('up at the centre back', 'K3'),
      uneven: says('uneven', 'W11'),
    },
  },
} as const satisfies Readonly<Record<string, MuslinLine>>
export type LineId = keyof typeof LINES
export const LINE_IDS = Object.keys(LINES) as readonly LineId[]

/** How a line lay; a reading that a line does not have is none. */
export interface LineSeen {
  readonly line: LineId
  readonly reading: string
  readonly on: string
}
export const readingsOf = (line: LineId): Readonly<Record<string, LineReading>> =>
  LINES[line].readings

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
    const read = `${LINES[line].word.toLowerCase()}: ${lies.word}`
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
