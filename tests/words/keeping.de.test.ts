/**
 * Keeping, comparing and bringing over in German: plurals, commas, days, and that nothing kept
 * depends on the language of the page. Grammar from memory of school grammar.
 */
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import * as v from 'valibot'
import { wordsOf } from '../../src/handover/proof.ts'
import { CODE_WORDS, SAME_SIDE } from '../../src/handover/handover.words.ts'
import { WORDS } from '../../src/handover/word-list.ts'
import { lengthWords, tipWords } from '../../src/rounds/compare.ts'
import { driftedWords } from '../../src/rounds/drift.ts'
import { LINE_IDS, linesSay, readingsOf } from '../../src/rounds/first-things.ts'
import { close } from '../../src/rounds/redraft.ts'
import { branchFrom, withSeen, type Round } from '../../src/rounds/round.ts'
import { failureOf } from '../../src/storage/failure.ts'
import { OperationSchema } from '../../src/storage/schema/operation.ts'
import { parsed } from '../../src/storage/schema/parsed.ts'
import { RoundSchema } from '../../src/storage/schema/round.ts'
import { BACKUP_WORDS } from '../../src/storage/storage.words.ts'
import { SEED } from '../../src/ui/example/seed.ts'
import { asText } from '../../src/ui/fitting/change-said.ts'
import {
  BRING_WORDS,
  CODE_SHOWN_WORDS,
  GOODS_WORDS,
  SEND_WORDS,
} from '../../src/ui/handover/bring.words.ts'
import { NO_WAY } from '../../src/ui/handover/why-closed.words.ts'
import { SAFE_WORDS } from '../../src/ui/rail/safe-keeping.words.ts'
import { SUMMARY } from '../../src/ui/rounds/compare.words.ts'
import { standingSaid } from '../../src/ui/rounds/record-words.ts'
import { RECORD_WORDS } from '../../src/ui/rounds/record.words.ts'
import { becauseSaid, decisionsOf, summary } from '../../src/ui/rounds/round-words.ts'
import { answerSaid } from '../../src/ui/rounds/said-between.ts'
import { DATE_WORDS } from '../../src/units/dates.words.ts'
import type { UnitChoice } from '../../src/units/format.ts'
import { mm } from '../../src/units/length.ts'

const CM: UnitChoice = { unit: 'cm', inchStep: 8 }
const ON = '2026-11-28'
const ENGLISH = /\b(the|and|with|from|your|you|of|is|are|which|where)\b/i

/** Went on paper in English, long before there was a German page. */
const english = (): Round =>
  v.parse(
    v.object({ round: RoundSchema }),
    JSON.parse(
      readFileSync(new URL('../rounds/golden/blouse-second.json', import.meta.url), 'utf8'),
    ),
  ).round

describe('what is kept opens in either language', () => {
  test('steps that were frozen in English are not told as worded otherwise', () => {
    const round = english()
    expect(round.printed?.words?.some((words) => ENGLISH.test(words))).toBe(true)
    expect(driftedWords(round)).toEqual([])
  })
  test('steps frozen in German are held to the German of today', () => {
    const round = close(branchFrom(english(), 3, 'three', ON), ON)
    const words = [...(round.printed?.words ?? []), 'A–Z Miss bis zum Mond.']
    const altered = { ...round, printed: { ...round.printed!, words } }
    expect(driftedWords(round)).toEqual([])
    expect(driftedWords(altered)).toEqual(['A–Z Miss bis zum Mond.'])
  })
  test('an answer is told by its id, an old one as it was kept', () => {
    expect(answerSaid('B8', 'unsettled')).toBe('offen')
    expect(answerSaid('B8', 'nothing to change')).toBe('nichts zu ändern')
    expect(answerSaid('B8', 'B8.1')).not.toMatch(/^B8|\bthe\b/)
  })
  test('two devices show the same four words whatever language they run', async () => {
    const bytes = (length: number) => new Uint8Array(length).fill(7)
    const pairing = { secret: bytes(16), offer: bytes(32), answer: bytes(32) }
    const words = await wordsOf(crypto.subtle, pairing)
    expect(words).toHaveLength(4)
    for (const word of words) expect(WORDS).toContain(word)
    expect(WORDS[0]).toBe('acorn')
  })
})

describe('days and numbers', () => {
  test('a day stands as in German letters; what is none stays as it is', () => {
    expect(DATE_WORDS.day('2026-11-05')).toBe('05.11.2026')
    expect(DATE_WORDS.day('')).toBe('')
    expect(standingSaid([english()], english())).toMatch(
      /^zu Papier gebracht am \d\d\.\d\d\.\d{4}$/,
    )
  })
  test('decimals have a comma', () => {
    expect(SAFE_WORDS.room(12_340_000, 2_000_000_000)).toBe('12,3 MB von 2,0 GB belegt')
    expect(SEND_WORDS.megabytes(1_260_000, 3_000_000)).toBe('1,3 von 3,0 MB')
  })
})

describe('rounds', () => {
  const none = { numbers: 0, picked: 0, gone: 0, better: 0, again: 0, worse: 0, new: 0 }
  test('one and several, the verb in its number', () => {
    expect(SUMMARY(none)).toBe('Keine Zahl hat sich geändert.')
    expect(SUMMARY({ ...none, numbers: 1 })).toBe('Eine Zahl hat sich geändert.')
    expect(SUMMARY({ ...none, picked: 1, gone: 1 })).toBe(
      'Eine Auswahl hat sich geändert. Von deinen Beobachtungen: eine weg.',
    )
    expect(SUMMARY({ ...none, numbers: 12, picked: 2, again: 1, new: 2 })).toBe(
      '12 Zahlen und zwei Auswahlen haben sich geändert. Von deinen Beobachtungen: eine noch da, zwei neu.',
    )
  })
  test('what lies between two rounds, from the rounds themselves', () => {
    const before = english()
    const after = withSeen(branchFrom(before, 3, 'three', ON), {
      complaint: 'W1',
      answer: 'unsettled',
      on: ON,
    })
    expect(summary(3, before, after)).toMatch(/^Drei Zahlen haben sich geändert\. Von deinen/)
  })
  test('lengths and tips are named piece first', () => {
    expect(lengthWords('front.side')).toBe('Vorderteil, Seitennaht')
    expect(lengthWords('back.waistDart')).toBe('Rückenteil, Taillenabnäher, Inhalt')
    expect(tipWords('front.waistDart.upper')).toBe('Vorderteil, Taillenabnäher, obere Spitze')
  })
  test('a correction says why in one German sentence', () => {
    const [decision] = decisionsOf(english())
    const said = asText(becauseSaid(decision!.correction), CM)
    expect(said).toMatch(/^Wegen Probeteil 1: .+\. Abgelesen \d+,\d\u00a0cm \(ganze Falte\), /)
  })
  test('how every line may lie is said, and never in English', () => {
    for (const line of LINE_IDS)
      for (const [reading, { word }] of Object.entries(readingsOf(line))) {
        expect(word, `${line} ${reading}`).not.toBe(reading)
        expect(word).not.toMatch(ENGLISH)
      }
    const lines = [{ line: 'waist', reading: 'frontUp', on: ON }] as const
    expect(linesSay({ lines }).named).toEqual([
      { complaint: 'B2', read: 'Taillenlinie: an der vorderen Mitte zu hoch' },
    ])
  })
})

describe('refusals', () => {
  test('a full device is told in German, with what to do', () => {
    const error = Object.assign(new Error('full'), { name: 'QuotaExceededError' })
    expect(failureOf(error).sentence).toMatch(/kein Platz mehr.+Lösch ein Foto/)
  })
  test('a record that does not read is no thing of ours, article and all', () => {
    const moved = { op: 'MOVE', piece: 'hat', point: 'nose', out: mm(1), down: mm(1) }
    expect(parsed(OperationSchema, moved)).toEqual({
      ok: false,
      reason: 'piece: "hat" ist kein Schnittteil. Möglich sind: back, front, both.',
    })
    expect(parsed(OperationSchema, { op: 'STRIP', piece: 'back', by: 'far' })).toEqual({
      ok: false,
      reason: 'by: "far" ist keine Zahl in Millimetern.',
    })
  })
})

test('the example calls itself invented, its notes are German', () => {
  expect(SEED.name).toMatch(/Erfundenes Beispiel/)
  for (const { cloth, notes } of SEED.muslins) expect(`${cloth} ${notes}`).not.toMatch(ENGLISH)
})

test('a key that is named in a sentence is called what stands on it', () => {
  const quoted = (key: string) => `„${key.replaceAll('\u00ad', '')}“`
  const named: readonly (readonly [sentence: string, key: string])[] = [
    [BACKUP_WORDS.notOurs, SAFE_WORDS.save],
    [NO_WAY, SAFE_WORDS.save],
    [BRING_WORDS.byFile, SAFE_WORDS.save],
    [BRING_WORDS.byFile, SAFE_WORDS.readBack],
    [CODE_WORDS.foreign, BRING_WORDS.title],
    [SAME_SIDE.offer, BRING_WORDS.readKey],
    [SAME_SIDE.answer, BRING_WORDS.showKey],
    [CODE_SHOWN_WORDS.first, BRING_WORDS.readKey],
    [CODE_SHOWN_WORDS.answer, CODE_SHOWN_WORDS.readAnswer],
  ]
  for (const [sentence, key] of named) expect(sentence).toContain(quoted(key))
})

test('copies are named, one round or none', () => {
  expect(GOODS_WORDS.restored(1, 0, [])).toBe(
    'Neu an der Stange: Stücke 1, Runden 0. Die Maßbücher sind vereint; nichts wurde überschrieben.',
  )
  expect(GOODS_WORDS.restored(1, 2, ['Bluse'])).toMatch(/ Als Kopie daneben: Bluse\.$/)
  expect(RECORD_WORDS.goesOn(undefined, 2)).not.toMatch(/undefined/)
})
