/** An invented journey to keep and restore: book, garment, three rounds, a photo. Nobody's numbers. */
import type { ViewReading } from '../../src/capture/reading.ts'
import { close } from '../../src/rounds/redraft.ts'
import {
  firstRound,
  nextRound,
  withCorrection,
  withNotes,
  withPhoto,
  withSeen,
  type Round,
} from '../../src/rounds/round.ts'
import type { HungGarment } from '../../src/storage/schema/garment.ts'
import type { Correction } from '../../src/fitting/correction.ts'
import { mm } from '../../src/units/length.ts'
import { body } from '../bodies.ts'

export const GARMENT: HungGarment = {
  v: 1,
  id: 'g1',
  garment: 'blouse',
  name: 'Blue blouse, invented',
  hungOn: '2026-11-20',
  order: 1,
}

export const WEDGE: Correction = {
  v: 1,
  id: 'c1',
  kind: 'close-wedge',
  piece: 'front',
  edge: 'sleeveEdge',
  along: 0.5,
  width: mm(6),
  because: {
    complaint: 'B8',
    cause: 'bust shaping',
    pinned: { how: 'wholeFold', read: mm(7), share: 0.87 },
    watch: mm(0.09),
    round: 1,
  },
}

export const FIRST = (): Round =>
  withSeen(
    close(firstRound({ id: 'r1', garmentId: 'g1' }, 'blouse', body(), '2026-11-20'), '2026-11-21'),
    { complaint: 'B8', answer: 'bust shaping', pinned: WEDGE.because.pinned, on: '2026-11-22' },
  )
export const SECOND = (): Round =>
  withNotes(withCorrection(nextRound(FIRST(), 'r2', '2026-11-23'), WEDGE), 'calico, 2 m')

/** A JPEG as a phone writes it, without its pixels: JFIF, EXIF with a place, a comment, scan data. */
export function phoneJpeg(mark = 7): Uint8Array<ArrayBuffer> {
  const letters = (text: string): number[] => Array.from(text, (c) => c.charCodeAt(0))
  const segment = (marker: number, data: readonly number[]): number[] => [
    0xff,
    marker,
    Math.floor((data.length + 2) / 256),
    (data.length + 2) % 256,
    ...data,
  ]
  return Uint8Array.from([
    0xff,
    0xd8,
    ...segment(0xe0, [...letters('JFIF\0'), 1, 1, 0, 0, 1, 0, 1, 0, 0]),
    ...segment(0xe1, letters('Exif\0\0GPS 50.08 N 14.43 E')),
    ...segment(0xfe, letters('made by an invented phone')),
    ...segment(0xdb, [0, ...Array.from({ length: 64 }, () => 1)]),
    ...segment(0xda, [1, 1, 0, 0, 63, 0]),
    mark,
    1,
    2,
    3,
    0xff,
    0xd9,
  ])
}
export const phonePhoto = (mark?: number): Blob =>
  new Blob([phoneJpeg(mark)], { type: 'image/jpeg' })

export const READING: ViewReading = {
  view: 'front',
  size: { width: 900, height: 1600 },
  person: { ok: true, score: 0.9, joints: { nose: { at: { x: 450, y: 200 }, score: 0.8 } } },
  card: { ok: false, reason: 'No card was found.' },
  points: {
    apexLeft: { at: { x: 500.5, y: 610 }, sdPx: 2, from: 'your own mark', by: 'hand' },
  },
  missing: { apexRight: 'The cloth hides it.' },
  outline: [{ y: 200, left: 400, right: 520 }],
  facing: 1,
}

export const withRef = (round: Round, sha256: string): Round =>
  withPhoto(round, { view: 'front', sha256 })
