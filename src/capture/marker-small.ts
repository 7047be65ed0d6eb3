/**
 * Four small markers on the printed sheet, two on each side of the black square. They have codes of
 * their own, so that none can be taken for the square; their places are known to the tenth of a
 * millimetre. Pure geometry, mm, y down.
 * Source of the codes: dictionary ARUCO_MIP_36h12, markers 1 to 4 (see card-marker.ts); each differs
 * from the square's code in 17 cells of 36 at least, however it is turned.
 */
import { mm } from '../units/length.ts'

export interface SmallMarker {
  readonly id: number
  /** Top left corner. */
  readonly x: number
  readonly y: number
}

/** Side of a small marker: a cell of 3 mm is two pixels and more in a photo of a whole body. */
export const SMALL_SQUARE = mm(24)
/** Row by row, six cells each, 1 is white. */
export const SMALL_CODES: Readonly<Record<number, string>> = {
  1: '011000000000000100010011010011100101',
  2: '000100100000011011111011111001110010',
  3: '111111111000101011010110110010110100',
  4: '100001011101101010011011110001001001',
}
/** Printers leave up to 10 mm white (common practice, no source). */
const FROM_EDGE = 12

/** Beside a square of `side` whose top lies at `top`, on paper of the given width. */
export function smallMarkers(width: number, top: number, side: number): readonly SmallMarker[] {
  const [left, right] = [FROM_EDGE, width - FROM_EDGE - SMALL_SQUARE]
  const low = top + side - SMALL_SQUARE
  return [
    { id: 1, x: left, y: top },
    { id: 2, x: right, y: top },
    { id: 3, x: right, y: low },
    { id: 4, x: left, y: low },
  ]
}

/** The white cells of a code, true = white. */
export function cellsOf(id: number): readonly (readonly boolean[])[] {
  const code = SMALL_CODES[id]
  if (code?.length !== 36) throw new Error(`small marker ${id} has code ${code}`)
  return Array.from({ length: 6 }, (_, row) =>
    Array.from({ length: 6 }, (_, column) => code[row * 6 + column] === '1'),
  )
}
