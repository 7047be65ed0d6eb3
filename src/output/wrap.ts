/** Parting text into lines by the true width of its letters, which the printed face knows. */
export interface Face {
  /** Width of the text in the unit of `size`. */
  readonly width: (text: string, size: number) => number
}

/** Lines no wider than `width`; a word wider than that is broken where it must be. */
export function wrapped(text: string, size: number, width: number, face: Face): string[] {
  if (!(width > size)) throw new Error(`wrap: a column of ${width} mm for type of ${size} mm`)
  const lines: string[] = []
  let now = ''
  let long = 0
  for (const word of text.split(/\s+/).filter((w) => w !== '')) {
    const more = now === '' ? word : ` ${word}`
    const wider = long + face.width(more, size)
    if (wider <= width) {
      now += more
      long = wider
      continue
    }
    if (now !== '') lines.push(now)
    const broken = brokenWord(word, size, width, face)
    lines.push(...broken.slice(0, -1))
    now = broken.at(-1) ?? ''
    long = face.width(now, size)
  }
  return now === '' ? lines : [...lines, now]
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
