/** What rounds of before kept of a cause is still read. Sentences from memory of those rounds. */
import { expect, test } from 'vitest'
import {
  ALL_COMPLAINTS,
  causeWords,
  complaintOf,
} from '../../../src/fitting/complaints/catalogue.ts'
import { causeId } from '../../../src/fitting/complaints/complaint.ts'
import { keptCause } from '../../../src/fitting/complaints/kept-causes.ts'

test('the sentences of the causes, as they were kept before their ids were', () => {
  for (const { id, causes } of ALL_COMPLAINTS)
    for (const { number, name } of causes)
      expect(keptCause({ complaint: id, cause: name })).toBe(causeId(id, number))
})
test('the names of the first rounds, ids, and a cause of another complaint it led to', () => {
  expect(keptCause({ complaint: 'B8', cause: 'overarm slope' })).toBe('B8.4')
  expect(keptCause({ complaint: 'N1', cause: 'B9.1' })).toBe('B9.1')
  expect(causeWords({ complaint: 'N1', cause: 'B9.1' })).toBe(complaintOf('B9').causes[0]?.name)
  expect(causeWords({ complaint: 'B8', cause: 'bust shaping' })).toBe(
    complaintOf('B8').causes[0]?.name,
  )
})
test('what names no cause comes back as it was kept', () => {
  for (const { id } of ALL_COMPLAINTS)
    for (const cause of ['unsettled', 'nothing to change', 'given on the command line', `${id}.9`])
      expect(causeWords({ complaint: id, cause })).toBe(cause)
})
