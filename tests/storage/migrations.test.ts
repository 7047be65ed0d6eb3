/**
 * Every version that was ever released is opened by the present one. The rows of a version are
 * written once, by that version, and never renewed: what she kept then must be readable now.
 */
import { readFileSync } from 'node:fs'
import type { IDBFactory } from 'fake-indexeddb'
import { describe, expect, test } from 'vitest'
import * as v from 'valibot'
import { USUAL_CLOTH } from '../../src/layout/cloth-wishes.ts'
import type { KeptLayout } from '../../src/layout/kept.ts'
import { redraft } from '../../src/rounds/redraft.ts'
import type { Round } from '../../src/rounds/round.ts'
import { saidByLines, tickedOf } from '../../src/rounds/first-things.ts'
import { clothOf, noteOf, roseOf, verdictOf } from '../../src/rounds/worn.ts'
import { mm } from '../../src/units/length.ts'
import type { WhichPhotos } from '../../src/storage/load.ts'
import { READING } from './invented.ts'
import { device, loaded, opened, value } from './opened.ts'

const FixtureSchema = v.object({
  nativeVersion: v.number(),
  keys: v.record(v.string(), v.nullable(v.string())),
  tables: v.record(v.string(), v.array(v.looseObject({ bytes: v.optional(v.string()) }))),
})
type Fixture = v.InferOutput<typeof FixtureSchema>

const fixture = (version: number): Fixture =>
  v.parse(
    FixtureSchema,
    JSON.parse(
      readFileSync(new URL(`../fixtures/store-v${version}.json`, import.meta.url), 'utf8'),
    ),
  )

/** The database as the older version left it, made without any code of ours. */
function lying({ nativeVersion, keys, tables }: Fixture, on: IDBFactory): Promise<void> {
  return new Promise((resolve, reject) => {
    const request = on.open('tapetrue', nativeVersion)
    request.onupgradeneeded = () => {
      for (const [table, key] of Object.entries(keys)) {
        const rows = key
          ? request.result.createObjectStore(table, { keyPath: key })
          : request.result.createObjectStore(table, { keyPath: 'id', autoIncrement: true })
        if (table === 'rounds') rows.createIndex('garmentId', 'garmentId')
        for (const row of tables[table] ?? []) rows.put(withBuffer(row))
      }
    }
    request.onerror = () => reject(new Error(request.error?.message ?? 'no reason given'))
    request.onsuccess = () => {
      request.result.close()
      resolve()
    }
  })
}
const buffer = (text: string): ArrayBuffer => Uint8Array.from(Buffer.from(text, 'base64')).buffer
const withBuffer = (row: Fixture['tables'][string][number]): object => {
  if (row.bytes !== undefined) return { ...row, bytes: buffer(row.bytes) }
  const read = v.safeParse(ClosedSchema, row)
  if (!read.success) return packed(row)
  const { iv, bytes } = read.output.closed
  return { ...row, closed: { iv: buffer(iv), bytes: buffer(bytes) } }
}
/** From version 9 on pixels, and what was read, may be closed with a passphrase. */
const ClosedSchema = v.looseObject({ closed: v.object({ iv: v.string(), bytes: v.string() }) })

const PackedSchema = v.looseObject({
  reading: v.looseObject({ outline: v.object({ float64: v.array(v.number()) }) }),
})
/** From version 7 on the outline of a reading is one block of numbers. */
function packed(row: object): object {
  const read = v.safeParse(PackedSchema, row)
  if (!read.success) return row
  const { reading } = read.output
  return { ...row, reading: { ...reading, outline: Float64Array.from(reading.outline.float64) } }
}

const bustOf = (round: Round | undefined): number | undefined => round?.body.values.bustGirth

describe('a store of version 1', () => {
  test('opens whole: book, garment, both rounds, photo and settings, nothing put aside', async () => {
    const on = device()
    await lying(fixture(1), on)
    const store = await opened(on)
    const all = await loaded(store)
    expect(all.aside).toEqual([])
    expect(all.book.bustGirth?.tape.map((r) => r.value)).toEqual([940, 940])
    expect(all.garments.map((g) => g.name)).toEqual(['Blue blouse, invented'])
    expect(all.rounds.map((r) => [r.number, bustOf(r), r.printed?.on])).toEqual([
      [1, 940, '2026-11-21'],
      [2, 940, undefined],
    ])
    expect(all.rounds[1]?.corrections).toMatchObject([{ kind: 'close-wedge', width: 6 }])
    expect(all.settings).toEqual({ cutting: { paper: 'a4' } })
    expect(all.photos).toMatchObject([{ view: 'front', here: true }])
    const blob = value(await store.readPhoto(all.photos[0]?.sha256 ?? ''))
    expect(new Uint8Array((await blob?.arrayBuffer()) ?? []).subarray(0, 2)).toEqual(
      Uint8Array.of(0xff, 0xd8),
    )
    // A loaded round is drawn at once: the numbers went through the tape again, not through a cast.
    for (const round of all.rounds) expect(redraft(round).refused).toEqual([])
    // How it is cut was not kept then: everything is as usual until she chooses.
    expect(all.garments[0]?.cutting).toBeUndefined()
  })
})

describe('a store of version 2', () => {
  const CUT = {
    stuff: 'cloth',
    muslin: { side: { finish: 'muslinSeam', allowance: 30 } },
    cloth: {
      hem: { finish: 'doubleFoldHem', allowance: 50 },
      overarm: { finish: 'flatFelled' },
    },
    paper: { roll: 914 },
    scale: { x: 1.01, y: 1 },
  }
  test('opens whole, with the finishes, the paper and the printer of the garment', async () => {
    const on = device()
    await lying(fixture(2), on)
    const all = await loaded(await opened(on))
    expect(all.aside).toEqual([])
    expect(all.garments.map((g) => g.cutting)).toEqual([CUT])
    expect(all.rounds.map((r) => [r.number, bustOf(r), r.printed?.on])).toEqual([
      [1, 940, '2026-11-21'],
    ])
  })
  test('keeps the garment where one of its finishes is known no longer', async () => {
    const on = device()
    const old = fixture(2)
    const rows = (old.tables['garments'] ?? []).map((row) => ({
      ...row,
      cutting: {
        ...CUT,
        cloth: {
          ...CUT.cloth,
          overarm: { finish: 'a seam of another day' },
          sash: {},
          'front.centre': { finish: 'rolledEdge' },
          'sash.centre': { finish: 'rolledEdge' },
          'front.centre.fold': { finish: 'rolledEdge' },
        },
        paper: 'foolscap',
        scale: { x: 1.01, y: 90 },
      },
    }))
    await lying({ ...old, tables: { ...old.tables, garments: rows } }, on)
    const all = await loaded(await opened(on))
    expect(all.aside).toEqual([])
    expect(all.garments[0]?.cutting).toEqual({
      stuff: 'cloth',
      muslin: CUT.muslin,
      cloth: { hem: CUT.cloth.hem, 'front.centre': { finish: 'rolledEdge' } },
    })
  })
})

describe('a store of version 3', () => {
  test('opens whole: what was worn, a close-up that was let go, a branch from the first round', async () => {
    const on = device()
    await lying(fixture(3), on)
    const all = await loaded(await opened(on))
    expect(all.aside).toEqual([])
    const [first, second, branch] = all.rounds
    expect([first?.number, second?.number, branch?.number]).toEqual([1, 2, 3])
    expect(branch?.from).toBe(first?.id)
    expect(first && noteOf(first, 'armhole')).toBe('Stands away in front only.')
    expect(first?.movements).toMatchObject([{ movement: 'armsForward', freedom: 'pulls' }])
    expect(first && verdictOf(first)).toBe('anotherMuslin')
    expect(first && clothOf(first)).toBe('calico, invented')
    expect(first?.paperWork).toMatchObject([{ how: 'sheets', about: 'A4, 14 sheets' }])
    expect(first?.photos.map((p) => [p.view, p.zone, p.removedOn])).toEqual([
      ['front', undefined, undefined],
      ['closeUp', 'armhole', '2026-11-24'],
    ])
    expect(first?.printed?.words).toHaveLength(1)
    for (const round of all.rounds) expect(redraft(round).refused).toEqual([])
  })
  test('rounds of version 2 say nothing of it yet', async () => {
    const on = device()
    await lying(fixture(2), on)
    const [round] = (await loaded(await opened(on))).rounds
    expect(round && [round.movements, round.verdicts, round.zoneNotes]).toEqual([[], [], []])
    expect(round && verdictOf(round)).toBeUndefined()
  })
})

describe('a store of version 4', () => {
  const CLOTH = {
    kind: 'rayon',
    widths: [900, 1150],
    width: 1150,
    manner: 'lengthwise',
    oneWay: true,
    selvedge: 15,
    shrinkAlong: 0.04,
    shrinkAcross: 0.01,
    spare: 0.05,
    repeatAlong: 60,
    matchAt: 'underarm',
    soldBy: 'metre',
    price: 18.5,
    have: { length: 2300, width: 1150 },
  }
  test('opens whole, with the cloth of the garment and the steps that are sewn', async () => {
    const on = device()
    await lying(fixture(4), on)
    const all = await loaded(await opened(on))
    expect(all.aside).toEqual([])
    expect(all.garments.map((g) => g.cloth)).toEqual([CLOTH])
    expect(all.garments[0]?.sewn).toEqual({
      stay: '2026-11-27',
      'dart.front.waistDart': '2026-11-28',
    })
  })
  test('what is not understood of it takes its usual value, and the garment stays', async () => {
    const on = device()
    const old = fixture(4)
    const rows = (old.tables['garments'] ?? []).map((row) => ({
      ...row,
      cloth: { ...CLOTH, kind: 'chain mail', shrinkAlong: 4, manner: 'rolled', widths: ['wide'] },
      sewn: {
        stay: 'yesterday',
        'seam.side': '2026-11-28',
        'hang.hem': '2026-11-28T13:30:00.000Z',
      },
    }))
    await lying({ ...old, tables: { ...old.tables, garments: rows } }, on)
    const [garment] = (await loaded(await opened(on))).garments
    expect(garment?.cloth).toEqual({
      ...CLOTH,
      kind: USUAL_CLOTH.kind,
      shrinkAlong: 0,
      manner: 'shortest',
      widths: USUAL_CLOTH.widths,
    })
    expect(garment?.sewn).toEqual({
      'seam.side': '2026-11-28',
      'hang.hem': '2026-11-28T13:30:00.000Z',
    })
  })
  test('a drape test that cannot be one is left out', async () => {
    const old = fixture(4)
    const read = async (drape: unknown) => {
      const on = device()
      const rows = (old.tables['garments'] ?? []).map((row) => ({
        ...row,
        cloth: { ...CLOTH, drape },
      }))
      await lying({ ...old, tables: { ...old.tables, garments: rows } }, on)
      return (await loaded(await opened(on))).garments[0]?.cloth
    }
    const drape = { apart: 210, of: 'silk' }
    expect(await read(drape)).toEqual({ ...CLOTH, drape })
    // Farther apart than the side of the square, in words, of no cloth, no record.
    for (const none of [{ ...drape, apart: 301 }, { ...drape, apart: 'far' }, { apart: 210 }, 210])
      expect(await read(none)).toEqual(CLOTH)
  })
  test('a garment of version 3 says nothing of its cloth yet', async () => {
    const on = device()
    await lying(fixture(3), on)
    const [garment] = (await loaded(await opened(on))).garments
    expect([garment?.cloth, garment?.sewn]).toEqual([undefined, undefined])
  })
})

describe('a store of version 5', () => {
  test('opens whole, with the first things, the lines and the rise of the hem', async () => {
    const on = device()
    await lying(fixture(5), on)
    const all = await loaded(await opened(on))
    expect(all.aside).toEqual([])
    const [first] = all.rounds
    // Pressed was ticked and taken back a day later: the last word holds.
    expect(first && tickedOf(first)).toEqual(['grain'])
    expect(first && saidByLines(first)).toEqual(['B2'])
    expect(first && roseOf(first, 'armsUp')).toBe(42)
  })
  test('rounds of version 3 and 4 say nothing of it yet', async () => {
    for (const version of [3, 4]) {
      const on = device()
      await lying(fixture(version), on)
      for (const round of (await loaded(await opened(on))).rounds)
        expect([round.firstThings, round.lines]).toEqual([[], []])
    }
  })
})

describe('a store of version 6', () => {
  test('opens whole, with the lengths of her own draft and of a garment she likes', async () => {
    const on = device()
    await lying(fixture(6), on)
    const all = await loaded(await opened(on))
    expect(all.aside).toEqual([])
    expect(all.garments[0]?.own).toEqual({
      drawn: { 'front.side': 418, 'back.bustLine': 257.5 },
      liked: { bust: 520, waist: 480, backLength: 610 },
    })
  })
  test('a length that cannot be one is left out, the others stay', async () => {
    const on = device()
    const old = fixture(6)
    const rows = (old.tables['garments'] ?? []).map((row) => ({
      ...row,
      own: {
        drawn: { 'front.side': -4, 'back.side': 400, '<b>': 12, 'back.hem': 'long' },
        liked: { bust: 520, hip: null, sleeve: 300 },
      },
    }))
    await lying({ ...old, tables: { ...old.tables, garments: rows } }, on)
    const [garment] = (await loaded(await opened(on))).garments
    expect(garment?.own).toEqual({ drawn: { 'back.side': 400 }, liked: { bust: 520 } })
  })
  test('a garment of version 5 has none yet', async () => {
    const on = device()
    await lying(fixture(5), on)
    expect((await loaded(await opened(on))).garments[0]?.own).toBeUndefined()
  })
})

describe('a store of version 7', () => {
  test('opens whole, with the outline of its photo; no layout was kept with the garment then', async () => {
    const on = device()
    await lying(fixture(7), on)
    const all = await loaded(await opened(on))
    expect(all.aside).toEqual([])
    expect(all.photos[0]?.reading?.outline).toEqual([
      { y: 400, left: 440.1, right: 639.25 },
      { y: 401, left: 440, right: 640.125 },
    ])
    expect(all.garments[0]?.cloth).toMatchObject({ kind: 'rayon', width: 1150 })
    expect(all.garments[0]?.laid).toBeUndefined()
    expect(all.rounds.map((r) => [r.number, r.photos.length])).toEqual([[1, 1]])
  })
  const laid: KeptLayout = {
    width: mm(1150),
    mark: 'a'.repeat(32),
    on: '2026-11-25',
    tries: 6_000_000,
    manner: 'lengthwise',
    length: mm(1420.5),
    sections: [{ length: mm(1420.5), placed: [[0, 1, 2.5, 0]] }],
    tried: { lengthwise: mm(1420.5), single: mm(1500) },
  }
  async function keptLayouts(rows: readonly unknown[]) {
    const on = device()
    const old = fixture(7)
    const garments = (old.tables['garments'] ?? []).map((row) => ({ ...row, laid: rows }))
    await lying({ ...old, tables: { ...old.tables, garments } }, on)
    const all = await loaded(await opened(on))
    expect(all.aside).toEqual([])
    return all.garments[0]?.laid
  }
  test('a layout that cannot be one is left out, the others and the garment stay', async () => {
    const rows = [laid, { ...laid, manner: 'rolled' }, { ...laid, mark: '<b>' }, 7]
    expect(await keptLayouts(rows)).toEqual([laid])
  })
  test('one with its picture is read, one whose picture is none is left out', async () => {
    const corners = [0, 0, 700, 0, 650, 240]
    const pictured = (cut: readonly number[], id: string) => ({
      ...laid,
      drawn: [
        {
          layers: 'foldedAlong',
          start: 0,
          length: 1420.5,
          width: 563,
          double: 240,
          selvedge: 12,
          border: 150,
          pieces: [{ id, kind: 'onFold', whole: false, onFold: true, across: false, cut }],
        },
      ],
    })
    const good = pictured(corners, 'back')
    const bad = [pictured(corners, '<b>'), pictured([...corners, 1], 'back')]
    // As text, too: the screen writes a layout again only where its text has become another.
    expect(JSON.stringify(await keptLayouts([good, ...bad]))).toBe(JSON.stringify([good]))
  })
})

describe('a store of version 8', () => {
  test('opens whole with its photo in the open, which a passphrase closes and opens again', async () => {
    const on = device()
    await lying(fixture(8), on)
    const store = await opened(on)
    const before = await loaded(store)
    expect(before.aside).toEqual([])
    expect(before.garments[0]?.laid).toHaveLength(1)
    expect(before.photoLock).toBeUndefined()
    expect(before.photos[0]?.reading?.outline[0]).toEqual({ y: 200, left: 400, right: 520 })
    const bytes = async (from: typeof store) =>
      new Uint8Array(
        (await value(await from.readPhoto(before.photos[0]?.sha256 ?? ''))?.arrayBuffer()) ?? [],
      )
    const pixels = await bytes(store)
    expect(pixels.subarray(0, 2)).toEqual(Uint8Array.of(0xff, 0xd8))
    value(await store.safe.set('an invented passphrase of the tests'))
    const again = await opened(on)
    expect((await loaded(again)).photos[0]?.reading).toBeUndefined()
    value(await again.safe.unlock('an invented passphrase of the tests'))
    expect((await loaded(again)).photos).toEqual(before.photos)
    expect(await bytes(again)).toEqual(pixels)
    value(await again.safe.takeOff('an invented passphrase of the tests'))
    expect(await loaded(await opened(on))).toEqual(before)
  })
})

describe('a store of version 9', () => {
  const PASSPHRASE = 'an invented passphrase of the tests'
  test('opens whole and locked; its photos are found by garment, by body and by name', async () => {
    const on = device()
    await lying(fixture(9), on)
    const store = await opened(on)
    const all = await loaded(store)
    expect(all.aside).toEqual([])
    const [round] = all.rounds
    const own = round?.photos[0]?.sha256 ?? ''
    expect(all.photos).toHaveLength(2)
    expect(all.photos.map((p) => [p.reading, p.here])).toEqual([
      [undefined, true],
      [undefined, true],
    ])
    value(await store.safe.unlock(PASSPHRASE))
    const named = async (which: WhichPhotos) =>
      value(await store.keptPhotos(which)).photos.map((p) => [p.sha256, p.garmentId, p.reading])
    const ofBody = all.photos.find((p) => p.garmentId === null)?.sha256
    expect(await named({ garment: 'g1' })).toEqual([[own, 'g1', READING]])
    expect(await named({ garment: null })).toEqual([[ofBody, null, READING]])
    expect(await named({ named: [own] })).toEqual([[own, 'g1', READING]])
    expect(await named({ garment: null, named: [own, 'no such photo'] })).toHaveLength(2)
    expect(await named({ garment: 'no such garment' })).toEqual([])
    expect(await named({})).toEqual([])
    const pixels = value(await store.readPhoto(own))
    expect(new Uint8Array((await pixels?.arrayBuffer()) ?? []).subarray(0, 2)).toEqual(
      Uint8Array.of(0xff, 0xd8),
    )
  })
})
