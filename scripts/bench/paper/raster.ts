/** Grey pictures of PDF pages as poppler draws them, and where dark lines lie in them. */
import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** Pixels an inch: a line of 0.25 mm is six wide, and its middle is found to a hundredth of a mm. */
const DPI = 600
export const MM_PER_PIXEL = 25.4 / DPI

export interface Raster {
  readonly width: number
  readonly height: number
  /** 0 is black, 255 the paper; by rows. */
  readonly grey: Uint8Array
}

/** "24.02.0", or undefined where poppler is not installed. */
export function popplerVersion(): string | undefined {
  const said = spawnSync('pdftoppm', ['-v'], { encoding: 'utf8' })
  return said.error ? undefined : /version (\S+)/.exec(said.stderr)?.[1]
}

export function rasters(pdf: Uint8Array, pages: readonly number[]): Raster[] {
  const folder = mkdtempSync(join(tmpdir(), 'paper-'))
  try {
    const file = join(folder, 'sheets.pdf')
    writeFileSync(file, pdf)
    return pages.map((page) => {
      const out = join(folder, `page${page}`)
      const which = ['-f', `${page}`, '-l', `${page}`, '-singlefile']
      execFileSync('pdftoppm', ['-r', `${DPI}`, '-gray', ...which, file, out])
      return readPgm(readFileSync(`${out}.pgm`))
    })
  } finally {
    rmSync(folder, { recursive: true })
  }
}

/** Netpbm PGM, raw (the P5 of its manual page): "P5", width, height, 255, then the bytes. */
function readPgm(bytes: Uint8Array): Raster {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(
    Buffer.from(bytes.subarray(0, 64)).toString('latin1'),
  )
  if (!head) throw new Error('bench: poppler gave no PGM')
  const [whole, width = '', height = ''] = head
  return { width: Number(width), height: Number(height), grey: bytes.subarray(whole.length) }
}

export interface DarkRun {
  /** Middle of the line, weighed by its darkness, mm from the left or upper edge of the picture. */
  readonly at: number
  /** Darkest pixel of it. */
  readonly darkest: number
}
/** Lighter than this is paper and the fringe of a line. */
const INK = 250

/** Lines crossed on the way along a row of pixels, or down a column. */
export function darkRuns(
  { width, height, grey }: Raster,
  way: 'row' | 'column',
  mm: number,
): DarkRun[] {
  const fixed = Math.round(mm / MM_PER_PIXEL)
  const long = way === 'row' ? width : height
  const value = (i: number): number =>
    grey[way === 'row' ? fixed * width + i : i * width + fixed] ?? 255
  const runs: DarkRun[] = []
  for (let i = 0; i < long; i++) {
    if (value(i) >= INK) continue
    let [weight, moment, darkest] = [0, 0, 255]
    for (; i < long && value(i) < INK; i++) {
      weight += 255 - value(i)
      moment += (255 - value(i)) * (i + 0.5)
      darkest = Math.min(darkest, value(i))
    }
    runs.push({ at: (moment / weight) * MM_PER_PIXEL, darkest })
  }
  return runs
}
