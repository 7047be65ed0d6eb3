/** Numbers that speak against a complaint, in millimetres; the screen sets them in her unit. */
import type { ComplaintId } from '../complaints/complaint.ts'
import type { Level } from './gates.ts'

export const GATE_WORDS = {
  notTight: (level: Level, ease: number, enough: number) =>
    `By its numbers the draft has ${ease} mm of ease at the ${level}; with ${enough} mm and more it is not tight there. Tape the ${level} again, and the muslin round the ${level}, before anything is changed.`,
  notLoose: (level: Level, ease: number, least: number) =>
    `By its numbers the draft has only ${ease} mm of ease at the ${level}; ${least} mm is the least. Tape the ${level} again before anything is taken in.`,
  tooLittle: (id: ComplaintId, level: Level, round: number, left: number, least: number) =>
    `${id}: taken in by ${round} mm round the body, the draft would keep only ${left} mm of ease at the ${level}; ${least} mm is the least. Pin it again, standing at ease.`,
  tapeAgain: (level: Level) =>
    `Tape the ${level} again: what was pinned away there speaks against its number.`,
}
