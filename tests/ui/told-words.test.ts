/** Words for what the rules decide. How a pin is read for its kind of work: common practice. */
import { describe, expect, test } from 'vitest'
import { complaintOf } from '../../src/fitting/complaints/catalogue.ts'
import { COMPLAINT_IDS } from '../../src/fitting/complaints/complaint.ts'
import { HOWS } from '../../src/fitting/half-amount.ts'
import { mm } from '../../src/units/length.ts'
import { asText } from '../../src/ui/fitting/change-said.ts'
import {
  editSaid,
  howsFor,
  inHers,
  usualPlace,
  worksOf,
  yesMeans,
} from '../../src/ui/fitting/told-words.ts'

const CM = { unit: 'cm', inchStep: 8 } as const

describe('every complaint', () => {
  test('that comes to work on the draft is read in a way that suits it', () => {
    for (const id of COMPLAINT_IDS) {
      const works = worksOf(id)
      expect(howsFor(id).every((how) => HOWS.includes(how))).toBe(true)
      expect([id, howsFor(id).length > 0]).toEqual([id, works.length > 0])
      if (works[0]?.moves === 'in') expect(howsFor(id)[0]).toBe('pinch')
      if (works[0]?.moves === 'out') expect(howsFor(id)[0]).toBe('slit')
    }
  })
  test('has a meaning for the yes of each of its tests', () => {
    for (const id of COMPLAINT_IDS)
      for (const { number } of complaintOf(id).tests)
        expect(yesMeans(complaintOf(id), number)).toMatch(/^Then.+\.$/)
  })
})

test('where a pin usually sits', () => {
  expect(usualPlace('B8')).toBe('armhole')
  expect(usualPlace('N1')).toBe('neck')
  expect(usualPlace('K2')).toBe('cb')
})

test('an edit is said by line, way and amount', () => {
  const edit = {
    target: 'front.armhole',
    op: 'ROT',
    way: 'in',
    raw: mm(12),
    applied: mm(10.44),
    heldBack: mm(0),
    cap: 15,
    theta: undefined,
    eased: mm(1.56),
  } as const
  expect(asText(editSaid(edit), CM)).toBe('The front armhole comes in by 1.0 cm.')
  expect(asText(editSaid({ ...edit, side: 'left' }), CM)).toBe(
    'The front armhole comes in by 1.0 cm, left side only.',
  )
})

test('reasons name complaints by their names, and lengths in her unit', () => {
  expect(inHers('10.5 mm leave 88 mm of ease.', CM)).toBe('1.1 cm leave 8.8 cm of ease.')
  expect(inHers('88 mm of ease.', { unit: 'inch', inchStep: 8 })).toBe('3 1/2 in of ease.')
  expect(inHers('Keep 6 to 13 mm there.', CM)).toBe('Keep 0.6 to 1.3 cm there.')
  expect(inHers('N1 and B9 describe one slack.', CM)).toBe(
    `${complaintOf('N1').name} and ${complaintOf('B9').name} describe one slack.`,
  )
  expect(inHers('B8.1 (bust fuller than the darts hold).', CM)).toBe(
    'bust fuller than the darts hold.',
  )
  expect(inHers('SH1: pin it.', CM)).toBe(`${complaintOf('SH1').name}: pin it.`)
})
