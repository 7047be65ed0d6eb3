/**
 * The women of ANSUR 1988 with the waist tied lower. Their natural waist lies 74 mm above the
 * navel and 118 mm below the bust points; the Korean survey of 2015 has its waist 36 mm above the
 * navel and 168 mm below them. Both are called natural, and she may tie her cord at either. Here
 * every length that ends at the waist, and the girth, is read part of the way to the navel.
 */
import { overBlade } from './derive.ts'
import { numberOf, type BodySet, type Numbers } from './numbers.ts'
import type { Row, Survey } from './survey-file.ts'

/** (74.4 − 35.8) / 74.4: how far down towards the navel the Korean waist lies. */
const TOWARDS_NAVEL = 0.52

export const lowered = (women: BodySet, { rows }: Survey): BodySet => ({
  ...women,
  name: 'ANSUR 1988, waist tied lower',
  bodies: rows.map((row, i) => lower(women.bodies[i] ?? {}, row)),
})

function lower(body: Numbers, row: Row): Numbers {
  const part = (natural: string, navel: string): number =>
    TOWARDS_NAVEL * (row(navel) - row(natural))
  const down = TOWARDS_NAVEL * row('WAIST_NATURAL_TO_WAIST_UMBILICUS')
  const rise = -part('WAIST_HT_NATURAL', 'WAIST_HT-OMPHALION')
  const back = numberOf(body, 'napeToWaist') + part('WAIST_NAT_LNTH', 'WAIST_OMPH_LNTH')
  return {
    ...body,
    waistGirth: row('WAIST_CIRC_NATURAL') + part('WAIST_CIRC_NATURAL', 'WAIST_CIRC-OMPHALION'),
    napeToWaist: back,
    frontNeckToWaist: numberOf(body, 'frontNeckToWaist') + part('WST_NAT_FRONT', 'WST_OMP_FRONT'),
    waistToBustLevel: numberOf(body, 'waistToBustLevel') + rise,
    waistToHip: numberOf(body, 'waistToHip') - down,
    // The level of the high hip stays where it was; only the waist above it has moved.
    waistToHighHip: numberOf(body, 'waistToHighHip') - down,
    sideNeckOverApexToWaist: numberOf(body, 'sideNeckOverApexToWaist') + rise,
    sideNeckOverBladeToWaist: overBlade(back, numberOf(body, 'bustGirth')),
  }
}
