/** What is ticked and how the lines lie: the last word on each thing holds. */
import { expect, test } from 'vitest'
import { complaintOf } from '../../src/fitting/complaints/catalogue.ts'
import {
  LINE_IDS,
  readingOf,
  readingsOf,
  saidByLines,
  tickedOf,
} from '../../src/rounds/first-things.ts'

const on = '2026-11-28'

test('a tick that was taken back is none', () => {
  const firstThings = [
    { thing: 'arms', done: true, on },
    { thing: 'pressed', done: true, on },
    { thing: 'arms', done: false, on },
  ] as const
  expect(tickedOf({ firstThings })).toEqual(['pressed'])
})
test('lines that lie right name no complaint, others name theirs once and in the order of the lines', () => {
  const lines = [
    { line: 'hem', reading: 'backUp', on },
    { line: 'waist', reading: 'frontUp', on },
    { line: 'waist', reading: 'backUp', on },
    { line: 'side', reading: 'true', on },
    { line: 'centres', reading: 'of another day', on },
  ] as const
  expect(readingOf({ lines }, 'waist')).toBe('backUp')
  expect(saidByLines({ lines })).toEqual(['K3'])
  expect(saidByLines({ lines: lines.slice(0, 2) })).toEqual(['B2', 'K3'])
})
test('each line can lie right, and what it names otherwise speaks of level, plumb or rise', () => {
  for (const line of LINE_IDS) {
    const all = Object.values(readingsOf(line))
    expect(all.filter(({ says }) => says === undefined)).toHaveLength(1)
    for (const { says } of all)
      if (says)
        expect(complaintOf(says).sign).toMatch(/plumb|level|rise|lean|hang|bow|line|dip|hem/i)
  }
})
