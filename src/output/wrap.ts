/** Parting text into lines by the true width of its letters, which the printed face knows. */
import { unbroken } from '../units/unbroken.ts'

export interface Face {
  /** Width of the text in the unit of `size`. */
  readonly width: (text: string, size: number) => number
}

/** Where a long word may be parted; a letter like any other to a printer, so it never goes there. */
const SOFT_HYPHEN = '\u00ad'
export const withoutSoftHyphens = (text: string): string => text.replaceAll(SOFT_HYPHEN, '')

const NO_BREAK = '\u00a0'
const spaced = (text: string): string => text.replaceAll(NO_BREAK, ' ')

/**
 * Lines no wider than `width`. A word that does not fit on its line is parted at a soft hyphen
 * where it has one; a word wider than a line is broken where it must be. A number is not parted from
 * its unit.
 */
export function wrapped(text: string, size: number, width: number, face: Face): string[] {
  if (!(width > size)) throw new Error(`wrap: a column of ${width} mm for type of ${size} mm`)
  const wide = (said: string): number => face.width(spaced(said), size)
  const lines: string[] = []
  let now = ''
  let long = 0
  const words = unbroken(text).split(/[^\S\u00a0]+/)
  for (const whole of words.filter((w) => w !== '')) {
    let rest = whole
    let word = withoutSoftHyphens(rest)
    const more = (): string => (now === '' ? word : ` ${word}`)
    while (long + wide(more()) > width) {
      const [start, end] = parted(
        rest,
        (part) => long + wide(now === '' ? part : ` ${part}`) <= width,
      )
      if (start === '' && now === '') break
      lines.push(start === '' ? now : now === '' ? start : `${now} ${start}`)
      now = ''
      long = 0
      rest = end
      word = withoutSoftHyphens(rest)
    }
    const wider = long + wide(more())
    if (wider <= width) {
      now += more()
      long = wider
      continue
    }
    const broken = brokenWord(word, size, width, face)
    lines.push(...broken.slice(0, -1))
    now = broken.at(-1) ?? ''
    long = wide(now)
  }
  return (now === '' ? lines : [...lines, now]).map(spaced)
}

/** As much of the word as fits, with its hyphen, and what is left of it; '' where nothing fits. */
function parted(word: string, fits: (part: string) => boolean): readonly [string, string] {
  const parts = word.split(SOFT_HYPHEN)
  for (let k = parts.length - 1; k > 0; k--) {
    const start = `${parts.slice(0, k).join('')}-`
    if (fits(start)) return [start, parts.slice(k).join(SOFT_HYPHEN)]
  }
  return ['', word]
}

function brokenWord(word: string, size: number, width: number, face: Face): string[] {
  if (face.width(word, size) <= width) return [word]
  const parts = ['']
  for (const letter of word) {
    const last = parts.length - 1
    const longer = `${parts[last] ?? ''}${letter}`
    if (face.width(longer, size) <= width || parts[last] === '') parts[last] = longer
    else parts.push(letter)
  }
  return parts
}

/** The text, cut short with an ellipsis where it is wider than `width`. */
export function fitted(text: string, size: number, width: number, face: Face): string {
  if (face.width(text, size) <= width) return text
  let [kept, long] = ['', face.width('…', size)]
  for (const letter of text) {
    long += face.width(letter, size)
    if (long > width) break
    kept += letter
  }
  return `${kept.trimEnd()}…`
}
