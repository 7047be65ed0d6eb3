/** A measurement of the body as an amount that remembers its name. */
import { CATALOGUE } from '../measurements/catalogue.ts'
import type { MeasurementId } from '../measurements/catalogue.ts'
import { lengthOf, type Body } from '../measurements/confirmed.ts'
import { measurementAmount, type Amount } from '../units/amount.ts'

export const measured = (body: Body, id: MeasurementId): Amount =>
  measurementAmount(id, CATALOGUE[id].label.toLowerCase(), lengthOf(body, id))
