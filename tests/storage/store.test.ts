/** The store against a second implementation of IndexedDB, written by others (fake-indexeddb). */
import { createHash } from 'node:crypto'
import { describe, expect, test } from 'vitest'
import type { MuslinSight } from '../../src/capture/muslin-sight.ts'
import { addTape, agreedValue, emptyBook, withdrawTape } from '../../src/measurements/book.ts'
import { redraft } from '../../src/rounds/redraft.ts'
import { withNotes, withSeen } from '../../src/rounds/round.ts'
import { record } from '../../src/draft/record.ts'
import { mm } from '../../src/units/length.ts'
import { readBackup, writeBackup } from '../../src/storage/backup.ts'
import { restore } from '../../src/storage/restore.ts'
import { body, bookOf, MIDDLE } from '../bodies.ts'
import {
  FIRST,
  GARMENT,
  phoneJpeg,
  phonePhoto,
  READING,
  SECOND,
  WEDGE,
  withRef,
} from './invented.ts'
import { device, loaded, opened, raw, TODAY, value } from './opened.ts'
import { CHANGED_ELSEWHERE } from '../../src/storage/storage.words.ts'

describe('what is kept is there after the page was closed', () => {
  test('book, garment, rounds and settings come back equal, and draft the same numbers', async () => {
    const on = device()
    const store = await opened(on)
    value(await store.saveBook(bookOf(MIDDLE)))
    value(await store.saveGarment(GARMENT))
    value(await store.saveRound(FIRST()))
    value(await store.saveRound(SECOND()))
    value(await store.saveSetting('cutting', { paper: 'a4' }))
    store.close()

    const all = await loaded(await opened(on))
    expect(all.book).toEqual(bookOf(MIDDLE))
    expect(all.garments).toEqual([GARMENT])
    expect(all.rounds).toEqual([FIRST(), SECOND()])
    expect(all.settings).toEqual({ cutting: { paper: 'a4' } })
    expect(all.aside).toEqual([])
    // Two equal readings of 940 mm were written down, so 940 is what the draft must be made from.
    expect(all.rounds[0]?.body.values.bustGirth).toBe(940)
    const redrawn = all.rounds[0] && record(redraft(all.rounds[0]).draft)
    expect(redrawn).toEqual(FIRST().printed?.record)
  })

  test('a garment taken off the rail is still there', async () => {
    const on = device()
    const store = await opened(on)
    value(await store.saveGarment(GARMENT))
    value(await store.saveGarment({ ...GARMENT, takenOffOn: TODAY }))
    expect((await loaded(store)).garments).toEqual([{ ...GARMENT, takenOffOn: TODAY }])
  })
})

describe('two windows', () => {
  test('readings taken in two windows are both kept, withdrawn ones stay withdrawn', async () => {
    const on = device()
    const [left, right] = [await opened(on), await opened(on)]
    const start = addTape(emptyBook(), 'bustGirth', mm(940), '2026-11-24')
    value(await left.saveBook(start))
    value(await left.saveBook(withdrawTape(start, 'bustGirth', 0)))
    value(await right.saveBook(addTape(start, 'bustGirth', mm(948), '2026-11-24')))
    value(await left.saveBook(addTape(start, 'waistGirth', mm(780), '2026-11-24')))
    const { book } = await loaded(left)
    expect(book.bustGirth?.tape.map(({ value: v, withdrawn }) => [v, withdrawn])).toEqual([
      [940, true],
      [948, undefined],
    ])
    expect(book.waistGirth?.tape).toHaveLength(1)
  })

  test('two equal readings stay two readings however often they are kept', async () => {
    const store = await opened(device())
    const book = bookOf({ bustGirth: 940 })
    value(await store.saveBook(book))
    const united = value(await store.saveBook(book))
    expect(united.bustGirth?.tape).toHaveLength(2)
    expect(agreedValue(united.bustGirth, 'bustGirth')).toBe(940)
  })

  test('a round changed in the other window is not written over', async () => {
    const on = device()
    const [left, right] = [await opened(on), await opened(on)]
    value(await left.saveRound(SECOND()))
    await loaded(right)
    value(await right.saveRound(withNotes(SECOND(), 'from the right')))
    expect(await left.saveRound(withNotes(SECOND(), 'from the left'))).toEqual({
      ok: false,
      sentence: CHANGED_ELSEWHERE,
    })
    expect((await loaded(left)).rounds[0]?.notes).toBe('from the right')
    value(await left.saveRound(withNotes(SECOND(), 'from the left, later')))
  })

  test('quick changes in one window follow one another', async () => {
    const store = await opened(device())
    const saves = ['a', 'b', 'c'].map((notes) => store.saveRound(withNotes(SECOND(), notes)))
    for (const save of saves) value(await save)
    expect((await loaded(store)).rounds[0]?.notes).toBe('c')
  })
})

describe('a printed round', () => {
  test('gains what was seen, notes and photos', async () => {
    const store = await opened(device())
    value(await store.saveRound(FIRST()))
    const more = withNotes(
      withSeen(FIRST(), { complaint: 'W1', answer: 'unsettled', on: '2026-11-24' }),
      'sleeve first',
    )
    value(await store.saveRound(more))
    expect((await loaded(store)).rounds).toEqual([more])
  })

  const printed = FIRST()
  const { printed: _pages, ...stillOpen } = printed
  test.each([
    ['choices', { ...printed, choices: { ...printed.choices, easeBust: mm(30) } }],
    ['corrections', { ...printed, corrections: [WEDGE] }],
    ['body', { ...printed, body: body({ bustGirth: 950 }) }],
    ['printed', stillOpen],
    ['seen', { ...printed, seen: [] }],
  ])('refuses another %s as our own mistake', async (field, changed) => {
    const store = await opened(device())
    value(await store.saveRound(printed))
    await expect(store.saveRound(changed)).rejects.toThrow(`round 1 is printed; its ${field} `)
    expect((await loaded(store)).rounds).toEqual([printed])
  })
})

describe('what could not be read back', () => {
  test('is not written, and the sentence says which field', async () => {
    const store = await opened(device())
    expect(await store.saveRound(withNotes(SECOND(), 'x'.repeat(100_001)))).toMatchObject({
      ok: false,
      sentence: expect.stringContaining('notes') as string,
    })
    const narrow = { ...WEDGE, width: mm(-6) }
    expect(await store.saveRound({ ...SECOND(), corrections: [narrow] })).toMatchObject({
      ok: false,
      sentence: expect.stringContaining('corrections.0.width') as string,
    })
    expect(await store.saveGarment({ ...GARMENT, name: 'n'.repeat(201) })).toMatchObject({
      ok: false,
    })
    const long = addTape(emptyBook(), 'bustGirth', mm(9400), TODAY)
    expect(await store.saveBook(long)).toMatchObject({ ok: false })
    const all = await loaded(store)
    expect([all.book, all.garments, all.rounds, all.aside]).toEqual([{}, [], [], []])
  })
})

describe('photos', () => {
  test('are kept without place and comment, by the SHA-256 of what is kept', async () => {
    const store = await opened(device())
    const about = { view: 'front', garmentId: null, roundId: null, takenOn: TODAY } as const
    const { sha256 } = value(await store.savePhoto(phonePhoto(), { ...about, reading: READING }))
    const blob = value(await store.readPhoto(sha256))
    const bytes = Buffer.from((await blob?.arrayBuffer()) ?? new ArrayBuffer())
    expect(bytes.toString('latin1')).not.toMatch(/GPS|Exif|invented phone/)
    expect(bytes.toString('latin1')).toContain('JFIF')
    // The scan data, which is the picture, is untouched: its bytes end the file as they did.
    expect(bytes.subarray(-14)).toEqual(Buffer.from(phoneJpeg()).subarray(-14))
    // Against Node's own SHA-256.
    expect(sha256).toBe(createHash('sha256').update(bytes).digest('hex'))
    expect((await loaded(store)).photos).toEqual([
      { v: 1, sha256, ...about, reading: READING, here: true },
    ])
  })

  test('a photo of a muslin and the round that shows it are kept both, or neither', async () => {
    const on = device()
    const [store, other] = [await opened(on), await opened(on)]
    const about = { view: 'front', garmentId: 'g1', roundId: 'r1', takenOn: TODAY } as const
    value(await store.saveRound(FIRST()))
    value(await other.load())
    const shows = (sha256: string) => withRef(FIRST(), sha256)
    const added = value(await store.savePhotoOf(phonePhoto(), about, shows))
    const all = await loaded(store)
    expect(all.rounds.map(({ photos }) => photos.map(({ sha256 }) => sha256))).toEqual([
      [added.photo.sha256],
    ])
    expect(all.photos).toMatchObject([{ sha256: added.photo.sha256, here: true }])
    // The other window has not seen that change of the round, so its photo is not kept either.
    const late = await other.savePhotoOf(phonePhoto(9), about, shows)
    expect(late).toEqual({ ok: false, sentence: CHANGED_ELSEWHERE })
    expect(await raw(on, 'pixels', 'readonly', (rows) => rows.count())).toBe(1)
    expect(await raw(on, 'photos', 'readonly', (rows) => rows.count())).toBe(1)
    // This one goes on with the round as it was kept.
    value(await store.saveRound(withNotes(added.round, 'still mine to change')))
  })

  test('let go: no pixel is left, the numbers are, and the round says when', async () => {
    const on = device()
    const store = await opened(on)
    const about = { view: 'front', garmentId: 'g1', roundId: 'r1', takenOn: TODAY } as const
    const { sha256 } = value(await store.savePhoto(phonePhoto(), { ...about, reading: READING }))
    value(await store.saveRound(withRef(FIRST(), sha256)))
    const changed = value(await store.letPhotoGo(sha256, '2026-11-25'))
    expect(changed.map(({ id }) => id)).toEqual(['r1'])
    expect(value(await store.readPhoto(sha256))).toBeUndefined()
    expect(await raw(on, 'pixels', 'readonly', (rows) => rows.count())).toBe(0)
    const all = await loaded(store)
    expect(all.photos[0]).toMatchObject({ removedOn: '2026-11-25', here: false, reading: READING })
    expect(all.rounds[0]?.photos).toEqual([{ view: 'front', sha256, removedOn: '2026-11-25' }])
    const [round] = changed
    if (round) value(await store.saveRound(withNotes(round, 'still mine to change')))
  })

  test('what was read from it and traced on it comes back, also when the pixels are let go', async () => {
    const on = device()
    const store = await opened(on)
    const about = { view: 'front', garmentId: 'g1', roundId: 'r1', takenOn: TODAY } as const
    const { sha256 } = value(await store.savePhoto(phonePhoto(), about))
    const muslin: MuslinSight = {
      folds: {
        ok: true,
        folds: [
          {
            line: [
              { x: 10, y: 20 },
              { x: 90, y: 22.5 },
            ],
            angle: 0.1,
            lengthMm: 80,
            places: ['betweenApexes'],
          },
        ],
        places: ['betweenApexes'],
      },
      lines: [{ name: 'waistLine', from: { x: 1, y: 5 }, to: { x: 9, y: 6 }, by: 'hand' }],
      marks: [
        { x: 4, y: 1 },
        { x: 4, y: 9 },
      ],
    }
    value(await store.noteRead(sha256, { muslin }))
    // A card between two likely ones says by how much it is in doubt.
    const card = READING.card.ok ? { ...READING.card.card, doubt: 0.02 } : undefined
    const reading = card ? { ...READING, card: { ok: true as const, card } } : READING
    value(await store.noteRead(sha256, { reading }))
    value(await store.letPhotoGo(sha256, '2026-11-25'))
    expect((await loaded(await opened(on))).photos).toMatchObject([{ sha256, reading, muslin }])
    expect(await store.noteRead('0'.repeat(64), { muslin })).toMatchObject({ ok: false })
  })

  test('an outline lies as one block of numbers, and comes back to the last digit, packed or not', async () => {
    const on = device()
    const store = await opened(on)
    const outline = [
      { y: 400, left: 440.1, right: 1 / 3 },
      { y: 401, left: -0.25, right: 640.125 },
    ]
    const about = { view: 'front', garmentId: null, roundId: null, takenOn: TODAY } as const
    const reading = { ...READING, outline }
    const { sha256 } = value(await store.savePhoto(phonePhoto(), { ...about, reading }))
    const row = (await raw(on, 'photos', 'readonly', (s) => s.get(sha256))) as {
      reading: { outline: Float64Array }
    }
    expect([...row.reading.outline]).toEqual([400, 440.1, 1 / 3, 401, -0.25, 640.125])
    expect((await loaded(await opened(on))).photos).toMatchObject([{ reading }])
    // As rows lay before version 7.
    const old = { ...row, reading }
    await raw(on, 'photos', 'readwrite', (s) => s.put(old))
    expect((await loaded(await opened(on))).photos).toMatchObject([{ reading }])
    // Numbers that fill no row are spoilt: the photo stays, its points are set again.
    const spoilt = { ...row, reading: { ...reading, outline: Float64Array.of(1, 2) } }
    await raw(on, 'photos', 'readwrite', (s) => s.put(spoilt))
    const all = await loaded(await opened(on))
    expect(all.photos).toMatchObject([{ sha256 }])
    expect(all.photos[0]?.reading).toBeUndefined()
    expect(all.aside).toHaveLength(1)
  })

  test('another picture in the place of one: every round that showed it shows the new, and no pixel of the old is left', async () => {
    const on = device()
    const store = await opened(on)
    const about = { view: 'front', garmentId: 'g1', roundId: 'r1', takenOn: TODAY } as const
    const old = value(await store.savePhoto(phonePhoto(), about)).sha256
    const later = value(await store.savePhoto(phonePhoto(9), about)).sha256
    value(await store.saveGarment(GARMENT))
    value(await store.saveRound(withRef(withRef(FIRST(), old), later)))
    value(await store.saveRound(withRef(SECOND(), old)))
    const before = value(await writeBackup(store, { on: TODAY, photos: false }))
    const changed = value(
      await store.exchangePhoto(old, phonePhoto(8), { reading: READING }, '2026-11-26'),
    )
    const all = await loaded(store)
    expect(changed.map(({ id }) => id)).toEqual(['r1', 'r2'])
    expect(changed).toEqual(all.rounds)
    const [first, second] = all.rounds
    const by = second?.photos.at(-1)?.sha256 ?? ''
    expect(first?.photos.map((p) => [p.sha256, p.removedOn])).toEqual([
      [old, '2026-11-26'],
      [by, undefined],
      // The one that took its place before stays the last of its view.
      [later, undefined],
    ])
    expect(all.photos.find((p) => p.sha256 === by)).toMatchObject({ reading: READING, here: true })
    expect(value(await store.readPhoto(old))).toBeUndefined()
    expect(all.photos.find((p) => p.sha256 === old)?.removedOn).toBe('2026-11-26')
    // The window goes on with the rounds as they are now, and a backup from before is no other work.
    value(await store.saveRound(second!))
    const read = await readBackup(await before.text())
    if (!read.ok) throw new Error(read.sentence)
    expect(value(await restore(store, read.content))).toMatchObject({ copies: [], rounds: 0 })
    expect(value(await store.readPhoto(old))).toBeUndefined()
  })
  test('the same picture in its own place is not let go; one that is gone is refused', async () => {
    const store = await opened(device())
    const about = { view: 'front', garmentId: 'g1', roundId: 'r1', takenOn: TODAY } as const
    const { sha256 } = value(await store.savePhoto(phonePhoto(), about))
    value(await store.exchangePhoto(sha256, phonePhoto(), { reading: READING }, TODAY))
    expect((await loaded(store)).photos).toMatchObject([{ reading: READING, here: true }])
    value(await store.letPhotoGo(sha256, TODAY))
    expect((await store.exchangePhoto(sha256, phonePhoto(8), {}, TODAY)).ok).toBe(false)
  })
  test('let go in another window while it is being covered: neither the one nor the other comes back', async () => {
    const on = device()
    const [store, other] = [await opened(on), await opened(on)]
    const about = { view: 'front', garmentId: 'g1', roundId: 'r1', takenOn: TODAY } as const
    const { sha256 } = value(await store.savePhoto(phonePhoto(), about))
    const [covered, gone] = await Promise.all([
      store.exchangePhoto(sha256, phonePhoto(8), { reading: READING }, TODAY),
      other.letPhotoGo(sha256, TODAY),
    ])
    expect([covered.ok, gone.ok]).toEqual([false, true])
    expect((await loaded(store)).photos).toMatchObject([{ sha256, here: false }])
  })
  test('chosen for a second muslin, or again after it was let go, it keeps what was read from it', async () => {
    const store = await opened(device())
    const first = { view: 'front', garmentId: 'g1', roundId: 'r1', takenOn: TODAY } as const
    const { sha256 } = value(await store.savePhoto(phonePhoto(), { ...first, reading: READING }))
    const line = {
      name: 'waistLine',
      from: { x: 1, y: 5 },
      to: { x: 9, y: 6 },
      by: 'hand',
    } as const
    value(await store.noteRead(sha256, { muslin: { lines: [line] } }))
    const second = { ...first, garmentId: 'g2', roundId: 'r2', takenOn: '2026-11-26' }
    const again = value(await store.savePhoto(phonePhoto(), second))
    expect(again).toEqual({ v: 1, sha256, ...first, reading: READING, muslin: { lines: [line] } })
    value(await store.letPhotoGo(sha256, '2026-11-27'))
    expect((await loaded(store)).photos).toMatchObject([{ here: false, removedOn: '2026-11-27' }])
    value(await store.savePhoto(phonePhoto(), second))
    const [photo] = (await loaded(store)).photos
    expect(photo).toMatchObject({ here: true, reading: READING, muslin: { lines: [line] } })
    expect(photo).not.toHaveProperty('removedOn')
  })

  test('what is no JPEG never enters', async () => {
    const store = await opened(device())
    const about = { view: 'front', garmentId: null, roundId: null, takenOn: TODAY } as const
    await expect(store.savePhoto(new Blob(['GIF89a']), about)).rejects.toThrow(/no JPEG/)
  })
})
