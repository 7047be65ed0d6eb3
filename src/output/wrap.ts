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
  for (const word of text.split(/\s+/).filter((w) => w !== '')) {
    const longer = now === '' ? word : `${now} ${word}`
    if (face.width(longer, size) <= width) {
      now = longer
      continue
    }
    if (now !== '') lines.push(now)
    const broken = brokenWord(word, size, width, face)
    lines.push(...broken.slice(0, -1))
    now = broken.at(-1) ?? ''
  }
  return now === '' ? lines : [...lines, now]
}

function brokenWord(word: string, size: number, width: number, face: Face): string[] {
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
  const letters = [...text]
  while (letters.length > 0 && face.width(`${letters.join('')}…`, size) > width) letters.pop()
  return `${letters.join('').trimEnd()}…`
}
