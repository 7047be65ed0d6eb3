/** A garment that takes 60 pages of A4, and the operators of its pages. */
import { CHOICES, standardChoices } from '../../../src/draft/choices.ts'
import type { Draft } from '../../../src/draft/draft.ts'
import { draft } from '../../../src/draft/make.ts'
import { draftPages } from '../../../src/output/draft-pages.ts'
import type { Page } from '../../../src/output/page.ts'
import { pagesPdf, type PdfWords } from '../../../src/output/pdf.ts'
import { pageContent, type PdfFace } from '../../../src/output/pdf-content.ts'
import { mm } from '../../../src/units/length.ts'
import { body, LARGE } from '../../../tests/bodies.ts'

const PAGES = 60
const STEP = 20

/** The printed face; it can measure and encode as long as the program runs. */
async function faceOf(words: PdfWords): Promise<PdfFace> {
  let face: PdfFace | undefined
  await pagesPdf(
    (own) => {
      face = own
      return [{ width: 210, height: 297, layers: [] }]
    },
    words.font,
    'bench',
  )
  if (!face) throw new Error('bench: no face')
  return face
}

/** The largest invented body, as long as a dress, every piece twice: the length nearest to 60. */
export async function sixtyPages(words: PdfWords): Promise<Draft> {
  const face = await faceOf(words)
  const { min, max } = CHOICES.lengthBelowWaist
  let nearest: { readonly off: number; readonly draft: Draft } | undefined
  for (let length = max; length >= min; length = mm(length - STEP)) {
    const one = draft('blouse', body({}, LARGE), { ...standardChoices(), lengthBelowWaist: length })
    const twice = { ...one, pieces: [...one.pieces, ...one.pieces] }
    const made = draftPages(twice, words, face)
    if (!made.ok) throw new Error(made.reason)
    const off = Math.abs(made.pages.length - PAGES)
    if (!nearest || off < nearest.off) nearest = { off, draft: twice }
    if (made.pages.length <= PAGES) break
  }
  if (!nearest) throw new Error('bench: no length of dress')
  return nearest.draft
}

export async function pdfOperators(
  made: Draft,
  words: PdfWords,
): Promise<{ readonly pages: readonly Page[]; readonly contents: readonly string[] }> {
  const face = await faceOf(words)
  const drawn = draftPages(made, words, face)
  if (!drawn.ok) throw new Error(drawn.reason)
  const contents = drawn.pages.map((page) => pageContent(page, face).operators)
  return { pages: drawn.pages, contents }
}
