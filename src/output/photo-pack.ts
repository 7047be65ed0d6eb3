/**
 * The second page to print for the photos: dots to wear, a pocket card, and a bar that checks the
 * print. Plain marks in millimetres from the page's top left corner, y down; the first page is the
 * sheet with the black square. Everything keeps 10 mm from the paper's edge.
 * Sources: pocket card ISO/IEC 7810:2019, ID-1, 85.60 x 53.98 mm.
 */
import { mm } from '../units/length.ts'
import { PAPERS } from './paper.ts'
import { PACK_WORDS } from './photo-pack.words.ts'
import type { PlainLine, PlainRect, PlainSheet, PlainText } from './plain-page.ts'

export type PackPaper = 'a4' | 'letter'

/** Diameter of a dot: the middle of sticker sizes sold, 3/4 in (common practice, no source). */
export const DOT = mm(19)
export const POCKET_CARD = { width: mm(85.6), height: mm(53.98) } as const
/** Eleven points carry a dot; the rest are spare. */
const DOTS = { rows: 2, columns: 8 } as const
/** Room for scissors between two dots. */
const DOT_STEP = 22
/** A black band with white on both sides: an edge that stands out on any cloth. */
const BAND = 6
const WHITE_ROUND = 4
const CHECK = { centimetres: 100, inches: 101.6 } as const
const LEFT = 17
const [WORDS, SMALL] = [4.2, 3.4]
/** A circle as this many chords strays by 0.02 mm at most (r (1 - cos(pi / n))). */
const CHORDS = 72

export function photoPack(paper: PackPaper): PlainSheet {
  const { width } = PAPERS[paper]
  const dots = Array.from({ length: DOTS.rows * DOTS.columns }, (_, i) => ({
    x: LEFT + DOT_STEP / 2 + (i % DOTS.columns) * DOT_STEP,
    y: 66 + Math.floor(i / DOTS.columns) * DOT_STEP,
  }))
  const card = { x: (width - POCKET_CARD.width) / 2, y: 146 }
  return {
    rects: pocketCard(card.x, card.y),
    lines: [
      ...bar(LEFT, 36, CHECK.centimetres),
      ...bar(LEFT, 46, CHECK.inches),
      ...dots.flatMap(({ x, y }) => circle(x, y, DOT / 2)),
      ...cutLine(card.x - WHITE_ROUND, card.y - WHITE_ROUND),
    ],
    texts: [
      words(20, PACK_WORDS.check),
      { x: LEFT + CHECK.inches + 5, y: 37.5, text: '10 cm', size: WORDS },
      { x: LEFT + CHECK.inches + 5, y: 47.5, text: '4 in', size: WORDS },
      ...PACK_WORDS.dots.map((text, i) => words(112 + i * 6.5, text)),
      { x: card.x + BAND + 4, y: card.y + 22, text: PACK_WORDS.card, size: WORDS },
      { x: card.x + BAND + 4, y: card.y + 29, text: PACK_WORDS.cardMetric, size: SMALL },
      { x: card.x + BAND + 4, y: card.y + 35, text: PACK_WORDS.cardInches, size: SMALL },
      ...PACK_WORDS.aboutCard.map((text, i) => words(218 + i * 6.5, text)),
    ],
  }
}

const words = (y: number, text: string): PlainText => ({ x: LEFT, y, text, size: WORDS })

/** Band, and white within it. */
function pocketCard(x: number, y: number): PlainRect[] {
  const { width, height } = POCKET_CARD
  const inner = {
    x: x + BAND,
    y: y + BAND,
    width: width - 2 * BAND,
    height: height - 2 * BAND,
  }
  return [
    { x, y, width, height, fill: 'black' },
    { ...inner, fill: 'white' },
  ]
}

function cutLine(x: number, y: number): PlainLine[] {
  const [right, low] = [
    x + POCKET_CARD.width + 2 * WHITE_ROUND,
    y + POCKET_CARD.height + 2 * WHITE_ROUND,
  ]
  return [
    ...dashed(x, y, right, y),
    ...dashed(right, y, right, low),
    ...dashed(right, low, x, low),
    ...dashed(x, low, x, y),
  ]
}

function dashed(x1: number, y1: number, x2: number, y2: number): PlainLine[] {
  const long = Math.hypot(x2 - x1, y2 - y1)
  const [dash, step] = [3, 5]
  const at = (along: number) => ({
    x: x1 + ((x2 - x1) * along) / long,
    y: y1 + ((y2 - y1) * along) / long,
  })
  return Array.from({ length: Math.floor(long / step) }, (_, i) => {
    const [from, to] = [at(i * step), at(i * step + dash)]
    return { x1: from.x, y1: from.y, x2: to.x, y2: to.y }
  })
}

function circle(x: number, y: number, radius: number): PlainLine[] {
  const at = (i: number) => {
    const angle = (2 * Math.PI * i) / CHORDS
    return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) }
  }
  return Array.from({ length: CHORDS }, (_, i) => {
    const [from, to] = [at(i), at(i + 1)]
    return { x1: from.x, y1: from.y, x2: to.x, y2: to.y }
  })
}

/** A line of known length with a stop at each end. */
function bar(x: number, y: number, length: number): PlainLine[] {
  const stop = 2.5
  return [
    { x1: x, y1: y, x2: x + length, y2: y },
    { x1: x, y1: y - stop, x2: x, y2: y + stop },
    { x1: x + length, y1: y - stop, x2: x + length, y2: y + stop },
  ]
}
