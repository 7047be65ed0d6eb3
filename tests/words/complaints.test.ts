/** The German sentences of the complaints hold the numbers of the English ones, and each has its number. */
import { expect, test } from 'vitest'
import { ARMHOLE_WORDS as ARMHOLE } from '../../src/fitting/complaints/armhole.words.ts'
import { ARMHOLE_WORDS as ARMLOCH } from '../../src/fitting/complaints/armhole.words.de.ts'
import { BACK_WORDS as BACK } from '../../src/fitting/complaints/back.words.ts'
import { BACK_WORDS as RUECKEN } from '../../src/fitting/complaints/back.words.de.ts'
import { BUST_WORDS as BUST } from '../../src/fitting/complaints/bust.words.ts'
import { BUST_WORDS as BRUST } from '../../src/fitting/complaints/bust.words.de.ts'
import { DRAPED_WORDS as DRAPED } from '../../src/fitting/complaints/draped.words.ts'
import { DRAPED_WORDS as ANGESCHNITTEN } from '../../src/fitting/complaints/draped.words.de.ts'
import { NECK_WORDS as NECK } from '../../src/fitting/complaints/neck.words.ts'
import { NECK_WORDS as HALS } from '../../src/fitting/complaints/neck.words.de.ts'
import { SHOULDER_WORDS as SHOULDER } from '../../src/fitting/complaints/shoulder.words.ts'
import { SHOULDER_WORDS as SCHULTER } from '../../src/fitting/complaints/shoulder.words.de.ts'
import { SLEEVE_WORDS as SLEEVE } from '../../src/fitting/complaints/sleeve.words.ts'
import { SLEEVE_WORDS as AERMEL } from '../../src/fitting/complaints/sleeve.words.de.ts'
import { WAIST_WORDS as WAIST } from '../../src/fitting/complaints/waist.words.ts'
import { WAIST_WORDS as TAILLE } from '../../src/fitting/complaints/waist.words.de.ts'
import { WHOLE_WORDS as WHOLE } from '../../src/fitting/complaints/whole.words.ts'
import { WHOLE_WORDS as GANZES } from '../../src/fitting/complaints/whole.words.de.ts'

/** Each sentence by its way through the record, with the numbers in it. */
function numbersIn(words: unknown, path = ''): readonly string[] {
  if (typeof words === 'string') return [`${path}: ${(words.match(/\d+/g) ?? []).join(' ')}`]
  return Object.entries(words as object).flatMap(([key, entry]) =>
    key === 'said' ? [] : numbersIn(entry, `${path}.${key}`),
  )
}

test.each([
  ['armhole', ARMHOLE, ARMLOCH],
  ['back', BACK, RUECKEN],
  ['bust', BUST, BRUST],
  ['draped sleeve', DRAPED, ANGESCHNITTEN],
  ['neck', NECK, HALS],
  ['shoulder', SHOULDER, SCHULTER],
  ['sleeve', SLEEVE, AERMEL],
  ['waist', WAIST, TAILLE],
  ['whole garment', WHOLE, GANZES],
])('%s', (_zone, english, german) => {
  expect(numbersIn(german)).toEqual(numbersIn(english))
})
