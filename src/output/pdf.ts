/**
 * True-scale PDF sheets of a draft, and of a plain sheet of marks. The only file that knows the
 * PDF library. The bytes follow from the draft and the words given, without clock or chance, so
 * a restored backup prints the very same file.
 */
import fontkit from '@cantoo/fontkit'
import {
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFString,
  type PDFFont,
  type PDFRef,
} from '@cantoo/pdf-lib'
import type { Draft } from '../draft/draft.ts'
import { contentId } from './content-id.ts'
import { draftPages } from './draft-pages.ts'
import type { Page } from './page.ts'
import { PAPERS, type PaperId } from './paper.ts'
import { pageContent, pictureKey, POINTS_PER_MM, type PdfFace } from './pdf-content.ts'
import { PDF_LAYERS, PDF_LAYER_IDS, type PdfLayer } from './pdf-layers.ts'
import { plainPage, type PlainSheet } from './plain-page.ts'
import type { SheetPlan } from './sheet-plan.ts'
import type { SheetWords } from './sheet-words.ts'
import { FILE_WORDS } from './sheet.words.ts'
import type { TilePlan } from './tiles.ts'

export interface PdfWords extends SheetWords {
  /** DejaVu Sans as a TrueType file; only the letters used are kept. */
  readonly font: Uint8Array
}

export type PdfMade =
  | {
      readonly ok: true
      readonly bytes: Uint8Array
      /** All pages: page one, the tiles, the steps; on a big sheet page one is the first tile. */
      readonly sheets: number
      /** Those that must be printed true: page one and the sheets, which come first. */
      readonly tiled: number
      readonly plan: TilePlan
    }
  | { readonly ok: false; readonly reason: string }

/** All sheets of a draft; refuses with a sentence where they must not be cut from. */
export async function draftPdf(
  draft: Draft,
  words: PdfWords,
  /** From `sheetPlan` of the same draft and words, where the sheets were laid out before. */
  plan?: SheetPlan,
): Promise<PdfMade> {
  const { doc, font, face } = await begun(words.font)
  const made = draftPages(draft, words, face, plan)
  if (!made.ok) return made
  const bytes = await finished(doc, font, face, made.pages, made.title)
  return { ok: true, bytes, sheets: made.pages.length, tiled: made.tiled, plan: made.plan }
}

/** Sheets of plain marks at true scale, a page each. */
export const plainSheetsPdf = (
  sheets: readonly PlainSheet[],
  paper: PaperId,
  fontBytes: Uint8Array,
  title: string,
): Promise<Uint8Array> =>
  pagesPdf(() => sheets.map((sheet) => plainPage(sheet, PAPERS[paper])), fontBytes, title)

/** Any pages as a file; the face they are set in is handed to what makes them. */
export async function pagesPdf(
  make: (face: PdfFace) => readonly Page[],
  fontBytes: Uint8Array,
  title: string,
): Promise<Uint8Array> {
  const { doc, font, face } = await begun(fontBytes)
  return finished(doc, font, face, make(face), title)
}

/** One layer that a reader can hide (ISO 32000-1, 8.11.2). */
const layerGroup = ({ context }: PDFDocument, id: PdfLayer): PDFRef =>
  context.register(context.obj({ Type: 'OCG', Name: PDFHexString.fromText(PDF_LAYERS[id]) }))

const FACE_KEY = 'F1'
/** A subset carries a tag of six capitals before its name (ISO 32000-1, 9.6.4); ours is fixed. */
const FACE_NAME = 'TAPETR+DejaVuSans'
/** Files need a date to be complete; this one stands for "none", so that equal drafts stay equal. */
const NO_DATE = 'D:20000101000000Z'

async function begun(
  bytes: Uint8Array,
): Promise<{ doc: PDFDocument; font: PDFFont; face: PdfFace }> {
  const doc = await PDFDocument.create({ updateMetadata: false })
  doc.registerFontkit(fontkit)
  const font = await doc.embedFont(bytes, { subset: true, customName: FACE_NAME })
  // Setting a text is slow and letters come again and again: each is set once. Nothing is kerned;
  // of joined letters only "ff" is narrower than the two, by a sixtieth of the type.
  const wide = remembered((letter) => font.widthOfTextAtSize(letter, 1))
  const face: PdfFace = {
    key: FACE_KEY,
    width: (text, size) => {
      let sum = 0
      for (const letter of text) sum += wide(letter)
      return sum * size
    },
    encoded: remembered((text) => font.encodeText(text).toString()),
  }
  return { doc, font, face }
}

function remembered<T>(make: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>()
  return (text) => {
    const found = known.get(text)
    if (found !== undefined) return found
    const made = make(text)
    known.set(text, made)
    return made
  }
}

async function finished(
  doc: PDFDocument,
  font: PDFFont,
  face: PdfFace,
  pages: readonly Page[],
  title: string,
): Promise<Uint8Array> {
  const { context, catalog } = doc
  const contents = pages.map((page) => pageContent(page, face))
  const used = PDF_LAYER_IDS.filter((id) => contents.some((c) => c.layers.includes(id)))
  const groups = new Map(used.map((id) => [id, layerGroup(doc, id)]))
  for (const [i, page] of pages.entries()) {
    const { operators = '', layers = [] } = contents[i] ?? {}
    const sheet = doc.addPage([page.width * POINTS_PER_MM, page.height * POINTS_PER_MM])
    sheet.node.set(PDFName.of('Contents'), context.register(context.flateStream(operators)))
    sheet.node.setFontDictionary(PDFName.of(FACE_KEY), font.ref)
    for (const [k, { jpeg }] of (page.pictures ?? []).entries())
      sheet.node.setXObject(PDFName.of(pictureKey(k)), (await doc.embedJpg(jpeg)).ref)
    if (layers.length > 0) {
      const named = layers.map((id) => [id, groups.get(id)])
      sheet.node.Resources()?.set(PDFName.of('Properties'), context.obj(Object.fromEntries(named)))
    }
  }
  if (groups.size > 0) {
    const all = [...groups.values()]
    const shown = { Name: PDFString.of('All'), Order: all, ON: all }
    catalog.set(PDFName.of('OCProperties'), context.obj({ OCGs: all, D: shown }))
  }
  // Printed as it is: a reader that shrinks to fit would make every number wrong (12.2, table 150).
  catalog.set(PDFName.of('ViewerPreferences'), context.obj({ PrintScaling: 'None' }))
  catalog.set(PDFName.of('Lang'), PDFString.of(FILE_WORDS.language))
  const bytes = pages.flatMap((page) => (page.pictures ?? []).map(({ jpeg }) => jpeg.length))
  const own = [title, ...contents.map((c) => c.operators), ...bytes].join('\n')
  const id = PDFHexString.of(contentId(own))
  context.trailerInfo.ID = context.obj([id, id])
  context.trailerInfo.Info = context.register(
    context.obj({
      Title: PDFHexString.fromText(title),
      Creator: PDFString.of('Tapetrue'),
      CreationDate: PDFString.of(NO_DATE),
      ModDate: PDFString.of(NO_DATE),
    }),
  )
  return doc.save({ useObjectStreams: false, addDefaultPage: false, updateFieldAppearances: false })
}
