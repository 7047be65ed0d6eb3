/**
 * What the rules say of a complaint: its cause, its amount and how that came about, or what is
 * asked first. Complaints stand as their ids and lengths in millimetres; the screen puts names and
 * her unit in their place.
 */
import type { ComplaintId, PinPlace } from '../complaints/complaint.ts'
import type { How } from '../half-amount.ts'
import { HOW_READ, PLACE_WORDS } from '../pin.words.ts'
import type { Doubt } from './beside.ts'

export const JUDGE_WORDS = {
  of: (id: ComplaintId, what: string) => `${id}: ${what}`,
  /** A cause by its id, with its name. */
  cause: (causeId: string, name: string | undefined) => `${causeId} (${name ?? 'unknown'})`,
  causes: (said: readonly string[]) => `${said.join(' = ')}.`,
  unread: (id: ComplaintId, key: string) =>
    `${id}: the answer “${key}” names no cause or test of it.`,
  stretched: (id: ComplaintId, longer: number, advice: string) =>
    `${id}: the edge is sewn ${longer} mm longer than drafted; more than 3 mm is stretch from sewing. ${advice}`,
  making: (causes: readonly string[], advice: string) => `${causes.join(', ')}: ${advice}`,
  whichSide: 'Say on which side it is pinned, left or right: the sides are not averaged.',
  noPart: (id: ComplaintId, elsewhere: string) =>
    `${id}: this garment has no part for it. ${elsewhere}`,
  elsewhere: {
    cutIn:
      'Its sleeve is cut in one: swing the overarm about the side neck, move the underarm, or change the sweep.',
    setIn: 'Its sleeve is set in: change the cap, its width, its length or its pitch.',
    none: 'It has no sleeve: change the armhole or the shoulder.',
  },
  tapeSaidIt: (id: ComplaintId, brought: number) =>
    `${id}: the tape has said the same since: ${brought} mm on the half piece. The draft follows the number; sew it and look again.`,
  howMuch: (where: string) => `Pin or read how much, at the ${where}, and say how it was read.`,
  under: (id: ComplaintId, raw: number, smallest: number) =>
    `${id}: ${raw} mm on the half piece is under ${smallest} mm; nobody cuts truer than that.`,
  lineSaysIt: (id: ComplaintId, read: string) =>
    `${id}: no test is asked for, the line says it (${read}); lines come before folds.`,
  likeliest: (id: ComplaintId) =>
    `${id}: the likeliest, not proved; look at it again on the next muslin.`,
  /** @param lengths names of lengths that a case may give */
  noAngle: (id: ComplaintId, lengths: readonly string[]) =>
    `${id}: no angle without ${lengths.join(', ')}.`,
  repeated: (id: ComplaintId) =>
    `${id}: repeated on the other side; say so if the other side lies as it should.`,
  underarmStays: (id: ComplaintId) =>
    `${id}: the underarm stays where its level was taped; the armhole changes by as much, look at it on the next muslin.`,
  swings: (id: ComplaintId) =>
    `${id}: on a sleeve cut in one the overarm swings about the side neck.`,
  leftOver: (id: ComplaintId, left: number, how: How, value: number, raw: number) =>
    `${id}: left over by the last muslin ${left} mm, read now ${value} mm (${HOW_READ[how].word}). Into the draft: ${raw} mm, the mean on the half piece.`,
  fromLengths: (id: ComplaintId, raw: number) => `${id}: ${raw} mm, from the lengths given.`,
  howItCame: (
    id: ComplaintId,
    of: {
      readonly how: How
      readonly value: number
      readonly where: PinPlace
      /** Cloth in the pins; undefined for the mean of both sides. */
      readonly cloth: number | undefined
      readonly raw: number
      /** Part that is applied of a pinned take-in, in a hundred. */
      readonly share: number | undefined
      readonly applied: number
      readonly most: number
      readonly degrees: boolean
    },
  ) =>
    `${id}: read ${of.value} mm (${HOW_READ[of.how].word}, ${PLACE_WORDS[of.where]}), ${of.cloth === undefined ? 'the mean of both sides' : `that is ${of.cloth} mm of cloth`}; ${of.raw} mm on the half piece.${of.share === undefined ? '' : ` Of what is pinned away ${of.share} in a hundred count.`} Into the draft: ${of.applied} mm; the most of a round is ${of.most}${of.degrees ? '°' : ' mm'}.`,
  pastCap: 'past the most of one round: watch it on the next muslin',
  squareOff: (side: number) =>
    `The test square is ${side} mm and should be 100 mm: print at full size and cut anew. The draft stays.`,
  /** @param said causes with their ids and names */
  differentWork: (said: readonly string[]) =>
    `${said.join(' and ')} are different work. Which pin makes it vanish, with no new fold?`,
  test: (number: number, ask: string) => `Test ${number}: ${ask}`,
  causeOf: (name: string, complaint: string) => `${name} (${complaint})`,
  /** @param look causes that no test speaks of */
  allNo: (look: readonly string[]) =>
    `Every test was answered no, so none of its causes is shown. Press the muslin, put it on again with the arms down, and pin and measure it once more; until then the draft stays.${look.length > 0 ? ` Look as well for: ${look.join('; ')}.` : ''}`,
  enough: {
    tip: 'by the lengths given the tip already lies as far from the bust tip as is wanted.',
    capOver: 'by the lengths given the cap has no more ease than the cloth takes.',
    capUnder: 'by the lengths given the cap has as much ease as the cloth takes.',
    dart: 'the dart is narrower than 22° and 44 mm: it bubbles from sewing or pressing, not from the draft. Sew it to a fine end and press it over a curve.',
  },
  nothingThere: (id: ComplaintId, most: number, smallest: number) =>
    `${id}: ${most} mm is under ${smallest} mm: nothing is missing or too much there that could be cut.`,
  lessThanNothing: (how: How, value: number) =>
    `${value} mm (${HOW_READ[how].word}) is less than nothing. Read it again; if it goes the other way, it is another complaint.`,
  absurd: (raw: number, most: number) =>
    `${raw} mm on the half piece is more than a fitting ever changes; the most of a round is ${most} mm. Read it again, with its unit, and tape the numbers it rests on.`,
  takesAway: (how: How) =>
    `Pinned like this (${HOW_READ[how].word}) it takes cloth away, and here some is wanting. Open the seam or slit it where it strains and read the gap.`,
  letsIn: 'A slit lets cloth in, and here there is too much. Pin it away and read the fold.',
  lineDenies: (read: string): Doubt['why'] =>
    `Read off the muslin: ${read}. Lines come before folds, and this one speaks against it: look at the line once more and set it right before anything is changed.`,
  lineFirst: (read: string, name: string) =>
    `Lines come before folds, and one says more (${read}): take up “${name}” as well.`,
}
