import { capital } from '../units/capital.ts'
import { dative, itself, nominative } from './names.words.de.ts'
import type { PLAUSIBILITY_WORDS as English, SaidLength } from './plausibility.words.ts'

const pair = (one: SaidLength, other: SaidLength): string =>
  `${capital(nominative(one.id))} ${one.length} neben ${dative(other.id)} ${other.length}`

export const PLAUSIBILITY_WORDS: typeof English = {
  unusual: (one, other) =>
    `${pair(one, other)} ist ungewöhnlich. Miss ${itself(one.id)} noch einmal.`,
  veryUnusual: (one, other) =>
    `${pair(one, other)} ist sehr ungewöhnlich. Miss ${itself(one.id)} noch einmal; sagt das Maßband wieder dasselbe, dann sag es, und die Zahl wird verwendet.`,
  shouldBeLess: (one, other) =>
    `${capital(nominative(one.id))} ${one.length} sollte weniger sein als ${nominative(other.id)} ${other.length}. Miss beide noch einmal.`,
  seldom: (one, other, women, base) =>
    `${pair(one, other)} ist ungewöhnlich, so bei ${women} von ${base} Frauen. Miss beide noch einmal.`,
}
