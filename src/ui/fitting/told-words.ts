/**
 * Words for what the rules decide: which line goes where, how a pin is read, where it sits. The
 * rules speak in ids and millimetres; she reads trade words and her own unit.
 */
import type { AnyDart, EdgeName } from '../../draft/piece.ts'
import { complaintOf } from '../../fitting/complaints/catalogue.ts'
import {
  COMPLAINT_IDS,
  type Complaint,
  type ComplaintId,
  type PinPlace,
  type PieceName,
  type Work,
} from '../../fitting/complaints/complaint.ts'
import type { UnitChoice } from '../../units/format.ts'
import { lengthsIn } from '../../units/lengths-in.ts'
import type { How } from '../../fitting/half-amount.ts'
import type { EditAmount } from '../../fitting/rules/edit-amounts.ts'
import { ASK_WORDS } from './ask.words.ts'
import type { Said } from './change-said.ts'
import { CHANGE_WORDS } from './change.words.ts'

/** What is taken in is pinned, what is let out is slit, what moves is measured. */
const HOWS_FOR: Readonly<Record<Work['moves'], readonly How[]>> = {
  in: ['pinch', 'fold', 'newLine'],
  out: ['slit', 'level', 'newLine'],
  place: ['newLine', 'level', 'pinch', 'fold'],
}

/** The works a complaint may come to, its own before those it leads to. */
export function worksOf(id: ComplaintId, seen: readonly ComplaintId[] = []): readonly Work[] {
  return complaintOf(id).causes.flatMap(({ remedy }) => {
    if (remedy.kind === 'work') return [remedy]
    const on = remedy.kind === 'see' && !seen.includes(remedy.complaint)
    return on ? worksOf(remedy.complaint, [...seen, id]) : []
  })
}

/** Ways to read a pin that make sense for a complaint, the usual one first. */
export const howsFor = (id: ComplaintId): readonly How[] => [
  ...new Set(worksOf(id).flatMap(({ moves }) => HOWS_FOR[moves])),
]

const PLACE_OF: Readonly<Partial<Record<string, PinPlace>>> = {
  neck: 'neck',
  shoulder: 'shoulder',
  overarm: 'overarm',
  armhole: 'armhole',
  sleeveEdge: 'sleeveEdge',
  side: 'side',
  hem: 'hem',
  cap: 'cap',
  waistDart: 'dart',
  bustDart: 'bust',
  shoulderDart: 'shoulder',
}

/** Where a pin for it usually sits. */
export function usualPlace(id: ComplaintId): PinPlace {
  const target = worksOf(id)[0]?.edits[0]?.target ?? 'front.side'
  const [piece, edge = ''] = target.split('.')
  if (edge === 'centre') return piece === 'back' ? 'cb' : 'cf'
  return PLACE_OF[edge] ?? 'inside'
}

/** "Front armhole comes in by 1.0 cm." */
export function editSaid({ target, way, applied, point, side, follows }: EditAmount): Said {
  const [piece, part] = target.split('.') as [PieceName, EdgeName | AnyDart]
  return CHANGE_WORDS.edit({
    ...{ piece, part, point, way, side },
    by: applied,
    follows: follows !== undefined,
  })
}

/** Reasons name complaints and causes by id and lengths in millimetres; she reads names and her own unit. */
export const inHers = (reason: string, units: UnitChoice): string =>
  COMPLAINT_IDS.reduceRight(
    (text, id) => {
      const { name, causes } = complaintOf(id)
      return text
        .replaceAll(new RegExp(`\\b${id}\\.\\d+ \\(([^)]*)\\)`, 'g'), '$1')
        .replaceAll(
          new RegExp(`\\b${id}\\.(\\d+)\\b`, 'g'),
          (_, number: string) => causes.find((c) => c.number === Number(number))?.name ?? name,
        )
        .replaceAll(new RegExp(`\\b${id}\\b`, 'g'), name)
    },
    lengthsIn(reason, units),
  )

/** What a yes to a test would mean, from the names of its causes. */
export function yesMeans(complaint: Complaint, test: number): string {
  const yes = complaint.tests.find(({ number }) => number === test)?.yes ?? []
  return ASK_WORDS.then(complaint.causes.filter(({ number }) => yes.includes(number)))
}

/** What a no leaves: the causes that no yes to a test up to this one would have pointed to. */
export function noMeans(complaint: Complaint, test: number): string {
  const ruledOut = complaint.tests.filter(({ number }) => number <= test).flatMap(({ yes }) => yes)
  return ASK_WORDS.left(complaint.causes.filter(({ number }) => !ruledOut.includes(number)))
}
