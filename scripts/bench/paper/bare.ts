/**
 * The same pages written by the PDF library alone: its document, its face, one stream a page with
 * the very operators of ours. What is left over is the time our own work takes.
 */
import fontkit from '@cantoo/fontkit'
import { PDFDocument, PDFName } from '@cantoo/pdf-lib'
import type { Page } from '../../../src/output/page.ts'
import { POINTS_PER_MM } from '../../../src/output/pdf-content.ts'

export async function bare(
  pages: readonly Page[],
  contents: readonly string[],
  fontBytes: Uint8Array,
): Promise<Uint8Array> {
  const doc = await PDFDocument.create({ updateMetadata: false })
  doc.registerFontkit(fontkit)
  const font = await doc.embedFont(fontBytes, { subset: true })
  for (const [i, { width, height, layers }] of pages.entries()) {
    const page = doc.addPage([width * POINTS_PER_MM, height * POINTS_PER_MM])
    // The face keeps the letters that were asked for, so every text is asked for once.
    for (const mark of layers.flatMap((l) => l.marks))
      if (mark.kind === 'text') font.encodeText(mark.text)
    const stream = doc.context.flateStream(contents[i] ?? '')
    page.node.set(PDFName.of('Contents'), doc.context.register(stream))
    page.node.setFontDictionary(PDFName.of('F1'), font.ref)
  }
  return doc.save({ useObjectStreams: false })
}
