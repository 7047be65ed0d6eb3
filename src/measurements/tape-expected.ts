/**
 * What some lengths of a woman lead one to expect of another, by the pooled tape model: the conditional
 * normal distribution within a survey (any textbook), once from each survey's means. The same name
 * stands for places up to 35 mm apart in the two, so the middle of both answers is taken, and their
 * difference d adds d² / 2 (the variance of two values about their mean).
 */
import { cholesky } from './conditional.ts'
import { covariance, TAPE_VARIABLES } from './tape-model.ts'

/** A length as far as it is known, mm; `name` as in TAPE_VARIABLES. */
export interface Known {
  readonly name: string
  readonly value: number
  readonly sd: number
}
export interface Expected {
  readonly mean: number
  readonly sd: number
}

const placeOf = (name: string): number => {
  const place = TAPE_VARIABLES.findIndex((own) => own.name === name)
  if (place < 0) throw new Error(`tape model: no variable "${name}"`)
  return place
}
type Survey = 'meanAnsur1988' | 'meanKorea2015'
const meanOf = (place: number, survey: Survey): number => TAPE_VARIABLES[place]?.[survey] ?? NaN

export function expectedOf(name: string, known: readonly Known[]): Expected {
  const own = placeOf(name)
  const others = known.map((one) => ({ ...one, place: placeOf(one.name) }))
  const lower = cholesky(
    others.map((a, i) =>
      others.map((b, j) => covariance(a.place, b.place) + (i === j ? a.sd ** 2 : 0)),
    ),
  )
  // With L L' the spread of the known: the weights on them are solved by forward substitution alone.
  const forward = (of: readonly number[]): number[] => {
    const out: number[] = []
    for (const [i, row] of lower.entries()) {
      const done = out.reduce((sum, value, j) => sum + value * (row[j] ?? 0), 0)
      out.push(((of[i] ?? 0) - done) / (row[i] ?? NaN))
    }
    return out
  }
  const pull = forward(others.map(({ place }) => covariance(own, place)))
  const bySurvey = (survey: Survey): number => {
    const off = forward(others.map(({ place, value }) => value - meanOf(place, survey)))
    return pull.reduce((sum, value, i) => sum + value * (off[i] ?? 0), meanOf(own, survey))
  }
  const [a, b] = [bySurvey('meanAnsur1988'), bySurvey('meanKorea2015')]
  const within = pull.reduce((left, value) => left - value ** 2, covariance(own, own))
  return { mean: (a + b) / 2, sd: Math.sqrt(within + (a - b) ** 2 / 2) }
}
