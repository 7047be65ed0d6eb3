import { capital } from '../units/capital.ts'
import { MEASURES } from './names.words.de.ts'
import type { PLAUSIBILITY_WORDS as English, SaidLength } from './plausibility.words.ts'

const pair = (one: SaidLength, other: SaidLength): string =>
  `${capital(MEASURES[one.id].der)} ${one.length} neben ${MEASURES[other.id].dem} ${other.length}`

export const PLAUSIBILITY_WORDS: typeof English = {
  unusual: (one, other) =>
    `${pair(one, other)} ist ungewöhnlich. Miss ${MEASURES[one.id].it} noch einmal.`,
  veryUnusual: (one, other) =>
    `${pair(one, other)} ist sehr ungewöhnlich. Miss ${MEASURES[one.id].it} noch einmal; sagt das Maßband wieder dasselbe, dann sag es, und die Zahl wird verwendet.`,
  shouldBeLess: (one, other) =>
    `${capital(MEASURES[one.id].der)} ${one.length} sollte weniger sein als ${MEASURES[other.id].der} ${other.length}. Miss beide noch einmal.`,
  seldom: (one, other, women, base) =>
    `${pair(one, other)} ist ungewöhnlich, so bei ${women} von ${base} Frauen. Miss beide noch einmal.`,
}
