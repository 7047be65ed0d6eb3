/** A backup out and in: equal after the way round, and a bad file changes nothing. */
import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { describe, expect, test } from 'vitest'
import { USUAL_CLOTH } from '../../src/layout/cloth-wishes.ts'
import { draftPdf } from '../../src/output/pdf.ts'
import type { CutWishes } from '../../src/output/cutting.ts'
import { redraft } from '../../src/rounds/redraft.ts'
import { withNotes, type Round } from '../../src/rounds/round.ts'
import { readBackup, writeBackup, type BackupContent } from '../../src/storage/backup.ts'
import { restore } from '../../src/storage/restore.ts'
import type { Store } from '../../src/storage/store.ts'
import { mm } from '../../src/units/length.ts'
import { bookOf, MIDDLE } from '../bodies.ts'
import { FIRST, GARMENT, phonePhoto, READING, SECOND, withRef } from './invented.ts'
import { device, loaded, opened, raw, TODAY, value } from './opened.ts'

/** A device with the whole invented journey on it. */
async function journey(): Promise<Store> {
  const store = await opened(device())
  value(await store.saveBook(bookOf(MIDDLE)))
  value(await store.saveGarment(GARMENT))
  const about = { view: 'front', garmentId: 'g1', roundId: 'r1', takenOn: TODAY } as const
  const { sha256 } = value(await store.savePhoto(phonePhoto(), { ...about, reading: READING }))
  value(await store.saveRound(withRef(FIRST(), sha256)))
  value(await store.saveRound(SECOND()))
  value(await store.saveSetting('cutting', { paper: 'letter', allowances: { hem: 30 } }))
  return store
}
const textOf = async (store: Store, photos = true): Promise<string> =>
  value(await writeBackup(store, { on: TODAY, photos })).text()

async function contentOf(text: string): Promise<BackupContent> {
  const read = await readBackup(text)
  if (!read.ok) throw new Error(read.sentence)
  return read.content
}
const into = async (store: Store, text: string) =>
  value(await restore(store, await contentOf(text)))

interface InFile {
  v: number
  sha256: string
  payload: { rounds: { body: { values: Record<string, number> } }[] }
}
/** The file changed by a hand that does not know the mark of its contents, or that does. */
function changed(text: string, change: (file: InFile) => void, markAnew = false): string {
  const file = JSON.parse(text) as InFile
  change(file)
  if (markAnew)
    file.sha256 = createHash('sha256').update(JSON.stringify(file.payload)).digest('hex')
  return JSON.stringify(file)
}
const otherBust = (file: InFile): void => {
  const [round] = file.payload.rounds
  if (round) round.body.values['bustGirth'] = 900
}

async function pdfOf(round: Round | undefined): Promise<string> {
  if (!round) throw new Error('no round')
  const font = readFileSync(
    createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
  )
  const made = await draftPdf(redraft(round).draft, {
    paper: 'a4',
    units: { unit: 'cm', inchStep: 8 },
    round: round.number,
    font,
  })
  if (!made.ok) throw new Error(made.reason)
  return createHash('sha256').update(made.bytes).digest('hex')
}

test('one garment alone: its rounds and photos and the book, nothing of another', async () => {
  const store = await journey()
  value(await store.saveGarment({ ...GARMENT, id: 'g2', name: 'Another, invented', order: 2 }))
  const written = value(await writeBackup(store, { on: TODAY, photos: false, garment: 'g2' }))
  const content = await contentOf(await written.text())
  expect(content.garments.map(({ id }) => id)).toEqual(['g2'])
  expect(content).toMatchObject({ rounds: [], photos: [], aside: [] })
  const clean = await opened(device())
  value(await restore(clean, content))
  expect((await loaded(clean)).book).toEqual(bookOf(MIDDLE))
})

describe('the way round', () => {
  test('restored in a clean browser everything is equal, pixels and all', async () => {
    const old = await journey()
    const clean = await opened(device())
    const result = await into(clean, await textOf(old))
    expect(result).toEqual({ garments: 1, rounds: 2, photos: 1, copies: [], aside: 0 })
    const [before, after] = [await loaded(old), await loaded(clean)]
    const { savedTimes: _old, ...was } = before
    const { savedTimes: _new, ...is } = after
    expect(is).toEqual(was)
    const sha256 = after.photos[0]?.sha256 ?? ''
    const [oldPixels, newPixels] = [
      value(await old.readPhoto(sha256)),
      value(await clean.readPhoto(sha256)),
    ]
    expect(await newPixels?.arrayBuffer()).toEqual(await oldPixels?.arrayBuffer())
  })

  // The time is no claim about speed: two PDFs are made, on whatever machine this runs.
  test('the restored round prints the same PDF, to the byte', async () => {
    const old = await journey()
    const clean = await opened(device())
    await into(clean, await textOf(old))
    const [before, after] = [await loaded(old), await loaded(clean)]
    expect(await pdfOf(after.rounds[1])).toBe(await pdfOf(before.rounds[1]))
  })

  test('the mark is the SHA-256 of the contents, by another implementation', async () => {
    const file = JSON.parse(await textOf(await journey())) as InFile
    const again = createHash('sha256').update(JSON.stringify(file.payload)).digest('hex')
    expect(file.sha256).toBe(again)
  })

  test('laid out in lines by an editor it is still whole', async () => {
    const text = await textOf(await journey())
    const read = await readBackup(JSON.stringify(JSON.parse(text), null, 2))
    expect(read.ok).toBe(true)
  })

  test('without photos: the numbers and points come, no pixel does', async () => {
    const text = await textOf(await journey(), false)
    const clean = await opened(device())
    await into(clean, text)
    const [photo] = (await loaded(clean)).photos
    expect(photo).toMatchObject({ reading: READING, here: false })
    expect(text).not.toContain('"pixels"')
  })

  test('a restored round can be changed and kept', async () => {
    const clean = await opened(device())
    await into(clean, await textOf(await journey()))
    const all = await loaded(clean)
    const open = all.rounds[1]
    if (!open) throw new Error('no second round')
    value(await clean.saveRound(withNotes(open, 'going on')))
  })
})

describe('a file that cannot be used changes nothing', () => {
  const garbage = Array.from({ length: 200 }, (_, i) => String.fromCharCode((i * 73) % 256)).join(
    '',
  )
  test.each([
    ['cut off', (t: string) => t.slice(0, t.length / 2), /only partly copied/],
    ['an altered number', (t: string) => changed(t, otherBust), /altered or damaged/],
    [
      'another mark',
      (t: string) => changed(t, (f) => (f.sha256 = 'a'.repeat(64))),
      /altered or damaged/,
    ],
    ['no mark', (t: string) => changed(t, (f) => (f.sha256 = '')), /only partly copied/],
    ['a later version', (t: string) => changed(t, (f) => (f.v = 5)), /newer version/],
    ['text that is no JSON', () => 'Dear diary, the waist is too high.', /no backup of this page/],
    ['other JSON', () => '{"format":"shopping","v":1}', /no backup of this page/],
    ['an empty file', () => '', /no backup of this page/],
    ['200 bytes of garbage', () => garbage, /no backup of this page/],
  ])('%s', async (_name, spoil, sentence) => {
    const store = await journey()
    const before = await loaded(store)
    const read = await readBackup(spoil(await textOf(store)))
    expect(read).toMatchObject({ ok: false, sentence: expect.stringMatching(sentence) as string })
    expect(read).toMatchObject({
      sentence: expect.stringMatching(/Nothing was changed\.$/) as string,
    })
    expect(await loaded(store)).toEqual(before)
  })

  test('a photo that is not the one its mark names is refused', async () => {
    const text = await textOf(await journey())
    const other = Buffer.from(await phonePhoto(9).arrayBuffer()).toString('base64')
    const swapped = changed(
      text,
      (f) => {
        const { photos } = f.payload as unknown as { photos: { pixels: string }[] }
        for (const p of photos) p.pixels = other
      },
      true,
    )
    expect(await readBackup(swapped)).toMatchObject({ ok: false })
  })

  test('a number the tape readings do not give never becomes a round, mark or no mark', async () => {
    const text = changed(await textOf(await journey()), otherBust, true)
    const clean = await opened(device())
    expect(await into(clean, text)).toMatchObject({ rounds: 1, aside: 1 })
    const all = await loaded(clean)
    expect(all.rounds.map(({ id }) => id)).toEqual(['r2'])
    expect(all.aside[0]).toMatchObject({ table: 'rounds', key: 'r1' })
  })

  test('when one of its records cannot be written, nothing of the file is kept', async () => {
    const text = await textOf(await journey())
    const on = device()
    const clean = await opened(on)
    const content = await contentOf(text)
    // A row the store cannot clone makes the last write of the transaction fail.
    const broken = { ...content, settings: { cutting: () => 0 } }
    await expect(restore(clean, broken)).rejects.toThrow(/clone/i)
    for (const table of ['book', 'garments', 'rounds', 'photos', 'pixels'])
      expect(await raw(on, table, 'readonly', (rows) => rows.count())).toBe(0)
  })
})

describe('restored where there is work already', () => {
  test('the same backup again adds nothing', async () => {
    const store = await journey()
    const before = await loaded(store)
    const none = { garments: 0, rounds: 0, photos: 0, copies: [], aside: 0 }
    expect(await into(store, await textOf(store))).toEqual(none)
    expect(await loaded(store)).toEqual(before)
  })

  test('work that went on is left as it is; work in the file that went on is taken', async () => {
    const store = await journey()
    const early = await textOf(store)
    const { rounds } = await loaded(store)
    const first = rounds[0]
    if (!first) throw new Error('no first round')
    value(await store.saveRound(withNotes(first, 'worn for a day')))
    const late = await textOf(store)
    expect(await into(store, early)).toMatchObject({ rounds: 0, copies: [] })
    expect((await loaded(store)).rounds[0]?.notes).toBe('worn for a day')

    const other = await opened(device())
    await into(other, early)
    expect(await into(other, late)).toMatchObject({ rounds: 1, copies: [] })
    expect((await loaded(other)).rounds[0]?.notes).toBe('worn for a day')
  })

  test('a garment that differs hangs beside as one copy, however often it is restored', async () => {
    const store = await journey()
    const text = await textOf(store)
    const { rounds } = await loaded(store)
    const second = rounds[1]
    if (!second) throw new Error('no second round')
    const mine = { ...second, choices: { ...second.choices, easeBust: mm(30) } }
    value(await store.saveRound(mine))
    const copy = `Blue blouse, invented (backup of 25 Nov 2026)`
    expect(await into(store, text)).toMatchObject({ garments: 1, rounds: 2, copies: [copy] })
    const all = await loaded(store)
    expect(all.garments.map(({ name }) => name)).toEqual(['Blue blouse, invented', copy])
    expect(all.rounds.find(({ id }) => id === 'r2')).toEqual(mine)
    const copied = all.rounds.filter(({ garmentId }) => garmentId === all.garments[1]?.id)
    expect(copied.map(({ number }) => number)).toEqual([1, 2])
    expect(copied[1]?.choices.easeBust).toBe(second.choices.easeBust)
    expect(await into(store, text)).toMatchObject({ garments: 0, rounds: 0, copies: [] })

    // Her changes in the copy are hers: a third restoring does not write over them.
    await loaded(store)
    const [, changedCopy] = copied
    if (!changedCopy) throw new Error('no copy')
    value(await store.saveRound(withNotes(changedCopy, 'tried the other way')))
    await into(store, text)
    const after = await loaded(store)
    expect(after.rounds.find(({ id }) => id === changedCopy.id)?.notes).toBe('tried the other way')
  })

  test('how a garment is cut comes along, and what was chosen here since is kept', async () => {
    const cutting: CutWishes = {
      stuff: 'cloth',
      muslin: {},
      cloth: { hem: { finish: 'doubleFoldHem', allowance: mm(50) } },
      paper: 'a3',
    }
    const store = await journey()
    value(await store.saveGarment({ ...GARMENT, cutting }))
    const text = await textOf(store)
    const other = await opened(device())
    value(await other.saveGarment(GARMENT))
    await into(other, text)
    expect((await loaded(other)).garments.map((g) => g.cutting)).toEqual([cutting])
    const mine: CutWishes = { ...cutting, paper: 'letter' }
    value(await other.saveGarment({ ...GARMENT, cutting: mine }))
    expect((await into(other, text)).copies).toEqual([])
    expect((await loaded(other)).garments.map((g) => g.cutting)).toEqual([mine])
  })

  test('cloth and what is sewn come along', async () => {
    const drape = { apart: mm(210), of: 'crispCotton' } as const
    const cloth = { ...USUAL_CLOTH, kind: 'silk', drape, width: mm(900), oneWay: true } as const
    const sewn = { stay: '2026-11-28' }
    const store = await journey()
    value(await store.saveGarment({ ...GARMENT, cloth, sewn }))
    const other = await opened(device())
    await into(other, await textOf(store))
    const [garment] = (await loaded(other)).garments
    expect(garment?.cloth).toEqual(cloth)
    expect(garment?.sewn).toEqual(sewn)
  })

  test('a file of version 1 is read as it is', async () => {
    const text = changed(await textOf(await journey()), (f) => (f.v = 1))
    const other = await opened(device())
    expect(await into(other, text)).toMatchObject({ garments: 1, rounds: 2, aside: 0 })
  })

  test('readings of both are united', async () => {
    const text = await textOf(await journey())
    const other = await opened(device())
    value(await other.saveBook(bookOf({ bustGirth: 952 })))
    await into(other, text)
    const { book } = await loaded(other)
    expect(book.bustGirth?.tape.map((r) => r.value)).toEqual([952, 952, 940, 940])
    expect(book.waistGirth).toEqual(bookOf(MIDDLE).waistGirth)
  })

  test('a photo that was let go stays let go', async () => {
    const store = await journey()
    const text = await textOf(store)
    const sha256 = (await loaded(store)).photos[0]?.sha256 ?? ''
    value(await store.letPhotoGo(sha256, TODAY))
    await into(store, text)
    expect(value(await store.readPhoto(sha256))).toBeUndefined()
    expect((await loaded(store)).rounds[0]?.photos[0]?.removedOn).toBe(TODAY)
  })
})
